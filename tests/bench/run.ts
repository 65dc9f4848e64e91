/**
 * `npm run bench [name…]`: runs the benches of this folder, or those named, one after the other and
 * prints their tables. It judges nothing: a bench that throws fails the run, a slow one does not.
 */
import { readdirSync } from 'node:fs';
import { cpus } from 'node:os';
import { pathToFileURL } from 'node:url';
import path from 'node:path';
import { printed, type Bench } from './bench.ts';

const SUFFIX = '.bench.ts';

const load = async (file: string): Promise<Bench> => {
  const module = (await import(pathToFileURL(path.join(import.meta.dirname, file)).href)) as {
    default: Bench;
  };
  return module.default;
};

const files = readdirSync(import.meta.dirname).filter((file) => file.endsWith(SUFFIX));
const benches = await Promise.all(files.sort().map(load));
const wanted = process.argv.slice(2);
const unknown = wanted.filter((name) => !benches.some((bench) => bench.name === name));
if (unknown.length > 0) {
  console.error(`No bench named ${unknown.join(', ')}.`);
  console.error(`There is: ${benches.map(({ name }) => name).join(', ')}.`);
  process.exit(2);
}

const { model = 'unknown processor' } = cpus()[0] ?? {};
console.log(`Node ${process.version}, ${cpus().length} × ${model.trim()}\n`);
for (const bench of benches) {
  if (wanted.length > 0 && !wanted.includes(bench.name)) continue;
  const tables = [await bench.run()].flat();
  for (const table of tables) console.log(printed(table));
}
