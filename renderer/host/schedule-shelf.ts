import type { Host } from './interface.ts';
import { ask, type Wire } from './transport.ts';

/** The schedules that the host keeps, the same over every wire. */
export const scheduleShelf = (wire: Wire): Pick<Host, 'keepSchedule' | 'forgetSchedule'> => ({
  keepSchedule: (schedule, insteadOf) => ask(wire, 'keep-schedule', { schedule, insteadOf }),
  forgetSchedule: (name) => ask(wire, 'forget-schedule', { name }),
});
