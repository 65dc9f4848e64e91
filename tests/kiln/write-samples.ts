import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { fire } from './fire.ts';
import { sampleReadme } from './sample-readme.ts';
import { scheduleAsCsv, scheduleAsJson } from './sample-shapes.ts';
import { SAMPLES } from './samples.ts';

/** Where the samples lie. */
export const SAMPLE_FOLDER = fileURLToPath(new URL('../../sample-traces', import.meta.url));

/** Every file of the folder by its name; the same bytes each time. */
export const sampleFiles = (): Map<string, Uint8Array> => {
  const files = new Map<string, Uint8Array>();
  for (const { file, scheduleFile, schedule, setup, shape } of SAMPLES) {
    files.set(file, shape(fire(setup)));
    const written = scheduleFile.endsWith('.csv') ? scheduleAsCsv : scheduleAsJson;
    files.set(scheduleFile, written(schedule));
  }
  files.set('README.md', new TextEncoder().encode(sampleReadme(SAMPLES)));
  return files;
};

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  mkdirSync(SAMPLE_FOLDER, { recursive: true });
  const files = sampleFiles();
  for (const [name, bytes] of files) writeFileSync(join(SAMPLE_FOLDER, name), bytes);
  console.log(`${files.size} files written to sample-traces`);
}
