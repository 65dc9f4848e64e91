import { describe, expect, it } from 'vitest';
import { findingsSection } from '../../../../core/report/html/findings.ts';
import { wording } from '../../../../core/wording/wording.ts';
import { exampleDocument } from '../../../fixtures/documents/load.ts';

describe('the findings on the page', () => {
  const { findings } = wording(exampleDocument('troubled-firing'), 'C');
  const { markup } = findingsSection(findings);

  it('each have their place, shape, word, limits and caution', () => {
    for (const { letter, caution } of findings) {
      expect(markup).toContain(`id="finding-${letter}"`);
      if (caution) expect(markup).toContain('class="caution"');
    }
    expect(markup).toContain('◆ A act');
    expect(markup).toContain('◇ C watch');
    expect(markup).toContain('· F note');
    expect(markup).toContain('(limit 10\u00a0%)');
    expect(markup.match(/what would tell/g)).toHaveLength(findings.length);
  });

  it('say plainly that there are none', () => {
    expect(findingsSection([]).markup).toContain('None. What was looked for');
  });
});
