#!/usr/bin/env node
import { main } from './main.ts';
import { processIo } from './process-io.ts';
import { workersOf } from './workers.ts';

process.exitCode = await main(process.argv.slice(2), processIo(), workersOf(import.meta.url));
