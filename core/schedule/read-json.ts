import { z } from 'zod';
import type { Schedule } from '../model/schedule.ts';
import { badSchedule, MOST_SEGMENTS } from './bounds.ts';
import { scheduleCone, segmentFrom } from './segment-entry.ts';

const zEntry = z.strictObject({
  ratePerHour: z.union([z.number(), z.literal('full')]).optional(),
  minutes: z.number().optional(),
  target: z.number(),
  holdMinutes: z.number().optional(),
});

const zFile = z.strictObject({
  name: z.string().optional(),
  cone: z.string().optional(),
  unit: z.enum(['C', 'F']).optional(),
  segments: z.array(z.unknown()).min(1).max(MOST_SEGMENTS),
});

const lineAt = (text: string, position: number): number =>
  text.slice(0, position).split(/\r\n|\r|\n/).length;

/** The lines on which the objects of the file's first array of objects open: its segments. */
const segmentLines = (text: string): number[] => {
  const lines: number[] = [];
  const start = text.indexOf('"segments"');
  let depth = 0;
  let isString = false;
  for (let i = text.indexOf('[', start); i >= 0 && i < text.length; i++) {
    const character = text[i];
    if (isString) {
      if (character === '\\') i++;
      else if (character === '"') isString = false;
      continue;
    }
    if (character === '"') isString = true;
    else if (character === '{' && depth++ === 0) lines.push(lineAt(text, i));
    else if (character === '}') depth--;
    else if (character === ']' && depth === 0) break;
  }
  return lines;
};

const lineOfKey = (text: string, key: string): number | null => {
  const at = text.indexOf(`"${key}"`);
  return at < 0 ? null : lineAt(text, at);
};

const parsed = (text: string): unknown => {
  try {
    return JSON.parse(text) as unknown;
  } catch (error) {
    const position = /position (\d+)/.exec(error instanceof Error ? error.message : '')?.[1];
    const line = position === undefined ? null : lineAt(text, Number(position));
    throw badSchedule('the JSON is broken here: a comma, a quote or a bracket is amiss', line);
  }
};

/** What is wrong with a value, told of its first fault. */
const faultOf = (error: z.ZodError): { message: string; key: string | null } => {
  const issue = error.issues[0];
  const key = issue?.path.at(-1);
  const name = typeof key === 'string' ? key : null;
  if (issue?.code === 'unrecognized_keys') {
    const unknown = issue.keys[0] ?? '';
    return { message: `"${unknown}" is not part of a schedule`, key: unknown };
  }
  if (name === null) return { message: 'a schedule is an object with "segments"', key: null };
  const isMissing = issue?.code === 'invalid_type' && !('received' in issue);
  const needs: Record<string, string> = {
    unit: '"unit" is "C" or "F"',
    cone: '"cone" is a text such as "6" or "06" in quotes, since the leading zero counts',
    segments: '"segments" is a list of one or more segments',
    target: 'a segment needs a "target" that is a number',
    ratePerHour: '"ratePerHour" is a number or "full"',
  };
  return {
    message: needs[name] ?? `"${name}" is ${isMissing ? 'missing or ' : ''}not a number`,
    key: name,
  };
};

/**
 * Reads a schedule in the project's JSON form.
 *
 * @throws Refusal `bad-schedule` or `unknown-cone` with the line to blame.
 */
export const readJsonSchedule = (text: string, fallbackName: string): Schedule => {
  const file = zFile.safeParse(parsed(text));
  if (!file.success) {
    const { message, key } = faultOf(file.error);
    throw badSchedule(message, key === null ? null : lineOfKey(text, key));
  }
  const { name, cone, unit, segments } = file.data;
  const given = name?.trim() ?? '';
  const lines = segmentLines(text);
  return {
    name: given === '' ? fallbackName : given,
    cone: cone === undefined ? null : scheduleCone(cone, lineOfKey(text, 'cone')),
    segments: segments.map((value, k) => {
      const line = lines[k] ?? null;
      const entry = zEntry.safeParse(value);
      if (!entry.success)
        throw badSchedule(`segment ${k + 1}: ${faultOf(entry.error).message}`, line);
      const { ratePerHour = null, minutes = null, target, holdMinutes = 0 } = entry.data;
      return segmentFrom({ ratePerHour, minutes, target, holdMinutes, line }, unit ?? 'C');
    }),
  };
};
