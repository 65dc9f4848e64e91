import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readLog } from '../../../core/log/read-log.ts';
import { COUPLE_TYPES, type CoupleType } from '../../../core/model/options.ts';
import { coupleRange } from '../../../core/thermocouple/its90.ts';
import { utf8 } from './helpers.ts';
import { voltageOf } from './voltages.ts';
import { firings, printedIn, type Firing } from './written-logs.ts';

/** A log of a firing with one column of readings. */
const logOf = ({ startMillis, stepSeconds, celsius }: Firing, name: string, cells: string[]) => {
  const rows = celsius.map((_, row) => {
    const stamp = new Date(startMillis + row * stepSeconds * 1000).toISOString();
    return `${stamp.slice(0, 19)},${cells[row]}`;
  });
  return utf8([`Time,${name}`, ...rows, ''].join('\n'));
};

const furthest = (one: Float64Array, other: readonly number[]): number =>
  Math.max(...other.map((value, row) => Math.abs(value - one[row]!)));

test('copies of a log in °C, °F and K agree to what their last digit leaves open', () => {
  fc.assert(
    fc.property(firings, (firing) => {
      for (const unit of ['C', 'F', 'K'] as const) {
        const cells = firing.celsius.map((celsius) => printedIn(celsius, unit).toFixed(2));
        const log = readLog(logOf(firing, `Kiln (${unit === 'K' ? 'K' : `°${unit}`})`, cells), 'x');
        expect(furthest(log.celsius, firing.celsius)).toBeLessThan(0.006);
      }
    }),
    { numRuns: 1000 },
  );
});

/** Couples that can be told from the room upwards; type B cannot. */
const TYPES = COUPLE_TYPES.filter((type): type is CoupleType => type !== 'B');

test('a copy in millivolts agrees, whatever the couple and its cold end', () => {
  const couples = fc.record({
    type: fc.constantFrom(...TYPES),
    coldC: fc.integer({ min: 0, max: 45 }),
    isMicro: fc.boolean(),
  });
  fc.assert(
    fc.property(firings, couples, (firing, { type, coldC, isMicro }) => {
      fc.pre(Math.max(...firing.celsius) <= coupleRange(type).toC);
      const cells = firing.celsius.map((celsius) => {
        const millivolts = voltageOf(celsius, type, coldC, 6);
        return isMicro ? (Number(millivolts) * 1000).toFixed(3) : millivolts;
      });
      const bytes = logOf(firing, `Type ${type} (${isMicro ? 'µV' : 'mV'})`, cells);
      const log = readLog(bytes, 'x', { coldJunctionC: coldC });
      expect(log.celsius).toHaveLength(firing.celsius.length);
      expect(furthest(log.celsius, firing.celsius)).toBeLessThan(0.01);
    }),
    { numRuns: 1000 },
  );
});
