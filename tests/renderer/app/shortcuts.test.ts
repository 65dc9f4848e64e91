import { describe, expect, it } from 'vitest';
import { SHORTCUTS, shortcutFor, stepped } from '../../../renderer/app/shortcuts.ts';

const pressed = (key: string, rest: Partial<KeyboardEvent> = {}) => ({
  ...{ key, ctrlKey: false, metaKey: false, shiftKey: false, altKey: false },
  ...rest,
});

describe('the keys', () => {
  it('are each told once', () => {
    const told = SHORTCUTS.map(({ shown }) => shown);
    expect(new Set(told).size).toBe(told.length);
  });

  it('tell a key alone from the same key with Ctrl or the command key', () => {
    expect(shortcutFor(pressed('p'), true)?.does).toBe('choose the finding before');
    expect(shortcutFor(pressed('p', { ctrlKey: true }), true)?.does).toBe('print the report');
    expect(shortcutFor(pressed('p', { metaKey: true }), true)?.does).toBe('print the report');
    expect(shortcutFor(pressed('p', { altKey: true }), true)).toBeNull();
  });

  it('do nothing alone where they are switched off; Escape and Ctrl still do', () => {
    expect(shortcutFor(pressed('u'), false)).toBeNull();
    expect(shortcutFor(pressed('Escape'), false)).not.toBeNull();
    expect(shortcutFor(pressed('s', { ctrlKey: true }), false)).not.toBeNull();
  });

  it('work with the Shift or Caps Lock key held', () => {
    expect(shortcutFor(pressed('U', { shiftKey: true }), true)).toBe(
      shortcutFor(pressed('u'), true),
    );
    expect(shortcutFor(pressed('O', { ctrlKey: true }), true)?.does).toBe('open a log');
  });

  it('with Ctrl do one thing, and with Ctrl and Shift another or none', () => {
    const both = { ctrlKey: true, shiftKey: true };
    expect(shortcutFor(pressed('O', both), true)?.does).toBe('choose a schedule file');
    expect(shortcutFor(pressed('S', both), true)).toBeNull();
    expect(shortcutFor(pressed('P', both), true)).toBeNull();
  });
});

describe('walking the findings', () => {
  it('goes through all of them and past both ends to none', () => {
    expect(stepped(null, 3, 1)).toBe(0);
    expect(stepped(0, 3, 1)).toBe(1);
    expect(stepped(2, 3, 1)).toBeNull();
    expect(stepped(null, 3, -1)).toBe(2);
    expect(stepped(0, 3, -1)).toBeNull();
  });

  it('stays where there are none', () => {
    expect(stepped(null, 0, 1)).toBeNull();
    expect(stepped(null, 0, -1)).toBeNull();
  });
});
