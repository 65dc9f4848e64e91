import type { AnalysisDocument } from '../model/document.ts';
import { celsius, differenceIn, temperatureIn, type TemperatureUnit } from '../units.ts';
import type { LegWords } from '../wording/legs.ts';
import { wording } from '../wording/wording.ts';
import { clean } from './clean.ts';

/** A spreadsheet takes a cell that begins so for a formula and may run it. */
const FORMULA_START = /^\s*[=+\-@\t\r\uff0b\uff0d\uff1d\uff20]/u;

/** Text as a cell: never a formula, quoted where its own signs ask for it. */
export const textCell = (text: string): string => {
  const safe = FORMULA_START.test(text) ? `'${clean(text)}` : clean(text);
  return /[",;\n\r]/.test(safe) ? `"${safe.replace(/"/g, '""')}"` : safe;
};

/** A number as a cell, with a point and at most `digits` decimals; empty where it is not known. */
export const numberCell = (value: number | null, digits: number): string =>
  value === null || !Number.isFinite(value) ? '' : String(Number(value.toFixed(digits)));

const lines = (rows: readonly (readonly string[])[]): string =>
  rows.map((row) => `${row.join(',')}\r\n`).join('');

/**
 * The thinned curve as comma-separated values (RFC 4180), temperatures in the given unit. Numbers
 * have a point, whatever the machine's language: the file is the same wherever it is opened.
 */
export const curveCsv = ({ curve }: AnalysisDocument, unit: TemperatureUnit): string => {
  const heads = ['elapsed_s', `kiln_${unit}`, `slope_${unit}_per_h`, `kiln_minus_plan_${unit}`];
  const rows = curve.atSeconds.map((at, index) => {
    const difference = curve.differenceC?.[index] ?? null;
    return [
      numberCell(at, 0),
      numberCell(temperatureIn(curve.celsius[index]!, unit), 1),
      numberCell(differenceIn(curve.slopeCPerHour[index]!, unit), 1),
      numberCell(difference === null ? null : differenceIn(difference, unit), 1),
    ];
  });
  return lines([heads, ...rows]);
};

interface Course {
  readonly startSeconds: number;
  readonly endSeconds: number;
  readonly startC: number;
  readonly endC: number;
}

const verdictOf = (row: LegWords | undefined): string =>
  row === undefined || row.verdict === NOTHING ? '' : row.verdict;

const courseCells = (course: Course | null, unit: TemperatureUnit): string[] => {
  if (course === null) return ['', '', '', ''];
  const { startSeconds, endSeconds, startC, endC } = course;
  const degrees = (value: number) => numberCell(temperatureIn(celsius(value), unit), 1);
  return [numberCell(startSeconds, 0), numberCell(endSeconds, 0), degrees(startC), degrees(endC)];
};

/** Spreadsheets take text for the system's old code page unless it begins so; names hold `°`. */
const UTF8_MARK = '\ufeff';

/** What a table of words says where there is nothing to say; a table of cells leaves it empty. */
const NOTHING = '–';

/** The legs as comma-separated values, planned beside driven, each judged in the page's words. */
export const legsCsv = (document: AnalysisDocument, unit: TemperatureUnit): string => {
  const course = (side: string) =>
    ['start_s', 'end_s', `from_${unit}`, `to_${unit}`].map((name) => `${side}_${name}`);
  const { rows } = wording(document, unit).legs;
  const legs =
    document.alignment?.legs.map(({ segment, planned, actual }) => ({
      planned: segment === null ? null : planned,
      actual,
    })) ?? document.trace.legs.map((leg) => ({ planned: null, actual: leg }));
  const table = lines([
    ['leg', 'name', ...course('planned'), ...course('driven'), 'verdict'],
    ...legs.map(({ planned, actual }, index) => [
      String(index + 1),
      textCell(rows[index]?.name ?? ''),
      ...courseCells(planned, unit),
      ...courseCells(actual, unit),
      textCell(verdictOf(rows[index])),
    ]),
  ]);
  return UTF8_MARK + table;
};
