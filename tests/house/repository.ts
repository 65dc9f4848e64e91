import { execFileSync } from 'node:child_process';
import { readFileSync, readdirSync } from 'node:fs';
import path from 'node:path';
import { z } from 'zod';

/** The repository's top folder. */
export const ROOT = path.resolve(import.meta.dirname, '../..');

const UNTRACKED = /^(node_modules|dist|coverage|reports|\.git)(\/|$)/;

/** The text of a file named from the top folder. */
export const textOf = (file: string): string => readFileSync(path.join(ROOT, file), 'utf8');

const forwardSlashes = (file: string): string => file.split(path.sep).join('/');

/** Every file below a folder, named from the top folder with forward slashes, sorted. */
export const filesBelow = (folder: string): string[] =>
  readdirSync(path.join(ROOT, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => forwardSlashes(path.relative(ROOT, path.join(entry.parentPath, entry.name))))
    .sort();

/** Every committed file; in a copy without git, every file that is not installed or built. */
export const committedFiles = (): string[] => {
  try {
    const listed = execFileSync('git', ['ls-files', '-z'], {
      cwd: ROOT,
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'ignore'],
    });
    return listed.split('\0').filter((file) => file !== '');
  } catch {
    return filesBelow('.').filter((file) => !UNTRACKED.test(file));
  }
};

const zReason = z.string().min(20);
const zAllowed = z.strictObject({
  imports: z.array(z.strictObject({ from: z.string(), to: z.string(), reason: zReason })),
  untestedModules: z.array(z.strictObject({ module: z.string(), reason: zReason })),
  longFiles: z.array(z.strictObject({ file: z.string(), reason: zReason })),
});

/** The exceptions to the house rules, each with its reason: tests/house/allowed.json. */
export const ALLOWED = zAllowed.parse(JSON.parse(textOf('tests/house/allowed.json')));

/**
 * Holds what breaks a rule against what is allowed to. Both lists of the result must be empty: a
 * breach that nobody allowed, and an allowance that nothing needs any more.
 */
export const weighed = (
  breaches: readonly string[],
  allowances: readonly string[],
): { unexplained: string[]; unused: string[] } => ({
  unexplained: breaches.filter((breach) => !allowances.includes(breach)),
  unused: allowances.filter((allowance) => !breaches.includes(allowance)),
});
