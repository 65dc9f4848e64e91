import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { item, table, TEXT_WIDTH, wrap } from '../../../../core/report/text/layout.ts';

describe('wrapped prose', () => {
  it('breaks at blanks and hangs', () => {
    expect(wrap('one two three four', '- ', 11, '  ')).toEqual(['- one two', '  three', '  four']);
  });

  it('keeps a number with its unit', () => {
    expect(wrap('made 44 °C/h here', '', 9)).toEqual(['made', '44 °C/h', 'here']);
  });

  it('loses no word and is never too wide unless a word is', () => {
    const words = fc.array(fc.stringMatching(/^[a-z]{1,12}$/), { maxLength: 60 });
    fc.assert(
      fc.property(words, (list) => {
        const lines = wrap(list.join(' '), '  ');
        expect(lines.join(' ').split(/\s+/).filter(Boolean)).toEqual(list);
        expect(lines.every((line) => line.length <= TEXT_WIDTH)).toBe(true);
      }),
    );
  });

  it('sets an item’s further lines in under its first', () => {
    expect(item('one two three', '-', 12)).toEqual(['  - one two', '    three']);
  });
});

describe('a table', () => {
  it('aligns its columns', () => {
    const columns = [
      { head: 'leg', align: 'left' as const },
      { head: 'rate', align: 'right' as const },
    ];
    const rows = [
      ['Climb', '60 °C/h'],
      ['Free cooling', '–'],
    ];
    expect(table(columns, rows)).toEqual([
      'leg              rate',
      'Climb         60 °C/h',
      'Free cooling        –',
    ]);
  });
});
