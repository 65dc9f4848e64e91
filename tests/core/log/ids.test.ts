import { describe, expect, test } from 'vitest';
import { readFileSync } from 'node:fs';
import { ASSUMPTIONS, DECISIONS, REASONS, REJECTIONS, WARNINGS } from '../../../core/log/ids.ts';
import { zId } from '../../../core/model/scalars.ts';

const TABLES = { DECISIONS, REASONS, REJECTIONS, WARNINGS, ASSUMPTIONS };

describe.each(Object.entries(TABLES))('%s', (_, table) => {
  test('holds ids that fit the document, each with its meaning', () => {
    for (const [id, meaning] of Object.entries(table)) {
      expect(zId.safeParse(id).success).toBe(true);
      expect(meaning).toMatch(/^\S.{8,}[^.]$/);
    }
  });

  test('stands whole in the README of the room', () => {
    const readme = readFileSync(new URL('../../../core/log/README.md', import.meta.url), 'utf8');
    expect(Object.keys(table).filter((id) => !readme.includes(`\`${id}\``))).toEqual([]);
  });
});
