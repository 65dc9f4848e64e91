import type { ReadingDecisions } from '../../model/options.ts';
import { Refusal } from '../../model/refusal.ts';
import { quotedNames } from '../text/quoted-names.ts';
import { columnNamed, type TableSample } from './sample.ts';

/** The columns that a person names for the roles: null for none, undefined where left open. */
export interface GivenRoles {
  readonly temperature: number | undefined;
  readonly setpoint: number | null | undefined;
  readonly output: number | null | undefined;
  readonly coldJunction: number | null | undefined;
  readonly zones: readonly number[] | undefined;
  /** Names that are no column's, but stand in cells as a channel's of a long table does. */
  readonly channels: readonly string[];
}

export const NO_ROLES_GIVEN: GivenRoles = {
  temperature: undefined,
  setpoint: undefined,
  output: undefined,
  coldJunction: undefined,
  zones: undefined,
  channels: [],
};

/** @throws Refusal `bad-option`, always: there is no such column. */
export const refuseColumn = (sample: TableSample, wanted: string): never => {
  const names = quotedNames(sample.names);
  throw new Refusal('bad-option', `there is no column “${wanted}”; the columns are ${names}`);
};

const standsInCells = ({ rows, profiles }: TableSample, wanted: string): boolean =>
  profiles.some(
    ({ column, kind }) => kind === 'text' && rows.some((row) => row[column] === wanted),
  );

/** Resolves the names of columns, each of which can have one role only. */
class Resolver {
  readonly channels: string[] = [];
  readonly #sample: TableSample;
  readonly #taken: Map<number, string>;

  constructor(sample: TableSample, timeColumns: readonly number[]) {
    this.#sample = sample;
    this.#taken = new Map(timeColumns.map((column) => [column, 'the time']));
  }

  /** A column of numbers; undefined for a channel of a long table. */
  column(wanted: string, role: string): number | undefined {
    const column = columnNamed(this.#sample, wanted);
    if (column === null) {
      if (!standsInCells(this.#sample, wanted)) return refuseColumn(this.#sample, wanted);
      this.channels.push(wanted);
      return undefined;
    }
    if (this.#sample.profiles[column]?.numbers == null) {
      throw new Refusal('bad-option', `the column “${wanted}” holds no numbers`);
    }
    const other = this.#taken.get(column);
    if (other !== undefined) {
      const both = `the column “${wanted}” cannot be ${role}: it is ${other} already`;
      throw new Refusal('bad-option', both);
    }
    this.#taken.set(column, role);
    return column;
  }

  optional(wanted: string | null | undefined, role: string): number | null | undefined {
    return wanted == null ? wanted : this.column(wanted, role);
  }
}

/**
 * The columns that the person names, for a table whose times stand in `timeColumns`.
 *
 * @throws Refusal `bad-option` for a column that is not there, holds no numbers or has two roles.
 */
export const givenRoles = (
  sample: TableSample,
  decisions: ReadingDecisions,
  timeColumns: readonly number[],
): GivenRoles => {
  const resolver = new Resolver(sample, timeColumns);
  const { temperatureColumn, zoneColumns } = decisions;
  const temperature =
    temperatureColumn === undefined
      ? undefined
      : resolver.column(temperatureColumn, 'the kiln’s temperature');
  const setpoint = resolver.optional(decisions.setpointColumn, 'the setpoint');
  const output = resolver.optional(decisions.outputColumn, 'the output');
  const coldJunction = resolver.optional(decisions.coldJunctionColumn, 'the cold junction');
  const zones = zoneColumns
    ?.map((name) => resolver.column(name, 'a zone'))
    .filter((column) => column !== undefined);
  return { temperature, setpoint, output, coldJunction, zones, channels: resolver.channels };
};
