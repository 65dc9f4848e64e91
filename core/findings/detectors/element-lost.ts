import type { Elements } from '../../model/document.ts';
import type { Trace } from '../../model/trace.ts';
import { seconds, SECONDS_PER_MINUTE } from '../../units.ts';
import { outputShares } from '../../thermal/output-shares.ts';
import { courseOfTrace } from '../../thermal/power-course.ts';
import { findPowerStep, fitPowerStep, type PowerStep } from '../../thermal/power-step.ts';
import { usableWindows, wholeShares, type NoWindows } from '../../thermal/power-windows.ts';
import { clear, defineDetector, found, notApplicable, type Figures } from '../detector.ts';

/** The floor of the issue: a sixth, one circuit of six, is 16.7 % (reference notes, computed). */
const ACT_PERCENT = 15;
/** Chosen: and surely this much, one standard error down. */
const SURELY_PERCENT = 13;
/** Chosen: what the fraction is told to below that. */
const WATCH_PERCENT = 11;
/** The loss must stand out from its own uncertainty by so many standard errors. */
const SURE_ERRORS = 2;
/** Chosen: a loss fits one of n circuits if it is within this of its share. */
const FITS_PERCENT = 5;

interface Loss extends PowerStep {
  readonly atSeconds: number;
}

/** The surest loss, null where there is none, or why the firing cannot tell. */
const lossIn = (samples: Trace, limited: Elements['limited']): Loss | null | NoWindows => {
  const course = courseOfTrace(samples, limited);
  if (course === null) return 'log-starts-hot';
  const shares = outputShares(samples, course) ?? wholeShares(course);
  const windows = usableWindows(course, shares);
  if (typeof windows === 'string') return windows;
  const interval = findPowerStep(course, shares);
  if (interval === null) return null;
  const step = fitPowerStep(course, interval, shares);
  return step && { ...step, atSeconds: course.startSeconds + interval * course.intervalSeconds };
};

/** One of so many circuits takes this share, if the number is known and the loss fits. */
const circuitFigures = (circuits: number | undefined, lostPercent: number): Figures => {
  if (circuits === undefined) return {};
  const oneCircuitPercent = 100 / circuits;
  const isOne = Math.abs(oneCircuitPercent - lostPercent) <= FITS_PERCENT;
  return isOne ? { oneCircuitPercent } : {};
};

/**
 * Did the kiln lose a part of its power from one moment to the next? Told while it was at full power,
 * or at any power whose output was logged.
 */
export const elementLost = defineDetector({
  id: 'element-lost',
  needs: ['options', 'elements', 'samples'],
  detect: ({ options, elements, samples }) => {
    const loss = lossIn(samples, elements.limited);
    if (loss === null) return clear();
    if (typeof loss === 'string') {
      return notApplicable(loss === 'never-at-full-power' ? loss : 'power-not-fitted');
    }
    const lostPercent = 100 * loss.lostShare;
    if (lostPercent < WATCH_PERCENT || loss.lostShare < SURE_ERRORS * loss.error) return clear();
    const at = seconds(loss.atSeconds);
    const surelyPercent = lostPercent - 100 * loss.error;
    const isAct = lostPercent >= ACT_PERCENT && surelyPercent >= SURELY_PERCENT;
    return found({
      severity: isAct ? 'act' : 'watch',
      evidence: [{ fromSeconds: at, toSeconds: seconds(at + 10 * SECONDS_PER_MINUTE) }],
      figures: { lostPercent, ...circuitFigures(options.kiln?.circuits, lostPercent) },
      thresholds: { lostPercent: isAct ? ACT_PERCENT : WATCH_PERCENT },
      instead: ['supply-varies', 'power-interrupted', 'elements-weak'],
    });
  },
});
