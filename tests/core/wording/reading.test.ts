import { describe, expect, it } from 'vitest';
import { readingWords } from '../../../core/wording/reading.ts';
import { speechIn } from '../../../core/wording/speech.ts';
import { celsius, seconds } from '../../../core/units.ts';
import { EXAMPLE_DOCUMENTS, exampleDocument } from '../../fixtures/documents/load.ts';

describe('how the log was read', () => {
  it.each([...EXAMPLE_DOCUMENTS])('is told for %s in three to six sentences', (name) => {
    const { account } = readingWords(exampleDocument(name), speechIn('C'));
    expect(account.length).toBeGreaterThanOrEqual(3);
    expect(account.length).toBeLessThanOrEqual(6);
    for (const said of account) expect(said).toMatch(/^[A-Z0-9].*\.$/);
  });

  it('adds up, and lists each rejected row with its reason', () => {
    const words = readingWords(exampleDocument('troubled-firing'), speechIn('C'));
    expect(words.account).toContain('1315 rows read: 1300 rows kept, 15 rows rejected.');
    expect(words.rejected).toHaveLength(15);
    expect(words.rejected[0]).toMatchObject({ line: 558, reason: 'no reading' });
    expect(words.rejectedUnlisted).toBe(0);
    expect(words.account.join(' ')).toContain(
      '1 gap and 1 stretch without a reading, 37 min in all, stay holes.',
    );
  });

  it('says each decision, why, and how certain it is', () => {
    const document = exampleDocument('two-zones');
    document.source.decisions[0]!.certainty = 0.5;
    const { decisions } = readingWords(document, speechIn('C'));
    expect(decisions[0]).toMatchObject({ certainty: 'a guess', isGuess: true });
    expect(decisions[1]).toEqual({
      said: 'Cells are parted by tabs: the rows then agree best with each other.',
      certainty: 'certain',
      isGuess: false,
    });
    expect(decisions.find(({ said }) => said.includes('oben'))?.certainty).toBe('likely');
  });

  it('names the kiln’s own column, also where another place in it stands before', () => {
    const document = exampleDocument('two-zones');
    document.source.channels.reverse();
    const said = readingWords(document, speechIn('C')).account.join(' ');
    expect(said).toContain('the kiln’s temperature from “oben');
  });

  it('owns up to rows that are counted but not listed', () => {
    const document = exampleDocument('troubled-firing');
    document.source.rejected = document.source.rejected.slice(0, 5);
    expect(readingWords(document, speechIn('C')).rejectedUnlisted).toBe(10);
  });

  it('counts repairs of one kind together', () => {
    const document = exampleDocument('troubled-firing');
    const spike = document.trace.repairs[0]!;
    document.trace.repairs = [spike, spike, spike, spike];
    expect(readingWords(document, speechIn('C')).repairs).toEqual([
      '4 spikes taken out (at 11 h 23 min, 11 h 23 min, 11 h 23 min …)',
    ]);
  });

  it('names each of several firings, and the one that is analysed', () => {
    const document = exampleDocument('two-zones');
    const of = (startSeconds: number, startInstant: string | null, peakC: number) => ({
      ...{ startSeconds: seconds(startSeconds), endSeconds: seconds(startSeconds + 36_000) },
      ...{ startInstant, peakC: celsius(peakC), samples: 600, chosen: peakC > 1100 },
    });
    document.source.firings = [of(0, '2024-03-14T06:30:00+01:00', 1000), of(90_000, null, 1222)];
    expect(readingWords(document, speechIn('C')).firings).toEqual([
      'Firing 1 of 2 begins 2024-03-14 06:30, lasts 10 h 00 min and peaks at 1000 °C.',
      'Firing 2 of 2 begins 25 h 00 min into the log, lasts 10 h 00 min and peaks at 1222 °C: the one analysed here.',
    ]);
    expect(readingWords(exampleDocument('two-zones'), speechIn('C')).firings).toEqual([]);
  });

  it('warns once of what two joined logs have alike', () => {
    const document = exampleDocument('two-zones');
    const source = { ...document.source, warnings: ['unit-inferred'] };
    const joined = { source } as unknown as NonNullable<typeof document.joined>;
    const { warnings } = readingWords({ ...document, source, joined }, speechIn('C'));
    expect(warnings).toHaveLength(1);
  });
});
