import { expect, it } from 'vitest';
import {
  linePath,
  linesPath,
  outlinePath,
  type Point,
} from '../../../../core/report/chart/path.ts';

const line: Point[] = [
  [0, 0],
  [10.04, 5.25],
];

it('a path is a line through its points, to a tenth', () => {
  expect(linePath(line)).toBe('M0 0L10 5.3');
});

it('a single point draws nothing, and two lines stay apart', () => {
  expect(linePath([[1, 1]])).toBe('');
  expect(linesPath([line, line])).toBe('M0 0L10 5.3M0 0L10 5.3');
});

it('an outline is closed', () => {
  expect(outlinePath([...line, [0, 10]])).toBe('M0 0L10 5.3L0 10Z');
  expect(outlinePath(line)).toBe('');
});
