import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { getConfig, validateConfiguration } from 'app-builder-lib/out/util/config/config.js';
import { DebugLogger } from 'builder-util';
import { describe, expect, test } from 'vitest';

const ROOT = join(import.meta.dirname, '../..');
const CONFIG = 'electron/electron-builder.yml';

const read = () => getConfig(ROOT, CONFIG, null);
const validate = (config: Awaited<ReturnType<typeof read>>) =>
  validateConfiguration(config, new DebugLogger(false));

describe('the packages to hand out', () => {
  test('are described as electron-builder’s own schema wants it', async () => {
    await expect(validate(await read())).resolves.toBeUndefined();
  });

  test('would not pass with a key that the schema does not know', async () => {
    const config = { ...(await read()), windows: {} };
    await expect(validate(config)).rejects.toThrow(/unknown property 'windows'/);
  });

  test('are for Windows, macOS and Linux, and are published nowhere', async () => {
    const { win, mac, linux, publish } = await read();
    for (const { target } of [win ?? {}, mac ?? {}, linux ?? {}]) expect(target).toBeTruthy();
    expect(publish).toBeNull();
  });

  test('have the fuses blown that would let others run code in the program', async () => {
    // Electron's documentation, "Electron Fuses".
    expect((await read()).electronFuses).toMatchObject({
      runAsNode: false,
      enableNodeOptionsEnvironmentVariable: false,
      enableNodeCliInspectArguments: false,
      enableEmbeddedAsarIntegrityValidation: true,
      onlyLoadAppFromAsar: true,
      grantFileProtocolExtraPrivileges: false,
      // "Apple Silicon" there: flipping a fuse makes the signature invalid.
      resetAdHocDarwinSignature: true,
    });
  });

  test('are offered for logs and schedules, and take them from no program', async () => {
    const { fileAssociations, win, mac, linux } = await read();
    const of = (all: typeof fileAssociations) => [all ?? []].flat();
    expect(of(mac?.fileAssociations).map(({ ext, rank }) => [ext, rank])).toEqual([
      ['csv', 'Alternate'],
      ['json', 'Alternate'],
    ]);
    expect(of(linux?.fileAssociations).map(({ ext }) => ext)).toEqual(['csv', 'json']);
    // electron-builder's own macro for Windows makes the program the one that opens them.
    expect([...of(fileAssociations), ...of(win?.fileAssociations)]).toEqual([]);
  });

  test('are offered on Windows by a script that leaves the extensions their program', async () => {
    const { nsis, directories } = await read();
    const script = join(ROOT, directories?.buildResources ?? '', nsis?.include ?? 'none');
    const [installing = '', removing = ''] = readFileSync(script, 'utf8').split('customUnInstall');
    const writes = [...installing.matchAll(/^ {2}WriteReg\w+ SHELL_CONTEXT "([^"]+)" "([^"]*)"/gm)];
    const ofExtensions = writes.filter(([, key]) => key?.startsWith('Software\\Classes\\.'));
    for (const extension of ['csv', 'json']) {
      const key = `Software\\Classes\\.${extension}\\OpenWithProgids`;
      expect(ofExtensions.map(([, written]) => written)).toContain(key);
      expect(removing).toContain(`DeleteRegValue SHELL_CONTEXT "${key}" "\${LOG_CLASS}"`);
    }
    for (const [, key, name] of ofExtensions) {
      expect(key).toMatch(/\\OpenWithProgids$/);
      expect(name).toBe('${LOG_CLASS}');
    }
    // What is written is taken away again, and nobody else's key is.
    expect(removing.match(/DeleteRegKey.*/g)).toEqual([
      'DeleteRegKey SHELL_CONTEXT "Software\\Classes\\${LOG_CLASS}"',
    ]);
  });

  test('hold what was built, and their icon is there', async () => {
    const { files, directories } = await read();
    const wanted = JSON.stringify(files);
    for (const glob of ['dist/electron/*.js', 'dist/electron/*.cjs', 'dist/renderer/**']) {
      expect(wanted).toContain(`"${glob}"`);
    }
    for (const built of ['main.js', 'preload.cjs']) {
      expect(existsSync(join(ROOT, 'dist/electron', built)), built).toBe(true);
    }
    expect(existsSync(join(ROOT, directories?.buildResources ?? '', 'icon.png'))).toBe(true);
  });
});
