import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import {
  answerFromPage,
  loadPage,
  SECURITY_HEADERS,
  type Page,
} from '../../../electron/host/page.ts';

const text = ({ body }: { body: Uint8Array }): string => new TextDecoder().decode(body);

let folder: string;
let page: Page;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'page-'));
  const built = join(folder, 'built');
  mkdirSync(join(built, 'assets/deep'), { recursive: true });
  writeFileSync(join(folder, 'secret.txt'), 'secret');
  writeFileSync(join(built, 'index.html'), '<!doctype html><html><head></head></html>');
  writeFileSync(join(built, 'assets/main.js'), 'export {};');
  writeFileSync(join(built, 'assets/deep/face.woff2'), new Uint8Array([0, 255]));
  writeFileSync(join(built, 'assets/unknown.thing'), '');
  symlinkSync(join(folder, 'secret.txt'), join(built, 'assets/link.txt'));
  symlinkSync(folder, join(built, 'assets/up'), 'dir');
  page = await loadPage(built);
});
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

describe('the built page', () => {
  test('is read with everything below its folder, and no link is followed', () => {
    expect([...page.keys()].sort()).toEqual([
      'assets/deep/face.woff2',
      'assets/main.js',
      'assets/unknown.thing',
      'index.html',
    ]);
  });

  test('is answered from memory: what changes on the disk later is not looked at', () => {
    writeFileSync(join(folder, 'built/assets/main.js'), 'export const later = 1;');
    expect(text(answerFromPage(page, 'assets/main.js'))).toBe('export {};');
  });

  test.each([
    ['', 'text/html; charset=utf-8'],
    ['assets/main.js', 'text/javascript; charset=utf-8'],
    ['assets/deep/face.woff2', 'font/woff2'],
    ['assets/unknown.thing', 'application/octet-stream'],
  ])('says what each file is: %s', (address, contentType) => {
    const { status, headers } = answerFromPage(page, address);
    expect([status, headers['content-type']]).toEqual([200, contentType]);
  });

  test.each(['assets/link.txt', 'assets/up/secret.txt', 'assets', 'assets/', '../secret.txt'])(
    'has no %s',
    (address) => {
      expect(answerFromPage(page, address).status).toBe(404);
    },
  );

  test('cannot be had from a folder that is not there', async () => {
    await expect(loadPage(join(folder, 'gone'))).rejects.toThrow('ENOENT');
  });
});

describe('the policy', () => {
  const directives = () => {
    const policy = SECURITY_HEADERS['content-security-policy'];
    return new Map(
      policy.split('; ').map((directive) => {
        const [name = '', ...sources] = directive.split(' ');
        return [name, sources] as const;
      }),
    );
  };

  test('begins with nothing and lets in the page’s own files only', () => {
    const { ['default-src']: fallback, ...named } = Object.fromEntries(directives());
    expect(fallback).toEqual(["'none'"]);
    const allowed = new Set(Object.values(named).flat());
    expect([...allowed].sort()).toEqual(["'none'", "'self'"]);
  });

  test('closes what does not fall back to the default', () => {
    // Content Security Policy Level 3, 6.3 and 6.4: these three have no fallback.
    for (const name of ['base-uri', 'form-action', 'frame-ancestors']) {
      expect(directives().get(name), name).toEqual(["'none'"]);
    }
  });
});
