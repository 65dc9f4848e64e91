import {
  cruise,
  type ICruiseOptions,
  type ICruiseResult,
  type IModule,
  type IResolveOptions,
} from 'dependency-cruiser';
import { ROOT } from './repository.ts';
import { roomOf, type Room } from './rooms.ts';

/** One import statement, resolved. */
export interface Import {
  readonly from: string;
  /** The file it leads to, from the top folder; for a package or a Node module, its bare name. */
  readonly to: string;
  readonly kind: 'file' | 'package' | 'node' | 'unresolved';
  readonly typesOnly: boolean;
}

export interface Graph {
  readonly files: readonly string[];
  readonly imports: readonly Import[];
  /** Each cycle as its files in order. */
  readonly cycles: readonly (readonly string[])[];
}

type Dependency = IModule['dependencies'][number];

const kindOf = ({ dependencyTypes, couldNotResolve, coreModule }: Dependency): Import['kind'] => {
  if (couldNotResolve) return 'unresolved';
  if (coreModule) return 'node';
  return dependencyTypes.some((type) => type.startsWith('npm')) ? 'package' : 'file';
};

const packageName = (specifier: string): string =>
  specifier
    .split('/')
    .slice(0, specifier.startsWith('@') ? 2 : 1)
    .join('/');

const importOf = (from: string, dependency: Dependency): Import => {
  const kind = kindOf(dependency);
  const to = kind === 'package' ? packageName(dependency.module) : dependency.resolved;
  return { from, to, kind, typesOnly: dependency.dependencyTypes.includes('type-only') };
};

const WHAT_TO_READ: ICruiseOptions = {
  doNotFollow: { path: 'node_modules' },
  tsPreCompilationDeps: true,
  parser: 'tsc',
  validate: true,
  ruleSet: { forbidden: [{ name: 'cycle', severity: 'error', from: {}, to: { circular: true } }] },
};

const HOW_TO_RESOLVE: Partial<IResolveOptions> = {
  exportsFields: ['exports'],
  conditionNames: ['import', 'node', 'default', 'types'],
};

/**
 * Reads every import of the given top folders, those of types included. With a TypeScript it does
 * not know, dependency-cruiser finds no module and reports success: the caller counts.
 */
export const readGraph = async (folders: readonly string[], baseDir = ROOT): Promise<Graph> => {
  const { output } = await cruise([...folders], { ...WHAT_TO_READ, baseDir }, HOW_TO_RESOLVE);
  const { modules, summary } = output as ICruiseResult;
  const own = modules.filter(({ source }) => folders.some((top) => source.startsWith(`${top}/`)));
  return {
    files: own.map(({ source }) => source).sort(),
    imports: own.flatMap(({ source, dependencies }) =>
      dependencies.map((dependency) => importOf(source, dependency)),
    ),
    cycles: summary.violations.map(({ from, cycle }) => [
      from,
      ...(cycle ?? []).map(({ name }) => name),
    ]),
  };
};

const fileAllowed = (room: Room, to: string, typesOnly: boolean): boolean => {
  const target = roomOf(to);
  if (target === null) return false;
  if (target.name === room.name || room.imports.includes(target.name)) return true;
  return typesOnly && (room.importsTypesOf ?? []).includes(target.name);
};

const isAllowed = (room: Room, { to, kind, typesOnly }: Import): boolean => {
  if (kind === 'node') return room.node;
  if (kind === 'package') return room.packages === 'any' || room.packages.includes(to);
  return kind === 'file' && fileAllowed(room, to, typesOnly);
};

/** The imports that the table of rooms does not allow. */
export const forbiddenImports = (graph: Pick<Graph, 'imports'>): Import[] =>
  graph.imports.filter((link) => {
    const room = roomOf(link.from);
    return room === null || !isAllowed(room, link);
  });
