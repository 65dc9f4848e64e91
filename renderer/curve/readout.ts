import type { Alignment, AnalysisDocument } from '../../core/model/document.ts';
import { celsius, celsiusDelta, celsiusPerHour } from '../../core/units.ts';
import { clockTime, moment, type Speech } from '../../core/wording/speech.ts';
import type { ShownTrace } from '../worker/protocol.ts';
import { nearestSample, plannedAt } from './slice.ts';

/** What stands at one moment of the clock; null where nothing does. */
export interface Readout {
  readonly atSeconds: number;
  readonly kilnC: number | null;
  readonly plannedC: number | null;
  readonly differenceC: number | null;
  readonly slopeCPerHour: number | null;
}

/** The same, said. */
export interface ReadoutWords {
  readonly time: string;
  /** The time of day, where the log has one. */
  readonly clock: string | null;
  readonly kiln: string;
  readonly planned: string;
  readonly difference: string;
  readonly slope: string;
  /** All of it in a line, for a screen reader. */
  readonly line: string;
}

/** What a cell says where nothing stands. */
export const NOTHING = '–';

/** The moment itself, or that of the nearest reading: between two readings nothing was measured. */
export const atReading = ({ atSeconds }: Pick<ShownTrace, 'atSeconds'>, at: number): number => {
  const last = atSeconds[atSeconds.length - 1] ?? 0;
  return at < (atSeconds[0] ?? 0) || at > last ? at : atSeconds[nearestSample(atSeconds, at)]!;
};

/** The plan at a reading; the reading nearest to its end may lie just past it. */
const planAt = (
  { atSeconds }: Pick<ShownTrace, 'atSeconds'>,
  planned: Alignment['planned'],
  at: number,
): number | null => {
  const [first, last] = [planned[0], planned.at(-1)];
  if (!first || !last) return null;
  const isEnd = (end: number): boolean => atReading({ atSeconds }, end) === at;
  if (at < first.atSeconds && isEnd(first.atSeconds)) return first.celsius;
  if (at > last.atSeconds && isEnd(last.atSeconds)) return last.celsius;
  return plannedAt(planned, at);
};

/** What the record and the plan say at a moment. */
export const readoutAt = (
  trace: Pick<ShownTrace, 'atSeconds' | 'celsius' | 'slopeCPerHour'>,
  { alignment }: Pick<AnalysisDocument, 'alignment'>,
  at: number,
): Readout => {
  const atSeconds = atReading(trace, at);
  const index = nearestSample(trace.atSeconds, atSeconds);
  const isRead = trace.atSeconds[index] === atSeconds;
  const kilnC = isRead ? trace.celsius[index]! : null;
  const plannedC = alignment === null ? null : planAt(trace, alignment.planned, atSeconds);
  return {
    atSeconds,
    kilnC,
    plannedC,
    differenceC: kilnC === null || plannedC === null ? null : kilnC - plannedC,
    slopeCPerHour: isRead ? trace.slopeCPerHour[index]! : null,
  };
};

const signedRate = (rate: number, say: Speech): string => {
  const text = say.rate(celsiusPerHour(rate));
  if (text.startsWith('0 ')) return text;
  return `${rate < 0 ? '−' : '+'}${text}`;
};

/** A readout in the reader's words and unit. */
export const readoutWords = (
  readout: Readout,
  startInstant: string | null,
  say: Speech,
): ReadoutWords => {
  const { atSeconds, kilnC, plannedC, differenceC, slopeCPerHour } = readout;
  const time = moment(atSeconds);
  const clock = clockTime(startInstant, atSeconds);
  const kiln = kilnC === null ? NOTHING : say.temperature(celsius(kilnC));
  const planned = plannedC === null ? NOTHING : say.temperature(celsius(plannedC));
  const difference =
    differenceC === null ? NOTHING : say.signedDifference(celsiusDelta(differenceC));
  const slope = slopeCPerHour === null ? NOTHING : signedRate(slopeCPerHour, say);
  const line = [
    clock === null ? time : `${time}, ${clock}`,
    kilnC === null ? 'no reading' : `kiln ${kiln}`,
    plannedC === null ? null : `planned ${planned}`,
    differenceC === null ? null : `difference ${difference}`,
    slopeCPerHour === null ? null : `slope ${slope}`,
  ];
  return {
    ...{ time, clock, kiln, planned, difference, slope },
    line: line.filter((part) => part !== null).join('; '),
  };
};
