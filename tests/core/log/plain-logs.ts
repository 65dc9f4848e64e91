import { readLog } from '../../../core/log/read-log.ts';
import type { ReadingDecisions } from '../../../core/model/options.ts';
import { Refusal } from '../../../core/model/refusal.ts';

export const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text);

/** The refusal that reading ends in. */
export const refusal = (bytes: Uint8Array, decisions?: ReadingDecisions): Refusal => {
  try {
    readLog(bytes, 'firing.csv', decisions);
  } catch (thrown) {
    if (thrown instanceof Refusal) return thrown;
    throw thrown;
  }
  throw new Error('it was read');
};

export const CLIMB = Array.from({ length: 30 }, (_, i) => 20 + 31 * i + (i % 3) * 0.5);
export const stampAt = (minutes: number): string =>
  new Date(Date.UTC(2024, 2, 14, 6, minutes)).toISOString().slice(0, 19).replace('T', ' ');
export const plain = (
  values: readonly (number | string)[] = CLIMB,
  header = 'Time,Temp °C',
): string => [header, ...values.map((value, i) => `${stampAt(10 * i)},${value}`)].join('\n') + '\n';
