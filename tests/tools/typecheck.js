/**
 * Type-checks every room by its own tsconfig (core without Node or DOM types, and so on), side by
 * side, and fails with the compiler's own output. What has not changed since is not checked again:
 * the compiler's notes lie in `node_modules/.cache`.
 */
import { spawn } from 'node:child_process';
import { createRequire } from 'node:module';
import path from 'node:path';

const ROOMS = ['core', 'electron/host', 'electron', 'cli', 'renderer', 'tests'];
const compiler = createRequire(import.meta.url).resolve('typescript/bin/tsc');

const notes = path.join(import.meta.dirname, '../../node_modules/.cache/types');

const check = (room) =>
  new Promise((resolve) => {
    const kept = path.join(notes, `${room.replace('/', '-')}.tsbuildinfo`);
    const options = ['-p', room, '--incremental', '--tsBuildInfoFile', kept];
    const child = spawn(process.execPath, [compiler, ...options], { stdio: 'inherit' });
    child.on('close', (code) => resolve(code === 0));
  });

const passed = await Promise.all(ROOMS.map(check));
if (passed.includes(false)) process.exit(1);
console.log(`types: ${ROOMS.length} rooms checked`);
