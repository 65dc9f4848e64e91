import { standingAt } from '../cones/position.ts';
import { coneKinetics } from '../cones/cone-kinetics.ts';
import { occupancyOf } from '../cones/occupancy.ts';
import type { ConeType } from '../model/cone.ts';
import type { Zone } from '../model/document.ts';
import type { Trace } from '../model/trace.ts';
import { celsius, celsiusDelta } from '../units.ts';

/** A place with fewer readings than this says nothing of its course (chosen). */
const FEWEST_READINGS = 10;

/** Mean of another place minus the main one while the kiln heats, up to its peak. */
const meanDifference = (trace: Trace, zoneC: Float64Array): number => {
  const { startSeconds, peakAtSeconds } = trace.summary;
  let sum = 0;
  let readings = 0;
  for (let i = 0; i < zoneC.length; i++) {
    const at = trace.atSeconds[i]!;
    if (at < (startSeconds ?? 0) || at > peakAtSeconds || !Number.isFinite(zoneC[i])) continue;
    sum += zoneC[i]! - trace.celsius[i]!;
    readings++;
  }
  return readings === 0 ? 0 : sum / readings;
};

/**
 * What the other measured places came to: their peaks, their cones, and how far they ran from the
 * main one while heating. A place that hardly ever gave a reading is left out.
 */
export const measureZones = (trace: Trace, coneType: ConeType): Zone[] =>
  trace.zones.flatMap((zone) => {
    const isRead = (_: number, i: number) => Number.isFinite(zone.celsius[i]);
    const zoneC = zone.celsius.filter(isRead);
    if (zoneC.length < FEWEST_READINGS) return [];
    const joinedAt = zone.celsius.subarray(0, trace.joinedAt ?? 0).filter(isRead).length;
    const curve = { atSeconds: trace.atSeconds.filter(isRead), celsius: zoneC, joinedAt };
    const standing = standingAt(coneKinetics(coneType), occupancyOf(curve));
    return [
      {
        channel: zone.channel,
        peakC: celsius(zoneC.reduce((most, value) => Math.max(most, value), -Infinity)),
        cone: standing.label,
        position: standing.position,
        meanDifferenceC: celsiusDelta(meanDifference(trace, zone.celsius)),
      },
    ];
  });
