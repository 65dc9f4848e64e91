import { secondsBetween } from '../log/time/civil.ts';
import { Refusal } from '../model/refusal.ts';
import type { Source } from '../model/source.ts';
import type { Trace } from '../model/trace.ts';

/** What of a log says whether it is of the same load as another. */
export interface Recorded {
  readonly source: Source;
  readonly trace: Trace;
}

/** Two logs of one load in order of time. */
export interface JoinOrder<Part extends Recorded> {
  readonly earlier: Part;
  readonly later: Part;
  /** The later log's first reading on the earlier log's clock. */
  readonly laterBeginsSeconds: number;
  readonly isGapKnown: boolean;
}

/** A gap of unknown length is drawn as long as this (chosen: so that it is seen, and no more). */
const UNKNOWN_GAP_SECONDS = 3600;

const OVERLAP =
  'these two logs ran at the same time, so they are not one firing and the run that followed it; analyse them one by one';
const TWICE = 'this is the same log twice; join the log of the run that followed it';

/** The name of the main temperature's column; null where it is one that nobody gave it. */
const mainName = ({ source }: Recorded): string | null => {
  const measured = source.channels.filter(({ role, chosen }) => role === 'temperature' && chosen);
  const decided = source.decisions.find(({ what }) => what === 'temperature-column')?.choice;
  const main = measured.find(({ name }) => name === decided) ?? measured[0];
  if (main === undefined || source.format === 'typed-in') return null;
  const name = main.name.trim().toLowerCase();
  return name === '' || /^column \d+$/.test(name) ? null : name;
};

/** @throws Refusal where the two logs name different thermocouples as the kiln's */
const checkChannels = (first: Recorded, second: Recorded): void => {
  const [one, other] = [mainName(first), mainName(second)];
  if (one === null || other === null || one === other) return;
  throw new Refusal(
    'cannot-join',
    `one log is of “${one}” and the other of “${other}”, which may be two kilns; name the column of this kiln’s temperature if both logs have it`,
  );
};

const isSame = (first: Trace, second: Trace): boolean =>
  first.atSeconds.length === second.atSeconds.length &&
  first.summary.startInstant === second.summary.startInstant &&
  first.celsius.every(
    (reading, i) => reading === second.celsius[i] && first.atSeconds[i] === second.atSeconds[i],
  );

/** From the first log's beginning to the second's, where their dates tell. */
const apart = (first: Trace, second: Trace): number | null => {
  const [from, to] = [first.summary.startInstant, second.summary.startInstant];
  return from === null || to === null ? null : secondsBetween(from, to);
};

/**
 * Two logs of one load in order of their dates; in the order given where these do not tell, and then
 * the gap between them is of unknown length.
 *
 * @throws Refusal `cannot-join` where they overlap, are one and the same, or are of other channels
 */
export const joinOrder = <Part extends Recorded>(first: Part, second: Part): JoinOrder<Part> => {
  if (isSame(first.trace, second.trace)) throw new Refusal('cannot-join', TWICE);
  checkChannels(first, second);
  const between = apart(first.trace, second.trace);
  if (between === null) {
    const laterBeginsSeconds = first.trace.summary.durationSeconds + UNKNOWN_GAP_SECONDS;
    return { earlier: first, later: second, laterBeginsSeconds, isGapKnown: false };
  }
  const [earlier, later] = between < 0 ? [second, first] : [first, second];
  const laterBeginsSeconds = Math.abs(between);
  if (laterBeginsSeconds <= earlier.trace.summary.durationSeconds) {
    throw new Refusal('cannot-join', OVERLAP);
  }
  return { earlier, later, laterBeginsSeconds, isGapKnown: true };
};
