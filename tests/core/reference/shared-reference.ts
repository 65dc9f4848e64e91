import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import type { EndPointTable, Obtained } from '../../../core/reference/published-table.ts';
import { ROOT } from '../../house/repository.ts';

/** The folder of reference values that the tables were typed from; it lies beside the project. */
const FOLDER = path.resolve(ROOT, '../shared/reference');

/** A test against a file of that folder; where the folder is not there it is skipped by name. */
export const againstShared = (what: string, file: string, check: (text: string) => void): void => {
  const there = existsSync(path.join(FOLDER, file));
  const name = there ? what : `${what} (not run: ../shared/reference/${file} is not here)`;
  test.skipIf(!there)(name, () => check(readFileSync(path.join(FOLDER, file), 'utf8')));
};

export interface EndPoint {
  readonly cone: string;
  readonly rateCPerHour: number;
  readonly endPointC: number;
  readonly obtained: Obtained;
}

/** A table's filled cells, one a row. */
export const cellsOf = (table: EndPointTable): EndPoint[] =>
  table.rows.flatMap(([cone, endPointsC, obtained]) =>
    endPointsC.flatMap((endPointC, column) =>
      endPointC === null
        ? []
        : [
            {
              cone,
              rateCPerHour: table.ratesCPerHour[column]!,
              endPointC,
              obtained: obtained ?? table.obtained,
            },
          ],
    ),
  );

/** One table of cones.csv in the same form. */
const cellsInCsv = (csv: string, table: string): EndPoint[] =>
  csv
    .trim()
    .split('\n')
    .map((line) => line.split(','))
    .filter(([name]) => name === table)
    .map(([, cone, rate, endPoint, , read]) => ({
      cone: cone!,
      rateCPerHour: Number(rate),
      endPointC: Number(endPoint),
      obtained: read === 'seen' ? 'seen' : 'memory',
    }));

const inOrder = (cells: readonly EndPoint[]): string[] =>
  cells
    .map((cell) => `${cell.cone} ${cell.rateCPerHour} ${cell.endPointC} ${cell.obtained}`)
    .sort();

/** Compares every cell, and how it was obtained, with the table of that name in cones.csv. */
export const againstCones = (
  table: EndPointTable,
  name: string,
  correct: (cell: EndPoint) => EndPoint = (cell) => cell,
): void =>
  againstShared(`holds every cell of ${name}`, 'cones.csv', (csv) => {
    const printed = cellsInCsv(csv, name).map(correct);
    expect(printed.length).toBeGreaterThan(0);
    expect(inOrder(cellsOf(table))).toEqual(inOrder(printed));
  });

/** Neighbours in a list as pairs. */
export const pairsOf = <Item>(items: readonly Item[]): [Item, Item][] =>
  items.slice(1).map((item, index) => [items[index]!, item]);

/** The pairs of neighbouring cones whose end point at a rate does not rise, named. */
export const notRisingWithCone = (table: EndPointTable): string[] =>
  table.ratesCPerHour.flatMap((rate) =>
    pairsOf(cellsOf(table).filter((cell) => cell.rateCPerHour === rate))
      .filter(([cooler, hotter]) => hotter.endPointC <= cooler.endPointC)
      .map(([cooler, hotter]) => `${cooler.cone} ${hotter.cone} at ${rate}`),
  );

/** The cones whose end point does not rise with the rate, named. */
export const notRisingWithRate = (table: EndPointTable): string[] =>
  table.rows
    .filter(([, endPointsC]) =>
      pairsOf(endPointsC.filter((endPoint) => endPoint !== null)).some(
        ([slow, fast]) => fast <= slow,
      ),
    )
    .map(([cone]) => cone);
