import type { Check, FindingId } from '../model/finding.ts';
import type { HeatSource } from '../model/heat-source.ts';
import { wordingOf } from './findings/index.ts';
import { sentence } from './topic.ts';

/** One detector's outcome in words: silence is no clean bill of health, so each is listed. */
export interface CheckWords {
  readonly id: FindingId;
  readonly outcome: Check['outcome'];
  readonly name: string;
  readonly outcomeWord: string;
  readonly reason: string;
}

const OUTCOME_WORDS: Readonly<Record<Check['outcome'], string>> = {
  found: 'found',
  clear: 'not found',
  'not-applicable': 'cannot be told',
  failed: 'could not be checked',
};

/** Why a check came out as it did, by reason id. */
export const CHECK_REASONS: Readonly<Record<string, string>> = {
  // found
  measured: 'see the finding',
  'beyond-limits': 'see the finding',
  // clear
  'within-limits': 'the record stays within the limits',
  'cooling-logged': 'the record goes on into the cooling',
  'ends-cool': 'the record ends with the kiln cool',
  'told-by-another': 'another finding tells of it',
  'no-glaze': 'a bisque has no glaze whose surface its cooling could change',
  // cannot be told
  'no-schedule': 'no schedule was given to hold the record against',
  'no-alignment': 'the schedule could not be laid on this record',
  'no-heat-work': 'the heat-work could not be worked out',
  'fuel-fired': 'this is judged of electric kilns only',
  'never-at-full-power': 'the kiln was never at full power for long enough',
  'log-starts-hot': 'the kiln was hot when the record began',
  'course-does-not-fit': 'it ran otherwise than a kiln heats and cools by itself',
  'power-not-fitted': 'the record does not allow power and losses to be worked out',
  'alignment-uncertain': 'the schedule could not be laid on this record with any certainty',
  'no-target-cone': 'no cone was given that was meant',
  'no-cone-reached': 'the kiln did not get hot enough for any cone',
  'no-mirrored-cone': 'this cone has no namesake at the other end of the scale',
  'no-rated-ramp': 'no climb had a rate to keep',
  'no-hold': 'the schedule has no hold that was reached',
  'no-cooling-logged': 'the record shows no cooling',
  'record-ends-hot': 'the record ends with the kiln still hot',
  'gap-at-peak': 'the record has a gap at the peak',
  'readings-too-coarse': 'the readings are too far apart or too roughly rounded',
  'starts-hot': 'the kiln was hot when the record began',
  'no-second-place': 'only one place in the kiln was measured',
  'not-heated-and-cooled': 'the two places were not seen both heating and cooling',
  'no-witness-cones': 'no witness cones were given with this firing',
  'stretch-not-seen': 'the record does not show this stretch of temperature from end to end',
  'ware-fired-before': 'the ware was fired before, by the cone or by what was told',
  'no-reference': 'no earlier good firing was given to hold this one against',
  'reference-unusable': 'the earlier firing that was given could not be read',
  'cooling-not-comparable': 'no stretch of cooling is in both records',
  // failed
  failed: 'the check stumbled over this record: please report it',
  'detector-failed': 'the check stumbled over this record: please report it',
};

/** An id as readable words, for ids that have no sentence of their own yet. */
export const idAsWords = (id: string): string => id.replace(/-/g, ' ');

/** A check's reason as the end of a sentence. */
export const checkReason = (reason: string): string => CHECK_REASONS[reason] ?? idAsWords(reason);

/** The outcome of every check, in the document's order. */
export const checksWords = (checks: readonly Check[], heat: HeatSource): CheckWords[] =>
  checks.map(({ id, outcome, reason }) => ({
    id,
    outcome,
    name: sentence(wordingOf(id, heat).name),
    outcomeWord: OUTCOME_WORDS[outcome],
    reason: checkReason(reason),
  }));
