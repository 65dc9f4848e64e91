import type { HeatWork, Zone } from '../../model/document.ts';
import { clear, defineDetector, found, notApplicable } from '../detector.ts';

/** A cone of difference between top and bottom is ordinary (reference notes, seen). */
const ORDINARY_CONES = 1;
/** Chosen where no cone was reached: what a cone is about from 04 to 10 on the end-point charts. */
const ORDINARY_DELTA_C = 25;

interface Place {
  readonly peakC: number;
  readonly position: number | null;
}

const spread = (values: readonly number[]): number => Math.max(...values) - Math.min(...values);

const placesOf = (peakC: number, heatWork: HeatWork | null, zones: readonly Zone[]): Place[] => [
  { peakC, position: heatWork?.cone.position ?? null },
  ...zones,
];

/** Did the measured places of the kiln differ by more than is ordinary? */
export const zonesApart = defineDetector({
  id: 'zones-apart',
  needs: ['trace', 'zones'],
  wants: ['heatWork'],
  detect: ({ trace, zones, heatWork }) => {
    if (zones.length === 0) return notApplicable('no-second-place');
    const places = placesOf(trace.peakC, heatWork, zones);
    const apartDeltaC = spread(places.map(({ peakC }) => peakC));
    const positions = places.flatMap(({ position }) => (position === null ? [] : [position]));
    const apartCones = positions.length === places.length ? spread(positions) : null;
    const isApart =
      apartCones === null ? apartDeltaC > ORDINARY_DELTA_C : apartCones > ORDINARY_CONES;
    if (!isApart) return clear();
    const at = trace.peakAtSeconds;
    return found({
      severity: 'watch',
      evidence: [{ fromSeconds: at, toSeconds: at, celsius: trace.peakC }],
      figures: { apartDeltaC, ...(apartCones !== null && { apartCones }) },
      thresholds:
        apartCones === null ? { apartDeltaC: ORDINARY_DELTA_C } : { apartCones: ORDINARY_CONES },
      instead: ['sensor-drift', 'element-lost'],
    });
  },
});
