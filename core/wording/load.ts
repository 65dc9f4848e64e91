import { positionOfCone } from '../model/cone.ts';
import type { AnalysisDocument, Load } from '../model/document.ts';
import { purposeOf } from '../model/purpose.ts';
import { HOTTER_CAUTION, STUCK_WARE_CAUTION } from './cautions.ts';
import { speaksOf } from './findings/index.ts';
import { showsFiring } from './firing.ts';
import { coneName } from './speech.ts';

/** The answer to “can I save this load?”. */
export interface LoadWords {
  readonly answer: string;
  readonly advice: string;
  readonly caution: string | null;
}

const isBisque = (document: AnalysisDocument): boolean => purposeOf(document)?.purpose === 'bisque';

const shortAdvice = (document: AnalysisDocument): string => {
  const cone = document.load.refireTo;
  const to = cone ? `to ${coneName(cone)}` : 'to the cone that was meant';
  const whole =
    'Heat-work far below the peak counts for next to nothing, so plan it as a whole firing, not as a top-up.';
  return isBisque(document)
    ? `If the ware is sound to handle it may be glazed as it is, but it drinks more glaze. Otherwise fire it again ${to}. ${whole}`
    : `It can be fired again ${to}. ${whole} Let cones in the load decide first: they may be down although the log says otherwise.`;
};

/** Denser bisque takes glaze up more slowly (common practice). */
const beyondAdvice = (document: AnalysisDocument): string =>
  isBisque(document)
    ? 'Open it cold and judge each piece. Bisque that went past its cone is denser and drinks less glaze, so glaze a test piece first. Firing again does not mend it.'
    : 'Open it cold and judge each piece: body and glaze differ in what they bear. Firing again does not mend it.';

/** Half a cone is the usual tolerance of a firing (common practice). */
const HALF_CONE = 0.5;

/** Whether even the near end of the range is more than the usual half cone off; so too where no range is. */
const isBeyondTolerance = ({ heatWork, load }: AnalysisDocument): boolean => {
  const near = heatWork?.cone[load.state === 'short' ? 'highPosition' : 'lowPosition'] ?? null;
  if (near === null || !heatWork?.target) return true;
  return Math.abs(near - positionOfCone(heatWork.target.cone)) > HALF_CONE;
};

/** Whether witness cones have put right what the couple read. */
const countsCones = ({ heatWork }: AnalysisDocument): boolean =>
  (heatWork?.coupleErrorC ?? null) !== null;

/** Whether what was measured rests on a couple that is to be acted on. */
const doubtsCouple = (document: AnalysisDocument): boolean =>
  !countsCones(document) &&
  document.findings.some(({ id, severity }) => severity === 'act' && speaksOf(id, 'couple'));

const asMeantAnswer = (document: AnalysisDocument): string => {
  if (countsCones(document)) return 'By the cones that were seen this load got what was meant.';
  return doubtsCouple(document)
    ? 'By its readings this load got what was meant, but the couple that gave them was failing.'
    : 'Nothing in the record speaks against this load.';
};

const WORDS: Readonly<Record<Load['state'], (document: AnalysisDocument) => LoadWords>> = {
  'as-meant': (document) => ({
    answer: asMeantAnswer(document),
    advice: doubtsCouple(document)
      ? 'Go by cones that stood beside the ware, and by the ware itself, before you trust it.'
      : 'Go by the cones and by the ware itself.',
    caution: null,
  }),
  short: (document) => ({
    answer: isBeyondTolerance(document)
      ? 'By this record the load is short of its cone, and can very likely be saved.'
      : 'By this record the load is probably a little short of its cone, though it may be within the usual half cone; it can very likely be saved.',
    advice: shortAdvice(document),
    caution: HOTTER_CAUTION,
  }),
  beyond: (document) => ({
    answer: isBeyondTolerance(document)
      ? 'By this record the load went past its cone, and that cannot be taken back.'
      : 'By this record the load probably went a little past its cone, though it may be within the usual half cone.',
    advice: beyondAdvice(document),
    caution: STUCK_WARE_CAUTION,
  }),
  'cannot-tell': (document) => ({
    answer: `Whether this load is as meant cannot be told from this log because ${unknownBecause(document)}.`,
    advice: showsFiring(document.trace)
      ? 'Go by the cones and by the ware itself.'
      : 'Open the log of the firing itself, if there is one.',
    caution: null,
  }),
};

const unknownBecause = ({ heatWork, trace, joined }: AnalysisDocument): string => {
  if (!showsFiring(trace)) return 'it shows no firing';
  if (heatWork === null) return 'its heat-work could not be worked out';
  if (heatWork.target === null) return 'no cone was given that was meant';
  if (heatWork.cone.bound === 'at-least' && joined) return 'it was not recorded whole near its top';
  if (heatWork.cone.bound === 'at-least') return 'the record ends before the firing did';
  return 'its range reaches to both sides of the cone that was meant';
};

/** Can this load be saved, and how. */
export const loadWords = (document: AnalysisDocument): LoadWords =>
  WORDS[document.load.state](document);
