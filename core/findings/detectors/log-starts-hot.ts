import { median } from '../../trace/statistics.ts';
import { seconds } from '../../units.ts';
import { clear, defineDetector, found } from '../detector.ts';

/** Chosen: hotter than any room a kiln stands in (up to some 40 °C beside a warm one in summer). */
const ROOM_C = 45;
/** Water boils off below this, so above it the record does not show how the ware dried. */
const DRYING_C = 100;
/** The first readings taken together, so that one bad one does not decide (chosen). */
const READINGS = 5;

/**
 * Was the kiln already hot when the record began? Never `act`: a kiln may well be started warm, and
 * what came before the record cannot be judged.
 */
export const logStartsHot = defineDetector({
  id: 'log-starts-hot',
  needs: ['samples'],
  detect: ({ samples }) => {
    const firstC = median(samples.celsius.subarray(0, READINGS));
    if (!(firstC > ROOM_C)) return clear();
    const to = samples.atSeconds[Math.min(READINGS, samples.atSeconds.length) - 1] ?? 0;
    return found({
      severity: firstC > DRYING_C ? 'watch' : 'note',
      evidence: [{ fromSeconds: seconds(0), toSeconds: seconds(to) }],
      figures: { firstC },
      thresholds: { firstC: firstC > DRYING_C ? DRYING_C : ROOM_C },
      instead: ['sensor-wrong-type'],
    });
  },
});
