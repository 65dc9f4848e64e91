import { describe, expect, it } from 'vitest';
import { celsius, seconds } from '../../../core/units.ts';
import { speechIn } from '../../../core/wording/speech.ts';
import { atReading, readoutAt, readoutWords } from '../../../renderer/curve/readout.ts';
import { exampleDocument } from '../../fixtures/documents/load.ts';

const good = exampleDocument('good-firing');
const trace = {
  atSeconds: Float64Array.of(0, 60, 120),
  celsius: Float64Array.of(20, 21.4, 23),
  slopeCPerHour: Float64Array.of(80, 90, -96),
};

describe('the readout', () => {
  it('stands on the nearest reading: between two nothing was measured', () => {
    expect(atReading(trace, 89)).toBe(60);
    expect(atReading(trace, 91)).toBe(120);
    expect(readoutAt(trace, { alignment: null }, 89)).toEqual({
      atSeconds: 60,
      kilnC: 21.4,
      plannedC: null,
      differenceC: null,
      slopeCPerHour: 90,
    });
  });

  it('says nothing of the kiln where the record has ended', () => {
    const readout = readoutAt(trace, { alignment: null }, 500);
    expect(readout).toMatchObject({ atSeconds: 500, kilnC: null, slopeCPerHour: null });
    expect(readoutWords(readout, null, speechIn('C')).line).toBe('8 min; no reading');
  });

  it('holds the kiln against the plan', () => {
    const first = good.alignment!.planned[0]!;
    const begun = {
      ...trace,
      atSeconds: Float64Array.of(0, first.atSeconds, first.atSeconds + 60),
    };
    const readout = readoutAt(begun, good, first.atSeconds);
    expect(readout.plannedC).toBeCloseTo(first.celsius, 9);
    expect(readout.differenceC).toBeCloseTo(21.4 - first.celsius, 9);
  });

  it('holds the reading at the end of the plan against its end, and no later one', () => {
    const [start, end] = [celsius(20), celsius(23)];
    const planned = [
      { atSeconds: seconds(5), celsius: start },
      { atSeconds: seconds(50), celsius: end },
    ];
    const ended = { alignment: { ...good.alignment!, planned } };
    expect(readoutAt(trace, ended, 60)).toMatchObject({ plannedC: 23 });
    expect(readoutAt(trace, ended, 120)).toMatchObject({ plannedC: null, differenceC: null });
    expect(readoutAt(trace, ended, 0)).toMatchObject({ plannedC: 20 });
  });
});

describe('its words', () => {
  const readout = {
    atSeconds: 3720,
    kilnC: 100,
    plannedC: 110,
    differenceC: -10,
    slopeCPerHour: -45,
  };

  it('come in the reader’s unit; a difference and a slope get no 32', () => {
    expect(readoutWords(readout, '2026-03-14T06:50:00', speechIn('C'))).toEqual({
      time: '1 h 02 min',
      clock: '07:52',
      kiln: '100 °C',
      planned: '110 °C',
      difference: '−10 °C',
      slope: '−45 °C/h',
      line: '1 h 02 min, 07:52; kiln 100 °C; planned 110 °C; difference −10 °C; slope −45 °C/h',
    });
    expect(readoutWords(readout, null, speechIn('F'))).toMatchObject({
      kiln: '212 °F',
      planned: '230 °F',
      difference: '−18 °F',
      slope: '−81 °F/h',
    });
  });

  it('give a rising slope its sign and a flat one none', () => {
    const slope = (rate: number) =>
      readoutWords({ ...readout, slopeCPerHour: rate }, null, speechIn('C')).slope;
    expect(slope(12)).toBe('+12 °C/h');
    expect(slope(0.01)).toBe('0 °C/h');
  });
});
