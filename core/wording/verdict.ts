import type { Alignment, AnalysisDocument, HeatWork, Remedy } from '../model/document.ts';
import { departuresLine } from './departures.ts';
import type { FindingWords } from './findings.ts';
import { showsFiring } from './firing.ts';
import { speaksOf, type FindingGroup } from './findings/index.ts';
import { large, line, lineOf, type Line } from './line.ts';
import {
  coneAtLeast,
  conePlace,
  coneName,
  coneRangeAbout,
  coneSteps,
  duration,
  percent,
  type Speech,
} from './speech.ts';
import { positionOfCone } from '../model/cone.ts';
import { remedyPhrase, scheduleComesTo } from './remedies.ts';

/** The parts of the sheet that a sentence can point to. */
export type Section = 'curve' | 'heat-work' | 'legs' | 'load' | 'reading' | 'cautions';

/** Where a verdict's sentence has its evidence. */
export type EvidenceLink =
  | { readonly to: 'finding'; readonly index: number }
  | { readonly to: 'section'; readonly section: Section };

/** One sentence of the verdict. */
export interface VerdictSentence extends Line {
  readonly evidence: EvidenceLink;
}

/** At most this many sentences: a verdict is read in ten seconds. */
const MOST_SENTENCES = 4;

const section = (said: Line, name: Section): VerdictSentence => ({
  ...said,
  evidence: { to: 'section', section: name },
});

type Told = readonly FindingWords[];

/** The gravest finding of some groups as a sentence; the document lists the gravest first. */
const gravest = (findings: Told, ...groups: readonly FindingGroup[]): VerdictSentence | null => {
  const mine = findings.filter(({ id }) => speaksOf(id, ...groups));
  const first = mine[0];
  if (!first) return null;
  const others = mine.length - 1;
  const more =
    others === 0
      ? ''
      : ` ${others === 1 ? 'One more finding' : `${others} more findings`} of this kind below.`;
  const said = lineOf(first.title, more);
  return { ...said, evidence: { to: 'finding', index: findings.indexOf(first) } };
};

const noHeatWork = ({ trace }: AnalysisDocument, say: Speech): Line =>
  showsFiring(trace)
    ? line`The heat-work cannot be told from this log, whose hottest reading is ${large(say.temperature(trace.peakC))}.`
    : line`The log shows no firing: its hottest reading is ${large(say.temperature(trace.peakC))}.`;

/** Less than this far from its cone a firing is called that cone and no more said. */
const HARDLY_OFF = 0.15;

const sideOf = (steps: number): string => (steps < 0 ? 'short of' : 'past');

/** The likely range, where it says more than what stands before it. */
const rangeNote = (
  position: number,
  low: number | null,
  high: number | null,
  saidBefore: string | null,
): string => {
  if (low === null || high === null) return '';
  const range = coneRangeAbout(position, low, high);
  return range === null || range === saidBefore ? '' : ` (likely ${range})`;
};

/** A hold of more than this is no practical advice where there is another (chosen). */
const LONG_HOLD_MINUTES = 60;

const handiest = (remedies: HeatWork['remedies']): Remedy | undefined =>
  remedies.find(({ kind, amount }) => kind !== 'longer-hold' || amount <= LONG_HOLD_MINUTES) ??
  remedies[0];

const heatWorkLine = (document: AnalysisDocument, say: Speech): Line => {
  const { heatWork } = document;
  const position = heatWork?.cone.position ?? null;
  if (!heatWork || position === null) return noHeatWork(document, say);
  const { lowPosition, highPosition, bound } = heatWork.cone;
  const isOpen = bound === 'at-least';
  const place = isOpen
    ? line`at least ${large(coneAtLeast(position))}`
    : lineOf(large(conePlace(position)));
  const { target } = heatWork;
  const meantCone = target?.verdict === 'within' ? coneName(target.cone) : null;
  const range = rangeNote(position, lowPosition, highPosition, meantCone);
  if (target === null)
    return line`By this log the ware got ${place}${range}; no cone was given that was meant.`;
  const meant = coneName(target.cone);
  const steps = position - positionOfCone(target.cone);
  if (target.verdict === 'within') {
    const near = Math.abs(steps) < HARDLY_OFF ? '' : `, ${coneSteps(steps)} ${sideOf(steps)} it`;
    return line`By this log the ware got ${large(meant)} as meant${near}${range}.`;
  }
  const off = large(coneSteps(steps));
  const short = isOpen ? 'short when the record ends' : 'short';
  const side = target.verdict === 'under' ? short : 'past it';
  return line`By this log the ware got ${place}${range} where ${meant} was meant, ${off} ${side}${wayOut(document, say)}.`;
};

/** What would have done it; where the kiln did not do what was planned, that the plan would have. */
const wayOut = (document: AnalysisDocument, say: Speech): string => {
  const comesTo = scheduleComesTo(document);
  if (comesTo !== null) return `; as planned, the schedule comes to ${comesTo}`;
  const remedy = handiest(document.heatWork?.remedies ?? []);
  return remedy ? `; what would have done it: ${remedyPhrase(remedy, document, say)}` : '';
};

const heatWorkSentence = (
  document: AnalysisDocument,
  findings: Told,
  say: Speech,
): VerdictSentence => {
  // A cone from the wrong end says more than how far off it is.
  const mixedUp = findings.find(({ id }) => id === 'wrong-end-cone');
  if (mixedUp) {
    const index = findings.indexOf(mixedUp);
    return { ...mixedUp.title, evidence: { to: 'finding', index } };
  }
  const index = findings.findIndex(({ id }) => speaksOf(id, 'heat-work'));
  const said = heatWorkLine(document, say);
  return index >= 0 ? { ...said, evidence: { to: 'finding', index } } : section(said, 'heat-work');
};

const withoutSchedule = ({ trace, schedule }: AnalysisDocument, say: Speech): Line => {
  const peak = large(say.temperature(trace.peakC));
  const at = duration(trace.peakAtSeconds);
  const why = schedule ? 'The schedule could not be laid on this log' : 'No schedule was given';
  return line`${why}, so there is nothing to hold the curve against: it peaks at ${peak} after ${at}.`;
};

const scheduleSentence = (
  document: AnalysisDocument,
  findings: Told,
  say: Speech,
): VerdictSentence | null => {
  const finding = gravest(findings, 'schedule');
  if (finding) return finding;
  const { alignment } = document;
  // A log without a firing has no peak to speak of.
  if (!showsFiring(document.trace)) return null;
  if (alignment === null) return section(withoutSchedule(document, say), 'curve');
  const said =
    alignment.confidence < TRUSTED ? doubtfulLine(alignment) : departuresLine(document, say);
  return section(said, 'legs');
};

/** With less confidence than this the legs are as likely wrong as right. */
const TRUSTED = 0.5;

const doubtfulLine = ({ confidence }: Alignment): Line =>
  line`The schedule hardly fits this log (certainty ${large(percent(confidence))}): another programme may have run.`;

/** Whether the record shows nothing that asks for action or watching. */
export const wentAsPlanned = ({ alignment, heatWork, findings, load }: AnalysisDocument): boolean =>
  alignment !== null &&
  alignment.confidence >= TRUSTED &&
  alignment.legs.every(({ verdict }) => verdict === 'as-planned') &&
  (heatWork?.target?.verdict ?? 'within') === 'within' &&
  findings.every(({ severity }) => severity === 'note') &&
  load.state !== 'short' &&
  load.state !== 'beyond';

const conesSentence = ({ options }: AnalysisDocument): string =>
  options.observedCones?.length
    ? 'The cones that were seen are counted in.'
    : 'Only cones beside the ware can say whether the couple told the truth.';

const coupleSentence = (document: AnalysisDocument): VerdictSentence | null => {
  // Where nothing was fired no cone can say anything.
  if (!showsFiring(document.trace)) return null;
  const cones = conesSentence(document);
  return wentAsPlanned(document)
    ? section(
        line`If the ware is not right all the same, look elsewhere first: glaze, application, clay. ${cones}`,
        'cautions',
      )
    : section(line`${cones}`, 'cautions');
};

/** A couple that is told of is the less to be believed without cones. */
const coupleOrLog = (document: AnalysisDocument, findings: Told): VerdictSentence | null => {
  const said = gravest(findings, 'couple', 'log');
  if (said === null) return coupleSentence(document);
  const isOfCouple =
    said.evidence.to === 'finding' && speaksOf(findings[said.evidence.index]!.id, 'couple');
  return isOfCouple && showsFiring(document.trace)
    ? { ...lineOf(said, ` ${conesSentence(document)}`), evidence: said.evidence }
    : said;
};

/** Two to four sentences: heat-work, schedule, kiln and ware, couple and log. */
export const verdictWords = (
  document: AnalysisDocument,
  findings: Told,
  say: Speech,
): VerdictSentence[] =>
  [
    heatWorkSentence(document, findings, say),
    scheduleSentence(document, findings, say),
    gravest(findings, 'kiln', 'ware'),
    coupleOrLog(document, findings),
  ]
    .filter((said) => said !== null)
    .slice(0, MOST_SENTENCES);
