import { describe, expect, it } from 'vitest';
import type { AnalysisDocument } from '../../../../core/model/document.ts';
import { FINDING_IDS } from '../../../../core/model/finding.ts';
import { canHave } from '../../../../core/model/heat-source.ts';
import { htmlReport } from '../../../../core/report/html-report.ts';
import { textReport } from '../../../../core/report/text-report.ts';
import { FUEL_WORDINGS } from '../../../../core/wording/findings/fuel.ts';
import { FINDING_WORDINGS, wordingOf } from '../../../../core/wording/findings/index.ts';
import { wording } from '../../../../core/wording/wording.ts';
import { EXAMPLE_DOCUMENTS, exampleDocument } from '../../../fixtures/documents/load.ts';
import { everyFinding, stringsIn, topic } from '../builders.ts';

/** What a kiln that burns fuel is not heated by. */
const ELECTRIC_WORDS =
  /\b(elements?|relays?|coils?|breakers?|contactors?|fuses?|resistance|supply voltage|electric\w*)\b/i;

/** The one place where electric kilns are spoken of: why six checks are not made. */
const ONLY_ELECTRIC = 'this is judged of electric kilns only';

const fuelled = (document: AnalysisDocument): AnalysisDocument => ({
  ...document,
  options: { ...document.options, kiln: { heat: 'fuel' } },
  elements: null,
  findings: document.findings.filter(({ id }) => canHave('fuel', id)),
  checks: FINDING_IDS.map((id) =>
    canHave('fuel', id)
      ? { id, outcome: 'clear', reason: 'within-limits' }
      : { id, outcome: 'not-applicable', reason: 'fuel-fired' },
  ),
});

const FALLEN = { fallenMinutes: 30, otherwiseCPerHour: 50, plannedCPerHour: 60 };

const cases = [
  ...EXAMPLE_DOCUMENTS.map((name) => [name, exampleDocument(name)] as const),
  ['every finding', everyFinding()] as const,
  ['every finding, after a fall', everyFinding(FALLEN)] as const,
  ['every finding, at the next rate', everyFinding({ nextCPerHour: 45 })] as const,
  [
    'every finding, heated on',
    everyFinding({ climbedOnMinutes: 20, climbedOnCPerHour: 90 }),
  ] as const,
  ['every finding, of one leg', everyFinding({ segment: 2, offDeltaC: -9 })] as const,
];

describe.each(cases)('%s, fired with fuel', (_, document) => {
  const saidOf = (heated: AnalysisDocument): string[] =>
    stringsIn(
      (['C', 'F'] as const).map((unit) => {
        const { reading, findings, checks, ...words } = wording(heated, unit);
        // Ids, and what is quoted from the file, are no sentences.
        return [
          { ...words, reading: { ...reading, rejected: [] } },
          findings.map(({ id: _id, ...rest }) => rest),
          checks.map(({ id: _id, ...rest }) => rest),
        ];
      }),
    ).filter((text) => text !== ONLY_ELECTRIC);

  it('has no sentence that speaks of what only an electric kiln has', () => {
    const said = saidOf(fuelled(document));
    expect(said.length).toBeGreaterThan(100);
    expect(said.filter((text) => ELECTRIC_WORDS.test(text))).toEqual([]);
  });

  it('is told otherwise than as electric', () => {
    expect(saidOf(document).filter((text) => ELECTRIC_WORDS.test(text))).not.toEqual([]);
    expect(saidOf(fuelled(document)).join(' ')).toContain('Local gas, fire, flue');
  });

  it('has reports that say the same', () => {
    const heated = fuelled(document);
    for (const report of [textReport(wording(heated, 'C')), htmlReport(heated, 'C')]) {
      const said = report
        .replace(/<style>.*?<\/style>/gs, '')
        .replace(/<[^>]*>/g, ' ')
        .replace(/\s+/g, ' ')
        .replaceAll(ONLY_ELECTRIC, '');
      expect(said).toContain('carbon monoxide');
      expect(ELECTRIC_WORDS.exec(said)).toBeNull();
    }
  });
});

const FUEL_IDS = FINDING_IDS.filter((id) => canHave('fuel', id));

describe('the wordings of a kiln that burns fuel', () => {
  it.each(FUEL_IDS)('%s has whole sentences, and a caution wherever it has one else', (id) => {
    const said = wordingOf(id, 'fuel');
    const about = topic(id);
    const sentences = [said.title(about).text, said.why(about), said.remedy(about)];
    for (const text of sentences) expect(text).toMatch(/^[A-Z“].*[.!?]$/su);
    expect(said.couldBe(about).length).toBeGreaterThan(0);
    for (const { cause, tell } of [said.alternative, ...said.couldBe(about)]) {
      expect(cause).toMatch(/^[A-Z].*[^.]$/su);
      expect(tell).toMatch(/^[a-z].*[^.]$/su);
    }
    if (FINDING_WORDINGS[id].caution !== null) {
      expect(said.caution?.(about.say)).toMatch(/\w/);
    }
  });

  it.each(['ramp-slow', 'peak-not-reached'] as const)(
    '%s names what is common practice as such, with something to look at for each',
    (id) => {
      const { why, couldBe, caution } = wordingOf(id, 'fuel');
      expect(why(topic(id))).toContain('common practice');
      const causes = couldBe(topic(id)).map(({ cause }) => cause);
      for (const word of ['gas pressure', 'icing up', 'orifice', 'damper', 'reduction', 'Wind']) {
        expect(causes.join(' ')).toContain(word);
      }
      const said = caution?.(topic(id).say) ?? '';
      for (const word of ['smell gas', 'carbon monoxide', 'licensed gas fitter', 'local codes']) {
        expect(said).toContain(word);
      }
    },
  );

  it('stand beside the others, which an electric kiln keeps', () => {
    for (const id of FINDING_IDS) {
      expect(wordingOf(id, 'electric')).toBe(FINDING_WORDINGS[id]);
      if (!(id in FUEL_WORDINGS)) expect(wordingOf(id, 'fuel')).toEqual(FINDING_WORDINGS[id]);
    }
    expect(Object.keys(FUEL_WORDINGS).length).toBeGreaterThan(10);
  });
});
