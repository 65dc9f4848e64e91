import type { AnalysisDocument } from '../model/document.ts';
import { clockTime, coneName, duration, type Speech } from './speech.ts';

/** What stands above the verdict: which firing this is. */
export interface FiringWords {
  readonly title: string;
  readonly facts: readonly string[];
}

const MONTHS =
  'January February March April May June July August September October November December'.split(
    ' ',
  );

/** `14 March 2026, 06:50`, by the log's own stamps; null where it has none. */
export const startText = (startInstant: string | null): string | null => {
  const date = /^(\d{4})-(\d\d)-(\d\d)T/.exec(startInstant ?? '');
  const time = clockTime(startInstant, 0);
  if (!date || time === null) return null;
  const [, year, month, day] = date;
  return `${Number(day)} ${MONTHS[Number(month) - 1] ?? month} ${year}, ${time}`;
};

/** The firing's heading and a few facts, for the head of sheet and report. */
export const firingWords = (document: AnalysisDocument, say: Speech): FiringWords => {
  const { source, trace, schedule, heatWork } = document;
  const target = heatWork?.target?.cone ?? schedule?.cone ?? null;
  return {
    title: source.fileName,
    facts: [
      startText(trace.startInstant),
      `${duration(trace.durationSeconds)} logged`,
      `peak ${say.temperature(trace.peakC)} after ${duration(trace.peakAtSeconds)}`,
      schedule && `schedule “${schedule.name}”`,
      target && `${coneName(target)} meant`,
    ].filter((fact) => fact !== null),
  };
};
