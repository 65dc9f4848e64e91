import { describe, expect, it } from 'vitest';
import type { AnalysisDocument } from '../../../core/model/document.ts';
import { readingReport, textReport } from '../../../core/report/text-report.ts';
import { wording } from '../../../core/wording/wording.ts';
import { EXAMPLE_DOCUMENTS, exampleDocument } from '../../fixtures/documents/load.ts';

const reportOf = (name: (typeof EXAMPLE_DOCUMENTS)[number], unit: 'C' | 'F' = 'C') =>
  textReport(wording(exampleDocument(name), unit));

const HEADINGS = ['Heat-work', 'Findings', 'How the log was read', 'Cautions'];

describe.each([...EXAMPLE_DOCUMENTS])('the text of %s', (name) => {
  it('reads verdict first, then the evidence, then the cautions', () => {
    const text = reportOf(name);
    const places = ['By this log the ware got', ...HEADINGS.map((head) => `\n${head}\n---`)].map(
      (part) => text.indexOf(part),
    );
    expect(places.every((place) => place >= 0)).toBe(true);
    expect([...places].sort((a, b) => a - b)).toEqual(places);
  });

  it('stays within a terminal’s width, but for the table of legs', () => {
    const wide = reportOf(name)
      .split('\n')
      .filter((line) => line.length > 88);
    expect(wide.every((line) => /^ *(#|\d+) /.test(line) && line.length <= 100)).toBe(true);
  });

  it('shows a Fahrenheit reader no Celsius number', () => {
    expect(reportOf(name, 'F').replace(/“[^”]*”/g, '')).not.toContain('°C');
  });
});

describe('the text report', () => {
  it('lays planned beside driven', () => {
    expect(reportOf('troubled-firing')).toMatch(
      /4 {2}Climb to 1188 °C {3}60 °C\/h +44 °C\/h +3 h 08 min +4 h 11 min +1184 °C +19:01 {2}slow/,
    );
  });

  it('letters the findings with their cautions', () => {
    const text = reportOf('troubled-firing');
    expect(text).toContain('◆ A act: On the climb to 1188 °C');
    expect(text).toMatch(/ {2}Caution: Before touching elements/);
    expect(reportOf('good-firing')).toContain('Findings\n--------\nNone.');
  });

  it('says what cannot be told, and why', () => {
    const text = reportOf('no-schedule').replace(/\s+/g, ' ');
    expect(text).toContain('What cannot be told from this log');
    expect(text).toContain('because no schedule was given to hold the record against.');
  });

  it('cannot be made to command the terminal', () => {
    const document = exampleDocument('troubled-firing');
    document.source.fileName = 'a\u001b]0;owned\u0007.csv';
    document.source.rejected[0]!.text = '\u001b[2J';
    document.schedule!.name = '\u001b[31m';
    const words = wording(document, 'C');
    const said = textReport(words) + readingReport('a\u0007', words.reading);
    expect([...said].filter((sign) => sign < ' ' && sign !== '\n')).toEqual([]);
  });
});

const accountOf = (document: AnalysisDocument): string =>
  readingReport('log.csv', wording(document, 'C').reading);

describe('the account of reading', () => {
  it('holds every decision and every rejected row', () => {
    const text = accountOf(exampleDocument('troubled-firing'));
    expect(text).toContain('1315 rows read: 1300 rows kept, 15 rows rejected.');
    expect(text).toContain('  line 980: a remark, not a reading: Lid opened <b>once</b>');
    expect(text.match(/ {2}line \d+:/g)).toHaveLength(15);
  });

  it('owns what it does not list', () => {
    const document = exampleDocument('troubled-firing');
    document.source.rejected = document.source.rejected.slice(0, 3);
    expect(accountOf(document)).toContain('… and 12 more.');
  });
});
