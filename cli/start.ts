import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { processIo } from './process-io.ts';
import { projectFolder, startPage } from './start-page.ts';
import { workersOf } from './workers.ts';

const here = import.meta.url;
const project = projectFolder(dirname(fileURLToPath(here)));
/** npm runs scripts in the project's folder and keeps here where the person called it from. */
const where = process.env['INIT_CWD'] ?? process.cwd();
const args = process.argv.slice(2);

process.exitCode = await startPage(args, processIo(), workersOf(here), project, where);
