import { expect, it } from 'vitest';
import { heatWorkSection } from '../../../../core/report/html/heat-work.ts';
import { wording } from '../../../../core/wording/wording.ts';
import { exampleDocument } from '../../../fixtures/documents/load.ts';

it('heat-work shows three cones, the dose, where it came from and what would have done it', () => {
  const document = exampleDocument('troubled-firing');
  const { markup } = heatWorkSection(document, wording(document, 'C'));
  expect(markup.match(/class="cone"/g)).toHaveLength(3);
  expect(markup).toContain('class="dose"');
  expect(markup).toContain('Hold, ');
  expect(markup).toMatch(/A hold of 1\sh\s07\smin at the peak.*Change one of these at a time/);
});

it('heat-work that is not known is said to be so', () => {
  const document = { ...exampleDocument('no-schedule'), heatWork: null };
  const { markup } = heatWorkSection(document, wording(document, 'C'));
  expect(markup).toContain('cannot be told from this log');
  expect(markup).not.toContain('<svg');
});
