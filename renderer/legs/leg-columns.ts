import { tableFeatures, type ColumnDef } from '@tanstack/react-table';
import type { LegCells, LegWords } from '../../core/wording/legs.ts';

/** Nothing is sorted or filtered: legs stand in order of time. The columns and their groups are all. */
export const legFeatures = tableFeatures({});

type Column = ColumnDef<typeof legFeatures, LegWords>;

/** What a cell says where a leg was not planned, or never ran. */
const NOTHING = '–';

const CELLS = [
  ['rate', 'rate'],
  ['to', 'to'],
  ['lasted', 'lasted'],
  ['ended', 'until'],
] as const satisfies readonly (readonly [keyof LegCells, string])[];

const column = (id: string, header: string, of: (leg: LegWords) => string): Column => ({
  id,
  header,
  accessorFn: of,
});

const sideColumns = (side: 'planned' | 'actual'): Column[] =>
  CELLS.map(([key, header]) =>
    column(`${side}-${key}`, header, (leg) => leg[side]?.[key] ?? NOTHING),
  );

const NUMBER = column('number', '#', (leg) => String(leg.number));
const NAME = column('name', 'leg', (leg) => leg.name);

/** The columns where a schedule was laid on the log, planned beside driven. */
export const PLANNED_COLUMNS: Column[] = [
  NUMBER,
  NAME,
  { id: 'planned', header: 'planned', columns: sideColumns('planned') },
  { id: 'actual', header: 'driven', columns: sideColumns('actual') },
  column('verdict', 'verdict', (leg) => leg.verdict),
];

/** The columns of the legs that the curve itself shows. */
export const TRACE_COLUMNS: Column[] = [NUMBER, NAME, ...sideColumns('actual')];
