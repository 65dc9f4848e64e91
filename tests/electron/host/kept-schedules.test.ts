import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { readSchedule } from '../../../core/schedule/read-schedule.ts';
import { MOST_KEPT_SCHEDULES } from '../../../electron/host/contract.ts';
import { keptSchedules } from '../../../electron/host/kept-schedules.ts';

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'schedules-'));
});
afterEach(() => {
  rmSync(folder, { recursive: true, force: true });
});

const schedule = (name: string, targetC = 1000) =>
  readSchedule(`# name: ${name}\nrate_per_hour,target\n100,${targetC}\n`, 'x');
const keep = (name: string, insteadOf: string | null = null, targetC?: number) =>
  keptSchedules.keep(folder, { schedule: schedule(name, targetC), insteadOf });
const names = () => keptSchedules.read(folder).map(({ name }) => name);

test('schedules are kept by their names, the last used first', () => {
  expect(keptSchedules.read(folder)).toEqual([]);
  keep('A');
  keep('B');
  expect(keep('A', null, 1200)).toEqual([schedule('A', 1200), schedule('B')]);
  expect(names()).toEqual(['A', 'B']);
});

test('one whose name was changed does not stay under its former name', () => {
  keep('A');
  keep('Gl');
  keep('Glaze', 'Gl');
  expect(names()).toEqual(['Glaze', 'A']);
});

test('one is forgotten by its name, and the oldest where there are too many', () => {
  for (let count = 0; count <= MOST_KEPT_SCHEDULES; count++) keep(`S${count}`);
  expect(names()).toHaveLength(MOST_KEPT_SCHEDULES);
  expect(names()).not.toContain('S0');
  keptSchedules.forget(folder, { name: 'S3' });
  keptSchedules.forget(folder, { name: 'never kept' });
  expect(names()).toHaveLength(MOST_KEPT_SCHEDULES - 1);
  expect(names()).not.toContain('S3');
});

test('what cannot be understood counts as nothing', () => {
  writeFileSync(join(folder, 'schedules.json'), '[{"name":"A","cone":"6","segments":[]}]');
  expect(keptSchedules.read(folder)).toEqual([]);
});
