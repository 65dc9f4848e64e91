import { zAnalysisDocument, type Band } from '../../model/document.ts';
import type { Trace } from '../../model/trace.ts';
import { clear, defineDetector, found, notApplicable } from '../detector.ts';
import { passBetween } from '../../thermal/bands.ts';
import { seconds } from '../../units.ts';

/**
 * Chosen: a load of another weight alone changes a kiln's cooling by some 15 to 25 %, as the test
 * kilns show between 30 and 45 kg.
 */
const NOTE_PERCENT = 25;
/** Chosen: no ordinary difference of load. */
const WATCH_PERCENT = 40;

/**
 * Stretches of cooling whose ends do not hang on the firing's peak, so that two firings can be held
 * against each other there.
 */
const COMPARED = new Set(['crystal-growth', 'dunting', 'cristobalite']);

interface Difference {
  readonly now: Band;
  readonly then: Band;
}

const comparedBands = (bands: readonly Band[]): Band[] =>
  bands.filter(({ name, direction }) => direction === 'cooling' && COMPARED.has(name));

const differences = (now: readonly Band[], then: readonly Band[]): Difference[] =>
  comparedBands(now).flatMap((band) => {
    const same = comparedBands(then).find(({ name }) => name === band.name);
    return same === undefined ? [] : [{ now: band, then: same }];
  });

/** As a share of the shorter of both, so that twice as fast and half as fast are as far off. */
const differsPercent = ({ now, then }: Difference): number =>
  100 * (Math.max(now.seconds, then.seconds) / Math.min(now.seconds, then.seconds) - 1);

const evidenceOf = (samples: Trace, { fromC, toC }: Band) => {
  const pass = passBetween(samples, fromC, toC);
  if (pass === null) return [];
  return [{ fromSeconds: seconds(pass.startSeconds), toSeconds: seconds(pass.endSeconds) }];
};

/** Did the kiln cool otherwise than in an earlier good firing that was given with this one? */
export const coolingDiffers = defineDetector({
  id: 'cooling-differs',
  needs: ['options', 'bands', 'samples'],
  detect: ({ options, bands, samples }) => {
    if (options.reference === undefined) return notApplicable('no-reference');
    const reference = zAnalysisDocument.safeParse(options.reference);
    if (!reference.success) return notApplicable('reference-unusable');
    const all = differences(bands, reference.data.bands);
    const [worst] = all.sort((a, b) => differsPercent(b) - differsPercent(a));
    if (worst === undefined) return notApplicable('cooling-not-comparable');
    const percent = differsPercent(worst);
    if (percent < NOTE_PERCENT) return clear();
    const isWatched = percent >= WATCH_PERCENT;
    return found({
      severity: isWatched ? 'watch' : 'note',
      evidence: evidenceOf(samples, worst.now),
      figures: {
        differsPercent: percent,
        fromC: worst.now.fromC,
        toC: worst.now.toC,
        cooledCPerHour: Math.abs(worst.now.meanCPerHour),
        referenceCPerHour: Math.abs(worst.then.meanCPerHour),
      },
      thresholds: { differsPercent: isWatched ? WATCH_PERCENT : NOTE_PERCENT },
      instead: ['cooling-fast', 'opened-hot', 'heavy-load'],
    });
  },
});
