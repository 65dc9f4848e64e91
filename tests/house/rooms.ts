/**
 * The table of rooms: what each may import. DEVELOPERS.md explains it, boundaries.test.ts holds the
 * tree against it.
 */
export interface Room {
  readonly name: string;
  /** Which files live here; the first room that matches a file has it. */
  readonly holds: RegExp;
  /** Rooms it may import; its own files are always allowed. */
  readonly imports: readonly string[];
  /** Rooms of which it may import types, and nothing that runs. */
  readonly importsTypesOf?: readonly string[];
  /** npm packages it may import. */
  readonly packages: readonly string[] | 'any';
  /** Whether it may import Node's own modules. */
  readonly node: boolean;
}

/** The way of the data. A stage imports only what stands before it. */
const STAGES = [
  'numeric',
  'model',
  'reference',
  'thermocouple',
  'cones',
  'log',
  'trace',
  'schedule',
  'align',
  'heatwork',
  'thermal',
  'findings',
  'history',
] as const;

type Stage = (typeof STAGES)[number];

const MATHS = ['simple-statistics', 'zod'];

const PACKAGES: Partial<Record<Stage, readonly string[]>> = {
  numeric: [],
  model: ['zod'],
  reference: [],
  thermocouple: [],
};

const SCREEN = [
  ...['react', 'react-dom', 'react-aria-components', 'zustand', 'uplot'],
  ...['@tanstack/react-table', '@tanstack/react-virtual', '@fontsource-variable/source-sans-3'],
];

const stageRooms = STAGES.map((name, index) => ({
  name,
  holds: new RegExp(`^core/${name}/`),
  imports: ['units', ...STAGES.slice(0, index)],
  packages: PACKAGES[name] ?? MATHS,
  node: false,
}));

const CORE = ['units', ...STAGES, 'wording', 'report', 'analyze'];
const HOST = ['message names', 'contract', 'host'];

export const ROOMS: readonly Room[] = [
  {
    name: 'units',
    holds: /^core\/(units|globals\.d)\.ts$/,
    imports: [],
    packages: [],
    node: false,
  },
  ...stageRooms,
  {
    name: 'wording',
    holds: /^core\/wording\//,
    imports: ['units', 'model'],
    packages: [],
    node: false,
  },
  {
    name: 'report',
    holds: /^core\/report\//,
    imports: ['units', ...STAGES, 'wording'],
    packages: MATHS,
    node: false,
  },
  {
    name: 'analyze',
    holds: /^core\/analyze(-joined)?\.ts$/,
    imports: CORE,
    packages: [],
    node: false,
  },
  {
    // Apart from the contract, because the preload script needs the names without the schemas.
    name: 'message names',
    holds: /^electron\/host\/message-names\.ts$/,
    imports: [],
    packages: [],
    node: false,
  },
  {
    name: 'contract',
    holds: /^electron\/host\/contract\.ts$/,
    imports: [...CORE, 'message names'],
    packages: ['zod'],
    node: false,
  },
  {
    name: 'host',
    holds: /^electron\/host\//,
    imports: [...CORE, ...HOST],
    packages: ['chardet', 'zod'],
    node: true,
  },
  {
    name: 'electron',
    holds: /^electron\//,
    imports: [...CORE, ...HOST],
    packages: ['electron', 'zod'],
    node: true,
  },
  {
    name: 'cli',
    holds: /^cli\//,
    imports: [...CORE, ...HOST],
    packages: ['commander', 'zod'],
    node: true,
  },
  // The page's side of the contract: it parses what it receives, so it has more than the types.
  {
    name: 'page host',
    holds: /^renderer\/host\//,
    imports: [...CORE, 'message names', 'contract'],
    packages: ['zod'],
    node: false,
  },
  {
    name: 'renderer',
    holds: /^renderer\//,
    imports: [...CORE, 'page host'],
    importsTypesOf: ['contract'],
    packages: [...SCREEN, 'chardet', 'zod'],
    node: false,
  },
  // The test kiln makes the truth that the analysis is tried on, so the two share no line of code.
  { name: 'test kiln', holds: /^tests\/kiln\//, imports: [], packages: 'any', node: true },
  {
    name: 'tests',
    holds: /^tests\//,
    imports: [...CORE, ...HOST, 'electron', 'cli', 'page host', 'renderer', 'test kiln'],
    packages: 'any',
    node: true,
  },
];

/** The room that a file of the repository lives in, or null if it stands in none. */
export const roomOf = (file: string): Room | null =>
  ROOMS.find((room) => room.holds.test(file)) ?? null;
