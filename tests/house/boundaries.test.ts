import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { forbiddenImports, readGraph, type Graph, type Import } from './boundaries.ts';
import { ALLOWED, filesBelow, weighed } from './repository.ts';
import { roomOf } from './rooms.ts';

const FOLDERS = ['core', 'electron', 'renderer', 'cli', 'tests'];

describe('the tree', () => {
  let graph: Graph;
  beforeAll(async () => {
    graph = await readGraph(FOLDERS);
    const count = `${graph.files.length} modules, ${graph.imports.length} imports`;
    console.log(`boundaries: ${count}, ${ALLOWED.imports.length} allowed exceptions`);
  });

  test('is read whole: every source file on the disk is in the graph', () => {
    const isCode = (file: string): boolean => /\.(tsx?|js|mjs|cjs)$/.test(file);
    const onDisk = FOLDERS.flatMap(filesBelow).filter(isCode);
    expect(onDisk.length).toBeGreaterThan(0);
    expect(graph.files.filter(isCode)).toEqual(onDisk.sort());
  });

  test('has every source file in a room', () => {
    expect(graph.files.filter((file) => roomOf(file) === null)).toEqual([]);
  });

  test('has no import but those the table of rooms or tests/house/allowed.json allows', () => {
    const breaches = forbiddenImports(graph).map(({ from, to }) => `${from} → ${to}`);
    const allowances = ALLOWED.imports.map(({ from, to }) => `${from} → ${to}`);
    expect(weighed(breaches, allowances)).toEqual({ unexplained: [], unused: [] });
  });

  test('has no import that leads nowhere', () => {
    expect(graph.imports.filter(({ kind }) => kind === 'unresolved')).toEqual([]);
  });

  test('has no cycle of imports', () => {
    expect(graph.cycles).toEqual([]);
  });
});

describe('reading the imports', () => {
  let folder: string;
  beforeAll(() => {
    folder = mkdtempSync(path.join(tmpdir(), 'boundaries-'));
    mkdirSync(path.join(folder, 'core'));
    const write = (name: string, text: string) =>
      writeFileSync(path.join(folder, 'core', name), text);
    write('hen.ts', "import type { Egg } from './egg.ts';\nexport interface Hen { laid: Egg }\n");
    write('egg.ts', "import type { Hen } from './hen.ts';\nexport interface Egg { from: Hen }\n");
    write('cook.ts', "import { readFileSync } from 'node:fs';\nexport * from './pan.ts';\n");
    return () => rmSync(folder, { recursive: true });
  });

  test('sees types, Node modules, cycles and imports that lead nowhere', async () => {
    const graph = await readGraph(['core'], folder);
    expect(graph.files).toEqual(['core/cook.ts', 'core/egg.ts', 'core/hen.ts']);
    expect(graph.imports).toContainEqual({
      from: 'core/hen.ts',
      to: 'core/egg.ts',
      kind: 'file',
      typesOnly: true,
    });
    expect(graph.imports.map(({ kind }) => kind).sort()).toEqual([
      'file',
      'file',
      'node',
      'unresolved',
    ]);
    expect(graph.cycles.flat()).toContain('core/hen.ts');
  });
});

describe('the table of rooms', () => {
  const refuses = (from: string, to: string, more: Partial<Import> = {}): boolean =>
    forbiddenImports({ imports: [{ from, to, kind: 'file', typesOnly: false, ...more }] }).length >
    0;

  test('lets a stage import earlier stages only, types included', () => {
    expect(refuses('core/align/align.ts', 'core/trace/make-trace.ts')).toBe(false);
    expect(refuses('core/trace/make-trace.ts', 'core/align/align.ts')).toBe(true);
    expect(refuses('core/trace/noise.ts', 'core/align/align.ts', { typesOnly: true })).toBe(true);
    expect(refuses('core/units.ts', 'core/model/cone.ts')).toBe(true);
    expect(refuses('core/findings/underfired.ts', 'core/analyze.ts')).toBe(true);
  });

  test('keeps the wording to the document, and lets the report use both', () => {
    expect(refuses('core/wording/title.ts', 'core/model/document.ts')).toBe(false);
    expect(refuses('core/wording/title.ts', 'core/heatwork/dose.ts')).toBe(true);
    expect(refuses('core/report/text.ts', 'core/wording/title.ts')).toBe(false);
  });

  test('keeps core from the other rooms, Node and foreign packages', () => {
    expect(refuses('core/log/read-log.ts', 'electron/host/files.ts')).toBe(true);
    expect(refuses('core/log/read-log.ts', 'tests/kiln/kiln.ts')).toBe(true);
    expect(refuses('core/log/read-log.ts', 'fs', { kind: 'node' })).toBe(true);
    expect(refuses('core/trace/noise.ts', 'simple-statistics', { kind: 'package' })).toBe(false);
    expect(refuses('core/log/read-log.ts', 'chardet', { kind: 'package' })).toBe(true);
    expect(refuses('cli/afterfire.ts', 'electron/window.ts')).toBe(true);
  });

  test('lets the renderer have the types of the contract and nothing else of electron', () => {
    const contract = 'electron/host/contract.ts';
    expect(refuses('renderer/app.tsx', contract, { typesOnly: true })).toBe(false);
    expect(refuses('renderer/app.tsx', contract)).toBe(true);
    expect(refuses('renderer/app.tsx', 'electron/host/files.ts', { typesOnly: true })).toBe(true);
  });

  test('lets the page host parse by the contract, and the rest of the renderer use the page host', () => {
    expect(refuses('renderer/host/transport.ts', 'electron/host/contract.ts')).toBe(false);
    expect(refuses('renderer/host/transport.ts', 'electron/host/page.ts')).toBe(true);
    expect(refuses('renderer/host/transport.ts', 'renderer/app.tsx')).toBe(true);
    expect(refuses('renderer/app.tsx', 'renderer/host/host.ts')).toBe(false);
  });

  test('keeps the test kiln from the analysis it is the truth for', () => {
    expect(refuses('tests/kiln/wall.ts', 'core/units.ts')).toBe(true);
    expect(refuses('tests/kiln/wall.ts', 'tests/builders/trace.ts')).toBe(true);
    expect(refuses('tests/core/align/align.test.ts', 'tests/kiln/wall.ts')).toBe(false);
  });

  test('refuses an import that leads nowhere and a file in no room', () => {
    expect(refuses('core/log/read-log.ts', './gone.ts', { kind: 'unresolved' })).toBe(true);
    expect(refuses('core/helpers.ts', 'core/units.ts')).toBe(true);
  });
});
