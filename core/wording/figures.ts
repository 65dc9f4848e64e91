import { celsius, celsiusDelta, celsiusPerHour } from '../units.ts';
import { coneSteps, count, duration, plainNumber, type Speech } from './speech.ts';

/** What a figure's name ends in, longest first, and how such a number is said. */
const ENDINGS: readonly [ending: string, said: (value: number, say: Speech) => string][] = [
  [
    'DeltaC',
    (value, say) => {
      const difference = celsiusDelta(value);
      return value < 0 ? say.signedDifference(difference) : say.difference(difference);
    },
  ],
  // A cone's end point is not known to a tenth: the chart's own residuals are a degree and more.
  ['MarginC', (value, say) => say.wholeDifference(celsiusDelta(value))],
  ['CPerHour', (value, say) => say.rate(celsiusPerHour(value))],
  ['Celsius', (value, say) => say.temperature(celsius(value))],
  ['PerHour', (value) => `${plainNumber(value, 1)} an hour`],
  ['Seconds', (value) => duration(value)],
  ['Minutes', (value) => duration(value * 60)],
  ['Hours', (value) => duration(value * 3600)],
  ['Percent', (value) => `${plainNumber(value, Math.abs(value) < 10 ? 1 : 0)} %`],
  ['Share', (value) => `${plainNumber(value * 100)} %`],
  ['Cones', (value) => coneSteps(value)],
  ['Samples', (value) => count(value)],
  ['C', (value, say) => say.temperature(celsius(value))],
];

/** What the detectors' figures are called beside their values. */
const LABELS: Readonly<Record<string, string>> = {
  shortCones: 'short of the cone by',
  overCones: 'past the cone by',
  pastMarginC: 'its end point passed by',
  shortMarginC: 'its end point missed by',
  shortDeltaC: 'short by',
  overDeltaC: 'over by',
  aboveMinutes: 'above for',
  climbedOnMinutes: 'climbed on for',
  climbedOnCPerHour: 'climbed on at',
  heldMinutes: 'held for',
  lateMinutes: 'late by',
  fallenMinutes: 'of it until a fall was made up',
  otherwiseCPerHour: 'apart from that',
  nextCPerHour: 'planned for the next segment',
  jumpMinutes: 'moved by',
  earlyMinutes: 'early by',
  behindPlanMinutes: 'behind the plan by',
  behindDeltaC: 'begun below the plan by',
  madeUpMinutes: 'made up',
  cameToC: 'came to',
  slowerPercent: 'slower by',
  fasterPercent: 'faster by',
  leftMinutes: 'still to come',
  firstC: 'first reading',
  lastC: 'last reading',
  belowPeakDeltaC: 'below the peak by',
  reachedC: 'hottest reading',
  peakC: 'hottest reading',
  endedC: 'stopped at',
  largestDeltaC: 'largest jump',
  levelC: 'level',
  fromNamesakeCones: 'from its namesake',
  fromTargetCones: 'from the cone meant',
  scheduleTopC: 'top of the schedule',
  intervalMinutes: 'between two readings',
  stepDeltaC: 'step of the readings',
  offDeltaC: 'off its level by',
  wanderDeltaC: 'wandered over',
  openedC: 'opened at',
  beforeCPerHour: 'fell before at',
  fellCPerHour: 'fell then at',
  cooledCPerHour: 'cooled at',
  referenceCPerHour: 'the good firing at',
  fromC: 'from',
  toC: 'to',
  openMinutes: 'without a reading',
  firingMinutes: 'of that while firing',
  rereadPeakC: 'hottest, read again',
  asReadDeltaC: 'off the plan as read',
  rereadDeltaC: 'off it, read again',
  flatC: 'stood at',
  flatMinutes: 'stood still for',
  lowestC: 'lowest reading',
  fellDeltaC: 'fell by',
  belowMinutes: 'below its start for',
  driftDeltaC: 'error by the cones',
  leastDeltaC: 'from',
  mostDeltaC: 'to',
  placesApartDeltaC: 'between the places',
  longestMinutes: 'longest',
  gapMinutes: 'silent',
  falsePercent: 'of all readings',
  timesPerHour: 'that is',
  removedPercent: 'readings taken out',
  samples: 'readings in them',
  spikes: 'false readings in all',
  confidencePercent: 'certainty of the legs',
  achievedCPerHour: 'achieved',
  apartCones: 'apart by',
  apartDeltaC: 'apart by',
  askedC: 'asked for',
  ceilingC: 'ceiling',
  lowC: 'ceiling at least',
  highC: 'ceiling at most',
  reserveDeltaC: 'left up to the ceiling',
  differsPercent: 'differs by',
  fallenDeltaC: 'fallen by',
  fastestCPerHour: 'fastest',
  firing: 'judged here, number',
  firings: 'firings in all',
  gaps: 'gaps',
  jumps: 'jumps',
  times: 'times',
  heavierPercent: 'heavier by',
  interruptedMinutes: 'interrupted for',
  lagMinutes: 'lags by',
  lostPercent: 'lost',
  oneCircuitPercent: 'one of the circuits gives',
  relativePowerPercent: 'power beside the good firing',
  lowPercent: 'power at least',
  highPercent: 'power at most',
  offCones: 'off by',
  plannedCPerHour: 'planned',
  plannedMinutes: 'planned',
  scheduledMinutes: 'scheduled',
  mendedMinutes: 'as likely meant',
  enteredC: 'entered',
  enteredPeakC: 'entered peak',
  enteredCPerHour: 'entered',
  enteredMinutes: 'entered',
  meantC: 'likely meant',
  meantPeakC: 'peak likely meant',
  meantCPerHour: 'likely meant',
  meantMinutes: 'likely meant',
  slippedCones: 'the slip is worth',
  scheduledPeakC: 'scheduled peak',
  shortMinutes: 'short by',
  shortPercent: 'short by',
  stuckMinutes: 'stuck for',
  targetC: 'target',
  whileCoolingDeltaC: 'while cooling',
  whileHeatingDeltaC: 'while heating',
};

/** Numbers that only find the place and are said in words elsewhere. */
const SILENT = new Set(['segment', 'segments', 'readAs', 'probably', 'asPlannedOffCones']);

/** One measured number, named and said, beside the limit it was held against. */
export interface FigureWords {
  readonly label: string;
  readonly value: string;
  readonly limit: string | null;
}

const endingOf = (name: string) => ENDINGS.find(([ending]) => name.endsWith(ending));

/** Whether a figure has a label, or is left unsaid, by choice and not by its name alone. */
export const isNamedFigure = (name: string): boolean => name in LABELS || SILENT.has(name);

/** The label of a figure: `lateMinutes` → `late by`; of one without, its name without the unit. */
export const figureLabel = (name: string): string => {
  const known = LABELS[name];
  if (known !== undefined) return known;
  const stem = name.slice(0, name.length - (endingOf(name)?.[0].length ?? 0)) || name;
  return stem.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`).trim();
};

/** A named number, said in the reader's unit by what its name ends in. */
export const figureText = (name: string, value: number, say: Speech): string =>
  endingOf(name)?.[1](value, say) ?? plainNumber(value, 2);

/** Every measured number that is worth reading out. */
export const figureWords = (
  figures: Readonly<Record<string, number>>,
  thresholds: Readonly<Record<string, number>>,
  say: Speech,
): FigureWords[] =>
  Object.entries(figures)
    .filter(([name]) => !SILENT.has(name))
    .map(([name, value]) => ({
      label: figureLabel(name),
      value: figureText(name, value, say),
      limit: name in thresholds ? figureText(name, thresholds[name]!, say) : null,
    }));
