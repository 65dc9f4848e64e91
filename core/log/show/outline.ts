import { Account } from '../account.ts';
import type { Text } from '../bytes/text.ts';
import type { TableSample } from '../columns/sample.ts';
import { decideDialect } from '../delimited/decide-dialect.ts';
import { layOut, type Layout } from '../delimited/layout.ts';
import { sampleLines } from '../delimited/sample-lines.ts';
import type { ReadingDecisions } from '../../model/options.ts';
import { looksLikeJson } from '../json/read-json.ts';
import { Refusal } from '../../model/refusal.ts';

/** As far as a text that was refused could be understood. */
export interface Outline {
  readonly account: Account;
  readonly layout: Layout | null;
  readonly sample: TableSample | null;
}

const attempt = (text: Text, decisions: ReadingDecisions): Outline => {
  const account = new Account();
  const lines = sampleLines(text);
  const survey = decideDialect(lines, decisions, account);
  const layout = survey === null ? null : layOut(lines, survey, decisions, account);
  return { account, layout, sample: layout?.sample ?? null };
};

/**
 * What stands where in a text that could not be read to its end; what a decision of the person
 * makes impossible is left out.
 */
export const outlineOf = (text: Text, decisions: ReadingDecisions): Outline => {
  const nothing = { account: new Account(), layout: null, sample: null };
  if (looksLikeJson(text)) return nothing;
  for (const tried of [decisions, {}]) {
    try {
      return attempt(text, tried);
    } catch (cause) {
      if (!(cause instanceof Refusal)) throw cause;
    }
  }
  return nothing;
};
