import { describe, expect, test } from 'vitest';
import { typedAccount } from '../../../renderer/typed/typed-account.ts';
import { NOTHING_TYPED, type TypedDraft } from '../../../renderer/typed/typed-draft.ts';

const account = (text: string, unit: TypedDraft['unit'] = null, shown: 'C' | 'F' = 'C') =>
  typedAccount({ ...NOTHING_TYPED, text, unit }, shown);

const said = (text: string, unit: TypedDraft['unit'] = null) =>
  account(text, unit).lines.map(({ line, said: words, kind }) => `${line} ${kind} ${words}`);

describe('what was typed is told line by line', () => {
  test('where it can be opened: readings, remarks and what was rejected', () => {
    expect(said('8:00 20 C\nturned up\n\n14:00 900 / 16:00 looked in\n17:40 1222')).toEqual([
      '1 kept 0:00:00  20 °C',
      '2 aside a remark',
      '4 kept 6:00:00  900 °C',
      '4 rejected rejected: a remark, not a reading',
      '5 kept 9:40:00  1222 °C',
    ]);
  });

  test('and already before that', () => {
    expect(said('for cone 6 or 7\n8:00 20 C\nsix 12:34 56 78\n9:00')).toEqual([
      '1 aside a remark',
      '2 kept 8:00, 20 °C',
      '3 rejected rejected: no time with a temperature here',
      '4 kept 9:00, no temperature',
    ]);
  });

  test('a table that was pasted in, too', () => {
    const rows = Array.from({ length: 60 }, (_, i) => `${i},${20 + i}`).join('\n');
    const { lines, said: sum, canOpen } = account(`minutes,temp C\n${rows}`);
    expect(lines[0]).toMatchObject({ kind: 'aside', said: 'names of the columns' });
    expect(lines[60]).toMatchObject({ line: 61, kind: 'kept', said: '0:59:00  79 °C' });
    expect([sum, canOpen]).toEqual(['60 readings.', true]);
  });
});

describe('how many readings there are, and how many are needed', () => {
  test.each([
    ['', 'No reading yet; at least 3 are needed.', false],
    ['8:00 20 C', '1 reading; 2 more readings needed.', false],
    ['8:00 20 C\n9:00 100', '2 readings; 1 more reading needed.', false],
    [
      '8:00 20 C\n9:00 100\n10:00 looked in',
      '2 readings; 1 rejected; 1 more reading needed.',
      false,
    ],
    ['8:00 20 C\n9:00 100\n10:00 200', '3 readings.', true],

    ['cone 6\n8:00 20 C\n9:00 100\n10:00 200', '3 readings; 1 rejected.', true],
  ])('%j', (text, words, canOpen) => {
    expect(account(text)).toMatchObject({ said: words, canOpen });
  });

  test('what cannot be read though it is enough says why', () => {
    const { said: sum, canOpen } = account(
      'Time,Setpoint\n8:00,20\n9:00,100\n10:00,200\n11:00,300',
    );
    expect(canOpen).toBe(false);
    expect(sum).toContain('No column of measured temperatures was found');
  });
});

describe('the unit', () => {
  test('that is chosen holds for what has none; the reader shows its own', () => {
    const { log } = account('8:00 68\n11:00 600 °C\n17:00 2232', 'F');
    expect([...log!.celsius].map(Math.round)).toEqual([20, 600, 1222]);
    expect(account('8:00 20\n11:00 600\n17:00 1222', null, 'F').lines[2]?.said).toContain(
      '2231.6 °F',
    );
  });

  test('is told as a guess where nothing says it', () => {
    expect(account('8:00 20\n11:00 600\n17:00 1222').unitSaid).toMatch(
      /^Fairly sure: .*degrees Celsius.*only so do the values run as a kiln can/,
    );
    expect(account('8:00 20\n11:00 600\n17:00 1222', 'C').unitSaid).toBeNull();
  });
});

test('the longest text that can be pasted is told of at once', () => {
  const rows = Array.from({ length: 5000 }, (_, i) => `${i},${20 + i / 5}`).join('\n');
  const started = performance.now();
  expect(account(`minutes,temp C\n${rows}`).said).toBe('5000 readings.');
  // About 30 ms where nothing else runs.
  expect(performance.now() - started).toBeLessThan(2000);
});
