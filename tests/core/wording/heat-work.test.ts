import { describe, expect, it } from 'vitest';
import type { AnalysisDocument, HeatWork } from '../../../core/model/document.ts';
import { heatWorkWords, packCone } from '../../../core/wording/heat-work.ts';
import { speechIn } from '../../../core/wording/speech.ts';
import { exampleDocument } from '../../fixtures/documents/load.ts';

const say = speechIn('C');
const troubled = exampleDocument('troubled-firing');
const withHeatWork = (change: Partial<HeatWork>): AnalysisDocument => ({
  ...troubled,
  heatWork: { ...troubled.heatWork!, ...change },
});

describe('the heat-work', () => {
  it('is said with its range and as a steady climb', () => {
    expect(heatWorkWords(troubled, say)!.headline.text).toBe(
      'By this log the ware got cone 5½, and four times out of five within cone 5 to cone 6; ' +
        'that is the heat-work of a steady climb at 60 °C/h to 1200 °C.',
    );
  });

  it('is a lower bound where the record stops too soon', () => {
    const cone = { ...troubled.heatWork!.cone, bound: 'at-least' as const };
    expect(heatWorkWords(withHeatWork({ cone }), say)!.headline.text).toContain(
      'got at least cone 5½',
    );
  });

  it('may be too little for any cone', () => {
    const none = { label: null, position: null, lowPosition: null, highPosition: null };
    const cone = { ...none, bound: 'both-ways' as const };
    const words = heatWorkWords(withHeatWork({ cone, target: null, parts: [] }), say)!;
    expect(words.headline.text).toContain('too little heat-work for the coolest cone');
    expect(words.pack).toEqual([]);
  });

  it('is not spoken of where it is not known', () => {
    expect(heatWorkWords({ ...troubled, heatWork: null }, say)).toBeNull();
  });

  it('says how the target was missed, in cones and degrees', () => {
    expect(heatWorkWords(troubled, say)!.target).toBe(
      'Cone 6 was meant: 0.6 of a cone short (its end point was missed by about 20 °C).',
    );
    expect(heatWorkWords(exampleDocument('good-firing'), say)!.target).toContain(
      'reached within the usual half cone (its end point was passed by about 5 °C)',
    );
  });

  it('stands three cones about the one meant, or about the nearest', () => {
    const { pack } = heatWorkWords(troubled, say)!;
    expect(pack.map(({ roleWord, name, stands }) => [roleWord, name, stands])).toEqual([
      ['guide cone', 'cone 5½', 'all but down'],
      ['firing cone', 'cone 6', 'bending'],
      ['guard cone', 'cone 7', 'upright'],
    ]);
    expect(packCone(exampleDocument('no-schedule').heatWork!)).toBe('03');
  });

  it('says where it came from', () => {
    const { parts } = heatWorkWords(troubled, say)!;
    expect(parts.map(({ share }) => share)).toEqual(['75 %', '19 %', '6 %']);
    const shares = troubled.heatWork!.parts.map(({ doseShare }) => doseShare);
    expect(parts.map(({ index }) => shares[index])).toEqual(
      shares.filter((share) => share >= 0.005),
    );
    expect(parts[0]?.added).toBe('up to cone 5');
    expect(parts[1]?.name).toBe('Hold, 12 h 12 min to 12 h 21 min');
  });

  it('says which way the couple is off where cones were seen', () => {
    const coupleErrorC = {
      estimate: -12,
      low: -20,
      high: -4,
      byPlace: [],
      oneOffset: null,
    } as unknown as HeatWork['coupleErrorC'];
    expect(heatWorkWords(withHeatWork({ coupleErrorC }), speechIn('F'))!.coupleError).toBe(
      'By the cones that were seen, the couple reads about 22 °F low near the peak (−36 °F to −7.2 °F).',
    );
  });
});
