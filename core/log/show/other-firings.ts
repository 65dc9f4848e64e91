import type { Log } from '../../model/log.ts';
import type { ReadingShown, ShownLine } from './shown.ts';

/** Which of the wanted lines hold a row of the log. */
const linesKept = (wanted: ReadonlySet<number>, { line }: Log): Set<number> => {
  const kept = new Set<number>();
  for (const one of line) if (wanted.has(one)) kept.add(one);
  return kept;
};

/** Rows of JSON may all stand on one line. */
const haveOwnLines = ({ line }: Log): boolean =>
  line.length < 2 || line[0] !== line[line.length - 1];

/**
 * The lines of a log that holds several firings, those apart that belong to another than the one to
 * which `log` was narrowed (`chooseFiring`). The lines of any other log are as they were.
 */
export const apartFromOthers = (shown: ReadingShown, log: Log): ReadingShown => {
  const chosen = log.source.firings?.find((firing) => firing.chosen);
  if (chosen === undefined) return shown;
  const kept = linesKept(new Set(shown.lines.map(({ line }) => line)), log);
  const isByLine = haveOwnLines(log);
  const isOther = ({ line, fate }: ShownLine): boolean => {
    if (fate.kind !== 'kept') return false;
    if (isByLine) return !kept.has(line);
    return fate.atSeconds < chosen.startSeconds || fate.atSeconds > chosen.endSeconds;
  };
  const lines = shown.lines.map((one): ShownLine =>
    isOther(one) ? { ...one, fate: { kind: 'other-firing' } } : one,
  );
  return { ...shown, lines };
};
