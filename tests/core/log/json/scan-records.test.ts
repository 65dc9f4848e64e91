import { describe, expect, test } from 'vitest';
import { scanRecords } from '../../../../core/log/json/scan-records.ts';

const many = Array.from({ length: 6000 }, (_, i) => ({ t: i, c: `a "b" {[${i}` }));

describe('one long list of records', () => {
  test('is found, alone or inside other things', () => {
    for (const value of [
      many,
      { unit: 'K', log: { rows: many, end: true } },
      many.map(({ t }) => [t, 20]),
    ]) {
      const text = JSON.stringify(value);
      const list = scanRecords(text)!;
      expect(list.records.length).toBe(6000);
      const last = text.slice(list.records.from(5999), list.records.to(5999));
      expect(JSON.stringify(JSON.parse(last)).includes('5999')).toBe(true);
    }
  });

  test('leaves the text around it', () => {
    const { around } = scanRecords(JSON.stringify({ unit: 'K', rows: many, n: 1 }))!;
    expect(JSON.parse(around)).toEqual({ unit: 'K', rows: [], n: 1 });
  });

  test('may be cut', () => {
    const text = JSON.stringify(many).slice(0, -8);
    const list = scanRecords(text)!;
    expect(list.records.length).toBe(6000);
    expect(list.records.to(5999)).toBe(text.length);
  });

  test('may hold lists of its own', () => {
    const nested = many.map(({ t }) => ({ t, zones: [{ c: 1 }, { c: 2 }] }));
    expect(scanRecords(JSON.stringify(nested))?.records.length).toBe(6000);
  });
});

describe('what is read whole instead', () => {
  test('short lists, several lists, and lists of numbers', () => {
    expect(scanRecords(JSON.stringify(many.slice(0, 100)))).toBeNull();
    expect(scanRecords(JSON.stringify({ a: many, b: many }))).toBeNull();
    expect(scanRecords(JSON.stringify({ t: many.map(({ t }) => t) }))).toBeNull();
    expect(scanRecords('')).toBeNull();
  });

  test('nothing beyond the limit of depth', () => {
    expect(() => scanRecords('['.repeat(100))).toThrow(
      expect.objectContaining({ code: 'not-readable' }),
    );
  });
});
