import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { fileIn, opened, type FileIn } from '../../../renderer/host/opened.ts';

const SAMPLES = join(import.meta.dirname, '../../../sample-traces');

const bytesOf = (text: string) => new Uint8Array(new TextEncoder().encode(text));

const file = (fileName: string, role: FileIn['role'], text: string): FileIn => ({
  fileName,
  role,
  content: { bytes: bytesOf(text) },
});

const sample = (fileName: string): FileIn => ({
  fileName: fileName.replace('.schedule', ''),
  role: 'unknown',
  content: { bytes: new Uint8Array(readFileSync(join(SAMPLES, fileName))) },
});

describe('files that come in together', () => {
  test.each([
    'good-bisque.schedule.json',
    'good-glaze.schedule.csv',
    'underfired-glaze.schedule.json',
    'decal.schedule.csv',
  ])('are schedules where they can be read as one: %s, whatever its name', (name) => {
    const { logs, schedule, refused } = opened([sample(name)]);
    expect([logs, refused]).toEqual([[], []]);
    expect(schedule?.fileName).toBe(name.replace('.schedule', ''));
  });

  test.each(['good-bisque.csv', 'cone-06-for-6.json', 'aborted.jsonl', 'decal.txt'])(
    'are logs otherwise: %s',
    (name) => {
      const { logs, schedule, refused } = opened([sample(name)]);
      expect([schedule, refused]).toEqual([null, []]);
      expect(logs.map(({ fileName }) => fileName)).toEqual([name]);
    },
  );

  test('are what they were opened as, where that is known', () => {
    expect(opened([file('a.csv', 'log', 'no log')]).logs).toHaveLength(1);
    expect(opened([file('b.csv', 'schedule', 'no schedule')])).toEqual({
      logs: [],
      schedule: { fileName: 'b.csv', text: 'no schedule' },
      refused: [],
    });
  });

  test('are schedules by what is in them, also where they were chosen as logs or are faulty', () => {
    const faulty = 'rate_per_hour,target\n100,hot\n';
    for (const role of ['log', 'unknown'] as const) {
      const { logs, schedule } = opened([file('a.csv', role, faulty)]);
      expect([logs, schedule?.text]).toEqual([[], faulty]);
    }
  });

  test('are better refused as a schedule, where the name says that they are one', () => {
    const { schedule } = opened([file('mine.Schedule.JSON', 'unknown', '{"segments": 1}')]);
    expect(schedule?.text).toBe('{"segments": 1}');
  });

  test('leave the last of several schedules, and every log in order', () => {
    const { logs, schedule, refused } = opened([
      file('a', 'log', 'a'),
      file('s1', 'schedule', '1'),
      file('b', 'log', 'b'),
      file('s2', 'schedule', '2'),
    ]);
    expect(logs.map(({ fileName }) => fileName)).toEqual(['a', 'b']);
    expect(schedule).toEqual({ fileName: 's2', text: '2' });
    const why = 'only one schedule is gone by, and “s2” was taken';
    expect(refused).toEqual([{ fileName: 's1', role: 'schedule', why }]);
  });

  test('are refused one by one', () => {
    const gone: FileIn = { fileName: 'c', role: 'log', content: { refused: 'no such file' } };
    const long = file('s', 'schedule', ' '.repeat(1024 * 1024 + 1));
    const { logs, schedule, refused } = opened([file('a', 'log', 'a'), gone, long]);
    expect([logs.length, schedule]).toEqual([1, null]);
    expect(refused).toEqual([
      { fileName: 'c', role: 'log', why: 'no such file' },
      { fileName: 's', role: 'schedule', why: 'this file is too large to be a schedule' },
    ]);
  });
});

describe('a file that the page was given', () => {
  test('is taken with its name and bytes', async () => {
    const taken = await fileIn(new File(['time,°C\n'], 'a.csv'), 'unknown');
    expect(taken).toEqual({
      fileName: 'a.csv',
      role: 'unknown',
      content: { bytes: bytesOf('time,°C\n') },
    });
  });

  test('is refused unread where it is too large', async () => {
    const file = { name: 'a.csv', size: 512 * 1024 * 1024 + 1 } as File;
    const { content } = await fileIn(file, 'unknown');
    expect(content).toEqual({ refused: 'the file is larger than 512 MB' });
  });

  test('is refused where the system will not give it, as it does with folders', async () => {
    const arrayBuffer = () => Promise.reject(new DOMException('', 'NotReadableError'));
    const { content } = await fileIn({ name: 'a', size: 1, arrayBuffer } as unknown as File, 'log');
    expect(content).toHaveProperty('refused');
  });
});
