import { expect, test } from 'vitest';
import { coolingDiffers } from '../../../../core/findings/detectors/cooling-differs.ts';
import { exampleDocument } from '../../../fixtures/documents/load.ts';
import { inapplicable, judge, NOTHING, onlyFinding } from '../../../builders/judge.ts';
import { plainFiring, wareFacts } from '../../../builders/ware.ts';

/** An earlier firing whose crystals' stretch took 225 °C at 150 °C/h, and dunting as planned. */
const reference = {
  ...exampleDocument('good-firing'),
  bands: wareFacts(plainFiring({ crystals: 150 })).bands,
};
const against = (crystals: number, earlier: unknown = reference) =>
  wareFacts(plainFiring({ crystals }), { reference: earlier });

test.each([
  [150, null],
  [150 * 1.24, null],
  [150 / 1.24, null],
  [150 * 1.26, 'note'],
  [150 / 1.26, 'note'],
  [150 * 1.41, 'watch'],
])('crystals’ stretch at %d °C/h where the good firing had 150: %s', (rate, severity) => {
  expect(judge(coolingDiffers, against(rate)).findings[0]?.severity ?? null).toBe(severity);
});

test('the worst stretch is told with both rates', () => {
  const { figures, evidence } = onlyFinding(coolingDiffers, against(300));
  expect(figures['differsPercent']).toBeCloseTo(100, 6);
  expect(figures).toMatchObject({ fromC: 1025, toC: 800 });
  expect(figures['cooledCPerHour']).toBeCloseTo(300, 6);
  expect(figures['referenceCPerHour']).toBeCloseTo(150, 6);
  expect(evidence[0]!.toSeconds - evidence[0]!.fromSeconds).toBeCloseTo((225 / 300) * 3600, 3);
});

test('the firing itself is no different from itself', () => {
  expect(judge(coolingDiffers, against(150))).toEqual(NOTHING);
});

test('it says why it cannot judge', () => {
  expect(judge(coolingDiffers, wareFacts(plainFiring()))).toEqual(inapplicable('no-reference'));
  expect(judge(coolingDiffers, against(150, { schemaVersion: 0 }))).toEqual(
    inapplicable('reference-unusable'),
  );
  expect(judge(coolingDiffers, against(150, { ...reference, bands: [] }))).toEqual(
    inapplicable('cooling-not-comparable'),
  );
});
