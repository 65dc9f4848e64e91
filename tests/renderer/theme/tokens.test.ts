import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { DARK, LIGHT, type Palette } from '../../../core/report/html/palette.ts';

const css = readFileSync(new URL('../../../renderer/theme/tokens.css', import.meta.url), 'utf8');

const pairOf = (name: string): [string, string] => {
  const found = new RegExp(`--${name}: light-dark\\((#\\w{6}), (#\\w{6})\\)`).exec(css);
  if (!found?.[1] || !found[2]) throw new Error(`there is no token ${name}`);
  return [found[1], found[2]];
};

/** Relative luminance and contrast by WCAG 2.2, the definitions of its section 5.2 terms. */
const luminance = (colour: string): number => {
  const [r, g, b] = [1, 3, 5]
    .map((at) => Number.parseInt(colour.slice(at, at + 2), 16) / 255)
    .map((c) => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4));
  return 0.2126 * r! + 0.7152 * g! + 0.0722 * b!;
};
const contrast = (a: string, b: string): number => {
  const [dark, light] = [luminance(a), luminance(b)].sort((x, y) => x - y);
  return (light! + 0.05) / (dark! + 0.05);
};

describe('the tokens', () => {
  it.each(Object.keys(LIGHT))('have the report’s own colour for %s', (name) => {
    const key = name as keyof Palette;
    expect(pairOf(name)).toEqual([LIGHT[key], DARK[key]]);
  });

  // WCAG 2.2, 1.4.11: what is needed to see a control stands out by 3 to 1.
  it.each(['paper', 'wash'])('draw the edges of controls 3 to 1 against %s', (ground) => {
    const [light, dark] = pairOf('edge');
    expect(contrast(light, pairOf(ground)[0])).toBeGreaterThanOrEqual(3);
    expect(contrast(dark, pairOf(ground)[1])).toBeGreaterThanOrEqual(3);
  });

  it('come in three sizes and two weights', () => {
    expect(css.match(/--size-\w+:/g)).toHaveLength(3);
    expect(css.match(/--weight-\w+:/g)).toHaveLength(2);
  });
});
