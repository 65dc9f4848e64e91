import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DEFAULT_PREFERENCES, type Preferences } from '../../../../electron/host/contract.ts';
import { handedFiles, type NamedFile } from '../../../../electron/host/handed-files.ts';
import type { Patience } from '../../../../electron/host/loopback/attendance.ts';
import { serveLoopback, type Loopback } from '../../../../electron/host/loopback/server.ts';
import type { Page } from '../../../../electron/host/page.ts';

const file = (text: string, contentType: string) => ({
  body: new Uint8Array(Buffer.from(text)),
  contentType,
});

/** A page of three files, the last of which has a name that needs care. */
export const A_PAGE: Page = new Map([
  ['index.html', file('<!doctype html><html><head><title>A</title></head></html>', 'text/html')],
  ['assets/main.js', file('export {};', 'text/javascript')],
]);

export const QUICK: Patience = { afterLeavingMs: 50, afterLossMs: 400, heartbeatMs: 40 };

export interface AServer extends Loopback {
  readonly token: string;
  readonly kept: Preferences[];
  readonly stop: () => void;
}

/** A server over {@link A_PAGE} that has handed one log of one line to its page. */
export const aServer = async (patience?: Patience): Promise<AServer> => {
  const folder = mkdtempSync(join(tmpdir(), 'loopback-'));
  const path = join(folder, 'log of a firing.csv');
  writeFileSync(path, 'time,°C\n');
  const files = handedFiles();
  const named: NamedFile[] = [{ path, role: 'log' }];
  const kept: Preferences[] = [];
  const loopback = await serveLoopback(
    A_PAGE,
    {
      'open-session': () =>
        Promise.resolve({
          files: files.hand(named),
          preferences: DEFAULT_PREFERENCES,
          schedules: [],
          rules: [],
        }),
      'read-file': (sent) => files.read(sent),
      'keep-preferences': (preferences) => {
        kept.push(preferences);
        return Promise.resolve(null);
      },
      'keep-schedule': ({ schedule }) => Promise.resolve([schedule]),
      'forget-schedule': () => Promise.resolve([]),
      'keep-rule': () => Promise.resolve([]),
      'forget-rule': () => Promise.resolve([]),
    },
    patience,
  );
  const stop = (): void => {
    loopback.close();
    rmSync(folder, { recursive: true, force: true });
  };
  const token = new URL(loopback.address).pathname.split('/')[1] ?? '';
  return { ...loopback, token, kept, stop };
};
