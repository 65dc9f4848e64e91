import { seconds } from '../../units.ts';
import { clear, defineDetector, found } from '../detector.ts';

/** One log is one firing; from two on somebody must say which is meant. */
const MOST_FIRINGS = 1;

/**
 * Does the log hold more firings than the one that is judged? Never `act`: they are kept apart. It
 * is watched until the person has said which is meant (core/trace/find-firings.ts parts them).
 */
export const severalFirings = defineDetector({
  id: 'several-firings',
  needs: ['source', 'trace', 'options'],
  detect: ({ source, trace, options }) => {
    const firings = source.firings ?? [];
    if (firings.length <= MOST_FIRINGS) return clear();
    const isSaid = options.reading?.firing !== undefined;
    return found({
      severity: isSaid ? 'note' : 'watch',
      evidence: [{ fromSeconds: seconds(0), toSeconds: trace.durationSeconds }],
      figures: {
        firings: firings.length,
        firing: firings.findIndex(({ chosen }) => chosen) + 1,
        peakC: trace.peakC,
      },
      thresholds: { firings: MOST_FIRINGS },
      instead: ['power-interrupted', 'log-gap'],
    });
  },
});
