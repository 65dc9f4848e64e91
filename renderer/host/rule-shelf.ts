import type { Host } from './interface.ts';
import { ask, type Wire } from './transport.ts';

/** The reading rules that the host keeps, the same over every wire. */
export const ruleShelf = (wire: Wire): Pick<Host, 'keepRule' | 'forgetRule'> => ({
  keepRule: (rule) => ask(wire, 'keep-rule', rule),
  forgetRule: (shape) => ask(wire, 'forget-rule', { shape }),
});
