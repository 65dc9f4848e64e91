import { MAX_VALUE_CHARS } from '../limits.ts';
import { secondsIn, timeScale, unitOfText } from '../text/unit-text.ts';
import { SECONDS_PER_DAY } from './civil.ts';

/** `2d 03:04:05`, `2 days, 3:04:05`, `2.03:04:05`, `2:03:04:05`. */
const WITH_DAYS =
  /^(\d{1,4})\s*(?:d|days?|tage?|j|jours?|dias?|giorni|dagen)?[\s,.:]\s*(\d{1,2}):(\d{2}):(\d{2}(?:[.,]\d{1,9})?)$/;
/** `1h 05m 20s`, `90 min 5 s`, `45 s`. */
const IN_WORDS =
  /^(?:(\d{1,5})\s?h(?:ours?|rs?)?\.?)?\s?(?:(\d{1,5})\s?m(?:in(?:utes?)?)?\.?)?\s?(?:(\d{1,6}(?:[.,]\d{1,9})?)\s?s(?:ec(?:onds?)?)?\.?)?$/;
/** One number and its unit: `1.5 h`, `90,5 min`, `1200 ms`. */
const IN_ONE_UNIT =
  /^(\d{1,12}(?:[.,]\d{1,9})?)\s?(d|days?|h|hours?|hrs?|std|min|minutes?|s|sec|ms|msec)\.?$/;

/** ISO 8601: `PT1H30M`, `P1DT2H`. */
const ISO = /^p(?:(\d{1,4})d)?(?:t(?:(\d{1,5})h)?(?:(\d{1,5})m)?(?:(\d{1,7}(?:[.,]\d{1,9})?)s)?)?$/;

const decimal = (text: string | undefined): number => Number((text ?? '0').replace(',', '.'));

/**
 * Seconds of a time elapsed that is written with days or with words; NaN for anything else. The
 * plain forms `h:mm` and `h:mm:ss` are read as clocks.
 */
export const parseDuration = (cell: string): number => {
  if (cell.length > MAX_VALUE_CHARS || !/^(?:\d|PT?\d)/i.test(cell)) return Number.NaN;
  const lower = cell.toLowerCase();
  const days = WITH_DAYS.exec(lower) ?? ISO.exec(lower);
  if (days !== null) {
    const [, day, hour, minute, second] = days;
    return (
      decimal(day) * SECONDS_PER_DAY + decimal(hour) * 3600 + decimal(minute) * 60 + decimal(second)
    );
  }
  const one = IN_ONE_UNIT.exec(lower);
  const unit = one === null ? null : timeScale(unitOfText(one[2]!));
  if (one !== null && unit !== null) return decimal(one[1]) * secondsIn(unit);
  const words = IN_WORDS.exec(lower);
  const [, hours, minutes, seconds] = words ?? [];
  const named = [hours, minutes, seconds].filter((part) => part !== undefined);
  if (named.length === 0) return Number.NaN;
  return decimal(hours) * 3600 + decimal(minutes) * 60 + decimal(seconds);
};
