#!/usr/bin/env node
import { main } from './main.ts';
import { processIo } from './process-io.ts';

/** The worker stands beside this file, built or not. */
const extension = import.meta.url.endsWith('.ts') ? 'ts' : 'js';
const workerUrl = new URL(`worker.${extension}`, import.meta.url);

process.exitCode = await main(process.argv.slice(2), processIo(), workerUrl);
