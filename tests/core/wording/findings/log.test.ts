import { describe, expect, it } from 'vitest';
import { LOG_WORDINGS } from '../../../../core/wording/findings/log.ts';
import { topic } from '../builders.ts';

describe('the wordings of the log', () => {
  it.each([
    [{ jumps: 1 }, 'jumps once,'],
    [{ jumps: 2 }, 'jumps twice,'],
    [{ jumps: 5 }, 'jumps 5 times,'],
  ])('count the jumps of the clock: %o', (figures, said) => {
    expect(LOG_WORDINGS['clock-jump'].title(topic('clock-jump', figures)).text).toContain(said);
  });

  it.each([
    [
      { gapMinutes: 48, longestMinutes: 48, gaps: 1 },
      'silent for 48 min, 9 h 00 min into the log.',
    ],
    [
      { gapMinutes: 109, longestMinutes: 4, gaps: 30 },
      'silent for 1 h 49 min in 30 pieces, the longest 4 min, the first 9 h 00 min into the log.',
    ],
  ])('tell one pause from many: %o', (figures, said) => {
    expect(LOG_WORDINGS['log-gap'].title(topic('log-gap', figures)).text).toContain(said);
  });

  it('tell readings far apart from readings roughly rounded', () => {
    const about = topic('log-coarse', { intervalMinutes: 10, stepDeltaC: 1 });
    about.finding.thresholds['stepDeltaC'] = 5;
    expect(LOG_WORDINGS['log-coarse'].title(about).text).toBe(
      'The log has a reading only every 10 min.',
    );
    about.finding.figures['stepDeltaC'] = 10;
    expect(LOG_WORDINGS['log-coarse'].title(about).text).toBe(
      'The log has a reading every 10 min, in steps of 10 °C.',
    );
  });

  it('say what an early end hides', () => {
    const about = topic('log-ends-early', { lastC: 1100 }, 'F');
    expect(LOG_WORDINGS['log-ends-early'].title(about).text).toContain('ends at 2012 °F');
  });

  it('say which of several firings is judged', () => {
    const about = topic('several-firings', { firings: 3, firing: 2, peakC: 1220 });
    expect(LOG_WORDINGS['several-firings'].title(about).text).toBe(
      'The log holds 3 firings; number 2, to 1220 °C, is judged here.',
    );
  });
});
