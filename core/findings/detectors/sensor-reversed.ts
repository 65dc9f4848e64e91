import type { Trace } from '../../model/trace.ts';
import { interpolate } from '../../numeric/search.ts';
import { SECONDS_PER_MINUTE, celsius, seconds } from '../../units.ts';
import { clear, defineDetector, found, notApplicable } from '../detector.ts';

/** A kiln that stands above this at the first reading was hot, and may only be cooling (chosen). */
const HOT_START_C = 60;
/** Chosen: a room cools by less in a night, and a cold end that warms by less. */
const FALL_DELTA_C = 30;
/** Chosen: colder than any place where kilns are fired. */
const COLDEST_ROOM_C = -20;
/** Chosen: what is over sooner is a disturbance. */
const BELOW_MINUTES = 10;
/** A setpoint that rose by so much says that the kiln was being heated (chosen: beyond any room). */
const SETPOINT_RISE_DELTA_C = 50;

interface Fall {
  readonly startC: number;
  readonly lowestC: number;
  readonly lowestAtSeconds: number;
  /** From the last reading as warm as the first until that warmth is regained, or the end. */
  readonly fromSeconds: number;
  readonly toSeconds: number;
  readonly belowMinutes: number;
}

/** The fall from the first reading to the lowest, by the smoothed record. */
const fallOf = ({ atSeconds, smoothC }: Trace): Fall => {
  const startC = smoothC[0]!;
  const lowest = smoothC.reduce((best, value, i) => (value < smoothC[best]! ? i : best), 0);
  let from = lowest;
  while (from > 0 && smoothC[from]! < startC) from--;
  let to = lowest;
  while (to < smoothC.length - 1 && smoothC[to]! < startC) to++;
  let belowSeconds = 0;
  for (let i = Math.max(1, from); i <= to; i++) {
    if (smoothC[i]! < startC - FALL_DELTA_C) belowSeconds += atSeconds[i]! - atSeconds[i - 1]!;
  }
  return {
    startC,
    lowestC: smoothC[lowest]!,
    lowestAtSeconds: atSeconds[lowest]!,
    fromSeconds: atSeconds[from]!,
    toSeconds: atSeconds[to]!,
    belowMinutes: belowSeconds / SECONDS_PER_MINUTE,
  };
};

/** How far the logged setpoint rose while the reading fell; 0 where none was logged. */
const setpointRise = ({ atSeconds, setpointC }: Trace, { startC, lowestAtSeconds }: Fall) => {
  if (setpointC === null) return 0;
  const atLowest = interpolate(atSeconds, setpointC, lowestAtSeconds);
  return Number.isFinite(atLowest) ? atLowest - startC : 0;
};

/** Did the reading fall as the kiln was heated, as it does with crossed leads? */
export const sensorReversed = defineDetector({
  id: 'sensor-reversed',
  needs: ['samples'],
  detect: ({ samples }) => {
    const fall = fallOf(samples);
    if (fall.startC > HOT_START_C) return notApplicable('starts-hot');
    const fellDeltaC = fall.startC - fall.lowestC;
    if (fellDeltaC < FALL_DELTA_C || fall.belowMinutes < BELOW_MINUTES) return clear();
    const isTooCold = fall.lowestC < COLDEST_ROOM_C;
    const wasHeated = setpointRise(samples, fall) >= SETPOINT_RISE_DELTA_C;
    if (!isTooCold && !wasHeated) return clear();
    return found({
      severity: 'act',
      evidence: [
        {
          fromSeconds: seconds(fall.fromSeconds),
          toSeconds: seconds(fall.toSeconds),
          celsius: celsius(fall.lowestC),
        },
      ],
      figures: { lowestC: fall.lowestC, fellDeltaC, belowMinutes: fall.belowMinutes },
      thresholds: {
        ...(isTooCold ? { lowestC: COLDEST_ROOM_C } : {}),
        fellDeltaC: FALL_DELTA_C,
        belowMinutes: BELOW_MINUTES,
      },
      instead: ['sensor-open', 'sensor-wrong-type'],
    });
  },
});
