import type { Check, Finding } from '../../core/model/finding.ts';
import type { Detector } from '../../core/findings/detector.ts';
import type { Facts } from '../../core/findings/facts.ts';
import { runDetectors } from '../../core/findings/run-detectors.ts';

export interface Judgement extends Omit<Check, 'id'> {
  readonly findings: readonly Finding[];
}

/** Asks one detector, as the runner would; a throw fails the test that asked. */
export const judge = (detector: Detector, facts: Facts): Judgement => {
  const { findings, checks } = runDetectors(facts, [detector], (_id, cause) => {
    throw cause;
  });
  const { outcome, reason } = checks[0]!;
  return { outcome, reason, findings };
};

/** The one finding of a detector that must have found exactly one. */
export const onlyFinding = (detector: Detector, facts: Facts): Finding => {
  const { findings, outcome, reason } = judge(detector, facts);
  if (findings.length !== 1) throw new Error(`${findings.length} findings: ${outcome}, ${reason}`);
  return findings[0]!;
};

export const NOTHING: Judgement = { outcome: 'clear', reason: 'within-limits', findings: [] };

/** The judgement of a detector that does not apply. */
export const inapplicable = (reason: string): Judgement => ({
  outcome: 'not-applicable',
  reason,
  findings: [],
});
