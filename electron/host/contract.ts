import { z } from 'zod';
import { zReadingRule } from '../../core/model/reading-rule.ts';
import { zSchedule } from '../../core/model/schedule.ts';
import { MOST_SEGMENTS } from '../../core/schedule/bounds.ts';
import type { EventName, RequestName } from './message-names.ts';

/**
 * The one contract between the page and what serves it: the main process of Electron, or the
 * loopback server in front of a browser. Whoever receives a message parses it by these schemas, on
 * either side. No message names a path: the page asks for what it was handed, by its ticket.
 */

const zNothing = z.null();

/** What a file was opened as. `unknown` is one that the system handed over: a log or a schedule. */
export const zFileRole = z.enum(['log', 'schedule', 'unknown']);
export type FileRole = z.infer<typeof zFileRole>;

const zFileName = z.string().min(1).max(1024);

/** A file that the page may read, once or more, until its session ends. */
export const zHandedFile = z.strictObject({
  ticket: z.string().regex(/^[\w-]{1,64}$/),
  fileName: zFileName,
  role: zFileRole,
});
export type HandedFile = z.infer<typeof zHandedFile>;

/** What the person set for all firings, kept from one session to the next. */
export const zPreferences = z.strictObject({
  unit: z.enum(['C', 'F']),
  theme: z.enum(['system', 'light', 'dark']),
  textPercent: z.number().min(80).max(200),
  /** Whether single keys do things. Left out where it was kept before there was the choice. */
  singleKeys: z.boolean().default(true),
});
export type Preferences = z.infer<typeof zPreferences>;

export const DEFAULT_PREFERENCES: Preferences = {
  unit: 'C',
  theme: 'system',
  textPercent: 100,
  singleKeys: true,
};

const zScheduleName = z.string().min(1).max(200);
/** So many that each can still be held against a log while one waits (chosen). */
export const MOST_KEPT_SCHEDULES = 24;

/** A schedule that is kept, under its name. */
export const zKeptSchedule = zSchedule.extend({
  name: zScheduleName,
  segments: zSchedule.shape.segments.max(MOST_SEGMENTS),
});

/** The schedules that the person opened or made, the last used first. */
export const zKeptSchedules = z.array(zKeptSchedule).max(MOST_KEPT_SCHEDULES);
export type KeptSchedules = z.infer<typeof zKeptSchedules>;

/** More kinds of files than anyone's loggers write, and few enough to look through (chosen). */
export const MOST_KEPT_RULES = 60;
const zRuleName = z.string().min(1).max(200);
const zShape = z.string().min(1).max(400);

/** A reading rule that is kept: one for each shape of file. */
export const zKeptRule = zReadingRule.extend({ name: zRuleName, shape: zShape });

/** The reading rules that are kept, the last changed first. */
export const zKeptRules = z.array(zKeptRule).max(MOST_KEPT_RULES);
export type KeptRules = z.infer<typeof zKeptRules>;

/** What the page begins with: the files of the command line, if there are any, and what is kept. */
export const zSession = z.strictObject({
  files: z.array(zHandedFile),
  preferences: zPreferences,
  schedules: zKeptSchedules,
  rules: zKeptRules.default([]),
});
export type Session = z.infer<typeof zSession>;

const zBytes = z.custom<Uint8Array<ArrayBuffer>>(
  (value) => value instanceof Uint8Array && value.buffer instanceof ArrayBuffer,
  'bytes are wanted here',
);

/** A file's bytes, or one plain sentence on why the machine would not give them. */
export const zFileContent = z.union([
  z.strictObject({ bytes: zBytes }),
  z.strictObject({ refused: z.string().min(1).max(2048) }),
]);
export type FileContent = z.infer<typeof zFileContent>;

/** Far above any report or table that the page makes (chosen). */
const MAX_SAVED_CHARS = 64 * 1024 * 1024;
const MAX_COPIED_CHARS = 1024 * 1024;

/** The kinds of file that the page writes. */
export const zSavedKind = z.enum(['text/html', 'text/csv', 'text/plain', 'application/json']);

export const zFileToSave = z.strictObject({
  /** A bare name: what the person is offered, and may change. */
  fileName: z.string().regex(/^[^/\\\0]{1,255}$/, 'a bare file name is wanted here'),
  kind: zSavedKind,
  text: z.string().max(MAX_SAVED_CHARS),
});
export type FileToSave = z.infer<typeof zFileToSave>;

export const zSaved = z.union([
  /** The name that the person chose; left out where the host is not told it. */
  z.strictObject({ outcome: z.literal('saved'), fileName: zFileName.optional() }),
  z.strictObject({ outcome: z.literal('cancelled') }),
  z.strictObject({ outcome: z.literal('failed'), why: z.string().min(1).max(2048) }),
]);
export type Saved = z.infer<typeof zSaved>;

/** What a menu of the desktop asks the page to do. */
export const MENU_COMMANDS = [
  'open-logs',
  'open-schedule',
  'type-in',
  'save-report',
  'export-csv',
  'copy-verdict',
  'print',
  'unit-c',
  'unit-f',
  'theme-system',
  'theme-light',
  'theme-dark',
  'text-larger',
  'text-smaller',
  'text-normal',
  'zoom-reset',
  'show-keys',
  'show-rules',
  'show-about',
] as const;
export const zMenuCommand = z.enum(MENU_COMMANDS);
export type MenuCommand = z.infer<typeof zMenuCommand>;

interface Exchange {
  readonly sent: z.ZodType;
  readonly answered: z.ZodType;
}

/** What the page may ask, with what it sends and what it is answered. */
export const REQUESTS = {
  'open-session': { sent: zNothing, answered: zSession },
  'open-logs': { sent: zNothing, answered: z.array(zHandedFile) },
  'open-schedule': { sent: zNothing, answered: z.array(zHandedFile).max(1) },
  'read-file': { sent: zHandedFile.pick({ ticket: true }), answered: zFileContent },
  'save-file': { sent: zFileToSave, answered: zSaved },
  'copy-text': {
    sent: z.strictObject({ text: z.string().max(MAX_COPIED_CHARS) }),
    answered: zNothing,
  },
  'keep-preferences': { sent: zPreferences, answered: zNothing },
  'keep-schedule': {
    /** `insteadOf` names an earlier state of the same schedule, where its name was changed. */
    sent: z.strictObject({ schedule: zKeptSchedule, insteadOf: zScheduleName.nullable() }),
    answered: zKeptSchedules,
  },
  'keep-rule': { sent: zKeptRule, answered: zKeptRules },
  'forget-rule': { sent: z.strictObject({ shape: zShape }), answered: zKeptRules },
  'forget-schedule': { sent: z.strictObject({ name: zScheduleName }), answered: zKeptSchedules },
} satisfies Record<RequestName, Exchange>;

/** What the page is told without having asked. */
export const EVENTS = {
  'files-handed': z.array(zHandedFile),
  'menu-command': zMenuCommand,
} satisfies Record<EventName, z.ZodType>;

export type { EventName, RequestName };
export type Sent<Name extends RequestName> = z.infer<(typeof REQUESTS)[Name]['sent']>;
export type Answered<Name extends RequestName> = z.infer<(typeof REQUESTS)[Name]['answered']>;
export type Told<Name extends EventName> = z.infer<(typeof EVENTS)[Name]>;
