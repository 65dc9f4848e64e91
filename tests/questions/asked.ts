/**
 * What someone who asks has: the log of a firing, as a file, and what they meant. Firings are those
 * of the test kiln, or straight curves where the question gives the rates; both are invented.
 */
import { analyze } from '../../core/analyze.ts';
import type { LogFile } from '../../core/analyze-joined.ts';
import type { AnalysisDocument } from '../../core/model/document.ts';
import type { Options } from '../../core/model/options.ts';
import { readSchedule } from '../../core/schedule/read-schedule.ts';
import { wording, type Words } from '../../core/wording/wording.ts';
import type { TemperatureUnit } from '../../core/units.ts';
import { traceFrom, type CurvePoint } from '../builders/trace.ts';
import { fire } from '../kiln/fire.ts';
import { THIN_BRICK } from '../kiln/kilns.ts';
import type { ScheduleFile, ScheduleSegment, Setup } from '../kiln/types.ts';

/** A couple that tells the truth, so that a question is about what it asks. */
export const TRUE_COUPLE = { offsetC: 0, gain: 0, driftCPerHour: 0 } as const;

export const scheduleOf = (
  cone: string,
  unit: TemperatureUnit,
  ...segments: ScheduleSegment[]
): ScheduleFile => ({ name: 'as asked', cone, unit, segments });

/** The schedule as it is told to the tool. */
export const told = (file: ScheduleFile): NonNullable<Options['schedule']> =>
  readSchedule(JSON.stringify(file), 'schedule.json');

interface Readings {
  readonly atSeconds: ArrayLike<number>;
  readonly celsius: ArrayLike<number>;
}

/** Readings in whole degrees of a unit, as a logger writes them. */
export const logText = (
  { atSeconds, celsius }: Readings,
  unit: TemperatureUnit,
  beganMs = Date.UTC(2026, 2, 1, 6),
): string => {
  const rows = Array.from(atSeconds, (at, i) => {
    const stamp = new Date(beganMs + at * 1000).toISOString().slice(0, 19);
    const reading = unit === 'F' ? celsius[i]! * 1.8 + 32 : celsius[i]!;
    return `${stamp},${reading.toFixed(0)}`;
  });
  return [`time,kiln °${unit}`, ...rows, ''].join('\n');
};

export const fileOf = (text: string, fileName = 'log.csv'): LogFile => ({
  bytes: new TextEncoder().encode(text),
  fileName,
});

/** A firing of the test kiln; 30 kg in the thin brick one unless told. */
export const kilnReadings = (setup: Partial<Setup> & Pick<Setup, 'schedule'>): Readings => {
  const { atSeconds, readingC } = fire({
    seed: 5,
    kiln: THIN_BRICK,
    loadKg: 30,
    roomC: 20,
    couple: TRUE_COUPLE,
    logger: { intervalSeconds: 60, noiseC: 0.3 },
    ...setup,
  });
  return { atSeconds, celsius: readingC };
};

/** A curve of straight stretches, logged every minute. */
export const curveReadings = (points: readonly CurvePoint[]): Readings => traceFrom(points);

export interface Answer {
  readonly document: AnalysisDocument;
  readonly words: Words;
  /** The verdict, the load and every finding, as they would be read out. */
  readonly said: string;
}

export const saidOf = ({ verdict, load, findings, heatWork }: Words): string =>
  [
    ...verdict.map(({ text }) => text),
    load.answer,
    load.advice,
    ...(heatWork?.remedies ?? []),
    ...findings.flatMap(({ title, why, remedy, couldBe }) => [
      title.text,
      why,
      remedy,
      ...couldBe.flatMap(({ cause, tell }) => [cause, tell]),
    ]),
  ].join(' ');

/** Asks the tool about a log. */
export const ask = (text: string, options: Options, unit: TemperatureUnit): Answer => {
  const { bytes, fileName } = fileOf(text);
  const { document } = analyze(bytes, fileName, options);
  const words = wording(document, unit);
  return { document, words, said: saidOf(words) };
};

/** The finding with this id, in words; throws where there is none. */
export const findingIn = ({ document, words }: Answer, id: string) => {
  const index = document.findings.findIndex((finding) => finding.id === id);
  if (index < 0) throw new Error(`${id} is not among ${document.findings.map((f) => f.id).join()}`);
  return { ...document.findings[index]!, words: words.findings[index]! };
};

export const positionOf = ({ document }: Answer): number => document.heatWork!.cone.position!;
