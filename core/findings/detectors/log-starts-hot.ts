import { celsius, seconds } from '../../units.ts';
import { clear, defineDetector, found } from '../detector.ts';

/** Chosen: hotter than any room a kiln stands in (up to some 40 °C beside a warm one in summer). */
const ROOM_C = 45;
/** Water boils off below this, so above it the record does not show how the ware dried. */
const DRYING_C = 100;
/**
 * Was the kiln already hot when the record began? Never `act`: a kiln may well be started warm, and
 * what came before the record cannot be judged.
 */
export const logStartsHot = defineDetector({
  id: 'log-starts-hot',
  needs: ['samples'],
  detect: ({ samples }) => {
    const firstC = samples.smoothC[0];
    if (firstC === undefined || firstC <= ROOM_C) return clear();
    return found({
      severity: firstC > DRYING_C ? 'watch' : 'note',
      evidence: [{ fromSeconds: seconds(0), toSeconds: seconds(0), celsius: celsius(firstC) }],
      figures: { firstC },
      thresholds: { firstC: firstC > DRYING_C ? DRYING_C : ROOM_C },
      instead: ['sensor-wrong-type'],
    });
  },
});
