import { expect, it } from 'vitest';
import { Refusal } from '../../../core/model/refusal.ts';

it('carries a word for scripts, a sentence for people and the line to blame', () => {
  const refusal = new Refusal('bad-schedule', 'the target is no number', 4);
  expect(refusal).toBeInstanceOf(Error);
  expect(refusal).toMatchObject({
    name: 'Refusal',
    code: 'bad-schedule',
    message: 'the target is no number',
    line: 4,
  });
});

it('blames no line where the whole input is at fault', () => {
  expect(new Refusal('empty', 'the file is empty').line).toBeNull();
});
