import { expect, test } from 'vitest';
import { fold } from '../../../../core/log/text/fold.ts';

test.each([
  ['Température', 'temperature'],
  ['FÜHLER', 'fuhler'],
  ['Außen', 'aussen'],
  ['Año', 'ano'],
  ['℃', '°c'],
])('%s', (text, folded) => {
  expect(fold(text)).toBe(folded);
});
