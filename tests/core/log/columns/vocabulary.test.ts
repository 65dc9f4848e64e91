import { expect, test } from 'vitest';
import * as vocabulary from '../../../../core/log/columns/vocabulary.ts';
import { fold } from '../../../../core/log/text/fold.ts';

test('every word is written as names are compared: folded, and once', () => {
  for (const [name, { stems, words }] of Object.entries(vocabulary)) {
    for (const list of [stems, words]) {
      const unfolded = list.filter((word) => fold(word) !== word || word.trim() !== word);
      // The signs of the scales fold to the letters that they contain, and stand as printed.
      expect([name, unfolded.filter((word) => !/[℃℉]/.test(word))]).toEqual([name, []]);
      expect([name, list.filter((word, index) => list.indexOf(word) !== index)]).toEqual([
        name,
        [],
      ]);
    }
  }
});
