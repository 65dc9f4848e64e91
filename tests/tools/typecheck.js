/**
 * Type-checks every room by its own tsconfig (core without Node or DOM types, and so on), side by
 * side, and fails with the compiler's own output.
 */
import { spawn } from 'node:child_process';
import { createRequire } from 'node:module';

const ROOMS = ['core', 'electron/host', 'electron', 'cli', 'renderer', 'tests'];
const compiler = createRequire(import.meta.url).resolve('typescript/bin/tsc');

const check = (room) =>
  new Promise((resolve) => {
    const child = spawn(process.execPath, [compiler, '-p', room], { stdio: 'inherit' });
    child.on('close', (code) => resolve(code === 0));
  });

const passed = await Promise.all(ROOMS.map(check));
if (passed.includes(false)) process.exit(1);
console.log(`types: ${ROOMS.length} rooms checked`);
