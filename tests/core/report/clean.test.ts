import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clean, escapeMarkup, prose } from '../../../core/report/clean.ts';

describe('cleaned text', () => {
  it('cannot command a terminal or turn the direction of text', () => {
    expect(clean('a\u001b[31mred\u0007')).toBe('a\ufffd[31mred\ufffd');
    expect(clean('log\u202evsc.exe')).toBe('log\ufffdvsc.exe');
    expect(clean('two\r\nlines\tand tab')).toBe('two lines and tab');
  });

  it('keeps every letter, sign and degree', () => {
    expect(clean('Ofen „oben“ 1222 °C ½ − 窯')).toBe('Ofen „oben“ 1222 °C ½ − 窯');
  });

  it('holds no control character whatever went in', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        // eslint-disable-next-line no-control-regex -- these are what is looked for
        expect(clean(text)).not.toMatch(/[\u0000-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069]/);
      }),
    );
  });
});

describe('escaped markup', () => {
  it('is data', () => {
    expect(escapeMarkup(`<img src=x onerror="a('b')">&`)).toBe(
      '&lt;img src=x onerror=&quot;a(&#39;b&#39;)&quot;&gt;&amp;',
    );
  });

  it('never leaves a sign that means something', () => {
    fc.assert(
      fc.property(fc.string(), (text) => {
        expect(escapeMarkup(text).replace(/&(amp|lt|gt|quot|#39);/g, '')).not.toMatch(/[&<>"']/);
      }),
    );
  });
});

describe('prose', () => {
  it('keeps numbers with their units and nothing else', () => {
    expect(prose('60 °C/h for 1 h 05 min at 3 places')).toBe(
      '60\u00a0°C/h for 1\u00a0h 05\u00a0min at 3 places',
    );
    expect(prose('2 minutes, 5 holds')).toBe('2 minutes, 5 holds');
  });
});
