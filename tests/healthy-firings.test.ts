import { expect, test } from 'vitest';
import { fired } from './builders/fired.ts';
import { earlierSetup, healthySetup } from './kiln/healthy.ts';
import { seededRandom } from './kiln/random.ts';
import { SCHEDULES } from './kiln/schedules.ts';

/** One of each schedule, each held against an earlier one; the bench `fault-matrix` has 120, of which 5 % may be watched. */
const FIRINGS = SCHEDULES.length;

test('healthy firings: nothing to act on, no weak element, hardly anything to watch', () => {
  const random = seededRandom(14);
  const found = Array.from({ length: FIRINGS }, (_, i) => {
    const drawn = random.fork(`firing ${i}`);
    const setup = healthySetup(SCHEDULES[i % SCHEDULES.length]!, drawn);
    const reference = fired(earlierSetup(setup, drawn)).document;
    const { document } = fired(setup, { options: { reference } });
    expect(document.checks.filter(({ outcome }) => outcome === 'failed')).toEqual([]);
    return document.findings.filter(({ severity }) => severity !== 'note');
  });
  const ids = found.flat().map(({ id, severity }) => `${severity} ${id}`);
  expect(ids.filter((id) => id.startsWith('act'))).toEqual([]);
  expect(ids).not.toContain('watch elements-weak');
  expect(found.filter((findings) => findings.length > 0).length).toBeLessThanOrEqual(1);
});
