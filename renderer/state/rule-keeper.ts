import type { AnalysisDocument } from '../../core/model/document.ts';
import type { ReadingDecisions } from '../../core/model/options.ts';
import type { ReadingRule } from '../../core/model/reading-rule.ts';
import type { KeptRules } from '../host/interface.ts';
import type { LogFile } from '../worker/protocol.ts';
import type { OpenFiring } from './firing.ts';

const LONGEST_NAME = 200;

/** What holds for every file of a shape: not which of several firings, nor the day of one. */
const lasting = ({
  firing: _firing,
  firstDate: _day,
  ...decisions
}: ReadingDecisions): ReadingDecisions => decisions;

/**
 * The rule to keep of a firing whose reading was put right; null where nothing was, or it is kept
 * just so. A rule that is there for the shape keeps its name.
 */
export const ruleToKeep = (firing: OpenFiring, rules: KeptRules): ReadingRule | null => {
  const { shape, document, log } = firing;
  const decisions = lasting(document.options.reading ?? {});
  if (shape === null || Object.keys(decisions).length === 0) return null;
  const kept = rules.find((rule) => rule.shape === shape);
  if (JSON.stringify(kept?.decisions) === JSON.stringify(decisions)) return null;
  const name = kept?.name ?? `like ${log.fileName}`.slice(0, LONGEST_NAME);
  return { name, shape, decisions };
};

/** The rule by which a log was read, as long as it is read just so. */
export const stillBy = (
  before: OpenFiring | null,
  log: LogFile,
  { options: { reading } }: AnalysisDocument,
): ReadingRule | null =>
  before?.log === log && JSON.stringify(reading) === JSON.stringify(before.rule?.decisions)
    ? before.rule
    : null;
