import { statSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { ROOT, committedFiles, textOf } from './repository.ts';

const zVersions = z.record(z.string(), z.string());
const zManifest = z.object({
  license: z.string(),
  engines: z.object({ node: z.string() }),
  scripts: z.record(z.string(), z.string()),
  dependencies: zVersions,
  devDependencies: zVersions,
});
const zLock = z.object({
  lockfileVersion: z.literal(3),
  packages: z.record(
    z.string(),
    z.object({
      version: z.string().optional(),
      resolved: z.string().optional(),
      integrity: z.string().optional(),
      dependencies: zVersions.optional(),
      devDependencies: zVersions.optional(),
    }),
  ),
});

const manifest = zManifest.parse(JSON.parse(textOf('package.json')));
const lock = zLock.parse(JSON.parse(textOf('package-lock.json')));
const versions = { ...manifest.dependencies, ...manifest.devDependencies };
const installed = Object.entries(lock.packages).filter(([name]) => name !== '');

describe('package.json', () => {
  test.each(Object.entries(versions))('pins %s exactly: %s', (_name, version) => {
    expect(version).toMatch(/^\d+\.\d+\.\d+$/);
  });

  test('has the scripts that README and DEVELOPERS.md speak of', () => {
    const named = 'dev build start typecheck lint test test:update bench samples check'.split(' ');
    expect(Object.keys(manifest.scripts).sort()).toEqual(named.sort());
  });

  test('is under the MIT licence, which stands beside it', () => {
    expect(manifest.license).toBe('MIT');
    expect(textOf('LICENSE')).toMatch(/^MIT License\n/);
  });
});

describe('the lock file', () => {
  test('wants what package.json wants', () => {
    const { dependencies, devDependencies } = lock.packages[''] ?? {};
    expect(dependencies).toEqual(manifest.dependencies);
    expect(devDependencies).toEqual(manifest.devDependencies);
  });

  test.each(Object.entries(versions))('installs %s at %s', (name, version) => {
    expect(lock.packages[`node_modules/${name}`]?.version).toBe(version);
  });

  test('names no registry, and holds every package to its checksum', () => {
    expect(installed.length).toBeGreaterThan(Object.keys(versions).length);
    expect(installed.filter(([, { resolved }]) => resolved !== undefined)).toEqual([]);
    expect(installed.filter(([, { integrity }]) => integrity === undefined)).toEqual([]);
  });
});

describe('what is committed', () => {
  const files = committedFiles();

  /** Lines of committed text that match, as `file:line`; a pattern here never matches itself. */
  const linesLike = (pattern: RegExp, from: readonly string[]): string[] =>
    from.flatMap((file) =>
      textOf(file)
        .split('\n')
        .flatMap((line, index) => (pattern.test(line) ? [`${file}:${index + 1}`] : [])),
    );

  test('stands in the rooms of the house and nowhere else', () => {
    const rooms = ['electron', 'renderer', 'core', 'sample-traces', 'tests', 'cli', '.ci'];
    const papers = ['README.md', 'DEVELOPERS.md', 'LICENSE', 'package.json', 'package-lock.json'];
    const tools = /^(tsconfig(\.\w+)?\.json|[\w.-]+\.config\.(ts|js)|\.\w+(\.json)?)$/;
    const strays = files
      .map((file) => file.split('/')[0] ?? '')
      .filter((top) => !rooms.includes(top) && !papers.includes(top) && !tools.test(top));
    expect([...new Set(strays)]).toEqual([]);
    for (const paper of papers) expect(files).toContain(paper);
  });

  test('names no path of one machine', () => {
    const tops = ['work', 'farm', 'tmp', 'home', 'Users', 'root'].join('|');
    const pattern = new RegExp(`(^|[^.a-zA-Z])/(${tops})/[A-Za-z.]`);
    expect(pattern.test(`at ${['', 'home', 'someone'].join('/')}`)).toBe(true);
    // Its checksums are chance letters and slashes.
    const checked = files.filter((file) => file !== 'package-lock.json');
    expect(linesLike(pattern, checked)).toEqual([]);
  });

  test('names no package registry', () => {
    const pattern = new RegExp(['registry\\.[a-z]+\\.', 'deb\\.deb', 'artifactory\\.'].join('|'));
    expect(pattern.test(['https://registry', 'example', 'org'].join('.'))).toBe(true);
    expect(linesLike(pattern, files)).toEqual([]);
  });
});

describe('the door for newcomers and for continuous integration', () => {
  test('is the two commands of the README, of which continuous integration runs the second', () => {
    const readme = textOf('README.md');
    expect(readme.indexOf('npm ci && npm start')).toBeGreaterThan(0);
    expect(readme.indexOf('npm ci && npm test')).toBeGreaterThan(0);
    expect(textOf('.ci/run').trimEnd().split('\n').at(-1)).toBe('npm ci && npm test');
  });

  test('can be run', () => {
    const isExecutable = (statSync(path.join(ROOT, '.ci/run')).mode & 0o111) !== 0;
    expect(isExecutable || process.platform === 'win32').toBe(true);
  });
});
