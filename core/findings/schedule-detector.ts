import {
  defineDetector,
  notApplicable,
  type Definition,
  type Detector,
  type Draft,
  type FactName,
  type Given,
  type Verdict,
} from './detector.ts';

/**
 * Below this confidence of the alignment nothing that rests on it asks for action (chosen: as
 * likely wrong as right). The finding then says how far the alignment is trusted.
 */
export const TRUSTED_CONFIDENCE_PERCENT = 50;

/** Below this the legs are a guess, and a judgement on them would be one too (chosen). */
export const USABLE_CONFIDENCE_PERCENT = 20;

/** A draft as far as the alignment bears it: no `act` on legs that may lie elsewhere. */
export const borne = (draft: Draft, confidencePercent: number): Draft =>
  confidencePercent >= TRUSTED_CONFIDENCE_PERCENT
    ? draft
    : {
        ...draft,
        severity: draft.severity === 'act' ? 'watch' : draft.severity,
        figures: { ...draft.figures, confidencePercent },
        thresholds: { ...draft.thresholds, confidencePercent: TRUSTED_CONFIDENCE_PERCENT },
      };

/**
 * A detector that holds what happened against the schedule. It needs `schedule` and `alignment`
 * besides what it names itself, and says no more than the alignment's confidence bears.
 */
export const defineScheduleDetector = <
  Needs extends FactName = never,
  Wants extends FactName = never,
>(
  definition: Definition<Needs | 'schedule' | 'alignment', Wants>,
): Detector => {
  const { needs, detect } = definition;
  const bounded = (given: Given<Needs | 'schedule' | 'alignment', Wants>): Verdict => {
    const confidencePercent = 100 * given.alignment.confidence;
    if (confidencePercent < USABLE_CONFIDENCE_PERCENT) return notApplicable('alignment-uncertain');
    const verdict = detect(given);
    if (verdict.outcome !== 'found') return verdict;
    const [first, ...rest] = verdict.findings;
    const lowered = (draft: Draft): Draft => borne(draft, confidencePercent);
    return { outcome: 'found', findings: [lowered(first), ...rest.map(lowered)] };
  };
  return defineDetector({
    ...definition,
    needs: ['schedule', 'alignment', ...needs],
    detect: bounded,
  });
};
