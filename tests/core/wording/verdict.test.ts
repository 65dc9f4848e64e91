import { describe, expect, it } from 'vitest';
import { celsius, seconds } from '../../../core/units.ts';
import type { AnalysisDocument } from '../../../core/model/document.ts';
import { EXAMPLE_DOCUMENTS, exampleDocument } from '../../fixtures/documents/load.ts';
import { wentAsPlanned } from '../../../core/wording/verdict.ts';
import { wording } from '../../../core/wording/wording.ts';
import { everyFinding, finding } from './builders.ts';

const verdictOf = (document: AnalysisDocument, unit: 'C' | 'F' = 'C') =>
  wording(document, unit).verdict;
const textOf = (document: AnalysisDocument, unit: 'C' | 'F' = 'C') =>
  verdictOf(document, unit)
    .map(({ text }) => text)
    .join(' ');

describe.each([...EXAMPLE_DOCUMENTS])('the verdict on %s', (name) => {
  const document = exampleDocument(name);

  it('has two to four sentences, each with its evidence and a number or cone that matters', () => {
    const verdict = verdictOf(document);
    expect(verdict.length).toBeGreaterThanOrEqual(2);
    expect(verdict.length).toBeLessThanOrEqual(4);
    expect(verdict[0]?.parts.some(({ large }) => large)).toBe(true);
    for (const { text, parts, evidence } of verdict) {
      expect(text).toMatch(/^[A-Z].*\.$/);
      expect(parts.map((part) => part.text).join('')).toBe(text);
      if (evidence.to === 'finding') expect(document.findings[evidence.index]).toBeDefined();
    }
  });

  it('never says that there is no fault', () => {
    expect(textOf(document)).not.toMatch(/no fault|nothing wrong|all is well|perfect/i);
  });
});

describe('a firing that went as planned', () => {
  const good = exampleDocument('good-firing');

  it('is told so plainly, and where to look else', () => {
    expect(wentAsPlanned(good)).toBe(true);
    expect(textOf(good)).toContain('the record shows no departure');
    expect(textOf(good)).toContain('look elsewhere first: glaze, application, clay');
    expect(textOf(good)).toContain('Only cones beside the ware can say whether the couple told');
  });

  it.each<[string, (document: AnalysisDocument) => AnalysisDocument]>([
    ['a finding to watch', (document) => ({ ...document, findings: [finding('log-gap')] })],
    [
      'a load that is short',
      (document) => ({ ...document, load: { state: 'short', refireTo: '6' } }),
    ],
    ['no schedule to hold it against', (document) => ({ ...document, alignment: null })],
  ])('is not so called with %s', (_, change) => {
    const changed = change(good);
    expect(wentAsPlanned(changed)).toBe(false);
    expect(textOf(changed)).not.toContain('look elsewhere');
  });

  it('may still have small departures, which are owned', () => {
    const legs = good.alignment!.legs.map((leg, index) =>
      index < 2 ? { ...leg, verdict: 'slow' as const } : leg,
    );
    const said = textOf({ ...good, alignment: { ...good.alignment!, legs } });
    expect(said).toContain('but for small departures in 2 legs');
  });

  it('does not call it small where a leg never ran', () => {
    const legs = good.alignment!.legs.map((leg, index) =>
      index === 4 ? { ...leg, actual: null, verdict: 'missing' as const } : leg,
    );
    const said = textOf({ ...good, alignment: { ...good.alignment!, legs } });
    expect(said).toContain('did not run the schedule to its end: one leg of 6');
    expect(said).not.toContain('small');
  });

  it('says where the schedule hardly fits', () => {
    const alignment = { ...good.alignment!, confidence: 0.19 };
    expect(textOf({ ...good, alignment })).toContain('hardly fits this log (certainty 19 %)');
  });

  it('counts in the cones that were seen', () => {
    const observedCones = [{ cone: '6' as const, place: 'middle', bendDegrees: 90 }];
    expect(textOf({ ...good, options: { ...good.options, observedCones } })).toContain(
      'The cones that were seen are counted in.',
    );
  });
});

describe('what the record does not show', () => {
  it('is no firing where the kiln stayed at rest', () => {
    const document = { ...exampleDocument('no-schedule'), heatWork: null };
    const trace = { ...document.trace, peakC: celsius(20) };
    const said = textOf({ ...document, trace });
    expect(said).toMatch(/^The log shows no firing: its hottest reading is 20 °C\./);
    expect(said).not.toContain('peaks at');
  });

  it('makes a position a lower bound, in words that are one', () => {
    const troubled = exampleDocument('troubled-firing');
    const heatWork = troubled.heatWork!;
    const cone = { ...heatWork.cone, position: 5.25, bound: 'at-least' as const };
    const said = textOf({ ...troubled, heatWork: { ...heatWork, cone } });
    expect(said).toContain('got at least cone 5 ');
    expect(said).toContain('short when the record ends');
  });

  it('advises the shorter hold, however much shorter', () => {
    const troubled = exampleDocument('troubled-firing');
    const remedy = (kind: 'shorter-hold' | 'lower-peak', unit: 'min' | 'C', amount: number) =>
      ({ ...{ kind, unit, amount }, lowAmount: amount / 2, highAmount: 2 * amount }) as const;
    const heatWork = {
      ...troubled.heatWork!,
      target: { ...troubled.heatWork!.target!, verdict: 'over' as const },
      remedies: [remedy('shorter-hold', 'min', 84), remedy('lower-peak', 'C', 29)],
    };
    expect(textOf({ ...troubled, heatWork })).toContain('1 h 24 min less at the peak');
  });
});

describe('a firing with trouble', () => {
  it('is told in order: heat-work, schedule, couple, with what would have done it', () => {
    const verdict = verdictOf(exampleDocument('troubled-firing'));
    expect(verdict.map(({ text }) => text)).toEqual([
      'By this log the ware got cone 5½ (likely cone 5 to cone 6) where cone 6 was meant, 0.6 of a cone short; what would have done it: a hold of 1 h 07 min at the peak (between 33 min and 1 h 59 min), where this one had 9 min.',
      'On the climb to 1188 °C the kiln made 44 °C/h where 60 °C/h was planned, and took 1 h 07 min longer than it should. 2 more findings of this kind below.',
      'The thermocouple gave no reading for 12 min, 9 h 42 min into the log. One more finding of this kind below. Only cones beside the ware can say whether the couple told the truth.',
    ]);
    expect(verdict[0]?.evidence).toEqual({ to: 'finding', index: 3 });
  });

  it('does not offer another peak where the schedule was right and the kiln did not follow it', () => {
    const troubled = exampleDocument('troubled-firing');
    const findings = [
      finding('underfired', { shortCones: 0.6, asPlannedOffCones: 0.1 }),
      ...troubled.findings.filter(({ id }) => id !== 'underfired'),
    ];
    const [first] = verdictOf({ ...troubled, findings });
    expect(first?.text).toMatch(/short; as planned, the schedule comes to cone 6\.$/);
  });

  it('gives the range no second time by the name that stands there already', () => {
    const good = exampleDocument('good-firing');
    const cone = { ...good.heatWork!.cone, position: 6.27, lowPosition: 5.8, highPosition: 6.4 };
    const heatWork = { ...good.heatWork!, cone };
    expect(verdictOf({ ...good, heatWork })[0]?.text).toMatch(
      /as meant, a quarter of a cone past it\.$/,
    );
  });

  it('says nothing of cones where nothing was fired', () => {
    const { trace, ...rest } = exampleDocument('no-schedule');
    const cold = { ...rest, heatWork: null, findings: [], trace: { ...trace, peakC: celsius(60) } };
    expect(verdictOf(cold).map(({ text }) => text)).toEqual([
      'The log shows no firing: its hottest reading is 60 °C.',
    ]);
  });

  it('never grows beyond four sentences', () => {
    expect(verdictOf(everyFinding())).toHaveLength(4);
  });

  it('names the leg that departed most, where that is no small matter', () => {
    const good = exampleDocument('good-firing');
    const legs = good.alignment!.legs.map((leg) =>
      leg.kind === 'hold' && leg.actual !== null && leg.planned.endC > 1000
        ? {
            ...leg,
            verdict: 'long' as const,
            actual: { ...leg.actual, endSeconds: seconds(leg.actual.endSeconds + 75 * 60) },
          }
        : leg,
    );
    const said = verdictOf({ ...good, alignment: { ...good.alignment!, legs } });
    expect(said[1]?.text).toMatch(
      /^The hold at \d+ °C took 1 h 1\d min longer than the \d+ min planned\.$/,
    );
  });

  it('names the cone from the wrong end before all else', () => {
    const document = exampleDocument('troubled-firing');
    const findings = [finding('underfired'), finding('wrong-end-cone')];
    const said = verdictOf({ ...document, findings });
    expect(said[0]?.text).toContain('the leading zero seems to have been lost or added');
    expect(said[0]?.evidence).toEqual({ to: 'finding', index: 1 });
  });

  it('says why heat-work cannot be told', () => {
    const document = { ...exampleDocument('no-schedule'), heatWork: null };
    expect(verdictOf(document, 'F')[0]?.text).toBe(
      'The heat-work cannot be told from this log, whose hottest reading is 1942 °F.',
    );
  });
});
