import type { AnalysisDocument } from '../model/document.ts';
import type { Finding, FindingId } from '../model/finding.ts';
import { celsius, celsiusDelta, celsiusPerHour, type Celsius } from '../units.ts';
import { large, line, lineOf, type Line, type Part } from './line.ts';
import { coneSteps, count, duration, plainNumber, type Speech } from './speech.ts';

/** One finding with all that its sentences may draw on. */
export interface Topic {
  readonly finding: Finding;
  readonly document: AnalysisDocument;
  readonly say: Speech;
}

/** What else could explain a finding, and what would tell the two apart. */
export interface Alternative {
  readonly cause: string;
  readonly tell: string;
}

/** All the sentences of one kind of finding. */
export interface FindingWording {
  /** What is looked for, as a short noun phrase for lists. */
  readonly name: string;
  /** One plain sentence with the number that matters. */
  readonly title: (topic: Topic) => Line;
  readonly why: (topic: Topic) => string;
  /** Explanations that are no finding of their own. */
  readonly couldBe: (topic: Topic) => readonly Alternative[];
  /**
   * The finding that tells of this one's cause, where the document has it: what else it could be then
   * stands there, and here no more than the note.
   */
  readonly causedBy?: (topic: Topic) => FindingId | null;
  /** How this finding is put where it might explain another one. */
  readonly alternative: Alternative;
  readonly remedy: (topic: Topic) => string;
  /** Needed wherever acting on the finding could hurt someone. */
  readonly caution: ((say: Speech) => string) | null;
}

type Say = (topic: Topic, name: string, otherwise: string) => Part;

const figure =
  (said: (value: number, say: Speech) => string): Say =>
  (topic, name, otherwise) => {
    const value = topic.finding.figures[name];
    return value === undefined ? { text: otherwise, large: false } : large(said(value, topic.say));
  };

/** A finding's figure as a number that matters, or `otherwise` where the finding lacks it. */
export const temperatureOf = figure((value, say) => say.temperature(celsius(value)));
export const differenceOf = figure((value, say) => say.difference(celsiusDelta(value)));
export const rateOf = figure((value, say) => say.rate(celsiusPerHour(value)));
export const minutesOf = figure((value) => duration(value * 60));
export const conesOf = figure((value) => coneSteps(value));
export const countOf = figure((value) => count(value));
export const percentOf = figure((value) => `${plainNumber(value)} %`);

/** When the finding's first evidence begins, on the log's own clock. */
export const beginsAt = ({ finding }: Topic): string | null => {
  const first = finding.evidence[0];
  return first ? duration(first.fromSeconds) : null;
};

/** `, 6 h 31 min into the log`, or nothing where the finding points at no place. */
export const atItsTime = (topic: Topic): string => {
  const at = beginsAt(topic);
  return at === null ? '' : `, ${at} into the log`;
};

/** `12 min, 9 h 42 min into the log`, or of many stretches their sum, their count and the longest. */
export const inPieces = (topic: Topic, total: string, pieces: string): Line => {
  const { [pieces]: times = 1, longestMinutes } = topic.finding.figures;
  const whole = minutesOf(topic, total, 'some time');
  const at = atItsTime(topic);
  if (times <= 1 || longestMinutes === undefined) return lineOf(whole, at);
  const longest = duration(longestMinutes * 60);
  const first = at === '' ? '' : `, the first${at.slice(1)}`;
  return line`${whole} in ${count(times)} pieces, the longest ${longest}${first}`;
};

/** The schedule's target that the finding speaks of. */
export const targetOf = ({ finding, document }: Topic): Celsius | null => {
  const index = finding.figures['segment'];
  return index === undefined ? null : (document.schedule?.segments[index]?.targetC ?? null);
};

/** `the climb to 1188 °C`, `the hold at 120 °C`: the leg that the finding speaks of. */
export const legOf = (topic: Topic, kind: 'climb' | 'hold' | 'segment'): string => {
  const target = targetOf(topic);
  if (target === null) return `one ${kind}`;
  return `the ${kind} ${kind === 'hold' ? 'at' : 'to'} ${topic.say.temperature(target)}`;
};

/** A sentence with its first letter made a capital. */
export const sentence = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
