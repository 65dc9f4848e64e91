import { homedir } from 'node:os';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { userFolder } from '../electron/host/user-folder.ts';
import { processIo } from './process-io.ts';
import { projectFolder, startApp } from './start-app.ts';
import { workersOf } from './workers.ts';

const here = import.meta.url;
const { platform, env } = process;

process.exitCode = await startApp(process.argv.slice(2), processIo(), workersOf(here), {
  project: projectFolder(dirname(fileURLToPath(here))),
  /** npm runs scripts in the project's folder and keeps here where the person called it from. */
  where: env['INIT_CWD'] ?? process.cwd(),
  settings: userFolder({ platform, home: homedir(), env }),
});
