import { MOST_KEPT_RULES, zKeptRules, type KeptRules, type Sent } from './contract.ts';
import { keptJson } from './kept-json.ts';

const file = keptJson('reading-rules.json', zKeptRules);

/** The reading rules of a person, one for each shape of file; the oldest goes where there are too many. */
export const keptRules = {
  read: (folder: string): KeptRules => file.read(folder) ?? [],

  /** Keeps a rule in the place of an earlier one for the same shape. */
  keep: (folder: string, rule: Sent<'keep-rule'>): KeptRules => {
    const others = keptRules.read(folder).filter(({ shape }) => shape !== rule.shape);
    const kept = [rule, ...others].slice(0, MOST_KEPT_RULES);
    file.keep(folder, kept);
    return kept;
  },

  forget: (folder: string, { shape: forgotten }: Sent<'forget-rule'>): KeptRules => {
    const kept = keptRules.read(folder).filter(({ shape }) => shape !== forgotten);
    file.keep(folder, kept);
    return kept;
  },
};
