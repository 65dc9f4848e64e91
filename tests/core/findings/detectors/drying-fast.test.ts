import { expect, test } from 'vitest';
import { dryingFast } from '../../../../core/findings/detectors/drying-fast.ts';
import { inapplicable, judge, NOTHING, onlyFinding } from '../../../builders/judge.ts';
import { plainFiring, wareFacts } from '../../../builders/ware.ts';

const green = (drying: number, thicknessMm?: number) =>
  wareFacts(plainFiring({ drying }), {
    purpose: 'bisque',
    ...(thicknessMm === undefined ? {} : { ware: { thicknessMm } }),
  });

// Common practice: at most 100 °C/h between 80 and 130 °C.
test.each([
  [99, null],
  [101, 'note'],
  [119, 'note'],
  [121, 'watch'],
  [199, 'watch'],
  [201, 'act'],
])('green ware of ordinary thickness at %d °C/h: %s', (rate, severity) => {
  expect(judge(dryingFast, green(rate)).findings[0]?.severity ?? null).toBe(severity);
});

test('the finding lies on the stretch and carries rate and limit', () => {
  const finding = onlyFinding(dryingFast, green(150));
  expect(finding.figures['fastestCPerHour']).toBeCloseTo(150, 6);
  expect(finding.thresholds).toEqual({ fastestCPerHour: 100 });
  // 60 °C/h to 70 °C takes 50 min; 80 °C is four minutes later at 150 °C/h, 130 °C twenty more.
  expect(finding.evidence[0]!.fromSeconds).toBeCloseTo(54 * 60, 3);
  expect(finding.evidence[0]!.toSeconds).toBeCloseTo(74 * 60, 3);
});

test('thick ware has a slower limit, thin ware a faster one', () => {
  expect(onlyFinding(dryingFast, green(60, 12)).thresholds['fastestCPerHour']).toBeCloseTo(44.4, 1);
  expect(judge(dryingFast, green(150, 6))).toEqual(NOTHING);
});

test('a hold at 110 °C does not hide the climb to it', () => {
  const candled = wareFacts(
    [{ rateCPerHour: 180, toC: 110 }, { holdMinutes: 60 }, { rateCPerHour: 80, toC: 900 }],
    { purpose: 'bisque' },
  );
  expect(onlyFinding(dryingFast, candled).severity).toBe('watch');
});

test('a low cone alone may be a glaze: nothing to act on', () => {
  const byCone = wareFacts(plainFiring({ drying: 250 }), { cone: '05' });
  expect(onlyFinding(dryingFast, byCone).severity).toBe('watch');
});

test('ware that was fired before is noted from 250 °C/h on', () => {
  expect(judge(dryingFast, wareFacts(plainFiring({ drying: 240 })))).toEqual(NOTHING);
  expect(onlyFinding(dryingFast, wareFacts(plainFiring({ drying: 260 }))).severity).toBe('note');
});

test('a record that begins hotter says nothing of drying', () => {
  const facts = wareFacts([{ rateCPerHour: 100, toC: 70 }]);
  expect(judge(dryingFast, facts)).toEqual(inapplicable('stretch-not-seen'));
});
