import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const HERE = fileURLToPath(new URL('.', import.meta.url));

describe('the test kiln', () => {
  it('imports nothing but its own files, Node and the test runner', () => {
    const files = readdirSync(HERE).filter((name) => name.endsWith('.ts'));
    expect(files.length).toBeGreaterThan(20);
    for (const name of files) {
      const source = readFileSync(`${HERE}${name}`, 'utf8');
      const imports = [...source.matchAll(/\bfrom '([^']+)'|\bimport\('([^']+)'\)/g)];
      for (const [, from, dynamic] of imports) {
        expect(from ?? dynamic, name).toMatch(/^(\.\/[\w-]+\.ts|node:\w+|vitest)$/);
      }
    }
  });

  it('draws its luck from its own seeded source alone', () => {
    for (const name of readdirSync(HERE).filter((it) => /(?<!test)\.ts$/.test(it))) {
      expect(readFileSync(`${HERE}${name}`, 'utf8'), name).not.toMatch(/Math\.random|Date\.now/);
    }
  });
});
