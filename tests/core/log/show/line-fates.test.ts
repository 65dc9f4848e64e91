import { describe, expect, test } from 'vitest';
import { READ, RawColumns, stateOf } from '../../../../core/log/columns/raw-columns.ts';
import { AsideLines } from '../../../../core/log/delimited/aside-lines.ts';
import { fateByPlace, fatesByLine, fatesByRow } from '../../../../core/log/show/line-fates.ts';
import { readLog } from '../../../../core/log/read-log.ts';
import { layoutOf, utf8 } from '../helpers.ts';

const rows = (...states: readonly number[]): RawColumns => {
  const columns = new RawColumns(1, 4, false);
  states.forEach((state, index) => columns.add(index + 3, state));
  return columns;
};

const LOG = readLog(utf8('a,b\nz,z\n0,20\n60,30\n120,45\n'), 'x', { unit: 'C' });

describe('by line', () => {
  test('a row is kept, rejected, or of some other channel', () => {
    const columns = rows(READ, READ, READ, READ, stateOf('event'));
    const fates = fatesByLine(new Set([3, 4, 6, 7, 9]), { columns }, LOG);
    expect(fates.get(3)).toEqual({ kind: 'kept', atSeconds: 0, celsius: 20 });
    expect(fates.get(4)).toEqual({ kind: 'kept', atSeconds: 60, celsius: 30 });
    expect(fates.get(6)).toEqual({ kind: 'row' });
    expect(fates.get(7)).toEqual({ kind: 'rejected', reason: 'event' });
    expect(fates.has(5)).toBe(false);
    expect(fates.has(9)).toBe(false);
  });
});

describe('by row', () => {
  test('rows that were read are those of the log in order', () => {
    const fateOf = fatesByRow(rows(READ, stateOf('no-reading'), READ, READ), LOG);
    expect(fateOf(0)).toMatchObject({ kind: 'kept', celsius: 20 });
    expect(fateOf(1)).toEqual({ kind: 'rejected', reason: 'no-reading' });
    expect(fateOf(3)).toMatchObject({ kind: 'kept', celsius: 45 });
  });

  test('where they are not as many, no reading is laid at their side', () => {
    const fateOf = fatesByRow(rows(READ, READ), LOG);
    expect(fateOf(0)).toEqual({ kind: 'row' });
  });
});

test('a line that is no row is told by where it stands', () => {
  const layout = layoutOf('Kiln 3\n\ntime,temp\ns,C\n0,20\n60,30\n120,45\n180,60\n');
  const aside = new AsideLines();
  aside.note(7, 'comment');
  const fate = (line: number, text = 'x') => fateByPlace(line, text, layout, aside);
  expect(fate(1)).toEqual({ kind: 'above' });
  expect(fate(2, ' ')).toEqual({ kind: 'aside', what: 'blank' });
  expect(fate(3)).toEqual({ kind: 'names' });
  expect(fate(4)).toEqual({ kind: 'names' });
  expect(fate(7)).toEqual({ kind: 'aside', what: 'comment' });
  expect(fate(9)).toEqual({ kind: 'aside', what: null });
  expect(fateByPlace(9, 'x', layout, null)).toEqual({ kind: 'unread' });
});
