import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import {
  bandName,
  bandsWords,
  knowsBand,
  shortBandName,
  zonesWords,
} from '../../../core/wording/bands.ts';
import { speechIn } from '../../../core/wording/speech.ts';
import { exampleDocument } from '../../fixtures/documents/load.ts';

describe('the bands', () => {
  it('are said with their stretch, their time and their slopes', () => {
    const { bands } = exampleDocument('good-firing');
    const [drying] = bandsWords(bands, speechIn('F'));
    expect(drying).toMatchObject({ name: 'Drying', stretch: 'up, 176 °F to 266 °F' });
    expect(bandsWords(bands, speechIn('C')).at(-1)?.stretch).toMatch(/^down, /);
  });

  it('have a name for every band that is measured', () => {
    const source = readFileSync(new URL('../../../core/thermal/bands.ts', import.meta.url), 'utf8');
    const names = [...source.matchAll(/name: '([a-z0-9-]+)'/g)].map(([, name]) => name!);
    expect(names.length).toBeGreaterThan(5);
    expect(names.filter((name) => !knowsBand(name))).toEqual([]);
    expect(shortBandName('bound-water')).toBe('bound water');
  });

  it('are said by their id where they have no name', () => {
    expect(knowsBand('drying')).toBe(true);
    expect(knowsBand('odd-band')).toBe(false);
    expect(bandName('odd-band')).toBe('odd band');
  });
});

describe('other places in the kiln', () => {
  it('are told apart from the main one in words', () => {
    const [said] = zonesWords(exampleDocument('two-zones'), speechIn('F'));
    expect(said).toMatch(
      /^“unten °F” peaked at \d+ °F, .*cone 04.*; while heating it was 16 °F cooler/,
    );
  });

  it('are not spoken of where there are none', () => {
    expect(zonesWords(exampleDocument('good-firing'), speechIn('C'))).toEqual([]);
  });
});
