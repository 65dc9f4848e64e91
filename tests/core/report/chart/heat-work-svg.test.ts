import { expect, it } from 'vitest';
import { doseChart } from '../../../../core/report/chart/dose.ts';
import { conePackSvg, doseSvg } from '../../../../core/report/chart/heat-work-svg.ts';
import { exampleDocument } from '../../../fixtures/documents/load.ts';

it('the pack draws each cone with its name, its role and how it stands', () => {
  const cones = [
    { name: 'cone 5½', roleWord: 'guide cone', stands: 'flat', bendDegrees: 100 },
    { name: 'cone 6', roleWord: 'firing cone', stands: 'bending', bendDegrees: 40 },
  ];
  const { markup } = conePackSvg(cones, 'flat, then bending');
  expect(markup.match(/class="cone"/g)).toHaveLength(2);
  for (const text of ['cone 5½', 'guide cone', 'flat', 'firing cone', 'bending']) {
    expect(markup).toContain(`>${text}</text>`);
  }
  expect(markup).toContain('<desc id="cones-description">flat, then bending</desc>');
});

it('the dose chart marks where the cone is down', () => {
  const chart = doseChart(exampleDocument('good-firing').heatWork!)!;
  const { markup } = doseSvg(chart, 'cone 6', 'rises to the peak');
  expect(markup).toContain('>cone 6 down</text>');
  expect(markup).toContain('class="down"');
  expect(markup).toContain('Dose of cone 6 against time');
});
