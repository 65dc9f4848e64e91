import { describe, expect, test, vi } from 'vitest';
import { menuTemplate } from '../../electron/menu.ts';
import { DEFAULT_PREFERENCES, MENU_COMMANDS } from '../../electron/host/contract.ts';
import { menuEntries, type MenuEntry } from './double/control.ts';

const menuOf = (platform: NodeJS.Platform, choose = vi.fn()) =>
  menuTemplate({
    platform,
    preferences: DEFAULT_PREFERENCES,
    hasDevTools: false,
    choose,
  }) as unknown as MenuEntry[];

const rolesOf = (menu: readonly MenuEntry[]) =>
  menuEntries(menu).flatMap(({ role }) => (role === undefined ? [] : [role]));

describe.each(['darwin', 'win32', 'linux'] as const)('the menu on %s', (platform) => {
  test('has every command of the contract that has no place of the system’s own', () => {
    const ids = menuEntries(menuOf(platform)).flatMap(({ id }) => (id === undefined ? [] : [id]));
    const ofTheSystem = platform === 'darwin' ? ['show-about'] : [];
    expect([...ids, ...ofTheSystem].sort()).toEqual([...MENU_COMMANDS].sort());
    expect(new Set(ids).size).toBe(ids.length);
  });

  test('gives no two commands the same keys', () => {
    const keys = menuEntries(menuOf(platform)).flatMap(({ accelerator }) => accelerator ?? []);
    expect(new Set(keys).size).toBe(keys.length);
  });

  test('passes on what is chosen', () => {
    const choose = vi.fn();
    const entries = menuEntries(menuOf(platform, choose)).filter(({ click }) => click);
    for (const { click } of entries) click?.();
    expect(choose.mock.calls.flat()).toEqual(entries.map(({ id }) => id));
  });

  test('offers no tools of developers unless they are wanted', () => {
    expect(rolesOf(menuOf(platform))).not.toContain('toggleDevTools');
  });
});

describe('the conventions of the platforms', () => {
  // Apple's Human Interface Guidelines, "The menu bar": app menu first, Window and Help last; the
  // app menu holds About and Quit, File holds Close and no Quit.
  test('macOS has the menu of the app first, and closes windows from File', () => {
    const menu = menuOf('darwin');
    expect(menu.map(({ role, label }) => role ?? label)).toEqual([
      ...['appMenu', '&File', '&Edit', '&View', 'windowMenu', 'help'],
    ]);
    const file = rolesOf(menu[1]?.submenu ?? []);
    expect(file).toContain('close');
    expect(file).toContain('recentDocuments');
    expect(file).not.toContain('quit');
  });

  test.each(['win32', 'linux'] as const)('%s ends the program from File', (platform) => {
    const menu = menuOf(platform);
    expect(menu[0]?.label).toBe('&File');
    expect(menu[0]?.submenu?.at(-1)).toEqual({ role: 'quit' });
    expect(rolesOf(menu)).not.toContain('appMenu');
  });
});
