import type { Account } from '../account.ts';
import type { ReasonId } from '../ids.ts';
import type { Extent } from './gather.ts';
import type { ChannelUnit } from '../../model/options.ts';
import { Refusal } from '../../model/refusal.ts';
import { isVoltage } from '../text/unit-text.ts';

/** What the file says of the unit of its main temperature. */
export interface UnitEvidence {
  readonly given: ChannelUnit | null;
  /** Units that stand beside the numbers, and in how many of the rows. */
  readonly inCells: ReadonlyMap<ChannelUnit, number>;
  readonly header: ChannelUnit | null;
  readonly preamble: ChannelUnit | null;
  /** The units in the headers of other temperature columns. */
  readonly others: readonly ChannelUnit[];
  readonly isUnitInOwnColumn: boolean;
  readonly voltages: VoltageEvidence;
}

/** What speaks for voltages where no unit stands anywhere. */
export interface VoltageEvidence {
  /** Whether the person or the file names a couple type. */
  readonly hasCouple: boolean;
  /** Whether the readings are printed finer than degrees are. */
  readonly isFine: boolean;
}

export interface UnitDecision {
  readonly unit: ChannelUnit;
  readonly why: ReasonId;
  readonly certainty: number;
}

/** Above this a potter's kiln can only be read in °F (cone 14 falls below 1450 °C). */
const HOTTEST_KILN_C = 1450;
/** The same in kelvin. */
const HOTTEST_KILN_K = 1723;
/** Rooms in kelvin; nothing else stands there at the start of a log but by chance. */
const ROOM_K = [283, 308] as const;
/** Rooms in °F that would be hot in °C. */
const ROOM_F = [55, 100] as const;
/** A record that climbs this far was a firing. */
const FIRING_C = 300;

/** Millivolts of any couple with its hot end in a room, compensated or not … */
const ROOM_MILLIVOLTS = [-0.5, 2.5] as const;
/** … and at its hottest in a firing: from type S at 500 °C to type E at 1000 °C (ITS-90). */
const FIRED_MILLIVOLTS = [4, 78] as const;
/** Degrees are printed to a hundredth at most; the rest is voltage (common practice). */
const FINEST_PER_DEGREE = 100;

/** Whether most numbers have a third decimal. */
export const areFine = (values: Float64Array): boolean => {
  const present = [...values].filter((value) => !Number.isNaN(value));
  const fine = present.filter((value) => {
    const hundredths = value * FINEST_PER_DEGREE;
    return Math.abs(hundredths - Math.round(hundredths)) > 1e-6;
  });
  return fine.length > present.length / 2;
};

const within = (value: number, [low, high]: readonly [number, number]): boolean =>
  value >= low && value <= high;

/**
 * The unit in which the readings run as a kiln's can: where they start and lie at rest, and how
 * high they go. A guess, and the certainty says how good a one.
 */
export const plausibleUnit = ({ first, min, max }: Extent): UnitDecision => {
  const guess = (unit: ChannelUnit, certainty: number): UnitDecision => ({
    unit,
    why: 'plausible',
    certainty,
  });
  const startsInRoomK = within(first, ROOM_K) && (min >= ROOM_K[0] - 10 || min >= 0);
  const isColdK = startsInRoomK && min >= 0 && max < ROOM_K[1] + 10 && min < 200;
  const isFiringK =
    startsInRoomK && min >= ROOM_K[0] - 10 && max - min > FIRING_C && max < HOTTEST_KILN_K;
  const isRestK = startsInRoomK && min >= ROOM_K[0] - 10 && max <= ROOM_K[1] + 10;
  if (isColdK || isFiringK || isRestK) return guess('K', 0.5);
  if (max > HOTTEST_KILN_C) return guess('F', 0.9);
  if (min < 45) return guess('C', max - min > FIRING_C ? 0.85 : 0.55);
  if (within(min, ROOM_F) && max > 1320) return guess('F', 0.7);
  return guess('C', 0.4);
};

/** Whether readings taken in this unit run as no kiln does, while another unit would fit. */
export const isDoubtful = (unit: ChannelUnit, extent: Extent): boolean => {
  const { min, max } = extent;
  if (unit === 'C') return max > HOTTEST_KILN_C + 50 || (within(min, ROOM_F) && max > 1400);
  if (unit === 'F') return min > 5 && min < 35 && max > 600 && max < 1400;
  return unit === 'K' && min < 200 && max > 400;
};

const inCells = (cells: ReadonlyMap<ChannelUnit, number>): ChannelUnit | null => {
  const [best] = [...cells].sort((one, other) => other[1] - one[1]);
  return best?.[0] ?? null;
};

const fromFile = (evidence: UnitEvidence): UnitDecision | null => {
  const cell = inCells(evidence.inCells);
  if (cell !== null) {
    const why = evidence.isUnitInOwnColumn ? 'own-column' : 'in-cell';
    return { unit: cell, why, certainty: 0.98 };
  }
  if (evidence.header !== null) return { unit: evidence.header, why: 'header', certainty: 0.98 };
  if (evidence.preamble !== null) {
    return { unit: evidence.preamble, why: 'preamble', certainty: 0.9 };
  }
  const others = new Set(evidence.others.filter((unit) => !isVoltage(unit)));
  const [only] = others;
  if (others.size === 1 && only !== undefined) {
    return { unit: only, why: 'header', certainty: 0.8 };
  }
  return null;
};

/** The unit that the person or the file says, before the readings are looked at. */
export const saidUnit = (evidence: UnitEvidence): ChannelUnit | null =>
  evidence.given ?? fromFile(evidence)?.unit ?? null;

/** Whether readings start and climb as a couple's millivolts do, and as no kiln in degrees. */
const climbsAsVoltage = ({ first, min, max }: Extent): boolean =>
  within(first, ROOM_MILLIVOLTS) && min >= ROOM_MILLIVOLTS[0] - 1 && within(max, FIRED_MILLIVOLTS);

/**
 * The unit by the values alone: a voltage only where the couple is known.
 *
 * @throws Refusal `no-temperature` for what is most likely the voltage of an unknown couple
 */
const byValues = (extent: Extent, { hasCouple, isFine }: VoltageEvidence): UnitDecision => {
  if (!climbsAsVoltage(extent) || !(hasCouple || isFine)) return plausibleUnit(extent);
  if (hasCouple) return { unit: 'mV', why: 'plausible', certainty: 0.7 };
  throw new Refusal(
    'no-temperature',
    `the readings run from ${extent.min} to ${extent.max} as a couple’s millivolts do; give the ` +
      'unit mV and the couple type, or the unit if they are degrees',
  );
};

/**
 * The unit of the main temperature: as the person says, as the file says, or as its values allow.
 *
 * @throws Refusal `no-temperature` for what is most likely the voltage of an unknown couple
 */
export const decideUnit = (
  evidence: UnitEvidence,
  extent: Extent,
  account: Account,
): ChannelUnit => {
  const decision: UnitDecision =
    evidence.given !== null
      ? { unit: evidence.given, why: 'given', certainty: 1 }
      : (fromFile(evidence) ?? byValues(extent, evidence.voltages));
  account.decide('unit', decision.unit, decision.why, decision.certainty);
  if (decision.why === 'plausible') account.warn('unit-assumed');
  if (isDoubtful(decision.unit, extent)) account.warn('unit-doubtful');
  return decision.unit;
};
