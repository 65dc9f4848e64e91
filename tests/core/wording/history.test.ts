import { describe, expect, test } from 'vitest';
import { historyOf } from '../../../core/history/history.ts';
import { HISTORY_FINDING_IDS, type History } from '../../../core/model/history.ts';
import { historyWords } from '../../../core/wording/history.ts';
import { speechIn } from '../../../core/wording/speech.ts';
import { celsius, celsiusDelta, celsiusPerHour } from '../../../core/units.ts';
import { entry, ofPowers } from '../../builders/histories.ts';
import { stringsIn } from './builders.ts';

const inC = speechIn('C');
const wearing = historyOf(
  ofPowers(
    Array.from({ length: 20 }, (_, i) => 1 - 0.006 * i),
    () => ({ lastRampPower: 0.8 }),
  ),
);

/** A history that shows everything there is to show. */
const everything = (): History => ({
  ...wearing,
  steps: [
    { kind: 'restored', firing: 3, powerPercent: 12, coupleDeltaC: null },
    { kind: 'lost', firing: 5, powerPercent: -17, coupleDeltaC: null },
    { kind: 'couple', firing: 7, powerPercent: null, coupleDeltaC: celsiusDelta(65) },
  ],
  cooling: {
    goodFiring: 0,
    bands: [
      {
        name: 'dunting',
        fromC: celsius(600),
        toC: celsius(500),
        lastCPerHour: celsiusPerHour(-140),
        goodCPerHour: celsiusPerHour(-100),
        fasterPercent: 40,
      },
    ],
  },
  findings: HISTORY_FINDING_IDS.map((id) => ({
    id,
    severity: 'watch',
    firings: [4, 5],
    figures: {
      ...{ powerPercent: 88, lostPercent: 17, perFiringPercent: -0.6, amplitudePercent: 3.5 },
      ...{ lowestAtHour: 15, stepDeltaC: 65, fromC: 600, toC: 500, differsPercent: 40 },
      ...{ cooledCPerHour: 140, referenceCPerHour: 100 },
    },
    thresholds: {},
    instead: ['heavy-load'],
  })),
});

describe('the history of a kiln that burns fuel, in words', () => {
  const fuelled = historyOf([0, 1, 2].map((i) => entry(i, { powerReason: 'fuel-fired' })));
  const found = { ...everything(), ...fuelled, cooling: everything().cooling };
  const findings = everything().findings.filter(
    ({ id }) => id === 'sensor-drift' || id === 'cooling-differs',
  );
  const words = historyWords({ ...found, findings }, inC);

  test('tells no trend and no forecast of its power, and why', () => {
    expect(words.trend).toContain('not told of a kiln that burns fuel');
    expect(words.forecast).not.toMatch(/resistance|ramp/);
    expect(words.rows[0]?.note).toContain('judged of electric kilns only');
  });

  test('names nothing that it does not have, and the cautions of fuel', () => {
    const said = stringsIn(words).filter((text) => !text.includes('judged of electric kilns only'));
    expect(said.length).toBeGreaterThan(20);
    const electric = /\b(elements?|relays?|coils?|breakers?|contactors?|resistance|voltage)\b/i;
    expect(said.filter((text) => electric.test(text))).toEqual([]);
    expect(words.cautions.join(' ')).toContain('carbon monoxide');
    expect(words.findings.map(({ caution }) => caution).join(' ')).toContain('its fuel shut off');
  });
});

describe('a history in words', () => {
  test('tells trend and forecast with their ranges', () => {
    const { trend, forecast, title } = historyWords(wearing, inC);
    expect(title).toBe('The history of one kiln over 20 firings');
    expect(trend).toMatch(
      /^Over 20 firings the power changed by −0\.6 % a firing \(80 % range −0\.6/,
    );
    expect(forecast).toMatch(
      /^About 1\d firings are left until the last ramp can no longer be held \(80 % range \d+ to \d+\)/,
    );
  });

  test('counts one firing as one', () => {
    const history = historyOf(ofPowers([1, 1, 1, 1, 1]));
    const firings = { estimate: 1.2, low: 0.4, high: 2.1 };
    const forecast = { ...history.forecast, firings, reason: null };
    expect(historyWords({ ...history, forecast }, inC).forecast).toMatch(
      /^About 1 firing is left /,
    );
  });

  test('says volts of a supply, and what part of the power went at once', () => {
    const { findings } = historyWords(everything(), inC);
    const title = (id: string) => findings.find((one) => one.id === id)!.title;
    // Power goes with the square of the voltage.
    const { amplitudePercent } = everything().findings.find(
      ({ id }) => id === 'supply-varies',
    )!.figures;
    const volts = 100 * (1 - Math.sqrt(1 - amplitudePercent! / 100));
    expect(title('supply-varies')).toContain(`as ${Number(volts.toFixed(1))} % of voltage`);
    expect(title('supply-varies')).toContain('is least in firings that peak about 15 o’clock');
    expect(title('element-lost')).toMatch(/had 17 %, about a sixth, less power/);
  });

  test('says what is missing where there is none', () => {
    const { trend, forecast, rows, order } = historyWords(
      historyOf([entry(0, { startInstant: null }), entry(1)]),
      inC,
    );
    expect(trend).toContain('not yet to be told: no firing could be held against another');
    expect(forecast).toContain('not yet to be told: more firings at full power are needed');
    expect(rows[0]).toMatchObject({
      power: '–',
      began: '–',
      note: 'power unknown: the power was not measured',
    });
    expect(order).toContain('has no date');
  });

  test('speaks °F where asked, and then no °C', () => {
    const said = stringsIn(historyWords(everything(), speechIn('F'))).join(' ');
    expect(said).toContain('+117 °F');
    expect(said).not.toContain('°C');
  });

  test('has sentences and a caution for every finding of a history', () => {
    const { findings } = historyWords(everything(), inC);
    expect(findings.map(({ id }) => id)).toEqual([...HISTORY_FINDING_IDS]);
    for (const { title, remedy, caution, couldBe } of findings) {
      expect(title).toMatch(/\.$/);
      expect(title).not.toMatch(/NaN|undefined/);
      expect(remedy).toMatch(/\.$/);
      expect(caution).not.toBeNull();
      expect(couldBe).toHaveLength(1);
    }
  });

  test('names steps for what they are', () => {
    const [restored, lost, couple] = historyWords(everything(), inC).steps;
    expect(restored).toContain('From firing 4 on the kiln had 12 % more power');
    expect(lost).toContain('From firing 6 on the kiln had 17 %, about a sixth, less power at once');
    expect(couple).toContain('From firing 8 on the couple reads otherwise by +65 °C');
  });
});
