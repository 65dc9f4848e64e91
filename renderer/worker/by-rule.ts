import type { ReadingEnvironment } from '../../core/log/read-log.ts';
import { ruleFor, shapeOfFile } from '../../core/log/rules.ts';
import type { ReadingRule } from '../../core/model/reading-rule.ts';
import { Refusal } from '../../core/model/refusal.ts';
import type { AnalysisRequest } from './protocol.ts';

/** The shape of a file as far as anyone needs it, and the rule that is kept for it. */
export interface Shaped {
  readonly shape: string | null;
  readonly rule: ReadingRule | null;
}

const NOT_ASKED: Shaped = { shape: null, rule: null };

/** Finds the rule for a log that nothing is told of; the shape alone where something is. */
export const shapedBy = (
  bytes: Uint8Array,
  { rules = [], options: { reading } }: Pick<AnalysisRequest, 'rules' | 'options'>,
  environment: ReadingEnvironment,
): Shaped => {
  if (rules.length === 0 && reading === undefined) return NOT_ASKED;
  try {
    const shape = shapeOfFile(bytes, environment);
    return { shape, rule: reading === undefined ? ruleFor(rules, shape) : null };
  } catch (cause) {
    if (cause instanceof Refusal) return NOT_ASKED;
    throw cause;
  }
};
