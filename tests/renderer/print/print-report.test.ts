import { describe, expect, it } from 'vitest';
import { styleSheet } from '../../../core/report/html/style.ts';
import { hostStyle, paperStyle } from '../../../renderer/print/print-report.ts';

describe('the report’s style in a shadow tree', () => {
  it('takes its colours and its page from the tree’s host', () => {
    expect(hostStyle(':root{--ink:#000}')).toBe(':host{--ink:#000}');
    expect(hostStyle('@media print{\nhtml{a:b}\nbody{c:d}\n}')).toBe(
      '@media print{\n:host{a:b}\n:host{c:d}\n}',
    );
  });

  it('says of the paper what the report says, for the page around the tree', () => {
    expect(paperStyle('a{b:c}@page{margin:1mm}d{e:f}')).toBe('@page{margin:1mm}');
    expect(paperStyle(styleSheet())).toMatch(/^@page\{margin:[^}]+\}$/);
  });

  it('leaves nothing of the report’s own that would look for a page around it', () => {
    const style = hostStyle(styleSheet());
    expect(style).not.toMatch(/:root|(^|[\s,{}])(html|body)\s*\{/);
    expect(style).toContain(':host{');
    expect(style).toContain('tbody th');
  });
});
