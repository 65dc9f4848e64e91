import { coneBeside, positionOfCone, type Cone } from '../model/cone.ts';
import type { AnalysisDocument, HeatWork } from '../model/document.ts';
import { assumptionSentence } from './assumptions.ts';
import { celsiusPerHour } from '../units.ts';
import { large, line, type Line } from './line.ts';
import { remediesNote, remedyPhrase } from './remedies.ts';
import {
  coneName,
  coneAtLeast,
  conePlace,
  coneRangeAbout,
  coneSteps,
  duration,
  nearestCone,
  percent,
  type Speech,
} from './speech.ts';
import { sentence } from './topic.ts';

/** One cone of the three that stand in a pack: the one before, the one meant, the one after. */
export interface PackConeWords {
  readonly role: 'guide' | 'firing' | 'guard';
  readonly roleWord: string;
  readonly cone: Cone;
  readonly name: string;
  readonly stands: string;
}

/** Where a part of the heat-work came from. */
export interface PartWords {
  /** Which of the document's parts this is. */
  readonly index: number;
  readonly name: string;
  readonly share: string;
  /** What the part added on the cone scale, or why that is not told. */
  readonly added: string;
}

/** The heat-work in words. */
export interface HeatWorkWords {
  readonly headline: Line;
  readonly target: string | null;
  readonly pack: readonly PackConeWords[];
  readonly parts: readonly PartWords[];
  readonly remedies: readonly string[];
  /** How to take the remedies; null where there are none. */
  readonly remediesNote: string | null;
  readonly coupleError: string | null;
  readonly assumptions: readonly string[];
}

/** The chart's middle rate, at which equivalent end points are told. */
const CHART_RATE = celsiusPerHour(60);

/** How far below its end point a cone begins to bend, °C, as seen on cones in the trade. */
const BENDING_SPAN_C = 25;
/** The last stages of bending take about this, °C. */
const LAST_STAGE_C = 5;
/** This far past its end point a cone lies flat, °C (chosen: the span of the last stages, doubled). */
const FLAT_PAST_C = 10;

const standing = (dose: number, marginC: number | null): string => {
  if (marginC === null) return dose >= 1 ? 'flat' : 'upright';
  if (marginC >= FLAT_PAST_C) return 'flat';
  if (marginC >= 0) return 'down';
  if (marginC >= -LAST_STAGE_C) return 'all but down';
  return marginC >= -BENDING_SPAN_C ? 'bending' : 'upright';
};

/** The cone about which the pack is built: the one meant, else the one nearest to what was got. */
export const packCone = (heatWork: HeatWork): Cone | null => {
  if (heatWork.target) return heatWork.target.cone;
  return heatWork.cone.position === null ? null : nearestCone(heatWork.cone.position);
};

const ROLES = [
  ['guide', -1, 'one cone cooler'],
  ['firing', 0, 'the nearest cone'],
  ['guard', 1, 'one cone hotter'],
] as const;

const packWords = (heatWork: HeatWork): PackConeWords[] => {
  const firing = packCone(heatWork);
  if (firing === null) return [];
  return ROLES.flatMap(([role, steps, elseWord]): PackConeWords[] => {
    const cone = coneBeside(firing, steps);
    const got = heatWork.byCone.find((entry) => entry.cone === cone);
    if (cone === null || !got) return [];
    const stands = standing(got.dose, got.marginC);
    const roleWord = heatWork.target ? `${role} cone` : elseWord;
    return [{ role, roleWord, cone, name: coneName(cone), stands }];
  });
};

/** A range with one name at both ends is no range to be within. */
const likelyRange = (likely: string): string =>
  likely.includes(' to ')
    ? `, and four times out of five within ${likely}`
    : `, and four times out of five nearest to ${likely}`;

const headlineOf = (heatWork: HeatWork, say: Speech): Line => {
  const { position, lowPosition, highPosition, bound } = heatWork.cone;
  if (position === null) return line`The kiln did too little heat-work for the coolest cone.`;
  const isOpen = bound === 'at-least';
  const place = large(isOpen ? coneAtLeast(position) : conePlace(position));
  const atLeast = isOpen ? 'at least ' : '';
  const likely =
    lowPosition !== null && highPosition !== null
      ? coneRangeAbout(position, lowPosition, highPosition)
      : null;
  const range = likely === null ? '' : likelyRange(likely);
  const like =
    heatWork.equivalentC === null
      ? ''
      : `; that is the heat-work of a steady climb at ${say.rate(CHART_RATE)} to ${say.temperature(heatWork.equivalentC)}`;
  return line`By this log the ware got ${atLeast}${place}${range}${like}.`;
};

const targetSentence = ({ target, cone }: HeatWork, say: Speech): string | null => {
  if (!target) return null;
  const name = sentence(coneName(target.cone));
  const off = cone.position === null ? null : cone.position - positionOfCone(target.cone);
  const margin =
    target.marginC === null
      ? ''
      : ` (its end point was ${target.marginC < 0 ? 'missed' : 'passed'} by about ${say.wholeDifference(target.marginC)})`;
  if (target.verdict === 'within')
    return `${name} was meant, and by this log it was reached within the usual half cone${margin}.`;
  const side = target.verdict === 'under' ? 'short' : 'too much';
  return `${name} was meant: ${off === null ? 'some way' : coneSteps(off)} ${side}${margin}.`;
};

/** Less of the dose than this is not listed: it is most of a firing and none of its heat-work. */
const WORTH_TELLING = 0.005;

const PART_NAMES = { ramp: 'climb', hold: 'hold', cooling: 'cooling' } as const;

const partsWords = (heatWork: HeatWork): PartWords[] =>
  heatWork.parts
    .map((part, index) => ({ ...part, index }))
    .filter(({ doseShare }) => doseShare >= WORTH_TELLING)
    .map(({ index, kind, fromSeconds, toSeconds, doseShare, positions }) => ({
      index,
      name: sentence(
        fromSeconds <= 0
          ? `${PART_NAMES[kind]}, until ${duration(toSeconds)}`
          : `${PART_NAMES[kind]}, ${duration(fromSeconds)} to ${duration(toSeconds)}`,
      ),
      share: percent(doseShare),
      added: positions === null ? upTo(index, heatWork) : coneSteps(positions),
    }));

/** Where a part came to that began below the coolest cone: the firing's end less what followed. */
const upTo = (index: number, { parts, cone }: HeatWork): string => {
  const later = parts.slice(index + 1).map(({ positions }) => positions);
  const added = later.reduce((sum: number, positions) => sum + (positions ?? 0), 0);
  if (cone.position === null || later.includes(null)) return 'below the first cone';
  return `up to ${coneAtLeast(cone.position - added)}`;
};

const coupleSentence = ({ coupleErrorC }: HeatWork, say: Speech): string | null => {
  if (coupleErrorC === null) return null;
  const { estimate, low, high } = coupleErrorC;
  const way = estimate < 0 ? 'low' : 'high';
  const range = `${say.signedDifference(low)} to ${say.signedDifference(high)}`;
  return `By the cones that were seen, the couple reads about ${say.difference(estimate)} ${way} near the peak (${range}).`;
};

/** The heat-work in words, or null where the document has none. */
export const heatWorkWords = (document: AnalysisDocument, say: Speech): HeatWorkWords | null => {
  const { heatWork } = document;
  if (heatWork === null) return null;
  return {
    headline: headlineOf(heatWork, say),
    target: targetSentence(heatWork, say),
    pack: packWords(heatWork),
    parts: partsWords(heatWork),
    remedies: heatWork.remedies.map((way) => `${sentence(remedyPhrase(way, document, say))}.`),
    remediesNote: remediesNote(document),
    coupleError: coupleSentence(heatWork, say),
    assumptions: heatWork.assumptions.map((id) => assumptionSentence(id)),
  };
};
