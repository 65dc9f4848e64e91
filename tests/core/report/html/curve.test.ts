import { expect, it } from 'vitest';
import { curveFigure } from '../../../../core/report/html/curve.ts';
import { wording } from '../../../../core/wording/wording.ts';
import { exampleDocument } from '../../../fixtures/documents/load.ts';

it('the figure says in words what it shows', () => {
  const document = exampleDocument('troubled-firing');
  const { markup } = curveFigure(document, wording(document, 'F'));
  const description = /<desc[^>]*>([^<]*)<\/desc>/.exec(markup)?.[1] ?? '';
  expect(description).toContain('the ware got cone 5½');
  expect(description).toContain('Leg 4, Climb to 2170 °F: slow.');
  expect(markup).toContain('Dashed: the plan');
  expect(markup).toContain('>bound water</text>');
});

it('the caption speaks of no plan where there is none', () => {
  const document = exampleDocument('no-schedule');
  expect(curveFigure(document, wording(document, 'C')).markup).not.toContain('Dashed');
});
