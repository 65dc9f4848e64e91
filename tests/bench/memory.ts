import { spawnSync } from 'node:child_process';
import path from 'node:path';
import { writeFileSync } from 'node:fs';
import type { Table } from './bench.ts';

const MEGABYTES = 60;
const stamp = (row: number): string =>
  new Date(Date.UTC(2024, 2, 14) + row * 1000).toISOString().slice(0, 19);
const celsius = (row: number): string =>
  (20 + 1200 * Math.abs(Math.sin(row / 2e5)) + (row % 7) / 10).toFixed(1);

/** Shapes of a long log: a first line, and what is written for each row. */
const SHAPES: readonly (readonly [string, string, (row: number) => string])[] = [
  [
    'CSV: time, temperature, setpoint',
    'Time,Kiln °C,Set °C\n',
    (i) => `${stamp(i)},${celsius(i)},20.5\n`,
  ],
  ['CSV: seconds and temperature', 'Time (s),Kiln °C\n', (i) => `${i},${celsius(i)}\n`],
  ['CSV: a unit beside each number', 'Time;Kiln\n', (i) => `${stamp(i)};${celsius(i)} °C\n`],
  [
    'CSV: two channels, one below the other',
    'time,channel,value\n',
    (i) => `${stamp(i >> 1)},${i % 2 === 0 ? 'kiln' : 'shelf'},${celsius(i)}\n`,
  ],
  ['JSON lines', '', (i) => `{"t":"${stamp(i)}","temp":${celsius(i)}}\n`],
];

const logOf = (head: string, line: (row: number) => string): string => {
  const parts = [head];
  let size = 0;
  for (let row = 0; size < MEGABYTES * 1e6; row += 1) {
    const text = line(row);
    parts.push(text);
    size += text.length;
  }
  return parts.join('');
};

const peakBytes = (log: string): number => {
  const script = path.join(import.meta.dirname, 'read-alone.ts');
  const args = ['--import', 'tsx', script, log];
  const { status, stdout, stderr } = spawnSync(process.execPath, args, { encoding: 'utf8' });
  if (status !== 0) throw new Error(`reading failed: ${stderr}`);
  return Number(stdout) * 1024;
};

/** The most memory that reading a long log takes, beside what the program takes for a short one. */
export const memoryOf = (folder: string): Table => {
  const file = path.join(folder, 'long.txt');
  writeFileSync(file, 'Time (s),Kiln °C\n0,20\n60,30\n120,40\n');
  const idle = peakBytes(file);
  const rows = SHAPES.map(([what, head, line]) => {
    const text = logOf(head, line);
    writeFileSync(file, text);
    const peak = peakBytes(file);
    return [what, peak / 1e6, (peak - idle) / Buffer.byteLength(text)];
  });
  return {
    title: `Memory: the most that a process holds that reads a log of ${MEGABYTES} MB`,
    columns: ['log', 'MB', 'beyond a log of three rows, times the file'],
    rows,
    notes: [
      `A log of three rows takes ${(idle / 1e6).toFixed(0)} MB. Wanted: below 4 times the file.`,
    ],
  };
};
