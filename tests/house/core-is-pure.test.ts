import path from 'node:path';
import { ESLint } from 'eslint';
import ts from 'typescript';
import { beforeAll, describe, expect, test } from 'vitest';
import { ROOT, filesBelow } from './repository.ts';

/**
 * Core's purity rests on its tsconfig (no Node, no DOM) and on lint (no clock, chance, locale or
 * time zone of the machine). Both can be lost without a sound: a package's types may drag Node's
 * globals in, a later block of the lint configuration may replace a rule. So each is tried here
 * with code that must be refused.
 */
describe('the compiler, with the whole of core in the program, refuses', () => {
  const probe = path.join(ROOT, 'core/outside-probe.ts');
  const refusals = new Map<string, string>();
  const outside = [
    ...['process', 'Buffer', 'require', '__dirname', 'setTimeout', 'console'],
    ...['document', 'window', 'navigator', 'localStorage', 'fetch', 'performance', 'Worker'],
  ];

  beforeAll(() => {
    const text = outside.map((name) => `void ${name};`).join('\n');
    const config = ts.getParsedCommandLineOfConfigFile(
      path.join(ROOT, 'core/tsconfig.json'),
      {},
      {
        ...ts.sys,
        onUnRecoverableConfigFileDiagnostic: (problem) => {
          throw new Error(ts.flattenDiagnosticMessageText(problem.messageText, '\n'));
        },
      },
    );
    if (config === undefined) throw new Error('core/tsconfig.json cannot be read');
    const host = ts.createCompilerHost(config.options);
    const withProbe: ts.CompilerHost = {
      ...host,
      fileExists: (file) => file === probe || host.fileExists(file),
      getSourceFile: (file, ...rest) =>
        file === probe
          ? ts.createSourceFile(file, text, ts.ScriptTarget.ES2023)
          : host.getSourceFile(file, ...rest),
    };
    const program = ts.createProgram([...config.fileNames, probe], config.options, withProbe);
    expect(program.getSourceFiles().length).toBeGreaterThan(filesBelow('core').length);
    for (const { messageText } of program.getSemanticDiagnostics(program.getSourceFile(probe))) {
      const message = ts.flattenDiagnosticMessageText(messageText, '\n');
      const name = /'(\w+)'/.exec(message)?.[1];
      if (name !== undefined) refusals.set(name, message);
    }
  });

  test.each(outside)('%s', (name) => {
    expect(refusals.get(name)).toContain('Cannot find name');
  });
});

describe('lint refuses', () => {
  const eslint = new ESLint({ cwd: ROOT });
  const rulesBroken = async (code: string): Promise<(string | null)[]> => {
    const [result] = await eslint.lintText(`${code}\n`, {
      filePath: 'core/units.ts',
    });
    return result?.messages.map(({ ruleId }) => ruleId) ?? [];
  };

  test.each([
    ['Date.now()', 'export const a = Date.now();', 'no-restricted-properties'],
    ['Date.parse(text)', "export const a = Date.parse('1 May');", 'no-restricted-properties'],
    ['new Date()', 'export const a = new Date();', 'no-restricted-syntax'],
    ['new Date(y, m, d)', 'export const a = new Date(2020, 1, 1);', 'no-restricted-syntax'],
    ['local time', 'export const a = new Date(0).getHours();', 'no-restricted-properties'],
    ['Math.random()', 'export const a = Math.random();', 'no-restricted-properties'],
    ['the locale', 'export const a = (1.5).toLocaleString();', 'no-restricted-properties'],
    ['Intl', 'export const a = new Intl.NumberFormat();', 'no-restricted-globals'],
    ['globalThis', 'export const a = globalThis;', 'no-restricted-globals'],
    ['node:fs', "import 'node:fs';", 'no-restricted-imports'],
    ['fs', "import 'fs';", 'no-restricted-imports'],
    ['electron', "import 'electron';", 'no-restricted-imports'],
    ['import()', "export const a = import('./units.ts');", 'no-restricted-syntax'],
    [
      'a floating promise',
      'void 0;\nPromise.resolve();',
      '@typescript-eslint/no-floating-promises',
    ],
  ])('%s', async (_what, code, rule) => {
    expect(await rulesBroken(code)).toContain(rule);
  });

  test('nothing in a pure module', async () => {
    expect(
      await rulesBroken('export const doubled = (value: number): number => value * 2;'),
    ).toEqual([]);
  });
});
