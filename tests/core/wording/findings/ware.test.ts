import { describe, expect, it } from 'vitest';
import { WARE_WORDINGS } from '../../../../core/wording/findings/ware.ts';
import { topic } from '../builders.ts';

describe('the wordings of the ware', () => {
  it('name quartz inversion at 573 °C, as the published sources do', () => {
    const about = topic('quartz-fast-cooling', { fastestCPerHour: 90 });
    expect(WARE_WORDINGS['quartz-fast-cooling'].why(about)).toContain('573 °C');
    expect(WARE_WORDINGS['quartz-fast-cooling'].title(about).text).toContain('90 °C/h');
  });

  it('tell quartz from cristobalite by where the stretch begins', () => {
    const about = topic('quartz-fast-cooling', { fastestCPerHour: 220, fromC: 250 });
    expect(WARE_WORDINGS['quartz-fast-cooling'].title(about).text).toContain('cristobalite');
  });

  it('name the plan of a controlled fall that was outrun', () => {
    const { title } = WARE_WORDINGS['cooling-fast'];
    const figures = { segment: 0, fastestCPerHour: 200, plannedCPerHour: 100 };
    expect(title(topic('cooling-fast', figures)).text).toContain('where 100 °C/h was planned');
    expect(title(topic('cooling-fast', { fastestCPerHour: 400 })).text).toContain('by themselves');
  });

  it('put every temperature of the trade into the reader’s unit', () => {
    for (const [id, wording] of Object.entries(WARE_WORDINGS)) {
      const about = topic(id as keyof typeof WARE_WORDINGS, {}, 'F');
      const said = [wording.why(about), wording.remedy(about), wording.caution?.(about.say) ?? ''];
      expect(said.join(' ')).not.toContain('°C');
    }
    expect(WARE_WORDINGS['drying-fast'].why(topic('drying-fast', {}, 'F'))).toContain('212 °F');
  });
});
