import { movedInstant } from '../log/time/civil.ts';
import type { Log } from '../model/log.ts';
import { Refusal } from '../model/refusal.ts';
import type { FiringInLog } from '../model/source.ts';
import { celsius as asCelsius, seconds } from '../units.ts';
import {
  findFirings,
  mayHoldSeveral,
  showsItsBeginning,
  type Course,
  type FiringSpan,
} from './find-firings.ts';
import { repairLog, type Samples } from './repair-log.ts';

/** A clock that falls back by this share of what it had counted began anew; it was not set back. */
const ANEW_SHARE = 0.5;
/** Nobody sets a clock back by so much, and daylight saving takes an hour (chosen). */
const ANEW_SECONDS = 3 * 3600;
/** How sure it is that the hottest of several firings is the one that is meant (chosen). */
const HOTTEST_CERTAINTY = 0.5;

const courseOf = (log: Log, { atSeconds, celsius, row }: Samples): Course => {
  const stamp = (i: number): number => log.atSeconds[row[i]!]!;
  const anew = new Set<number>();
  let began = 0;
  for (let i = 1; i < row.length; i++) {
    const fell = stamp(i - 1) - stamp(i);
    const counted = stamp(i - 1) - stamp(began);
    if (fell < ANEW_SECONDS || fell < ANEW_SHARE * counted) continue;
    anew.add(i);
    began = i;
  }
  return { atSeconds, celsius, beginsAnew: (index) => anew.has(index) };
};

/** Rows that a repair dropped go with the row before them, so that every row has a firing or none. */
const rowsOf = (log: Log, { row }: Samples, { from, to }: FiringSpan): Uint32Array => {
  const places = new Int32Array(log.atSeconds.length).fill(-1);
  row.forEach((at, place) => (places[at] = place));
  const rows: number[] = [];
  let place = -1;
  for (let at = 0; at < places.length; at++) {
    if (places[at]! >= 0) place = places[at]!;
    if (place >= from && place < to) rows.push(at);
  }
  return Uint32Array.from(rows);
};

const pick = (values: Float64Array, rows: Uint32Array): Float64Array =>
  Float64Array.from(rows, (row) => values[row]!);

const pickOrNull = (values: Float64Array | null, rows: Uint32Array): Float64Array | null =>
  values === null ? null : pick(values, rows);

const extent = (values: ArrayLike<number>): [number, number] => {
  let [least, most] = [Infinity, -Infinity];
  for (let i = 0; i < values.length; i++) {
    least = Math.min(least, values[i]!);
    most = Math.max(most, values[i]!);
  }
  return [least, most];
};

/** The rows without a reading that stand among a firing's own, as indices. */
const noReadingsAmong = (log: Log, atSeconds: Float64Array, line: Uint32Array): number[] => {
  const [firstLine, lastLine] = extent(line);
  const [begin, end] = extent(atSeconds);
  return [...log.noReadingSeconds.keys()].filter((i) => {
    const [at, on] = [log.noReadingSeconds[i]!, log.noReadingLine[i]!];
    return on >= firstLine && on <= lastLine && at >= begin && at <= end;
  });
};

/** The log with the rows of one firing alone; its account still tells of all rows. */
const narrowed = (log: Log, samples: Samples, span: FiringSpan): Log => {
  const rows = rowsOf(log, samples, span);
  const stamps = pick(log.atSeconds, rows);
  const line = Uint32Array.from(rows, (row) => log.line[row]!);
  const open = noReadingsAmong(log, stamps, line);
  const zero = stamps[0] ?? 0;
  return {
    source: log.source,
    atSeconds: stamps.map((stamp) => stamp - zero),
    celsius: pick(log.celsius, rows),
    line,
    setpointC: pickOrNull(log.setpointC, rows),
    outputPercent: pickOrNull(log.outputPercent, rows),
    zones: log.zones.map(({ channel, celsius }) => ({ channel, celsius: pick(celsius, rows) })),
    noReadingSeconds: Float64Array.from(open, (i) => log.noReadingSeconds[i]! - zero),
    noReadingLine: Uint32Array.from(open, (i) => log.noReadingLine[i]!),
    startInstant: log.startInstant === null ? null : movedInstant(log.startInstant, zero),
  };
};

/** The hottest firing whose beginning was recorded; of equals the last. */
const hottestOf = (course: Course, spans: readonly FiringSpan[]): number => {
  const whole = spans.filter((span) => showsItsBeginning(course, span));
  const among = whole.length > 0 ? whole : spans;
  const peakC = Math.max(...among.map(({ peak }) => course.celsius[peak]!));
  return spans.findLastIndex(
    (span) => among.includes(span) && course.celsius[span.peak]! === peakC,
  );
};

const listed = (
  log: Log,
  { atSeconds, celsius, row }: Samples,
  spans: readonly FiringSpan[],
  chosen: number,
): FiringInLog[] =>
  spans.map(({ from, to, peak }, index) => {
    const stamp = log.atSeconds[row[from]!]!;
    return {
      startSeconds: seconds(atSeconds[from]!),
      endSeconds: seconds(atSeconds[to - 1]!),
      startInstant: log.startInstant === null ? null : movedInstant(log.startInstant, stamp),
      peakC: asCelsius(celsius[peak]!),
      samples: to - from,
      chosen: index === chosen,
    };
  });

const checkNumber = (wanted: number | undefined, count: number): void => {
  if (wanted === undefined || wanted <= count) return;
  const held = count === 1 ? 'one firing' : `${count} firings`;
  throw new Refusal('bad-option', `the log holds ${held}; there is no firing ${wanted} in it`);
};

/**
 * The log of one firing. A log that holds one at most is returned as it is. Of several, the one
 * with the number `wanted` (from 1) is taken, else the hottest, which is likelier to be meant than
 * a mixture of all; the account then lists them in `source.firings` and says which was chosen.
 *
 * @throws Refusal `bad-option` where there is no firing of that number
 */
export const chooseFiring = (log: Log, wanted?: number): Log => {
  if (!mayHoldSeveral(log.celsius)) {
    checkNumber(wanted, 1);
    return log;
  }
  const samples = repairLog(log);
  const course = courseOf(log, samples);
  const spans = findFirings(course);
  checkNumber(wanted, spans.length);
  if (spans.length < 2) return log;
  const chosen = wanted === undefined ? hottestOf(course, spans) : wanted - 1;
  const { source } = log;
  return {
    ...narrowed(log, samples, spans[chosen]!),
    source: {
      ...source,
      firings: listed(log, samples, spans, chosen),
      decisions: [
        ...source.decisions,
        {
          what: 'firing',
          choice: `${chosen + 1} of ${spans.length}`,
          why: wanted === undefined ? 'hottest' : 'given',
          certainty: wanted === undefined ? HOTTEST_CERTAINTY : 1,
        },
      ],
      warnings: wanted === undefined ? [...source.warnings, 'several-firings'] : source.warnings,
    },
  };
};
