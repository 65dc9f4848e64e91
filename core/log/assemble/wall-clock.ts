import type { Account } from '../account.ts';
import type { ReadingDecisions } from '../../model/options.ts';
import { Refusal } from '../../model/refusal.ts';
import { isoInstant, SECONDS_PER_DAY } from '../time/civil.ts';
import { inTimeZone, isTimeZone } from '../time/zone.ts';
import type { ResolvedTime } from './resolved-time.ts';

/**
 * The times of a wall clock that names no offset, in seconds from a day's beginning. In the zone
 * that the person gives they are moments; else they are taken as they stand.
 *
 * @throws Refusal `bad-option` for a zone that nobody knows
 */
export const wallClock = (
  seconds: Float64Array,
  originDays: number,
  pattern: string,
  { timeZone }: ReadingDecisions,
  account: Account,
): ResolvedTime => {
  if (timeZone === undefined) {
    return {
      seconds,
      kind: 'instant',
      pattern,
      instantOf: (row) => isoInstant(originDays, seconds[row]!, null),
    };
  }
  if (!isTimeZone(timeZone)) {
    throw new Refusal(
      'bad-option',
      `“${timeZone}” is no time zone; write it as Europe/Berlin or America/New_York are written`,
    );
  }
  account.decide('time-zone', timeZone, 'given', 1);
  const origin = originDays * SECONDS_PER_DAY;
  const { epochSeconds, offsetMinutesOf } = inTimeZone(
    seconds.map((value) => value + origin),
    timeZone,
  );
  return {
    seconds: epochSeconds.map((value) => value - origin),
    kind: 'instant',
    pattern,
    instantOf: (row) => isoInstant(originDays, seconds[row]!, offsetMinutesOf(row)),
  };
};
