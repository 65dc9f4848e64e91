import type { DayOrder } from './date-order.ts';
import type { DatePart, Stamp } from './stamp.ts';

const part = ({ digits, isName }: DatePart, role: 'Y' | 'M' | 'D'): string => {
  if (isName) return 'MMM';
  return role.repeat(role === 'Y' ? Math.max(2, digits) : digits);
};

const rolesOf = (date: readonly DatePart[], order: DayOrder): readonly ('Y' | 'M' | 'D')[] => {
  const named = date.findIndex(({ isName }) => isName);
  if (date.length === 2) {
    const isMonthFirst = named === 0 || (named < 0 && order !== 'day-first');
    return isMonthFirst ? ['M', 'D'] : ['D', 'M'];
  }
  const isTwoDigits = named < 0 && date[2]?.digits !== 4;
  if (date[0]?.digits === 4 || (order === 'year-first' && isTwoDigits)) return ['Y', 'M', 'D'];
  const isMonthFirst = named === 0 || (named < 0 && order === 'month-first');
  return isMonthFirst ? ['M', 'D', 'Y'] : ['D', 'M', 'Y'];
};

const OTHER_CALENDARS: Readonly<Partial<Record<Stamp['dateForm'], string>>> = {
  weeks: 'YYYY-Www-D',
  ordinal: 'YYYY-DDD',
};

/** How a stamp is written, by example: `DD.MM.YYYY hh:mm:ss`. */
export const describeStamp = (stamp: Stamp, order: DayOrder): string => {
  const roles = rolesOf(stamp.date, order);
  const mark =
    stamp.dateMark === '' && stamp.date.some(({ isName }) => isName) ? ' ' : stamp.dateMark;
  const inMonths = stamp.date.map((each, index) => part(each, roles[index] ?? 'D')).join(mark);
  const date = OTHER_CALENDARS[stamp.dateForm] ?? inMonths;
  if (stamp.clockSeconds === null) return date;
  const clock = stamp.clockGroups === 2 ? 'hh:mm' : 'hh:mm:ss';
  const decimals = stamp.fraction === 0 ? '' : '.f';
  const half = stamp.half === null ? '' : ' am/pm';
  const zone = stamp.offsetMinutes === null ? '' : '±hh:mm';
  return `${date} ${clock}${decimals}${half}${zone}`.trim();
};
