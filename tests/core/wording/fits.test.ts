import { describe, expect, it } from 'vitest';
import { fitsWords } from '../../../core/wording/fits.ts';

describe('how well schedules lie on a log', () => {
  it('is said in whole percent, with what it means', () => {
    const { heading, percents, meaning } = fitsWords([0.834, 0.65, 0]);
    expect(percents).toEqual(['83 %', '65 %', '0 %']);
    expect(heading).toContain('lie best on this log');
    expect(meaning).toContain('only you can know');
  });

  it('does not call the best of a bad lot good', () => {
    expect(fitsWords([0.65]).heading).not.toContain('None');
    expect(fitsWords([0.64, 0.2]).heading).toContain('None of the schedules kept here lies well');
  });
});
