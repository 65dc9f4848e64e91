import type { Decision } from '../model/source.ts';
import type { AssumptionId, DecisionId, ReasonId, WarningId } from './ids.ts';

/** Gathers how a file was read, in the order in which it was decided. */
export class Account {
  readonly #decisions = new Map<DecisionId, Decision>();
  readonly #warnings = new Set<WarningId>();
  readonly #assumptions = new Set<AssumptionId>();

  /** Notes a decision; one made again (on a second look at the file) replaces the first. */
  decide(what: DecisionId, choice: string, why: ReasonId, certainty: number): void {
    this.#decisions.set(what, { what, choice, why, certainty });
  }

  warn(id: WarningId): void {
    this.#warnings.add(id);
  }

  assume(id: AssumptionId): void {
    this.#assumptions.add(id);
  }

  /** Takes back what was assumed of the day order, where more of the file has settled it. */
  settleDayOrder(order: string): void {
    this.#warnings.delete('day-order-assumed');
    this.#assumptions.delete('day-first');
    this.#assumptions.delete('month-first');
    this.decide('day-order', order, 'part-over-twelve', 0.95);
  }

  decisions(): Decision[] {
    return [...this.#decisions.values()];
  }

  warnings(): WarningId[] {
    return [...this.#warnings];
  }

  assumptions(): AssumptionId[] {
    return [...this.#assumptions];
  }
}
