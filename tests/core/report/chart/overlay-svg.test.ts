import { describe, expect, it } from 'vitest';
import { overlayOf } from '../../../../core/report/chart/overlay.ts';
import { overlaySvg } from '../../../../core/report/chart/overlay-svg.ts';
import { exampleDocument } from '../../../fixtures/documents/load.ts';

const texts = {
  title: 'Temperature of <b>load</b>',
  description: 'what it shows',
  unit: 'C' as const,
  letterTitles: { A: 'A: slow' },
  clockAt: (at: number) => (at === 0 ? '06:50 +1 d' : null),
};
const svgOf = (name: 'troubled-firing' | 'no-schedule') => {
  const letters = ['A', 'B', 'C', 'D', 'E', 'F'];
  return overlaySvg(overlayOf(exampleDocument(name), 'C', { bands: [], letters }), texts).markup;
};

describe('the drawing', () => {
  const svg = svgOf('troubled-firing');

  it('tells who cannot see it what it shows', () => {
    expect(svg).toContain('role="group" aria-labelledby="overlay-title"');
    expect(svg).toContain('aria-describedby="overlay-description"');
    // What only draws is passed over; the letters' links are not.
    const hidden = /<g aria-hidden="true">.*<\/g>/s.exec(svg)?.[0] ?? '';
    expect(hidden).toContain('curve-actual');
    expect(svg.indexOf('href="#finding-A"')).toBeGreaterThan(svg.indexOf('aria-hidden'));
    expect(svg).toContain(
      '<title id="overlay-title">Temperature of &lt;b&gt;load&lt;/b&gt;</title>',
    );
    expect(svg).toContain('<desc id="overlay-description">what it shows</desc>');
  });

  it('shows severity by shape: diamonds for act and watch, a circle for a note', () => {
    expect(svg.match(/class="letter act"/g)).toHaveLength(2);
    expect(svg.match(/class="letter note"/g)).toHaveLength(1);
    expect(svg.match(/<polygon/g)).toHaveLength(5);
    expect(svg.match(/<circle/g)).toHaveLength(1);
  });

  it('links each letter to its finding', () => {
    expect(svg).toContain('<a href="#finding-A" class="letter act"><title>A: slow</title>');
  });

  it('draws plan, difference and two rows only where there is a plan', () => {
    expect(svg).toContain('kiln minus plan');
    expect(svg).toContain('>plan</text>');
    const bare = svgOf('no-schedule');
    expect(bare).not.toContain('kiln minus plan');
    expect(bare).not.toContain('>plan</text>');
  });

  it('shows the time of day without its day', () => {
    expect(svg).toContain('>06:50</text>');
  });
});
