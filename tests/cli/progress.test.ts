import { expect, it } from 'vitest';
import { progressOn } from '../../cli/progress.ts';
import { keepingIo } from './terminal.ts';

it('several logs are counted where someone is watching, and the line is taken away again', () => {
  const { io, kept } = keepingIo(true);
  const progress = progressOn(io, 3);
  progress.count(2);
  progress.hide();
  expect(kept.error).toContain('2 of 3 logs');
  expect(kept.error.endsWith('\r\u001b[2K')).toBe(true);
  expect(kept.out).toBe('');
});

it.each([
  ['one log', true, 1],
  ['no terminal', false, 3],
])('nothing is counted for %s', (_, isWatched, logs) => {
  const { io, kept } = keepingIo(isWatched);
  const progress = progressOn(io, logs);
  progress.count(1);
  progress.hide();
  expect(kept.error).toBe('');
});
