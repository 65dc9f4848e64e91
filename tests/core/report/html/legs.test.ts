import { expect, it } from 'vitest';
import { legsSection } from '../../../../core/report/html/legs.ts';
import { wording } from '../../../../core/wording/wording.ts';
import { exampleDocument } from '../../../fixtures/documents/load.ts';

const markupOf = (name: 'troubled-firing' | 'no-schedule' | 'two-zones') =>
  legsSection(wording(exampleDocument(name), 'C')).markup;

it('legs stand planned beside driven, and departures stand out by word', () => {
  const markup = markupOf('troubled-firing');
  expect(markup.match(/<tr>/g)).toHaveLength(8);
  expect(markup).toContain('colspan="4" class="group">planned</th>');
  expect(markup).toContain('>slow</td>');
  expect(markup).toContain('The target of 120\u00a0°C was passed');
});

it('other places are told under the legs', () => {
  expect(markupOf('two-zones')).toContain('“unten °F” peaked at');
});

it('without a plan there are no planned columns', () => {
  expect(markupOf('no-schedule')).not.toContain('planned');
});
