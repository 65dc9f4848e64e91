import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { processIo } from './process-io.ts';
import { projectFolder, startPage } from './start-page.ts';

const here = import.meta.url;
const workerUrl = new URL(`worker.${here.endsWith('.ts') ? 'ts' : 'js'}`, here);
const project = projectFolder(dirname(fileURLToPath(here)));
const where = process.env['INIT_CWD'] ?? process.cwd();

process.exitCode = await startPage(process.argv.slice(2), processIo(), workerUrl, project, where);
