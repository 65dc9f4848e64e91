import type { AnalysisDocument } from '../model/document.ts';
import { heatSourceOf } from '../model/heat-source.ts';
import type { TemperatureUnit } from '../units.ts';
import { bandsWords, zonesWords, type BandWords } from './bands.ts';
import { alwaysCautions } from './cautions.ts';
import { checksWords, type CheckWords } from './checks.ts';
import { findingsWords, type FindingWords } from './findings.ts';
import { firingWords, type FiringWords } from './firing.ts';
import { heatWorkWords, type HeatWorkWords } from './heat-work.ts';
import { joinedWords } from './joined.ts';
import { legsWords, overshootWords, type LegsWords } from './legs.ts';
import { loadWords, type LoadWords } from './load.ts';
import { powerWords, type PowerWords } from './power.ts';
import { readingWords, type ReadingWords } from './reading.ts';
import { speechIn } from './speech.ts';
import { verdictWords, type VerdictSentence } from './verdict.ts';

/** Every sentence about one firing, in one reader's unit. */
export interface Words {
  readonly unit: TemperatureUnit;
  readonly firing: FiringWords;
  /** What two joined logs are and what each gave; none where one log is all there is. */
  readonly joined: readonly string[];
  readonly verdict: readonly VerdictSentence[];
  readonly load: LoadWords;
  /** In the order of the document's findings. */
  readonly findings: readonly FindingWords[];
  readonly legs: LegsWords;
  readonly overshoots: readonly string[];
  readonly heatWork: HeatWorkWords | null;
  readonly power: PowerWords;
  readonly bands: readonly BandWords[];
  readonly zones: readonly string[];
  readonly reading: ReadingWords;
  readonly checks: readonly CheckWords[];
  /** What stands at the foot of every answer. */
  readonly cautions: readonly string[];
}

/**
 * Makes every sentence about a firing: screen, report and command line show these and write none of
 * their own. Temperatures come in the reader's unit, differences and rates never with the 32.
 */
export const wording = (document: AnalysisDocument, unit: TemperatureUnit): Words => {
  const say = speechIn(unit);
  const heat = heatSourceOf(document.options);
  const findings = findingsWords(document, say);
  return {
    unit,
    firing: firingWords(document, say),
    joined: joinedWords(document, say),
    verdict: verdictWords(document, findings, say),
    load: loadWords(document),
    findings,
    legs: legsWords(document, say),
    overshoots: overshootWords(document, say),
    heatWork: heatWorkWords(document, say),
    power: powerWords(document, say),
    bands: bandsWords(document.bands, say),
    zones: zonesWords(document, say),
    reading: readingWords(document, say),
    checks: checksWords(document.checks, heat),
    cautions: alwaysCautions(heat),
  };
};
