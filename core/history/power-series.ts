import type { HistoryStep } from '../model/history.ts';
import type { FiringEntry, Ranged } from './entry.ts';
import { findSteps } from './steps.ts';
import type { PowerPoint } from './trend.ts';

/** So many first firings are the reference, so that one odd load does not set the scale (chosen). */
const REFERENCE_FIRINGS = 3;
/**
 * Chosen: one of many circuits, or half the usual wear made good; a smaller step is within what the
 * supply does.
 */
const LEAST_STEP = 0.05;
/** What two firings of one kiln differ by in power, as a share (bench `relative-power`, thermal). */
const LEAST_SCATTER = 0.016;

interface Measured {
  readonly firing: number;
  readonly power: Ranged;
}

/** A kiln's power over its firings, on one scale. */
export interface PowerSeries {
  /** 1 for the reference firings; null where it could not be told. */
  readonly relative: readonly (Ranged | null)[];
  readonly references: readonly number[];
  readonly steps: readonly HistoryStep[];
  /** The firings of the elements that are in the kiln now, on the scale of the last of them. */
  readonly current: readonly PowerPoint[];
  /** By what the entries' own power is divided. */
  readonly unit: number;
}

const geometricMean = (values: readonly number[]): number =>
  Math.exp(values.reduce((sum, value) => sum + Math.log(value), 0) / values.length);

const scaled = ({ value, low, high }: Ranged, by: number): Ranged => ({
  value: value * by,
  low: low * by,
  high: high * by,
});

const measuredOf = (entries: readonly FiringEntry[]): Measured[] =>
  entries.flatMap(({ power }, firing) => (power === null ? [] : [{ firing, power }]));

/** Power steps, those named `couple` where the cones show one at the same firing. */
const stepsOf = (measured: readonly Measured[], couple: readonly HistoryStep[]): HistoryStep[] => {
  const found = findSteps(
    measured.map(({ firing }) => firing),
    measured.map(({ power }) => Math.log(power.value)),
    { least: Math.log(1 + LEAST_STEP), leastScatter: LEAST_SCATTER },
  );
  const power = found.map(({ at, height }): HistoryStep => {
    const firing = measured[at]!.firing;
    const previous = measured[at - 1]!.firing;
    const behind = couple.find((one) => one.firing > previous && one.firing <= firing);
    const kind = height > 0 ? 'restored' : 'lost';
    return {
      kind: behind === undefined ? kind : 'couple',
      firing,
      powerPercent: 100 * (Math.exp(height) - 1),
      coupleDeltaC: behind?.coupleDeltaC ?? null,
    };
  });
  const alone = couple.filter(
    ({ coupleDeltaC }) => !power.some((step) => step.coupleDeltaC === coupleDeltaC),
  );
  return [...power, ...alone].sort((a, b) => a.firing - b.firing);
};

/** What the power of a firing before some steps is multiplied by to stand on the last scale. */
const factorAfter = (
  firing: number,
  steps: readonly HistoryStep[],
  kinds: readonly HistoryStep['kind'][],
): number =>
  steps
    .filter((step) => step.firing > firing && kinds.includes(step.kind))
    .reduce((product, { powerPercent }) => product * (1 + (powerPercent ?? 0) / 100), 1);

/**
 * Puts a kiln's power on one scale. Readings of an earlier couple are re-based by the step they make,
 * not mixed; new elements begin a new series, of which alone the trend and the forecast are drawn; an
 * element that was lost moves the firings before it down, so that wear goes on from there.
 */
export const powerSeries = (
  entries: readonly FiringEntry[],
  couple: readonly HistoryStep[],
): PowerSeries => {
  const measured = measuredOf(entries);
  const steps = stepsOf(measured, couple);
  const rebased = measured.map(({ firing, power }) => ({
    firing,
    power: scaled(power, factorAfter(firing, steps, ['couple'])),
  }));
  const references = rebased.slice(0, REFERENCE_FIRINGS);
  const unit = references.length ? geometricMean(references.map(({ power }) => power.value)) : 1;
  const since = Math.max(
    0,
    ...steps.flatMap(({ kind, firing }) => (kind === 'restored' ? [firing] : [])),
  );
  const relative = entries.map((_, firing) => {
    const own = rebased.find((one) => one.firing === firing);
    return own === undefined ? null : scaled(own.power, 1 / unit);
  });
  return {
    relative,
    references: references.map(({ firing }) => firing),
    steps,
    current: rebased
      .filter(({ firing }) => firing >= since)
      .map(({ firing, power }) => ({
        firing,
        power: (power.value / unit) * factorAfter(firing, steps, ['lost']),
      })),
    unit,
  };
};
