import { describe, expect, it } from 'vitest';
import { FINDING_IDS } from '../../../core/model/finding.ts';
import { DETECTORS } from '../../../core/findings/detector-list.ts';
import { FINDING_WORDINGS } from '../../../core/wording/findings/index.ts';
import { wording } from '../../../core/wording/wording.ts';
import { EXAMPLE_DOCUMENTS, exampleDocument } from '../../fixtures/documents/load.ts';
import { everyFinding, stringsIn } from './builders.ts';

/** Names from the file and the schedule stand in “quotes”, and may hold any sign. */
const withoutQuotedData = (text: string): string => text.replace(/“[^”]*”/g, '“”');

const FIGURES = {
  segment: 2,
  plannedCPerHour: 60,
  achievedCPerHour: 44,
  fastestCPerHour: 200,
  lateMinutes: 67,
  plannedMinutes: 45,
  heldMinutes: 9,
  overDeltaC: 13,
  shortDeltaC: 20,
  driftDeltaC: 9,
  offDeltaC: -9,
  wanderDeltaC: 2,
  reachedC: 1100,
  targetC: 1188,
  endedC: 900,
  peakC: 1100,
  firstC: 300,
  lastC: 900,
  flatC: 700,
  lowestC: -40,
  rereadPeakC: 1222,
  openedC: 300,
  ceilingC: 1200,
  scheduledPeakC: 600,
  stepDeltaC: 6,
  intervalMinutes: 20,
  apartDeltaC: 30,
};

const cases = [
  ...EXAMPLE_DOCUMENTS.map((name) => [name, exampleDocument(name)] as const),
  ['every finding, without figures', everyFinding()] as const,
  ['every finding, with figures', everyFinding(FIGURES)] as const,
];

describe.each(cases)('the wording of %s', (_, document) => {
  it('never shows a Fahrenheit reader a Celsius number, nor the other way round', () => {
    for (const [unit, foreign] of [
      ['F', '°C'],
      ['C', '°F'],
    ] as const) {
      const { firing, reading, ...words } = wording(document, unit);
      const said = [...stringsIn(words), ...firing.facts, ...reading.account];
      const rest = stringsIn([reading.decisions, reading.warnings, reading.assumptions]);
      const all = [...said, ...rest].map(withoutQuotedData);
      expect(all.length).toBeGreaterThan(40);
      expect(all.filter((text) => text.includes(foreign))).toEqual([]);
    }
  });

  it('leaves no hole in any sentence', () => {
    const { reading, ...words } = wording(document, 'C');
    // Rejected rows are shown as they stand in the file.
    const said = stringsIn([words, { ...reading, rejected: [] }]);
    const bad = said.filter((text) => /undefined|NaN|Infinity|\bnull\b|\[object|\s{2}/.test(text));
    expect(bad).toEqual([]);
  });

  it('ends with the cautions', () => {
    expect(wording(document, 'C').cautions.join(' ')).toContain('advice, not protection');
  });
});

describe('the wording as a whole', () => {
  it('has words for every detector there is and every finding id', () => {
    const ids = [...DETECTORS.map(({ id }) => id), ...FINDING_IDS];
    expect(ids.filter((id) => !(id in FINDING_WORDINGS))).toEqual([]);
    expect(DETECTORS.length).toBeGreaterThanOrEqual(18);
  });

  it('changes numbers with the unit and nothing else', () => {
    const strip = (text: string) => text.replace(/[−+]?[\d.]+ °[CF](\/h)?/g, '#');
    for (const name of EXAMPLE_DOCUMENTS) {
      const document = exampleDocument(name);
      const [inC, inF] = [wording(document, 'C'), wording(document, 'F')];
      expect(stringsIn({ ...inC, unit: '' }).map(strip)).toEqual(
        stringsIn({ ...inF, unit: '' }).map(strip),
      );
    }
  });
});
