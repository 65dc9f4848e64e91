import type { AnalysisDocument } from '../../core/model/document.ts';
import type { TemperatureUnit } from '../../core/units.ts';
import { isGuess } from '../../core/wording/reading.ts';
import { wording } from '../../core/wording/wording.ts';
import type { OpenedLog } from '../host/interface.ts';
import type { Asking } from '../worker/analyst.ts';
import type { Answered, LogFile, Refused, SecondRun } from '../worker/protocol.ts';
import type { Firing, OpenFiring, RefusedFiring, SettledFiring } from './firing.ts';

/** The log that can be put to the analyst again, as it was read or refused. */
export const settledLog = (firing: Firing): OpenFiring | RefusedFiring | null =>
  firing.kind === 'open' || firing.kind === 'refused' ? firing : null;

/** As it stands when nothing more is being worked in. */
export const withoutWork = (firing: Firing): SettledFiring => {
  if (firing.kind === 'reading') return firing.before;
  return firing.kind === 'empty' ? firing : { ...firing, isWorking: false };
};

/** A log that was refused, with why. */
export const refusedFiring = (
  log: LogFile,
  { code, message, line, reading }: Refused,
): RefusedFiring => ({
  kind: 'refused',
  log,
  code,
  message,
  line,
  isWorking: false,
  ...(reading === undefined ? {} : { reading }),
});

/** What is shown, and what waits behind a reading, said in a unit. */
export const saidIn = <Kind extends Firing>(firing: Kind, unit: TemperatureUnit): Kind => {
  if (firing.kind === 'open') return { ...firing, words: wording(firing.document, unit) };
  return firing.kind === 'reading' ? { ...firing, before: saidIn(firing.before, unit) } : firing;
};

let lastRun = 0;

/** The log of a second run, to be taken with the first. */
export const secondRun = ({ fileName, bytes }: OpenedLog): SecondRun => ({
  key: ++lastRun,
  fileName,
  blob: new Blob([bytes]),
});

/** What is asked beside the verdict of a log that was read or refused. */
export const askedBeside = (firing: OpenFiring | RefusedFiring, wantsReading: boolean): Asking => {
  const joined = firing.kind === 'open' ? firing.joined : null;
  return { wantsReading, ...(joined === null ? {} : { joined }) };
};

/** Whether something about the reading is a guess, which of several firings is meant aside. */
export const hasDoubt = ({ source }: Pick<AnalysisDocument, 'source'>): boolean =>
  source.decisions.some((decision) => decision.what !== 'firing' && isGuess(decision));

/** The verdict in one run, to be spoken. */
export const verdictText = ({ words }: OpenFiring): string =>
  words.verdict.map(({ text }) => text).join(' ');

/** A log on its way to the worker. */
export const logFile = ({ fileName, bytes }: OpenedLog): LogFile => ({
  fileName,
  byteLength: bytes.byteLength,
  content: { bytes },
});

/** The same finding after another analysis, if it is still there. */
export const sameFinding = (
  before: OpenFiring | null,
  selected: number | null,
  { document }: Answered,
): number | null => {
  const id = selected === null ? undefined : before?.document.findings[selected]?.id;
  const index = document.findings.findIndex((finding) => finding.id === id);
  return index < 0 ? null : index;
};
