import { describe, expect, it } from 'vitest';
import { REJECTED_ROWS_LISTED, zSource } from '../../../core/model/source.ts';
import { exampleDocument } from '../../fixtures/documents/load.ts';

const { source } = exampleDocument('good-firing');
const accepts = (change: object): boolean => zSource.safeParse({ ...source, ...change }).success;

describe('the account of reading', () => {
  it('adds up: rows kept and rejected are the rows read', () => {
    expect(accepts({ rowsRead: 10, rowsKept: 7, rowsRejected: 3 })).toBe(true);
    expect(accepts({ rowsRead: 10, rowsKept: 7, rowsRejected: 2 })).toBe(false);
  });

  it('counts every rejected row and lists the first of them', () => {
    const row = { line: 2, reason: 'no-reading', text: '12:00;---' };
    const rows = (count: number) => Array.from({ length: count }, () => row);
    expect(accepts({ rejected: rows(REJECTED_ROWS_LISTED) })).toBe(true);
    expect(accepts({ rejected: rows(REJECTED_ROWS_LISTED + 1) })).toBe(false);
  });

  it('counts lines from 1 and columns from 0', () => {
    const row = { line: 0, reason: 'no-reading', text: '' };
    expect(accepts({ rejected: [row] })).toBe(false);
    expect(accepts({ headerLine: 0 })).toBe(false);
    expect(accepts({ headerLine: null })).toBe(true);
    const channel = { name: 'Kiln', unit: 'C', role: 'temperature', chosen: true };
    expect(accepts({ channels: [{ ...channel, column: 0 }] })).toBe(true);
    expect(accepts({ channels: [{ ...channel, column: -1 }] })).toBe(false);
  });

  it('gives a certainty between 0 and 1 with each decision', () => {
    const decision = { what: 'delimiter', choice: ';', why: 'steady-width' };
    expect(accepts({ decisions: [{ ...decision, certainty: 0.8 }] })).toBe(true);
    expect(accepts({ decisions: [{ ...decision, certainty: 1.1 }] })).toBe(false);
    expect(accepts({ decisions: [decision] })).toBe(false);
  });
});
