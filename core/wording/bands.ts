import type { AnalysisDocument, Band } from '../model/document.ts';
import { idAsWords } from './checks.ts';
import { coneName, conePlace, duration, type Speech } from './speech.ts';
import { sentence } from './topic.ts';

/** One stretch of temperature and how the kiln went through it. */
export interface BandWords {
  readonly name: string;
  /** A word or two, for a place with little room. */
  readonly short: string;
  readonly stretch: string;
  readonly lasted: string;
  readonly mean: string;
  readonly fastest: string;
}

const NAMES: Readonly<Record<string, readonly [name: string, short: string]>> = {
  candling: ['candling', 'candling'],
  drying: ['drying', 'drying'],
  'bound-water': ['bound water leaves', 'bound water'],
  burnout: ['carbon and sulphur burn out', 'burnout'],
  quartz: ['quartz inversion', 'quartz'],
  'last-stretch': ['last stretch to the peak', 'last stretch'],
  'first-cooling': ['first cooling from the peak', 'first cooling'],
  'crystal-growth': ['glaze crystals grow', 'crystals'],
  dunting: ['where ware dunts', 'dunting'],
  cristobalite: ['cristobalite', 'cristobalite'],
};

/** A band's name in the trade's words. */
export const bandName = (name: string): string => NAMES[name]?.[0] ?? idAsWords(name);

/** A band's name in a word or two. */
export const shortBandName = (name: string): string => NAMES[name]?.[1] ?? idAsWords(name);

/** Whether a band has a name of its own. */
export const knowsBand = (name: string): boolean => name in NAMES;

const DIRECTIONS = { heating: 'up', cooling: 'down' } as const;

/** The bands in words, in the document's order. */
export const bandsWords = (bands: readonly Band[], say: Speech): BandWords[] =>
  bands.map(({ name, fromC, toC, direction, seconds, meanCPerHour, fastestCPerHour }) => ({
    name: sentence(bandName(name)),
    short: shortBandName(name),
    stretch: `${DIRECTIONS[direction]}, ${say.temperature(fromC)} to ${say.temperature(toC)}`,
    lasted: duration(seconds),
    mean: say.rate(meanCPerHour),
    fastest: say.rate(fastestCPerHour),
  }));

/** Other measured places, a sentence each. */
export const zonesWords = ({ zones }: AnalysisDocument, say: Speech): string[] =>
  zones.map(({ channel, peakC, cone, position, meanDifferenceC }) => {
    const place = position !== null ? conePlace(position) : cone && coneName(cone);
    const got = place === null ? '' : `, ${place} by its own reckoning`;
    const way = meanDifferenceC < 0 ? 'cooler' : 'hotter';
    return `“${channel}” peaked at ${say.temperature(peakC)}${got}; while heating it was ${say.difference(meanDifferenceC)} ${way} on average.`;
  });
