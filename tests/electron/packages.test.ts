import { existsSync } from 'node:fs';
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
    });
  });

  test('are offered for logs and schedules', async () => {
    const { fileAssociations } = await read();
    const extensions = [fileAssociations ?? []].flat().map(({ ext }) => ext);
    expect(extensions).toEqual(['csv', 'json']);
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
