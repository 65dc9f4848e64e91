import { describe, expect, it } from 'vitest';
import { DARK } from '../../../../core/report/html/palette.ts';
import { styleSheet } from '../../../../core/report/html/style.ts';

describe('the style', () => {
  const css = styleSheet();

  it('loads nothing', () => {
    expect(css).not.toMatch(/url\(|@import|@font-face/i);
  });

  it('is dark on screens only, so that paper stays paper', () => {
    expect(css).toMatch(/@media screen and \(prefers-color-scheme:dark\)\{:root\{[^}]*--paper/);
    expect(css.split(DARK.paper)).toHaveLength(2);
  });

  it('breaks pages between things and not within them', () => {
    expect(css).toContain('@page');
    expect(css).toContain('break-inside:avoid');
    expect(css).toContain('table-header-group');
  });

  it('has balanced braces', () => {
    expect(css.match(/\{/g)).toHaveLength(css.match(/\}/g)!.length);
  });
});
