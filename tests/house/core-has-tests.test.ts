import ts from 'typescript';
import { describe, expect, test } from 'vitest';
import { ALLOWED, filesBelow, textOf, weighed } from './repository.ts';

/** Whether anything is left of a module once its types are taken away. */
const hasRuntimeCode = (source: string): boolean => {
  const { outputText } = ts.transpileModule(source, {
    compilerOptions: {
      module: ts.ModuleKind.ESNext,
      target: ts.ScriptTarget.ES2023,
      verbatimModuleSyntax: true,
      removeComments: true,
    },
  });
  return outputText.replace('export {};', '').trim() !== '';
};

const testOf = (module: string): string => `tests/${module.replace(/\.ts$/, '.test.ts')}`;

describe('every core module that runs', () => {
  const modules = filesBelow('core').filter((file) => /(?<!\.d)\.ts$/.test(file));
  const running = modules.filter((file) => hasRuntimeCode(textOf(file)));
  console.log(`core: ${running.length} of ${modules.length} modules have code that runs`);

  test('is found', () => {
    expect(running).toContain('core/units.ts');
  });

  test('has a test of the same name', () => {
    const tests = new Set(filesBelow('tests/core'));
    const untested = running.filter((module) => !tests.has(testOf(module)));
    const allowances = ALLOWED.untestedModules.map(({ module }) => module);
    expect(weighed(untested, allowances)).toEqual({ unexplained: [], unused: [] });
  });
});

test('a module of types alone is told from one with code', () => {
  expect(hasRuntimeCode("import type { A } from './a.ts';\nexport interface B { a: A }")).toBe(
    false,
  );
  expect(hasRuntimeCode('/** A note. */\nexport type B = number;')).toBe(false);
  expect(hasRuntimeCode('export type B = number;\nexport const b: B = 1;')).toBe(true);
  expect(hasRuntimeCode("export * from './a.ts';")).toBe(true);
});
