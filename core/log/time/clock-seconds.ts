/** `2:30 at night` is after midnight, `11:30 at night` before it. */
export const isSmallHour = (clock: readonly number[] | null): boolean =>
  clock !== null && (clock[0] === 12 || clock[0]! < 6);

/** The seconds of hour, minute and second as printed; null where they are no time of day. */
export const secondsOfClock = (
  clock: readonly number[],
  half: 'am' | 'pm' | null,
): number | null => {
  const [first = 0, minutes = 0, seconds = 0] = clock;
  if (minutes > 59 || seconds > 60) return null;
  if (half !== null && (first < 1 || first > 12)) {
    // Some logs write 24 hours and the mark beside them: `14:05 pm`.
    if (first > 23 || (half === 'am' && first > 12)) return null;
  }
  const hour = half === null || first > 12 ? first : (first % 12) + (half === 'pm' ? 12 : 0);
  return hour * 3600 + minutes * 60 + seconds;
};
