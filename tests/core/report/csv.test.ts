import { createRequire } from 'node:module';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { curveCsv, legsCsv, numberCell, textCell } from '../../../core/report/csv.ts';
import { wording } from '../../../core/wording/wording.ts';
import { exampleDocument } from '../../fixtures/documents/load.ts';

interface Reader {
  parse: <Row>(
    text: string,
    options: { header?: boolean; delimiter?: string; skipEmptyLines?: boolean },
  ) => { data: Row[]; errors: unknown[] };
}
const papa = createRequire(import.meta.url)('papaparse') as Reader;

describe('a cell', () => {
  it.each(['=1+1', '+1', '-1', '@SUM(A1)', ' =HYPERLINK("x")', '\t=1', '＝1'])(
    'with %j does not begin a formula',
    (text) => {
      expect(textCell(text)).toMatch(/^"?'/);
    },
  );

  it('comes back from a reader as the text that went in, unless it began a formula', () => {
    // The dialect is that of RFC 4180; papaparse is a general-purpose reader of it.
    const plain = fc.string().filter((text) => /^[A-Za-z0-9"]/.test(text));
    fc.assert(
      fc.property(plain, (text) => {
        const read = papa.parse<string[]>(`${textCell(text)},end`, { delimiter: ',' });
        expect(read.data).toEqual([[text, 'end']]);
      }),
    );
  });

  it('holds a number as it is, and nothing for none', () => {
    expect(numberCell(-12.345, 1)).toBe('-12.3');
    expect(numberCell(1200, 1)).toBe('1200');
    expect(numberCell(null, 1)).toBe('');
    expect(numberCell(NaN, 1)).toBe('');
  });
});

describe('the exports', () => {
  const document = exampleDocument('troubled-firing');
  const parsed = (text: string) =>
    papa.parse<Record<string, string>>(text, { header: true, skipEmptyLines: true });

  it('hold every point of the curve in the reader’s unit', () => {
    const { data, errors } = parsed(curveCsv(document, 'F'));
    expect(errors).toEqual([]);
    expect(data).toHaveLength(document.curve.atSeconds.length);
    // 19 °C = 66.2 °F; a difference gets no 32: −3 °C = −5.4 °F.
    expect(data[0]).toMatchObject({ elapsed_s: '0', kiln_F: '66.2', kiln_minus_plan_F: '' });
    expect(data[2]?.kiln_minus_plan_F).toBe('-5.4');
  });

  it('hold every leg, planned beside driven', () => {
    const { data, errors } = parsed(legsCsv(document, 'C'));
    expect(errors).toEqual([]);
    expect(data).toHaveLength(6);
    expect(data[3]).toMatchObject({ planned_to_C: '1188', driven_to_C: '1184', verdict: 'slow' });
    expect(data[5]).toMatchObject({ planned_to_C: '', name: 'Free cooling' });
  });

  it('judge each leg in the words of the page, and none where the page does not', () => {
    const { data } = parsed(legsCsv(document, 'C'));
    const said = wording(document, 'C').legs.rows.map(({ verdict }) => verdict);
    expect(said).toContain('as planned');
    expect(said).toContain('–');
    expect(data.map(({ verdict }) => verdict)).toEqual(
      said.map((verdict) => (verdict === '–' ? '' : verdict)),
    );
  });

  it('are told for UTF-8 by their first bytes where they hold more than ASCII', () => {
    // The mark of RFC 3629, section 6, without which spreadsheets take the old code page.
    const bytes = new TextEncoder().encode(legsCsv(document, 'C'));
    expect([...bytes.subarray(0, 3)]).toEqual([0xef, 0xbb, 0xbf]);
    expect(legsCsv(document, 'C')).toContain('°C');
    expect(curveCsv(document, 'F')).toMatch(/^[ -~\r\n]*$/);
  });

  it('have a point in their numbers and a comma between cells, and nothing that asks for another', () => {
    const [heads, first] = curveCsv(document, 'C').split('\r\n');
    expect(heads).toBe('elapsed_s,kiln_C,slope_C_per_h,kiln_minus_plan_C');
    expect(first?.split(',')).toHaveLength(4);
  });

  it('hold the trace’s legs where there was no schedule', () => {
    const { data } = parsed(legsCsv(exampleDocument('no-schedule'), 'C'));
    expect(data).toHaveLength(exampleDocument('no-schedule').trace.legs.length);
    expect(data.every((row) => row.planned_start_s === '')).toBe(true);
  });
});
