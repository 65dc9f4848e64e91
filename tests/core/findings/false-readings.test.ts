import { expect, test } from 'vitest';
import { isFalseReading } from '../../../core/findings/false-readings.ts';
import { REPAIR_KINDS } from '../../../core/model/trace.ts';

test('readings are false where the temperature is, not where the clock is', () => {
  expect(REPAIR_KINDS.filter((kind) => isFalseReading({ kind }))).toEqual([
    'spike',
    'dropout',
    'out-of-range',
  ]);
});
