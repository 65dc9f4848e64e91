import type { ShownColumn, ShownRole } from '../../core/log/show/shown.ts';
import type { ReadingDecisions } from '../../core/model/options.ts';
import type { ChoiceOf } from '../controls/choice.tsx';

/** What a column can be made; `clock` is the time of day beside a date. */
export type RoleChosen = ShownRole | 'clock' | 'none';

export const ROLE_CHOICES: readonly ChoiceOf<RoleChosen>[] = [
  { value: 'temperature', label: 'the kiln’s temperature' },
  { value: 'time', label: 'the time' },
  { value: 'clock', label: 'the time of day, beside the date' },
  { value: 'zone', label: 'another place in the kiln' },
  { value: 'setpoint', label: 'the setpoint' },
  { value: 'output', label: 'the controller’s output' },
  { value: 'cold-junction', label: 'the cold junction' },
  { value: 'none', label: 'nothing: leave it aside' },
];

type Change = { -readonly [Key in keyof ReadingDecisions]?: ReadingDecisions[Key] | undefined };

const called = (columns: readonly ShownColumn[], role: ShownRole): string[] =>
  columns.filter((column) => column.role === role).map((column) => column.called);

/** The role that a column has now, as it is chosen: of two columns of time the second is the clock. */
export const roleNow = (columns: readonly ShownColumn[], column: ShownColumn): RoleChosen => {
  if (column.role === 'time' && called(columns, 'time').indexOf(column.called) > 0) return 'clock';
  return column.role ?? 'none';
};

/** Takes a column out of what it was. */
const withoutRole = (columns: readonly ShownColumn[], { role, called: name }: ShownColumn) => {
  const others = (of: ShownRole): string[] => called(columns, of).filter((one) => one !== name);
  const change: Change = {};
  if (role === 'setpoint') change.setpointColumn = null;
  if (role === 'output') change.outputColumn = null;
  if (role === 'cold-junction') change.coldJunctionColumn = null;
  if (role === 'zone') change.zoneColumns = others('zone');
  if (role === 'time') change.timeColumns = others('time');
  if (role === 'temperature') change.temperatureColumn = undefined;
  return change;
};

/** What is to be told so that a column becomes something else. */
export const roleTold = (
  columns: readonly ShownColumn[],
  column: ShownColumn,
  to: RoleChosen,
): Change => {
  const change = withoutRole(columns, column);
  const name = column.called;
  const times = called(columns, 'time').filter((one) => one !== name);
  if (to === 'temperature') change.temperatureColumn = name;
  if (to === 'time') change.timeColumns = [name];
  if (to === 'clock') change.timeColumns = [...times.slice(0, 1), name];
  if (to === 'setpoint') change.setpointColumn = name;
  if (to === 'output') change.outputColumn = name;
  if (to === 'cold-junction') change.coldJunctionColumn = name;
  if (to === 'zone') {
    change.zoneColumns = [...called(columns, 'zone').filter((one) => one !== name), name];
  }
  return change;
};
