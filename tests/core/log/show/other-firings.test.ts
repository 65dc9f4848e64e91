import { describe, expect, test } from 'vitest';
import { apartFromOthers } from '../../../../core/log/show/other-firings.ts';
import { readToShow } from '../../../../core/log/show/show-reading.ts';
import type { Log } from '../../../../core/model/log.ts';
import { chooseFiring } from '../../../../core/trace/choose-firing.ts';

/** Two climbs to 1000 °C and back, a reading every ten minutes, a cold day between them. */
const rows = [0, 172_800].flatMap((begin) =>
  Array.from({ length: 90 }, (_, i) => [
    begin + i * 600,
    Math.round(20 + 980 * Math.sin((i * Math.PI) / 89)),
  ]),
);
const csv = ['seconds,temperature C', ...rows.map((row) => row.join(','))].join('\n');
const json = JSON.stringify(rows.map(([seconds, celsius]) => ({ seconds, 'temp C': celsius })));

describe.each([
  ['a line each', csv, 1],
  ['all on one line', json, 0],
])('rows of two firings, %s', (_, text, first) => {
  const { log, show } = readToShow(new TextEncoder().encode(text), 'two');
  const shown = show();
  const kinds = (firing: number) =>
    apartFromOthers(shown, chooseFiring(log as Log, firing))
      .lines.slice(first)
      .map(({ place, fate }) => [place - first <= 90 ? 1 : 2, fate.kind] as const);

  test.each([1, 2])('are apart when firing %i is judged', (firing) => {
    const lines = kinds(firing);
    expect(new Set(lines.map(([of]) => of)).size).toBe(2);
    for (const [of, kind] of lines) expect(kind).toBe(of === firing ? 'kept' : 'other-firing');
  });

  test('are as they were in a log that was not narrowed', () => {
    expect(apartFromOthers(shown, log as Log)).toBe(shown);
  });
});
