import { describe, expect, it } from 'vitest';
import type { AnalysisDocument, Elements } from '../../../core/model/document.ts';
import { celsius, celsiusPerHour, seconds } from '../../../core/units.ts';
import { powerWords } from '../../../core/wording/power.ts';
import { speechIn } from '../../../core/wording/speech.ts';
import { exampleDocument } from '../../fixtures/documents/load.ts';

const example = exampleDocument('troubled-firing');

const ELEMENTS: Elements = {
  limited: [
    {
      ...{ fromSeconds: seconds(3600), toSeconds: seconds(9000) },
      ...{ fromC: celsius(800), toC: celsius(1000) },
      plannedCPerHour: celsiusPerHour(170),
      achievedCPerHour: celsiusPerHour(133),
    },
  ],
  capability: [
    {
      celsius: celsius(900),
      heatingCPerHour: celsiusPerHour(120),
      coolingCPerHour: celsiusPerHour(-160),
      ...{ powerToLoss: 1.7, low: 1.6, high: 2 },
    },
  ],
  ceilingC: celsius(1300),
  ceilingRange: { lowC: celsius(1250), highC: celsius(1350) },
  ceilingAtLeastC: null,
  hottestCone: '05.5',
  fit: {
    wall: { memorySeconds: 14_000, conductivityRise: 0.9 },
    load: { share: 0.8, coupling: 140 },
    ...{ power: 0.13, powerErrorGivenWall: 0.001, misfitShare: 0.004 },
  },
  fitReason: null,
  relativePower: { value: 0.914, low: 0.89, high: 0.94 },
  relativePowerReason: null,
  relativeLoad: null,
};

const told = (change: Partial<Elements>, unit: 'C' | 'F' = 'C') =>
  powerWords({ ...example, elements: { ...ELEMENTS, ...change } }, speechIn(unit));

describe('power and loss in words', () => {
  it('tells the ceiling with its range, the hottest cone, and power beside the reference', () => {
    expect(told({}).answers).toEqual([
      'With this load the kiln’s power and its losses are equal at about 1300 °C (80 % range 1250 °C to 1350 °C): it can go no hotter.',
      'The hottest cone that a last ramp of 60 °C/h still reaches is cone 05½.',
      'At full power it had 91 % of the reference firing’s power (80 % range 89 to 94 %).',
    ]);
  });

  it('speaks the reader’s unit, a rate without the 32', () => {
    const { answers, capability, fullPower } = told({}, 'F');
    expect(answers[1]).toContain('108 °F/h');
    expect(capability).toEqual([
      {
        ...{ at: '1652 °F', heating: '216 °F/h', cooling: '288 °F/h' },
        powerToLoss: '1.70 (1.60 to 2.00)',
      },
    ]);
    expect(fullPower[0]).toMatchObject({ stretch: '1472 °F to 1832 °F', made: '239 °F/h' });
  });

  it('says why it cannot be told, and no figure with it', () => {
    const unknown = { fit: null, ceilingC: null, ceilingRange: null, hottestCone: null };
    const words = told({
      ...{ ...unknown, capability: [], relativePower: null },
      ...{ fitReason: 'no-cooling-logged', relativePowerReason: 'no-cooling-logged' },
    });
    expect(words.answers).toEqual([
      'What the kiln can do at most cannot be told from this log, because the record shows no cooling.',
      'Its power cannot be held against the reference firing’s, because the record shows no cooling.',
    ]);
    expect(words.note).toBeNull();
  });

  it('gives a bound where the ceiling is not known', () => {
    const unknown = { fit: null, ceilingC: null, ceilingRange: null, hottestCone: null };
    const bound = { fitReason: 'never-at-full-power', ceilingAtLeastC: celsius(1211) };
    const { answers } = told({ ...unknown, ...bound, capability: [], relativePower: null });
    expect(answers[1]).toBe('It got to 1211 °C, so its ceiling lies no lower.');
  });

  it('does not complain of a missing reference', () => {
    const none = { relativePower: null, relativePowerReason: 'no-reference' };
    expect(told(none).answers).toHaveLength(2);
  });

  it('says of a kiln heated by fuel that there is nothing to tell', () => {
    const fuel: AnalysisDocument = { ...example, elements: null };
    const { answers, fullPower, capability } = powerWords(fuel, speechIn('C'));
    expect(answers.join(' ')).toContain('fuel');
    expect([fullPower, capability]).toEqual([[], []]);
  });
});
