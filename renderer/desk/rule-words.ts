import type { ReadingDecisions } from '../../core/model/options.ts';
import { clean } from '../../core/report/clean.ts';
import { delimiterName, unitName } from '../../core/wording/reading-ids.ts';

type Words = { readonly [Key in keyof ReadingDecisions]-?: (told: never) => string };

const WORDS = {
  encoding: (told: string) => `characters as ${told}`,
  delimiter: (told: string) => `cells parted by ${delimiterName(told)}`,
  decimalMark: (told: string) => `a decimal ${told === ',' ? 'comma' : 'point'}`,
  headerLine: (told: number | null) =>
    told === null ? 'columns without names' : `columns named on line ${told}`,
  timeColumns: (told: string[]) => (told.length === 0 ? 'no times' : `time from ${quoted(told)}`),
  timeUnit: (told: string) => `times count ${told}`,
  timeFrom: (told: string) => `times are ${told}`,
  dayOrder: (told: string) => `dates ${told.replace('-', ' ')}`,
  timeZone: (told: string) => `the clock of ${told}`,
  firstDate: (told: string) => `begun on ${told}`,
  intervalSeconds: (told: number) => `a row every ${told} s`,
  firing: (told: number) => `firing ${told}`,
  temperatureColumn: (told: string) => `the kiln’s temperature from ${quoted([told])}`,
  unit: (told: string) => `readings in ${unitName(told)}`,
  setpointColumn: (told: string | null) => columnOr('setpoint', told),
  outputColumn: (told: string | null) => columnOr('output', told),
  coldJunctionColumn: (told: string | null) => columnOr('cold junction', told),
  zoneColumns: (told: string[]) =>
    told.length === 0 ? 'no other places' : `other places from ${quoted(told)}`,
  coupleType: (told: string) => `couple type ${told}`,
  coldJunctionC: () => 'a cold end of its own',
  noReadingMarks: (told: string[]) => `no reading where ${quoted(told)} stands`,
} satisfies Words;

const quoted = (names: readonly string[]): string =>
  names.map((name) => `“${clean(name)}”`).join(' and ');

const columnOr = (what: string, told: string | null): string =>
  told === null ? `no ${what}` : `the ${what} from ${quoted([told])}`;

/** What a rule decides, in a few words each. */
export const decisionsSaid = (decisions: ReadingDecisions): string =>
  Object.entries(decisions)
    .flatMap(([key, told]) => {
      const say = WORDS[key as keyof typeof WORDS] as (value: unknown) => string;
      return told === undefined ? [] : [say(told)];
    })
    .join(', ');
