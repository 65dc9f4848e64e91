import { open } from 'node:fs/promises';
import { join, parse, resolve } from 'node:path';
import { systemCode } from '../electron/host/system-code.ts';
import type { Format } from './command.ts';

const EXTENSIONS: Readonly<Record<Format, string>> = { text: '.txt', json: '.json', html: '.html' };

/** How a file of ours begins: only such a file is ever written over. */
const BEGINNINGS: Readonly<Record<Format, RegExp>> = {
  text: /^Afterfire: /,
  json: /^\{"schemaVersion":/,
  html: /^<!doctype html>\s*<html[^>]*><head>(<meta[^>]*>)*<meta name="generator" content="Afterfire">/,
};
const BEGINNING_BYTES = 1024;

const NOTHING_THERE = new Set(['ENOENT', 'ENOTDIR']);
/** More files of one name than this in one folder are somebody's trouble, not ours to solve. */
const MOST_SUFFIXES = 10_000;

const beginningOf = async (path: string): Promise<string | null> => {
  try {
    const file = await open(path);
    try {
      const { buffer, bytesRead } = await file.read(Buffer.alloc(BEGINNING_BYTES));
      return buffer.toString('utf8', 0, bytesRead);
    } finally {
      await file.close();
    }
  } catch (cause) {
    // Nothing is there yet; whether anything can be written there will be seen then.
    const isNothing = NOTHING_THERE.has(systemCode(cause) ?? '');
    return isNothing ? null : 'something that may not be read';
  }
};

/**
 * Names for the files of one run: `NAME.html` for the log `NAME.csv`, and `NAME-2.html` where that
 * name belongs to an input, to another log of this run, or to a file that we did not write.
 */
export const outNames = (folder: string, format: Format, inputs: readonly string[]) => {
  const kept = new Set(inputs.map((path) => resolve(path)));
  const isFree = async (path: string): Promise<boolean> => {
    if (kept.has(path)) return false;
    const beginning = await beginningOf(path);
    return beginning === null || BEGINNINGS[format].test(beginning);
  };
  return async (log: string): Promise<string> => {
    const { name } = parse(log);
    for (let number = 1; ; number += 1) {
      const suffix = number === 1 ? '' : `-${number}`;
      const path = resolve(join(folder, `${name}${suffix}${EXTENSIONS[format]}`));
      if (number < MOST_SUFFIXES && !(await isFree(path))) continue;
      kept.add(path);
      return path;
    }
  };
};
