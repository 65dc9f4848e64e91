import { describe, expect, it } from 'vitest';
import { el, raw } from '../../../core/report/markup.ts';

describe('an element', () => {
  it('escapes text and attributes, and leaves out what is null', () => {
    const { markup } = el('a', { href: '#"x', class: null }, 'a < b', null, 3, [el('b', {}, '&')]);
    expect(markup).toBe('<a href="#&quot;x">a &lt; b3<b>&amp;</b></a>');
  });

  it('closes itself where it has no content', () => {
    expect(el('path', { d: 'M0 0' }).markup).toBe('<path d="M0 0"/>');
    expect(el('meta', { charset: 'utf-8' }).markup).toBe('<meta charset="utf-8">');
    expect(el('td').markup).toBe('<td></td>');
  });

  it('takes known markup as it stands', () => {
    expect(el('style', {}, raw('a>b{}')).markup).toBe('<style>a>b{}</style>');
  });
});
