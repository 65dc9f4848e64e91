import { curveCsv, legsCsv } from '../../core/report/csv.ts';
import { clean } from '../../core/report/clean.ts';
import { htmlReport } from '../../core/report/html-report.ts';
import type { AnalysisDocument } from '../../core/model/document.ts';
import type { TemperatureUnit } from '../../core/units.ts';
import { historyReport } from '../../core/report/history-report.ts';
import type { HistoryWords } from '../../core/wording/history.ts';
import type { Words } from '../../core/wording/wording.ts';
import type { FileToSave } from '../host/host.ts';

/** The log's name without its folder and ending, fit to begin another file's name. */
export const stemOf = (fileName: string): string => {
  const bare = fileName.replace(/^.*[\\/]/, '').replace(/\.[^.]*$/, '');
  const printable = Array.from(bare, (letter) => (letter < ' ' ? '' : letter)).join('');
  return printable.slice(0, 200) || 'firing';
};

const named = ({ source }: AnalysisDocument, rest: string): string =>
  `${stemOf(source.fileName)}${rest}`;

export const reportFile = (document: AnalysisDocument, unit: TemperatureUnit): FileToSave => ({
  fileName: named(document, '.report.html'),
  kind: 'text/html',
  text: htmlReport(document, unit),
});

export const curveFile = (document: AnalysisDocument, unit: TemperatureUnit): FileToSave => ({
  fileName: named(document, '.curve.csv'),
  kind: 'text/csv',
  text: curveCsv(document, unit),
});

export const legsFile = (document: AnalysisDocument, unit: TemperatureUnit): FileToSave => ({
  fileName: named(document, '.legs.csv'),
  kind: 'text/csv',
  text: legsCsv(document, unit),
});

export const historyFile = (words: HistoryWords): FileToSave => ({
  fileName: 'kiln-history.txt',
  kind: 'text/plain',
  text: historyReport(words),
});

/**
 * The verdict as plain text, with which firing it is about and what becomes of the load. It may be
 * pasted into a spreadsheet: no line begins with a name, and no name brings a line or a cell along.
 */
export const verdictText = ({ firing, verdict, load, findings }: Words): string =>
  [
    `Afterfire: ${firing.title}`,
    firing.facts.join(' · '),
    '',
    ...verdict.map(({ text }) => text),
    '',
    `${load.answer} ${load.advice}`,
    ...(load.caution === null ? [] : [`Caution: ${load.caution}`]),
    ...(findings.length === 0 ? [] : ['', 'Findings']),
    ...findings.map(
      ({ letter, severityWord, title }) => `${letter} (${severityWord}) ${title.text}`,
    ),
    '',
  ]
    .map(clean)
    .join('\n');
