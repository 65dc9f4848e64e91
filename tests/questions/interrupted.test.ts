/**
 * Questions 6 and 7 of the twelve that people asked (design notes): the power went. The curves are
 * those of the test kiln.
 */
import { describe, expect, test } from 'vitest';
import { analyzeJoined } from '../../core/analyze-joined.ts';
import { wording } from '../../core/wording/wording.ts';
import { ask, fileOf, findingIn, kilnReadings, logText, scheduleOf, told } from './asked.ts';

describe('6: the breaker fell at 1900-odd °F in a cone 6 firing', () => {
  const schedule = scheduleOf(
    '6',
    'F',
    { ratePerHour: 300, target: 2000 },
    { ratePerHour: 108, target: 2232, holdMinutes: 10 },
  );
  const CUT_C = 1050;
  const readings = kilnReadings({
    schedule,
    faults: [{ kind: 'power-cut', when: { heatingPastC: CUT_C }, minutes: 3000 }],
  });
  const answer = ask(logText(readings, 'F'), { schedule: told(schedule) }, 'F');
  const ended = findingIn(answer, 'ended-early');

  test('a clean break from climbing to free cooling, with the time', () => {
    const celsius = Array.from(readings.celsius);
    const broke = celsius.findIndex((reading) => reading >= CUT_C);
    const from = ended.evidence[0]!.fromSeconds;
    expect(Math.abs(from - readings.atSeconds[broke]!)).toBeLessThan(300);
    // 1050 °C is 1922 °F.
    expect(ended.words.title.text).toMatch(/^The firing stopped at 192\d °F, 6 h 1\d min into/);
    expect(ended.words.why).toContain('from heating to free cooling');
  });

  test('supply, not wear', () => {
    expect(ended.words.why).toContain('a breaker, a fuse or a cut-out ends it at once');
    const ids = answer.document.findings.map(({ id }) => id);
    for (const id of ['elements-weak', 'element-lost', 'ceiling-near', 'ramp-slow']) {
      expect(ids).not.toContain(id);
    }
    expect(ended.instead).toContain('power-interrupted');
  });

  test('refire to 6; the first pass adds next to nothing', () => {
    expect(answer.document.load).toEqual({ state: 'short', refireTo: '6' });
    expect(answer.words.load.advice).toContain('fired again to cone 6');
    expect(ended.words.remedy).toContain('the first firing adds next to nothing to the second');
  });
});

describe('7: power out at 1700 °F, run again next day to 04', () => {
  const schedule = scheduleOf(
    '04',
    'F',
    { ratePerHour: 200, target: 1760 },
    { ratePerHour: 108, target: 1945 },
  );
  const options = { schedule: told(schedule) };
  const began = Date.UTC(2026, 2, 1, 6);
  const cut = kilnReadings({
    schedule,
    faults: [{ kind: 'power-cut', when: { heatingPastC: 927 }, minutes: 3000 }],
    record: { untilC: 300, atMostHours: 16 },
  });
  const again = kilnReadings({ schedule, startC: 90, seed: 6 });
  const second = logText(again, 'F', began + 24 * 3_600_000);
  const { document } = analyzeJoined(
    fileOf(logText(cut, 'F', began), 'saturday.csv'),
    fileOf(second, 'sunday.csv'),
    options,
  );
  const alone = ask(second, options, 'F');

  test('the first adds less than a thousandth, and it is said so', () => {
    const [first] = document.joined!.parts;
    expect(first.doseShare).toBeLessThan(1e-3);
    const words = wording(document, 'F');
    expect(words.joined.join(' ')).toContain('the first gave less than a thousandth');
    expect(words.joined.join(' ')).toContain('saturday.csv');
  });

  test('the two logs add up: the cone is that of the second alone', () => {
    expect(document.heatWork!.cone.position).toBeCloseTo(
      alone.document.heatWork!.cone.position!,
      2,
    );
    expect(document.heatWork!.target!.verdict).toBe('within');
    expect(document.load.state).toBe('as-meant');
  });

  test('between them lies a hole, which nothing is counted in', () => {
    const { gap, isGapKnown } = document.joined!;
    expect(isGapKnown).toBe(true);
    expect(gap.toSeconds).toBe(24 * 3600);
    expect(document.trace.gaps).toContainEqual(gap);
  });
});
