import type { HeatWork } from '../model/document.ts';
import type { ObservedCone } from '../model/options.ts';
import type { Trace } from '../model/trace.ts';
import { celsiusDelta } from '../units.ts';
import type { HeatWorkQuestion } from './firing-record.ts';
import { measured } from './measured.ts';
import { placeKey } from './observed-cones.ts';
import { coupleError, type Uncertainty } from './uncertainty.ts';

type CoupleError = NonNullable<HeatWork['coupleErrorC']>;

const byPlace = (observed: readonly ObservedCone[]): ObservedCone[][] => {
  const places = new Map<string, ObservedCone[]>();
  for (const one of observed) {
    const key = placeKey(one);
    places.set(key, [...(places.get(key) ?? []), one]);
  }
  return [...places.values()];
};

const inDegrees = ({ estimate, low, high }: ReturnType<typeof coupleError>) => ({
  estimate: celsiusDelta(estimate),
  low: celsiusDelta(low),
  high: celsiusDelta(high),
});

/** Whether one error lies within the range of every place. */
const shareOne = (places: CoupleError['byPlace']): boolean =>
  Math.max(...places.map(({ low }) => low)) <= Math.min(...places.map(({ high }) => high));

/**
 * The couple's error by witness cones (reading minus truth, °C near the top, with 80 % ranges): of
 * all together, and of each place as if its cones alone had been seen. Null without cones.
 */
export const coupleErrorOf = (
  trace: Trace,
  question: HeatWorkQuestion,
  ofAll: Uncertainty,
): CoupleError | null => {
  if (!ofAll.byCones) return null;
  const groups = byPlace(question.observedCones ?? []);
  const places = groups.map((observedCones) => ({
    place: observedCones[0]!.place.trim(),
    ...inDegrees(
      coupleError(
        groups.length === 1 ? ofAll : measured(trace, { ...question, observedCones }).uncertainty,
      ),
    ),
  }));
  return {
    ...inDegrees(coupleError(ofAll)),
    byPlace: places,
    oneOffset: places.length > 1 ? shareOne(places) : null,
  };
};
