import { describe, expect, it } from 'vitest';
import { DARK, LIGHT, paletteCss } from '../../../../core/report/html/palette.ts';

/** Relative luminance and contrast as WCAG 2.1 defines them. */
const luminance = (colour: string): number => {
  const channel = (from: number) => {
    const value = parseInt(colour.slice(from, from + 2), 16) / 255;
    return value <= 0.03928 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  };
  return 0.2126 * channel(1) + 0.7152 * channel(3) + 0.0722 * channel(5);
};
const contrast = (a: string, b: string): number => {
  const [light, dark] = [luminance(a), luminance(b)].sort((x, y) => y - x) as [number, number];
  return (light + 0.05) / (dark + 0.05);
};

/** WCAG 2.1 AA: 4.5 for text (1.4.3), 3 for the parts of a drawing that carry meaning (1.4.11). */
const TEXT = 4.5;

describe.each([
  ['light', LIGHT],
  ['dark', DARK],
] as const)('the %s palette', (_, palette) => {
  it('is measured rightly: black on white is 21', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 5);
  });

  it.each(['ink', 'muted', 'accent', 'hot', 'cold'] as const)('%s is legible as text', (name) => {
    expect(contrast(palette[name], palette.paper)).toBeGreaterThanOrEqual(TEXT);
    expect(contrast(palette[name], palette.wash)).toBeGreaterThanOrEqual(TEXT);
  });

  it('has letters that stand out of their filled diamonds', () => {
    expect(contrast(palette.paper, palette.hot)).toBeGreaterThanOrEqual(TEXT);
  });

  it('is written as custom properties', () => {
    expect(paletteCss(palette)).toContain(`--ink:${palette.ink}`);
  });
});
