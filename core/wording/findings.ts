import type { AnalysisDocument } from '../model/document.ts';
import type { Finding, FindingId, Severity } from '../model/finding.ts';
import { canHave, heatSourceOf, type HeatSource } from '../model/heat-source.ts';
import { figureWords, type FigureWords } from './figures.ts';
import { wordingOf } from './findings/index.ts';
import { letterOf, noteOn } from './letters.ts';
import type { Line } from './line.ts';
import { plainNumber, type Speech } from './speech.ts';
import { sentence, type Alternative, type Topic } from './topic.ts';

/** Everything that is said of one finding. */
export interface FindingWords {
  readonly id: FindingId;
  /** The letter that stands beside the finding and on the curve. */
  readonly letter: string;
  readonly severity: Severity;
  /** The severity as a word: `act`, `watch`, `note`. */
  readonly severityWord: string;
  /** A short noun phrase, for lists. */
  readonly name: string;
  readonly title: Line;
  readonly why: string;
  /** What else it could be, and what would tell; whole sentences. */
  readonly couldBe: readonly Alternative[];
  readonly remedy: string;
  readonly caution: string | null;
  readonly measured: readonly FigureWords[];
}

const SEVERITY_WORDS: Readonly<Record<Severity, string>> = {
  act: 'act',
  watch: 'watch',
  note: 'note',
};

const possibility = ({ cause, tell }: Alternative): Alternative => ({
  cause: `${sentence(cause)}.`,
  tell: `${sentence(tell)}.`,
});

/** How a finding is put where it might explain another; where it was found, the note that tells of it. */
const alternativeFor = (id: FindingId, heat: HeatSource, { document }: Topic): Alternative => {
  const { cause, tell } = wordingOf(id, heat).alternative;
  const note = noteOn(document.findings, id);
  return note === null ? { cause, tell } : { cause, tell: `${note} tells of it: ${tell}` };
};

/** How far the alignment is trusted, where a finding rests on one that is not quite certain. */
const trustSentence = ({ figures }: Finding): string => {
  const confidence = figures['confidencePercent'];
  return confidence === undefined
    ? ''
    : ` The schedule could be laid on this log with a certainty of ${plainNumber(confidence)} % only, so the leg may be another than it seems.`;
};

/**
 * What a record shows from beginning to end, if it happened at all. Where its own check found nothing
 * the record speaks against it, and it explains nothing else. Other checks may miss what is there.
 */
const SHOWN_BY_RECORD: ReadonlySet<FindingId> = new Set<FindingId>([
  'overshoot',
  'power-interrupted',
  'sensor-open',
  'log-gap',
  'ended-early',
  'peak-not-reached',
]);

const isRefuted = (id: FindingId, { checks }: AnalysisDocument): boolean =>
  SHOWN_BY_RECORD.has(id) &&
  checks.some(
    (check) => check.id === id && check.outcome === 'clear' && check.reason === 'within-limits',
  );

const findingWords = (topic: Topic, letter: string): FindingWords => {
  const { finding, say } = topic;
  const heat = heatSourceOf(topic.document.options);
  const wording = wordingOf(finding.id, heat);
  const cause = wording.causedBy?.(topic) ?? null;
  const alternatives = [
    ...finding.instead
      .filter((id) => canHave(heat, id) && !isRefuted(id, topic.document))
      .filter((id) => cause === null || id === cause)
      .map((id) => alternativeFor(id, heat, topic)),
    ...(cause === null ? wording.couldBe(topic) : []),
  ];
  return {
    id: finding.id,
    letter,
    severity: finding.severity,
    severityWord: SEVERITY_WORDS[finding.severity],
    name: wording.name,
    title: wording.title(topic),
    why: wording.why(topic) + trustSentence(finding),
    couldBe: alternatives.map(possibility),
    remedy: wording.remedy(topic),
    caution: wording.caution?.(say) ?? null,
    measured: figureWords(finding.figures, finding.thresholds, say),
  };
};

/** The document's findings in words, in their order. */
export const findingsWords = (document: AnalysisDocument, say: Speech): FindingWords[] =>
  document.findings.map((finding, index) =>
    findingWords({ finding, document, say }, letterOf(index)),
  );
