import type { z } from 'zod';
import { zReadingDecisions, type ReadingDecisions } from '../model/options.ts';
import { zReadingRule, type ReadingRule } from '../model/reading-rule.ts';
import { Refusal } from '../model/refusal.ts';
import { Account } from './account.ts';
import type { TableSample } from './columns/sample.ts';
import { decideDialect } from './delimited/decide-dialect.ts';
import { layOut } from './delimited/layout.ts';
import { sampleLines } from './delimited/sample-lines.ts';
import { openJson } from './json/open-json.ts';
import { looksLikeJson } from './json/read-json.ts';
import { openLogText, type ReadingEnvironment } from './read-log.ts';
import { fold } from './text/fold.ts';

/** A longer fingerprint is cut and ends in a hash of the whole (chosen). */
const MOST_SHOWN = 240;
/** Longer runs of digits in a name are a serial number or a date, not a place (chosen). */
const SERIAL = /\d{4,}|\d+(?:[.:/-]\d+)+/g;

/** A name without what differs from one export to the next: case, accents, blanks, serial numbers. */
const normalised = (name: string): string =>
  fold(name).replace(SERIAL, '#').replace(/\s+/g, ' ').trim();

/** FNV-1a of the UTF-16 units, 32 bits (G. Fowler, L. C. Noll and K.-P. Vo). */
const hashOf = (text: string): string => {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i += 1) {
    hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  }
  return (hash >>> 0).toString(16).padStart(8, '0');
};

const fingerprint = (format: string, delimiter: string, names: readonly string[]): string => {
  const whole = `${format} ${delimiter} ${names.length}: ${names.join(' | ')}`;
  return whole.length <= MOST_SHOWN ? whole : `${whole.slice(0, MOST_SHOWN)}… ${hashOf(whole)}`;
};

/** Columns without names are told by what kind of cells they hold. */
const columnsOf = ({ isNamed, names, profiles }: TableSample): readonly string[] =>
  isNamed ? names.map(normalised) : profiles.map(({ kind }) => `(${kind})`);

/**
 * A fingerprint of the shape of a file: its format, its delimiter, and the names of its columns.
 * Files that one logger exports share it, whatever they are called and whatever they hold. Of
 * delimited text only the sampled lines are looked at.
 *
 * @throws Refusal if the bytes are no text
 */
export const shapeOfFile = (bytes: Uint8Array, environment: ReadingEnvironment = {}): string => {
  const account = new Account();
  const text = openLogText(bytes, {}, environment, account);
  if (looksLikeJson(text)) {
    const opened = openJson(text.decode(0, text.bytes.length));
    if (opened !== null) {
      return fingerprint(opened.format, '', opened.table.names.map(normalised));
    }
  }
  const lines = sampleLines(text);
  const survey = decideDialect(lines, {}, account);
  const layout = survey === null ? null : layOut(lines, survey, {}, account);
  if (survey === null || layout === null) return 'no table';
  return fingerprint('delimited', survey.dialect.delimiter, columnsOf(layout.sample));
};

/** The rule for files of a shape: the last that was made; null if there is none. */
export const ruleFor = (rules: readonly ReadingRule[], shape: string): ReadingRule | null =>
  rules.findLast((rule) => rule.shape === shape) ?? null;

const NAMES = Object.keys(zReadingDecisions.shape).join(', ');

const refuse = (why: string): never => {
  throw new Refusal('bad-option', why);
};

/** What is wrong with a file of decisions, as a sentence. */
const whyNot = (issue: z.core.$ZodIssue): string => {
  const at = issue.path.filter((part) => part !== 'decisions').join('.');
  if (issue.code === 'unrecognized_keys') {
    return `there is no decision “${issue.keys.join('”, “')}”; there are ${NAMES}`;
  }
  if (at === '') return `it holds no decisions on reading: one object with some of ${NAMES}`;
  if (issue.code === 'invalid_value') {
    return `“${at}” is one of ${issue.values.map(String).join(', ')}`;
  }
  return `“${at}” does not fit: ${issue.message.toLowerCase()}`;
};

const parsed = (text: string): unknown => {
  try {
    return JSON.parse(text.replace(/^\ufeff/, ''));
  } catch {
    return refuse('it is no JSON');
  }
};

/**
 * The decisions in a file of them: an object as `options.reading` holds it, or a rule, whose
 * decisions are then taken whatever the shape of the log.
 *
 * @throws Refusal `bad-option` with what is wrong in it
 */
export const readDecisions = (text: string): ReadingDecisions => {
  const value = parsed(text);
  const isRule = typeof value === 'object' && value !== null && 'decisions' in value;
  const read = isRule ? zReadingRule.safeParse(value) : zReadingDecisions.safeParse(value);
  if (!read.success) return refuse(whyNot(read.error.issues[0]!));
  return 'decisions' in read.data ? read.data.decisions : read.data;
};
