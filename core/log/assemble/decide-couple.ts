import type { Account } from '../account.ts';
import type { TableSample } from '../columns/sample.ts';
import type { ReasonId } from '../ids.ts';
import type { ChannelUnit, CoupleType, ReadingDecisions } from '../../model/options.ts';
import { COUPLE_TYPES } from '../../model/options.ts';
import { Refusal } from '../../model/refusal.ts';
import {
  coldJunctionInName,
  coupleTypeFor,
  coupleTypeIn,
  coupleTypesIn,
  declaredColdJunction,
  textsOf,
} from '../text/couple-text.ts';
import { isVoltage } from '../text/unit-text.ts';
import type { Couple } from './couple.ts';

/** Taken for the cold end where nothing says how warm it was (chosen: a room beside a kiln). */
const ASSUMED_COLD_C = 25;

interface Decided<Value> {
  readonly value: Value;
  readonly why: ReasonId;
  readonly certainty: number;
}

/** What the person says of the couple: of this log, and of the kiln. */
export interface CoupleSaid {
  readonly decisions: ReadingDecisions;
  readonly known?: CoupleType | undefined;
}

/**
 * The couple type of a column or channel: as the person says of the log, its name, what the person
 * knows of the kiln, or the lines above the table, where they name one type or one for this column.
 */
export const coupleTypeOf = (
  name: string,
  sample: TableSample,
  { decisions, known }: CoupleSaid,
): Decided<CoupleType> | null => {
  if (decisions.coupleType !== undefined) {
    return { value: decisions.coupleType, why: 'given', certainty: 1 };
  }
  const byName = coupleTypeIn([name]);
  if (byName !== null) return { value: byName, why: 'header', certainty: 0.97 };
  if (known !== undefined) return { value: known, why: 'given', certainty: 0.95 };
  const texts = textsOf(sample.preamble);
  const byPreamble = coupleTypeIn(texts) ?? coupleTypeFor(name, sample.preamble);
  return byPreamble === null ? null : { value: byPreamble, why: 'preamble', certainty: 0.9 };
};

/** @throws Refusal `no-temperature`, always: nothing says which couple gave the voltages of `name`. */
export const refuseCouple = (name: string, unit: ChannelUnit, sample: TableSample): never => {
  const what = unit === 'uV' ? 'microvolts' : 'millivolts';
  const types = coupleTypesIn(textsOf(sample.preamble));
  const why =
    types.length > 1
      ? `the lines above the table name several couples (${types.join(', ')})`
      : 'nothing in the file says of which couple';
  throw new Refusal(
    'no-temperature',
    `the readings in “${name}” are ${what}, and ${why}; give the couple type ` +
      `(${COUPLE_TYPES.join(', ')})`,
  );
};

/** The rows' cold ends as a column says, or null without one. */
export interface ColdColumn {
  readonly name: string;
  readonly why: ReasonId;
  readonly celsius: Float64Array;
}

const accountForColumn = ({ name, why }: ColdColumn, account: Account): void => {
  const certainty = why === 'given' ? 1 : why === 'name' ? 0.95 : 0.6;
  account.decide('cold-junction-column', name, why, certainty);
};

const saidInFile = (
  name: string,
  sample: TableSample,
): Decided<number | 'compensated' | 'raw'> | null => {
  const byName = coldJunctionInName(name);
  if (byName !== null) return { value: byName, why: 'header', certainty: 0.95 };
  const byPreamble = declaredColdJunction(sample.preamble);
  return byPreamble === null ? null : { value: byPreamble, why: 'preamble', certainty: 0.9 };
};

/** Decides where the cold end stood, °C, and accounts for it. */
const decideCold = (
  name: string,
  sample: TableSample,
  column: ColdColumn | null,
  decisions: ReadingDecisions,
  account: Account,
): Couple['coldC'] => {
  const { coldJunctionC } = decisions;
  if (coldJunctionC !== undefined) {
    account.decide('cold-junction', String(coldJunctionC), 'given', 1);
    return coldJunctionC;
  }
  const said = saidInFile(name, sample);
  if (said?.value === 'compensated' && column?.why !== 'given') {
    account.decide('cold-junction', 'compensated', said.why, said.certainty);
    return 0;
  }
  if (column !== null) {
    accountForColumn(column, account);
    return column.celsius;
  }
  if (typeof said?.value === 'number') {
    account.decide('cold-junction', String(said.value), said.why, said.certainty);
    return said.value;
  }
  account.decide('cold-junction', String(ASSUMED_COLD_C), 'nothing-decides', 0.3);
  account.warn('cold-junction-assumed');
  return ASSUMED_COLD_C;
};

/**
 * The couple behind the voltages of a column or channel called `name`.
 *
 * @throws Refusal `no-temperature` where nothing says its type
 */
export const decideCouple = (
  name: string,
  unit: 'mV' | 'uV',
  sample: TableSample,
  column: ColdColumn | null,
  said: CoupleSaid,
  account: Account,
): Couple => {
  const type = coupleTypeOf(name, sample, said) ?? refuseCouple(name, unit, sample);
  account.decide('couple-type', type.value, type.why, type.certainty);
  return { type: type.value, coldC: decideCold(name, sample, column, said.decisions, account) };
};

/**
 * Refuses what was said of a couple where it has no use.
 *
 * @throws Refusal `bad-option`
 */
export const refuseCoupleOptions = (unit: ChannelUnit, decisions: ReadingDecisions): void => {
  const { coupleType, coldJunctionC, coldJunctionColumn } = decisions;
  if (coldJunctionC !== undefined && coldJunctionColumn != null) {
    throw new Refusal(
      'bad-option',
      'the cold junction has a column and a temperature; give one of them',
    );
  }
  if (isVoltage(unit) || (coupleType ?? coldJunctionC) === undefined) return;
  const what = coupleType === undefined ? 'a cold junction' : 'a couple type';
  throw new Refusal(
    'bad-option',
    `the readings are degrees already; ${what} is only for millivolts (then give the unit too)`,
  );
};
