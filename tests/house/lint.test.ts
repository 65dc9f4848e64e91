import { ESLint, Linter } from 'eslint';
import { parser } from 'typescript-eslint';
import { expect, test } from 'vitest';
import { ALLOWED, ROOT, textOf } from './repository.ts';

/** The rule on long files as it stands for files without an exception. */
const sizeRule = async (): Promise<Linter.RuleEntry> => {
  const eslint = new ESLint({ cwd: ROOT });
  const config = (await eslint.calculateConfigForFile('core/units.ts')) as Linter.Config;
  const rule = config.rules?.['max-lines'];
  if (rule === undefined) throw new Error('eslint.config.js sets no limit on a file');
  return rule;
};

const isLong = (rule: Linter.RuleEntry, file: string): boolean => {
  const config: Linter.Config = {
    files: ['**/*'],
    languageOptions: { parser },
    rules: { 'max-lines': rule },
  };
  const messages = new Linter().verify(textOf(file), config, file);
  return messages.some(({ ruleId }) => ruleId === 'max-lines');
};

test('every file allowed to be long still is', async () => {
  const rule = await sizeRule();
  const allowed = ALLOWED.longFiles.map(({ file }) => file);
  expect(allowed.filter((file) => !isLong(rule, file))).toEqual([]);
});

test('the limit is 300 lines that are neither blank nor comment', async () => {
  expect(await sizeRule()).toEqual([2, { max: 300, skipBlankLines: true, skipComments: true }]);
});
