import type { ColumnPlan } from '../columns/column-plan.ts';
import type { TableSample } from '../columns/sample.ts';
import { timeColumnsOf } from '../columns/time-plan.ts';
import { MAX_NAME_CHARS } from '../limits.ts';
import type { Log } from '../../model/log.ts';
import { temperatureScale } from '../text/unit-text.ts';
import type { ShownColumn, ShownRole } from './shown.ts';

/** Columns beyond these are not shown (chosen: far more than anyone can look through). */
const MOST_COLUMNS = 60;
const CELLS_SHOWN = 3;
const CELL_CHARS = 40;

const cut = (text: string, most: number): string =>
  text.length > most ? `${text.slice(0, most)}…` : text;

const cellsOf = ({ rows }: TableSample, column: number): string[] => {
  const cells: string[] = [];
  for (let row = 0; row < rows.length && cells.length < CELLS_SHOWN; row += 1) {
    const cell = rows[row]![column] ?? '';
    if (cell !== '') cells.push(cut(cell, CELL_CHARS));
  }
  return cells;
};

const roleIn = ({ time, roles }: ColumnPlan, column: number): ShownRole | null => {
  if (timeColumnsOf(time).includes(column)) return 'time';
  if (column === roles.temperature) return 'temperature';
  if (column === roles.setpoint?.column) return 'setpoint';
  if (column === roles.output?.column) return 'output';
  return roles.zones.includes(column) ? 'zone' : null;
};

/** The columns of a table with what was made of each; `plan` and `log` as far as there are any. */
export const shownColumns = (
  sample: TableSample,
  plan: ColumnPlan | null,
  log: Log | null,
): ShownColumn[] =>
  sample.names.slice(0, MOST_COLUMNS).map((name, column) => {
    const channel = log?.source.channels.find((one) => one.column === column && one.chosen);
    const isAlone = sample.names.filter((other) => other === name).length === 1;
    const role = plan === null ? null : roleIn(plan, column);
    return {
      name: name === '' ? `column ${column + 1}` : cut(name, MAX_NAME_CHARS),
      called: name !== '' && isAlone ? name : `column ${column + 1}`,
      cells: cellsOf(sample, column),
      role: role ?? (channel?.role === 'cold-junction' ? 'cold-junction' : null),
      unit: channel?.unit ?? temperatureScale(sample.units[column] ?? null),
    };
  });
