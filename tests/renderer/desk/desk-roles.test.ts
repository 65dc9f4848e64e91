import { describe, expect, it } from 'vitest';
import type { ShownColumn, ShownRole } from '../../../core/log/show/shown.ts';
import { roleNow, roleTold } from '../../../renderer/desk/desk-roles.ts';

const column = (called: string, role: ShownRole | null): ShownColumn => ({
  ...{ name: called, called, cells: [], unit: null },
  role,
});
const COLUMNS = [
  column('date', 'time'),
  column('clock', 'time'),
  column('top', 'temperature'),
  column('low', 'zone'),
  column('mid', 'zone'),
  column('set', 'setpoint'),
  column('note', null),
];
const [date, clock, top, low, , set, note] = COLUMNS as [
  ...[ShownColumn, ShownColumn, ShownColumn, ShownColumn, ShownColumn, ShownColumn, ShownColumn],
];

describe('the role of a column', () => {
  it('is the clock for the second of two columns of time, and none where it is left aside', () => {
    expect(COLUMNS.map((one) => roleNow(COLUMNS, one))).toEqual([
      ...['time', 'clock', 'temperature', 'zone', 'zone', 'setpoint', 'none'],
    ]);
  });

  it('is told as the decision that makes it so', () => {
    expect(roleTold(COLUMNS, note, 'temperature')).toEqual({ temperatureColumn: 'note' });
    expect(roleTold(COLUMNS, note, 'time')).toEqual({ timeColumns: ['note'] });
    expect(roleTold(COLUMNS, note, 'clock')).toEqual({ timeColumns: ['date', 'note'] });
    expect(roleTold(COLUMNS, note, 'zone')).toEqual({ zoneColumns: ['low', 'mid', 'note'] });
    expect(roleTold(COLUMNS, note, 'output')).toEqual({ outputColumn: 'note' });
    expect(roleTold(COLUMNS, note, 'cold-junction')).toEqual({ coldJunctionColumn: 'note' });
  });

  it('is given up for another', () => {
    expect(roleTold(COLUMNS, set, 'none')).toEqual({ setpointColumn: null });
    expect(roleTold(COLUMNS, low, 'setpoint')).toEqual({
      zoneColumns: ['mid'],
      setpointColumn: 'low',
    });
    expect(roleTold(COLUMNS, clock, 'none')).toEqual({ timeColumns: ['date'] });
    expect(roleTold(COLUMNS, date, 'none')).toEqual({ timeColumns: ['clock'] });
    expect(roleTold(COLUMNS, top, 'none')).toEqual({ temperatureColumn: undefined });
  });
});
