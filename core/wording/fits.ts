import { WELL_LAID_PERCENT } from './legs.ts';

/** How well schedules lie on one log, said: a help in choosing, never a choice. */
export interface FitsWords {
  readonly heading: string;
  /** `83 %`, in the order of what was given. */
  readonly percents: readonly string[];
  /** What the percentages mean, and what they do not. */
  readonly meaning: string;
}

const MEANING = `The percentage is how surely a schedule’s legs are found in this curve, by their rates, targets and turns. Schedules that were run nearly all reach ${WELL_LAID_PERCENT} %, and so may others much like them. It helps to choose; what was run, only you can know.`;

/**
 * @param confidences the alignments' own, 0 to 1, the best first
 */
export const fitsWords = (confidences: readonly number[]): FitsWords => {
  const percents = confidences.map((confidence) => Math.round(confidence * 100));
  const heading =
    (percents[0] ?? 0) >= WELL_LAID_PERCENT
      ? 'Of the schedules kept here, these lie best on this log:'
      : 'None of the schedules kept here lies well on this log. The nearest:';
  return { heading, percents: percents.map((percent) => `${percent} %`), meaning: MEANING };
};
