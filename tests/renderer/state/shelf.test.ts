import { describe, expect, it, vi } from 'vitest';
import type { Schedule } from '../../../core/model/schedule.ts';
import { celsius } from '../../../core/units.ts';
import type { Host } from '../../../renderer/host/interface.ts';
import { createShelf } from '../../../renderer/state/shelf.ts';

const schedule = (name: string, targetC = 1000): Schedule => ({
  ...{ name, cone: null },
  segments: [{ rateCPerHour: 'full', minutes: null, targetC: celsius(targetC), holdMinutes: 0 }],
});

const setUp = () => {
  const keepSchedule = vi.fn<Host['keepSchedule']>((one) => Promise.resolve([one]));
  const forgetSchedule = vi.fn<Host['forgetSchedule']>(() => Promise.reject(new Error('gone')));
  const isBundled = ({ name }: Schedule) => name === 'Sample';
  const shelf = createShelf({ keepSchedule, forgetSchedule }, isBundled);
  return { shelf, sent: () => keepSchedule.mock.calls.map(([one, of]) => [one.name, of]) };
};

describe('the shelf', () => {
  it('keeps one that is being renamed in the place of its former self', async () => {
    const { shelf, sent } = setUp();
    for (const name of ['My schedule', 'Gl', 'Glaze']) await shelf.keep(schedule(name), 'made');
    expect(sent()).toEqual([
      ['My schedule', null],
      ['Gl', 'My schedule'],
      ['Glaze', 'Gl'],
    ]);
  });

  it('takes one with other legs and another name for another schedule', async () => {
    const { shelf, sent } = setUp();
    await shelf.keep(schedule('A'), 'made');
    await shelf.keep(schedule('B', 1200), 'made');
    expect(sent()).toEqual([
      ['A', null],
      ['B', null],
    ]);
  });

  it('leaves what was opened as it was when it is changed under another name', async () => {
    const { shelf, sent } = setUp();
    await shelf.keep(schedule('Opened'), 'opened');
    await shelf.keep(schedule('Opened 2'), 'made');
    expect(sent().at(-1)).toEqual(['Opened 2', null]);
  });

  it('keeps no sample, and bears a host that is gone', async () => {
    const { shelf, sent } = setUp();
    expect(await shelf.keep(schedule('Sample'), 'opened')).toBeNull();
    expect(sent()).toEqual([]);
    expect(await shelf.forget('A')).toBeNull();
  });

  it('gives a name to what has none', async () => {
    const { shelf, sent } = setUp();
    await shelf.keep(schedule('  '), 'opened');
    expect(sent()).toEqual([['My schedule', null]]);
  });
});
