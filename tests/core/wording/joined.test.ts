import { describe, expect, test } from 'vitest';
import { analyzeJoinedTraces } from '../../../core/analyze-joined.ts';
import { htmlReport } from '../../../core/report/html-report.ts';
import { textReport } from '../../../core/report/text-report.ts';
import { joinedWords } from '../../../core/wording/joined.ts';
import { speechIn } from '../../../core/wording/speech.ts';
import { wording } from '../../../core/wording/wording.ts';
import { twoRuns } from '../../builders/runs.ts';
import { exampleDocument } from '../../fixtures/documents/load.ts';

const documentOf = (isDated = true) =>
  analyzeJoinedTraces(...twoRuns(isDated), { cone: '04' }).document;

describe('what is said of two logs of one load', () => {
  test('which they are, how far apart, and what each gave', () => {
    const [which, gap, shares, ...rest] = joinedWords(documentOf(), speechIn('F'));
    expect(which).toContain('peak 1700 °F, alone');
    expect(which).toContain('peak 1940 °F, alone');
    // 24 h less 6 h 03 min up and 3 h 59 min down: 13 h 58 min.
    expect(gap).toContain('13 h 59 min');
    expect(gap).toContain('cooled unseen');
    expect(shares).toContain('the first gave less than a thousandth');
    expect(rest).toEqual([]);
  });

  test('that the hole is of unknown length where no dates tell', () => {
    expect(joinedWords(documentOf(false), speechIn('C'))[1]).toContain('cannot be told');
  });

  test('nothing where one log is all there is', () => {
    expect(joinedWords(exampleDocument('good-firing'), speechIn('C'))).toEqual([]);
  });

  test('in the text and in the page, where the curve shows the hole as one between logs', () => {
    const document = documentOf();
    const text = textReport(wording(document, 'C')).replace(/\s+/g, ' ');
    expect(text).toContain('Two logs of one load, taken together');
    expect(text).toContain('The second log, test.csv:');
    expect(text).toContain('the time between them, in which nobody looked, is not counted');
    const page = htmlReport(document, 'C');
    expect(page).toContain('Two logs of one load, taken together');
    expect(page).toContain('not recorded: between the logs');
    expect(htmlReport(exampleDocument('troubled-firing'), 'C')).not.toContain('between the logs');
  });
});
