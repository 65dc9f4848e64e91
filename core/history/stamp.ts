const STAMP = /^(\d{4})-(\d\d)-(\d\d)T(\d\d):(\d\d)(?::(\d\d))?/;
const OFFSET = /([+-])(\d\d):?(\d\d)$/;

/** A stamp's own calendar and clock in milliseconds, its offset left aside; NaN if it is none. */
export const stampMs = (instant: string): number => {
  const [, year, month, day, hour, minute, second = '0'] = STAMP.exec(instant) ?? [];
  if (year === undefined) return NaN;
  return Date.UTC(
    Number(year),
    Number(month) - 1,
    Number(day),
    Number(hour),
    Number(minute),
    Number(second),
  );
};

/** The same in world time where the stamp has an offset; a stamp without one is taken as it stands. */
export const worldMs = (instant: string): number => {
  const [, sign, hours, minutes] = OFFSET.exec(instant.slice(16)) ?? [];
  const offset =
    sign === undefined ? 0 : Number(`${sign}1`) * (Number(hours) * 60 + Number(minutes));
  return stampMs(instant) - offset * 60_000;
};
