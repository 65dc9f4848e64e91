import { describe, expect, it } from 'vitest';
import { SENSOR_WORDINGS } from '../../../../core/wording/findings/sensor.ts';
import { topic } from '../builders.ts';

describe('the wordings of the couple', () => {
  it('say how long there was no reading', () => {
    expect(
      SENSOR_WORDINGS['sensor-open'].title(topic('sensor-open', { openMinutes: 12 })).text,
    ).toBe('The thermocouple gave no reading for 12 min, 9 h 00 min into the log.');
  });

  it('say of many stretches their sum, how many and the longest', () => {
    const figures = { openMinutes: 108, longestMinutes: 2, times: 54 };
    expect(SENSOR_WORDINGS['sensor-open'].title(topic('sensor-open', figures)).text).toBe(
      'The thermocouple gave no reading for 1 h 48 min in 54 pieces, the longest 2 min, the first 9 h 00 min into the log.',
    );
  });

  it('give the worked example of a wrong type as computed from the reference functions', () => {
    // Type S wire at 1222 °C read as type K with a cold junction at 25 °C shows 321 °C
    // (reference/trade.md, computed from the ITS-90 functions).
    const why = SENSOR_WORDINGS['sensor-wrong-type'].why(topic('sensor-wrong-type'));
    expect(why).toContain('321 °C');
    expect(why).toContain('1222 °C');
    expect(SENSOR_WORDINGS['sensor-wrong-type'].why(topic('sensor-wrong-type', {}, 'F'))).toContain(
      '610 °F',
    );
  });
});
