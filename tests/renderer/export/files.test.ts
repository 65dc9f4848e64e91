import { describe, expect, it } from 'vitest';
import { zFileToSave } from '../../../electron/host/contract.ts';
import { wording } from '../../../core/wording/wording.ts';
import {
  curveFile,
  legsFile,
  reportFile,
  stemOf,
  verdictText,
} from '../../../renderer/export/files.ts';
import { exampleDocument } from '../../fixtures/documents/load.ts';

const document = exampleDocument('troubled-firing');

describe('the files that are saved', () => {
  it('bear the log’s name and hold what the host takes', () => {
    for (const file of [reportFile, curveFile, legsFile].map((make) => make(document, 'F'))) {
      expect(zFileToSave.parse(file)).toEqual(file);
      expect(file.fileName.startsWith(stemOf(document.source.fileName))).toBe(true);
    }
  });

  it('are in the reader’s unit', () => {
    expect(reportFile(document, 'F').text).not.toMatch(/\d °C/);
    expect(curveFile(document, 'F').text).toContain('kiln_F');
    expect(legsFile(document, 'C').text).toContain('from_C');
  });

  it.each([
    ['kiln 2.csv', 'kiln 2'],
    ['a/b\\c.d.txt', 'c.d'],
    ['.csv', 'firing'],
    ['a\u0000b\n.csv', 'ab'],
    ['no ending', 'no ending'],
  ])('%j gives the stem %j', (name, stem) => {
    expect(stemOf(name)).toBe(stem);
  });
});

describe('the verdict as text', () => {
  const words = wording(document, 'C');
  const text = verdictText(words);

  it('pastes no formula and no cell of a name into a spreadsheet', () => {
    const source = { ...document.source, fileName: '=cmd|x!A1\t=1+1.csv' };
    const schedule = document.schedule && { ...document.schedule, name: 'a\n=1+1\t@SUM(A1)' };
    const hostile = verdictText(wording({ ...document, source, schedule }, 'C'));
    for (const line of hostile.split('\n')) {
      expect(line).not.toMatch(/^\s*[=+\-@]/);
      expect(line).not.toContain('\t');
    }
    expect(hostile).toMatch(/^Afterfire: =cmd/);
  });

  it('says every sentence, what becomes of the load with its caution, and every finding', () => {
    for (const { text: said } of words.verdict) expect(text).toContain(said);
    expect(text).toContain(words.load.answer);
    if (words.load.caution !== null) expect(text).toContain(words.load.caution);
    for (const { letter, title } of words.findings) {
      expect(text).toMatch(new RegExp(`^${letter} \\(\\w+\\) `, 'm'));
      expect(text).toContain(title.text);
    }
  });
});
