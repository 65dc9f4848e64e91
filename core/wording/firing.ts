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

/** A log that stays below this shows a kiln at rest or drying ware, and no firing (chosen). */
const FIRING_C = 100;

/** Whether the kiln was fired at all while the log ran. */
export const showsFiring = ({ peakC }: AnalysisDocument['trace']): boolean => peakC >= FIRING_C;

/** How long the logs ran: of two, without the time between them. */
const loggedSeconds = ({ trace, joined }: AnalysisDocument): number =>
  trace.durationSeconds - (joined ? joined.gap.toSeconds - joined.gap.fromSeconds : 0);

/** The firing's heading and a few facts, for the head of sheet and report. */
export const firingWords = (document: AnalysisDocument, say: Speech): FiringWords => {
  const { source, joined, trace, schedule, heatWork } = document;
  const target = heatWork?.target?.cone ?? schedule?.cone ?? null;
  return {
    title: joined ? `${source.fileName} and ${joined.source.fileName}` : source.fileName,
    facts: [
      startText(trace.startInstant),
      `${duration(loggedSeconds(document))} logged`,
      showsFiring(trace)
        ? `peak ${say.temperature(trace.peakC)} after ${duration(trace.peakAtSeconds)}`
        : `no firing: ${say.temperature(trace.peakC)} at most`,
      schedule && `schedule “${schedule.name}”`,
      target && `${coneName(target)} meant`,
    ].filter((fact) => fact !== null),
  };
};
