import { expect, it } from 'vitest';
import { large, line } from '../../../../core/wording/line.ts';
import {
  anchorOf,
  bullets,
  cell,
  lineMarkup,
  paragraph,
  section,
} from '../../../../core/report/html/words.ts';
import { el } from '../../../../core/report/markup.ts';

it('a line sets its numbers larger', () => {
  expect(el('p', {}, lineMarkup(line`got ${large('60 °C')} & more`)).markup).toBe(
    '<p>got <span class="large">60\u00a0°C</span> &amp; more</p>',
  );
});

it('evidence is a place on the page', () => {
  expect(anchorOf({ to: 'finding', index: 1 }, ['A', 'B'])).toBe('#finding-B');
  expect(anchorOf({ to: 'section', section: 'heat-work' }, [])).toBe('#heat-work');
});

it('sections are titled and lists are left out when empty', () => {
  expect(section('legs', 'Legs', 'x').markup).toBe(
    '<section id="legs" aria-labelledby="legs-title"><h2 id="legs-title">Legs</h2>x</section>',
  );
  expect(bullets([])).toBeNull();
  expect(bullets(['a'])?.markup).toBe('<ul><li>a</li></ul>');
  expect(paragraph('a', 'muted').markup).toBe('<p class="muted">a</p>');
  expect(cell('5 min', 'number').markup).toBe('<td class="number">5\u00a0min</td>');
});
