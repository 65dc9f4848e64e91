import { describe, expect, test } from 'vitest';
import {
  DEFAULT_PREFERENCES,
  EVENTS,
  REQUESTS,
  zFileContent,
  zFileToSave,
  zPreferences,
} from '../../../electron/host/contract.ts';
import { EVENT_NAMES, REQUEST_NAMES } from '../../../electron/host/message-names.ts';

test('the names that the preload knows are those that have schemas', () => {
  expect(Object.keys(REQUESTS).sort()).toEqual([...REQUEST_NAMES].sort());
  expect(Object.keys(EVENTS).sort()).toEqual([...EVENT_NAMES].sort());
});

test('the preferences to begin with are ones', () => {
  expect(zPreferences.parse(DEFAULT_PREFERENCES)).toEqual(DEFAULT_PREFERENCES);
});

test('preferences kept before there was a choice of single keys are still understood', () => {
  const { singleKeys, ...before } = DEFAULT_PREFERENCES;
  expect(zPreferences.parse(before)).toEqual({ ...before, singleKeys });
});

describe('a file to save', () => {
  const file = { fileName: 'report.html', kind: 'text/html', text: '' };

  test('has a bare name', () => {
    expect(zFileToSave.safeParse(file).success).toBe(true);
    for (const fileName of ['', '../a.html', '/a.html', 'a\\b.html', 'a\0.html', 'a'.repeat(256)]) {
      expect(zFileToSave.safeParse({ ...file, fileName }).success, fileName).toBe(false);
    }
  });

  test('is of a kind that is no program', () => {
    for (const kind of ['text/javascript', 'application/x-sh', '']) {
      expect(zFileToSave.safeParse({ ...file, kind }).success, kind).toBe(false);
    }
  });
});

test('content is bytes or a reason, not both and not shared memory', () => {
  const accepts = (content: unknown) => zFileContent.safeParse(content).success;
  expect(accepts({ bytes: new Uint8Array(3) })).toBe(true);
  expect(accepts({ refused: 'there is no such file' })).toBe(true);
  expect(accepts({ bytes: new Uint8Array(3), refused: 'no' })).toBe(false);
  expect(accepts({ bytes: [1, 2, 3] })).toBe(false);
  expect(accepts({ bytes: new Uint8Array(new SharedArrayBuffer(3)) })).toBe(false);
  expect(accepts({ refused: '' })).toBe(false);
});
