import { expect, test } from 'vitest';
import { timeWord } from '../../../../core/log/time/time-words.ts';

test.each([
  ['march', 3],
  ['maerz', 3],
  ['mars', 3],
  ['marzo', 3],
  ['maart', 3],
  ['mrt', 3],
  ['mai', 5],
  ['mei', 5],
  ['mayo', 5],
  ['maggio', 5],
  ['aout', 8],
  ['agosto', 8],
  ['augustus', 8],
  ['dez', 12],
  ['dic', 12],
  ['decembre', 12],
  ['ene', 1],
  ['gen', 1],
  ['janv', 1],
])('%s is a month', (word, month) => {
  expect(timeWord(word)).toEqual({ kind: 'month', month });
});

test('every month has its English, German, French, Spanish, Italian and Dutch name', () => {
  const names = [
    'january february march april may june july august september october november december',
    'januar februar maerz april mai juni juli august september oktober november dezember',
    'janvier fevrier mars avril mai juin juillet aout septembre octobre novembre decembre',
    'enero febrero marzo abril mayo junio julio agosto septiembre octubre noviembre diciembre',
    'gennaio febbraio marzo aprile maggio giugno luglio agosto settembre ottobre novembre dicembre',
    'januari februari maart april mei juni juli augustus september oktober november december',
  ];
  for (const language of names) {
    language.split(' ').forEach((word, index) => {
      expect([word, timeWord(word)]).toEqual([word, { kind: 'month', month: index + 1 }]);
    });
  }
});

test('halves of the day, zones, and words that say nothing', () => {
  expect(timeWord('pm')).toEqual({ kind: 'half', afternoon: true });
  expect(timeWord('vorm')).toEqual({ kind: 'half', afternoon: false });
  expect(timeWord('cest')).toEqual({ kind: 'zone', offsetMinutes: 120 });
  expect(timeWord('donnerstag')).toEqual({ kind: 'nothing' });
  expect(timeWord('kiln')).toBeNull();
  expect(timeWord('constructor')).toBeNull();
});
