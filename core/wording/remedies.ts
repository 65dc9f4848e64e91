import { positionOfCone } from '../model/cone.ts';
import type { AnalysisDocument, Remedy } from '../model/document.ts';
import { celsius, celsiusPerHour, type Celsius } from '../units.ts';
import { conePlace, duration, type Speech } from './speech.ts';

/** Less than this is no amount worth naming, in any unit (chosen: below what is said). */
const NO_AMOUNT = 0.5;

/** How far under the peak a hold still is the one at the top (chosen, as the heat-work is reckoned). */
const HOLD_NEAR_PEAK_C = 20;

/** The hold at the top as it was driven, in minutes; 0 where there was none. */
const heldMinutes = ({ alignment, trace }: AnalysisDocument): number => {
  const legs = alignment
    ? alignment.legs.flatMap(({ kind, actual }) => (actual === null ? [] : { kind, ...actual }))
    : trace.legs;
  const hold = legs.findLast(
    ({ kind, startC, endC }) =>
      kind === 'hold' && (startC + endC) / 2 >= trace.peakC - HOLD_NEAR_PEAK_C,
  );
  return hold === undefined ? 0 : (hold.endSeconds - hold.startSeconds) / 60;
};

/** One way, as the thing itself: what it is called, and how a changed amount of it is said. */
interface Way {
  readonly name: (said: string) => string;
  readonly said: (amount: number) => string;
  /** What the amount is beside that of the firing and of the schedule; null where nothing is. */
  readonly beside: string | null;
  /** Whether more of the amount is less of the thing. */
  readonly falls: boolean;
}

const besidePeak = (peak: Celsius, document: AnalysisDocument, say: Speech): string => {
  const { schedule, trace } = document;
  const from = (other: Celsius, whose: string): string =>
    `${say.apart(peak, other)} ${peak < other ? 'below' : 'above'} ${whose}`;
  const reached = from(trace.peakC, 'the one reached');
  if (schedule === null || schedule.segments.length === 0) return reached;
  const planned = Math.max(...schedule.segments.map(({ targetC }) => targetC));
  return `${reached} and ${from(celsius(planned), 'the schedule’s own')}`;
};

const peakWay = (sign: 1 | -1, amount: number, document: AnalysisDocument, say: Speech): Way => {
  const peakAt = (by: number): Celsius => celsius(document.trace.peakC + sign * by);
  return {
    name: (said) => `a peak of ${said}`,
    said: (by) => say.temperature(peakAt(by)),
    beside: besidePeak(peakAt(amount), document, say),
    falls: sign < 0,
  };
};

const lessHold: Way = {
  name: (said) => `${said} less at the peak`,
  said: (by) => duration(by * 60),
  beside: null,
  falls: false,
};

const holdWay = (sign: 1 | -1, amount: number, document: AnalysisDocument): Way => {
  const held = heldMinutes(document);
  // A hold that the legs do not show cannot be named by its length.
  if (sign < 0 && held < amount - NO_AMOUNT) return lessHold;
  const holdOf = (by: number): number => Math.max(0, held + sign * by);
  const isNone = holdOf(amount) < NO_AMOUNT;
  const had =
    held < NO_AMOUNT ? 'where this one had none' : `where this one had ${duration(held * 60)}`;
  return {
    name: (said) => (isNone ? 'no hold at the peak at all' : `a hold of ${said} at the peak`),
    said: (by) => duration(holdOf(by) * 60),
    beside: had,
    falls: sign < 0,
  };
};

const wayOf = ({ kind, amount }: Remedy, document: AnalysisDocument, say: Speech): Way => {
  switch (kind) {
    case 'longer-hold':
      return holdWay(1, amount, document);
    case 'shorter-hold':
      return holdWay(-1, amount, document);
    case 'higher-peak':
      return peakWay(1, amount, document, say);
    case 'lower-peak':
      return peakWay(-1, amount, document, say);
    case 'slower-last-ramp':
      return {
        name: (said) => `the last climb at ${said}`,
        said: (rate) => say.rate(celsiusPerHour(rate)),
        beside: null,
        falls: false,
      };
  }
};

/** `between 24 min and 1 h 50 min`: the range, as far as it has ends worth naming. */
const rangeOf = (
  { unit, lowAmount, highAmount }: Remedy,
  { said, falls }: Way,
  isNone: boolean,
): string | null => {
  const isOpenBelow = lowAmount < NO_AMOUNT;
  if (highAmount === null) {
    // A last climb's low end is the slowest rate that was tried, not the least that helps.
    if (unit === 'C/h') return 'no rate within reason is certain to do it';
    if (isOpenBelow || isNone) return null;
    const least = falls ? 'at most' : 'at least';
    return `${least} ${said(lowAmount)}, and no amount within reason is certain to do it`;
  }
  if (isOpenBelow) return `${falls ? 'at least' : 'up to'} ${said(highAmount)}`;
  const [low, high] = falls ? [highAmount, lowAmount] : [lowAmount, highAmount];
  return `between ${said(low)} and ${said(high)}`;
};

/**
 * One way to get the cone that was meant, as the peak, hold or rate itself, so that nobody adds a
 * difference to the wrong number: `a peak of 1216 °C (between 1198 °C and 1224 °C), 42 °C above the one
 * reached and 6 °C above the schedule’s own`.
 */
export const remedyPhrase = (remedy: Remedy, document: AnalysisDocument, say: Speech): string => {
  const way = wayOf(remedy, document, say);
  const said = way.said(remedy.amount);
  const range = rangeOf(remedy, way, way.name(said) === way.name(''));
  const ways = way.name(range === null ? `about ${said}` : said);
  const bracket = range === null ? '' : ` (${range})`;
  return `${ways}${bracket}${way.beside === null ? '' : `, ${way.beside}`}`;
};

/**
 * What a schedule that is not to blame comes to: `cone 6`; null where none was given, or it misses its
 * cone by itself. Where the kiln did not do what was planned, a change of the schedule would only make
 * the next firing miss the other way.
 */
export const scheduleComesTo = ({ findings, heatWork }: AnalysisDocument): string | null => {
  const off = findings.find(({ id }) => id === 'underfired' || id === 'overfired')?.figures[
    'asPlannedOffCones'
  ];
  return off === undefined || !heatWork?.target
    ? null
    : conePlace(positionOfCone(heatWork.target.cone) + off);
};

/** That the schedule is not to be changed, where it is the kiln that did not keep to it; else null. */
export const leaveScheduleSentence = (document: AnalysisDocument): string | null => {
  const comesTo = scheduleComesTo(document);
  return comesTo === null
    ? null
    : `Followed to the letter, the schedule comes to ${comesTo}: leave its peak and its hold as they are, and find out why the kiln did not follow it.`;
};

/** How to take what would have done it; null where nothing was worked out. */
export const remediesNote = (document: AnalysisDocument): string | null => {
  const ways = document.heatWork?.remedies.length ?? 0;
  if (ways === 0) return null;
  const prove = ways === 1 ? 'Let cones prove it.' : PROVE_EACH;
  return leaveScheduleSentence(document) ?? prove;
};

const PROVE_EACH = 'Change one of these at a time, and let cones prove it.';

/** All ways, as one sentence; null where none was worked out. */
export const remedySentence = (document: AnalysisDocument, say: Speech): string | null => {
  const ways = document.heatWork?.remedies.map((way) => remedyPhrase(way, document, say)) ?? [];
  const leave = leaveScheduleSentence(document);
  if (ways.length === 0) return leave;
  const all = ways.join('; or ');
  return leave === null
    ? `By the same reckoning this would have done it: ${all}. ${remediesNote(document) ?? ''}`
    : `${leave} With all else as it went this time, this would have done it: ${all}.`;
};
