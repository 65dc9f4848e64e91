import type { ConeKinetics } from '../cones/cone-kinetics.ts';
import type { Remedy } from '../model/document.ts';
import { peakChange, slowerChange, soakChange, type Change } from './changes.ts';
import type { FiringParts } from './firing-parts.ts';
import { aboveLevel, levelAt } from './level.ts';

/** Where the firing stands and what was meant, in positions. */
export interface RemedyQuestion {
  readonly cones: readonly ConeKinetics[];
  readonly target: number;
  /** Whether heat-work is missing or was too much. */
  readonly direction: 'more' | 'less';
  /** How many cones the firing is off. */
  readonly offCones: number;
  /** How far the truth may lie below and above the position: the 80 % range. */
  readonly downCones: number;
  readonly upCones: number;
}

/** More than this is not offered (chosen: beyond it, fire again with another schedule). */
const LONGEST_HOLD_MINUTES = 480;
const LARGEST_PEAK_CHANGE_C = 100;
const SLOWEST_LAST_RAMP_C_PER_HOUR = 10;
/** Published hold rules conflict: half of what a hold is to add, at most half a cone. */
const HOLD_DOUBT_SHARE = 0.5;
const HOLD_DOUBT_CONES = 0.5;
/** Where even no hold at all stays above the target, no hold is offered if it comes this near. */
const NEAR_ENOUGH_CONES = 0.5;
const HALVINGS = 45;

/**
 * The least amount, from 0 to `most`, after which the position is at `goal` or past it in the
 * direction of the change; null where even `most` is not enough. `sign` is 1 for changes that add
 * heat-work and −1 for those that take some away.
 */
const amountFor = (
  cones: readonly ConeKinetics[],
  change: Change,
  goal: number,
  most: number,
  sign: 1 | -1,
): number | null => {
  const level = levelAt(cones, goal);
  if (level === null) return null;
  const isThere = (amount: number): boolean =>
    sign * aboveLevel(level, (kinetics) => Math.max(change(kinetics, sign * amount), 1e-300)) >= 0;
  if (isThere(0)) return 0;
  if (!isThere(most)) return null;
  let [low, high] = [0, most];
  for (let halving = 0; halving < HALVINGS; halving += 1) {
    const middle = (low + high) / 2;
    if (isThere(middle)) high = middle;
    else low = middle;
  }
  return high;
};

interface Amounts {
  readonly amount: number;
  /** The amount that does it if the truth lies at the kind end of the range. */
  readonly hopeful: number;
  /** The amount that does it at the unkind end; null where none within reason does. */
  readonly certain: number | null;
}

const amountsFor = (
  { cones, target, direction, offCones, downCones, upCones }: RemedyQuestion,
  change: Change,
  most: number,
  isHold: boolean,
): Amounts | null => {
  const sign = direction === 'more' ? 1 : -1;
  const doubt = isHold ? Math.min(HOLD_DOUBT_SHARE * offCones, HOLD_DOUBT_CONES) : 0;
  const [kind, unkind] = sign > 0 ? [upCones, downCones] : [downCones, upCones];
  const to = (goal: number): number | null => amountFor(cones, change, goal, most, sign);
  const amount = to(target);
  if (amount === null) return null;
  return {
    amount,
    hopeful: to(target - sign * Math.hypot(kind, doubt)) ?? 0,
    certain: to(target + sign * Math.hypot(unkind, doubt)),
  };
};

const near = (question: RemedyQuestion): RemedyQuestion => ({
  ...question,
  target: question.target + NEAR_ENOUGH_CONES,
});

/** Leaving out the whole hold, where that comes near enough. */
const noHold = (nearEnough: Amounts | null, minutes: number): Amounts | null =>
  nearEnough && { amount: minutes, hopeful: nearEnough.hopeful, certain: null };

const plain = (kind: Remedy['kind'], unit: Remedy['unit'], amounts: Amounts | null): Remedy[] =>
  amounts === null
    ? []
    : [
        {
          kind,
          unit,
          amount: amounts.amount,
          lowAmount: amounts.hopeful,
          highAmount: amounts.certain,
        },
      ];

/**
 * The last ramp as the rate it should have had. Its sure end is the slow one, which is the lower
 * number; where no rate within reason is sure, `lowAmount` is the slowest that was considered and
 * `highAmount` is null.
 */
const slower = (parts: FiringParts, question: RemedyQuestion): Remedy[] => {
  const rate = parts.rampRateCPerHour;
  const most = Math.log(rate / SLOWEST_LAST_RAMP_C_PER_HOUR);
  if (most <= 0) return [];
  const folds = amountsFor(question, slowerChange(parts), most, false);
  if (folds === null) return [];
  const rateAt = (fold: number): number => rate * Math.exp(-fold);
  return [
    {
      kind: 'slower-last-ramp',
      unit: 'C/h',
      amount: rateAt(folds.amount),
      lowAmount: folds.certain === null ? SLOWEST_LAST_RAMP_C_PER_HOUR : rateAt(folds.certain),
      highAmount: folds.certain === null ? null : rateAt(folds.hopeful),
    },
  ];
};

/**
 * What would have brought the firing to its target: each alone, with the amounts at the two ends of
 * the position's 80 % range. A remedy that could not do it within reason is left out.
 */
export const remediesFor = (parts: FiringParts, question: RemedyQuestion): Remedy[] => {
  const soak = soakChange(parts);
  const peak = peakChange(parts);
  if (question.direction === 'more') {
    return [
      ...plain('longer-hold', 'min', amountsFor(question, soak, LONGEST_HOLD_MINUTES, true)),
      ...plain('higher-peak', 'C', amountsFor(question, peak, LARGEST_PEAK_CHANGE_C, false)),
      ...slower(parts, question),
    ];
  }
  const soaked = parts.soakMinutes;
  const shorter =
    amountsFor(question, soak, soaked, true) ??
    noHold(amountsFor(near(question), soak, soaked, true), soaked);
  return [
    ...plain('shorter-hold', 'min', shorter),
    ...plain('lower-peak', 'C', amountsFor(question, peak, LARGEST_PEAK_CHANGE_C, false)),
  ];
};
