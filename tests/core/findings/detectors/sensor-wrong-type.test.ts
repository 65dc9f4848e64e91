import { describe, expect, test } from 'vitest';
import { sensorWrongType } from '../../../../core/findings/detectors/sensor-wrong-type.ts';
import { rereadC } from '../../../../core/findings/reread.ts';
import type { Facts } from '../../../../core/findings/facts.ts';
import { COUPLE_TYPES, type CoupleType, type Options } from '../../../../core/model/options.ts';
import { celsius } from '../../../../core/units.ts';
import { facts, firingFacts, withoutSchedule, type Driven } from '../../../builders/facts.ts';
import { NOTHING, inapplicable, judge, onlyFinding } from '../../../builders/judge.ts';

/** A firing whose wire the instrument took for another: what it wrote instead of the truth. */
const mistaken = (wire: CoupleType, readAs: CoupleType, driven: Driven = {}): Facts => {
  const base = firingFacts(driven);
  const shown = (values: Float64Array) =>
    values.map((truth) => rereadC({ readAs: wire, wire: readAs }, truth, 20));
  const { samples } = base;
  const read = shown(samples.celsius);
  const summary = { ...samples.summary, peakC: celsius(Math.max(...read)) };
  return {
    ...base,
    trace: summary,
    samples: { ...samples, summary, celsius: read, smoothC: shown(samples.smoothC) },
  };
};

const typesOf = (of: Facts) => {
  const { readAs, probably } = onlyFinding(sensorWrongType, of).figures;
  return [COUPLE_TYPES[readAs!], COUPLE_TYPES[probably!]];
};

describe('a wire that the instrument took for another', () => {
  test('is named, with the peak it must have been', () => {
    const finding = onlyFinding(sensorWrongType, mistaken('S', 'K'));
    expect(finding.severity).toBe('act');
    // Type S wire read as type K shows 321 °C at 1222 (reference notes).
    expect(Math.abs(finding.figures['peakC']! - 320)).toBeLessThan(8);
    expect(Math.abs(finding.figures['rereadPeakC']! - 1215)).toBeLessThan(5);
    expect(typesOf(mistaken('S', 'K'))).toEqual(['K', 'S']);
  });

  test('is told for the grosser mix-ups, and where the wire was told', () => {
    expect(typesOf(mistaken('R', 'K'))[0]).toBe('K');
    const options: Options = { cone: '6', couple: { type: 'R' } };
    expect(typesOf({ ...mistaken('R', 'K'), options })).toEqual(['K', 'R']);
    expect(typesOf(mistaken('N', 'K'))).toEqual(['K', 'N']);
  });

  test('is told from the cone alone where it is hundreds of degrees off', () => {
    const bare = withoutSchedule(mistaken('S', 'K'));
    expect(onlyFinding(sensorWrongType, bare).severity).toBe('watch');
  });
});

test('a climb at full power has no plan to be held against, only its top', () => {
  const base = mistaken('S', 'K');
  const [first, second, last] = base.schedule!.segments;
  const segments = [first!, { ...second!, rateCPerHour: 'full' as const }, last!];
  const full = { ...base, schedule: { ...base.schedule!, segments } };
  expect(onlyFinding(sensorWrongType, full).severity).toBe('watch');
  const slight = mistaken('N', 'K');
  expect(judge(sensorWrongType, { ...slight, schedule: full.schedule })).toEqual(NOTHING);
});

describe('no mistaken wire', () => {
  test('in a firing as it should be', () => {
    expect(judge(sensorWrongType, facts())).toEqual(NOTHING);
    expect(judge(sensorWrongType, withoutSchedule())).toEqual(NOTHING);
  });

  test('where the kiln simply did not get there', () => {
    const stalled = firingFacts({ lastRamp: { toC: 1080, verdict: 'not-reached' } });
    expect(judge(sensorWrongType, stalled)).toEqual(NOTHING);
    const short = firingFacts({
      middleRamp: { minutes: 120, toC: 330 },
      lastRamp: null,
      topHold: null,
    });
    expect(judge(sensorWrongType, short)).toEqual(NOTHING);
  });

  test('where the two types hardly differ: S and R part by less than a plan is kept', () => {
    expect(judge(sensorWrongType, mistaken('R', 'S')).outcome).toBe('clear');
  });
});

test('nothing meant, nothing to hold the record against', () => {
  expect(judge(sensorWrongType, { ...withoutSchedule(), options: {} })).toEqual(
    inapplicable('no-target-cone'),
  );
});
