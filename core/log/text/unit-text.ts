import type { ChannelUnit, TimeUnit } from '../../model/options.ts';
import { fold } from './fold.ts';

/** A unit as a log may name it: of temperature, of time, or of anything else. */
export type PrintedUnit = ChannelUnit | 'degrees' | 'percent' | TimeUnit | 'rate' | 'other';

/**
 * What is left of a degree sign after its journeys: the sign itself, its look-alikes, U+FFFD, a
 * question mark, and what bytes 0xB0, 0xF8 and 0x9B of other pages show as in windows-1252.
 */
const DEGREE = '°º˚◦�?›ø¡¢ª∞*';
const DEGREE_WORDS = [
  ...['degrees', 'degree', 'degres', 'degre', 'deg', 'grados', 'grado', 'gradi', 'graden', 'graad'],
  'grad',
];

const TEMPERATURE_WORDS: ReadonlyMap<string, ChannelUnit> = new Map([
  ...(['celsius', 'centigrade', 'centigrados', 'celcius', 'c'] as const).map(
    (word) => [word, 'C'] as const,
  ),
  ...(['fahrenheit', 'farenheit', 'f'] as const).map((word) => [word, 'F'] as const),
  ...(['kelvin', 'kelvins', 'k'] as const).map((word) => [word, 'K'] as const),
  ...(['mv', 'millivolt', 'millivolts'] as const).map((word) => [word, 'mV'] as const),
  ...(['uv', 'μv', 'microvolt', 'microvolts', 'mikrovolt'] as const).map(
    (word) => [word, 'uV'] as const,
  ),
]);

const TIME_WORDS: ReadonlyMap<string, TimeUnit> = new Map([
  ...(['ns', 'nanoseconds', 'nsec'] as const).map((word) => [word, 'ns'] as const),
  ...(['us', 'µs', 'μs', 'microseconds', 'usec'] as const).map((word) => [word, 'us'] as const),
  ...(['ms', 'millis', 'milliseconds', 'msec', 'millisekunden'] as const).map(
    (word) => [word, 'ms'] as const,
  ),
  ...(
    ['s', 'sec', 'secs', 'second', 'seconds', 'sek', 'sekunde', 'sekunden', 'secondes'] as const
  ).map((word) => [word, 's'] as const),
  ...(['segundos', 'seg', 'secondi', 'seconden', 'seconde'] as const).map(
    (word) => [word, 's'] as const,
  ),
  ...(['min', 'mins', 'minute', 'minutes', 'minuten', 'minutos', 'minuti', 'minuut'] as const).map(
    (word) => [word, 'min'] as const,
  ),
  ...(
    ['h', 'hr', 'hrs', 'hour', 'hours', 'std', 'stunde', 'stunden', 'heure', 'heures'] as const
  ).map((word) => [word, 'h'] as const),
  ...(['hora', 'horas', 'ora', 'ore', 'uur', 'uren'] as const).map((word) => [word, 'h'] as const),
  ...(['d', 'day', 'days', 'tage', 'jours', 'dias', 'giorni', 'dagen'] as const).map(
    (word) => [word, 'd'] as const,
  ),
]);

const OTHER_WORDS: ReadonlySet<string> = new Set([
  ...['v', 'a', 'ma', 'ua', 'w', 'kw', 'wh', 'kwh', 'mwh', 'ah', 'mah', 'hz', 'rpm', 'ohm', 'mohm'],
  ...['pa', 'hpa', 'kpa', 'mbar', 'bar', 'psi', 'mg', 'g', 'kg', 'ppm', 'lx', 'lxh', 'db', 'dbm'],
  ...['m3/h', 'l/min', 'ml/min', 'cc/min', 'm/s', 'mm', 'cm', 'm', 'mw/cm2', 'w/cm2h', 'w/g', 'uw'],
]);

/** Scales of temperature that no couple's tables are in: Rankine, Réaumur and others. */
const OTHER_SCALES: ReadonlySet<string> = new Set([
  ...['r', 'ra', 'rankine', 're', 'reaumur', 'delisle', 'romer'],
]);

/** Parts or multiples of a degree: `0.1 °C`, `1/10 K`, `°C x10`. */
const TENTHS =
  /^(?:0?[.,]\d+|1\/10+|x ?10+|\* ?10+)\s?(?:[°º]|deg)\s?[cfk]$|^(?:[°º]|deg)\s?[cfk]\s?[x*/]\s?10+$/;

const PERCENT = /^(?:%\s?(?:rh|r\.h|rf|hr|ur|rv)?|percent|prozent|pct)$/;

const isTimeUnitAfter = (text: string): boolean =>
  TIME_WORDS.has(text.trim()) || text.trim() === 'm';

/** Without the degree signs, or their remains, in front of a letter. */
const withoutSigns = (text: string): string => {
  const marked = [...text];
  while (marked.length > 1 && DEGREE.includes(marked[0]!)) marked.shift();
  return marked.join('').trim();
};

const withoutDegree = (word: string): string => {
  const prefix = DEGREE_WORDS.find(
    (degree) => word.startsWith(degree) && word.length > degree.length,
  );
  return prefix === undefined ? word : word.slice(prefix.length).replace(/^[\s._]+/, '');
};

/** Opened brackets and the like around a unit: `[°C]`, `(K)`, `"F"`. */
const stripped = (text: string): string =>
  text
    .trim()
    .replace(/^[[({<"'\s]+/, '')
    .replace(/[\])}>"'\s.]+$/, '');

/** The unit that a text is as a whole: `°C`, `[K]`, `deg F`, `?C`, `s`, `%`; null if it is none. */
export const unitOfText = (text: string): PrintedUnit | null => {
  if (text.length > 24) return null;
  const bare = stripped(text);
  // Degrees, and no word of which.
  if (bare === '°' || bare === 'º') return 'degrees';
  if (/^(?:degrees?|deg|grad|grados?|gradi|degr[eé]s?|graden)$/i.test(bare)) return 'degrees';
  if (bare === '℃') return 'C';
  if (bare === '℉') return 'F';
  // A small o for the sign, but not the words `of` and `ok`.
  if (bare === 'oC' || bare === 'oF') return bare.charAt(1) as ChannelUnit;
  // Case matters for one pair only: mV is a unit, MV a controller's output.
  if (bare === 'MV') return null;
  // `Â` is what the sign's first byte shows as where UTF-8 was taken for Latin-1.
  const word = fold(withoutSigns(bare.replace(/^Â(?=[°º])/, '')));
  if (PERCENT.test(word)) return 'percent';
  const slash = word.indexOf('/');
  if (slash > 0) {
    const isTemperature = TEMPERATURE_WORDS.has(withoutDegree(word.slice(0, slash)));
    if (isTemperature && isTimeUnitAfter(word.slice(slash + 1))) return 'rate';
  }
  const temperature = TEMPERATURE_WORDS.get(withoutDegree(word));
  if (temperature !== undefined) return temperature;
  const isMarked = /[°º˚]/.test(bare) || withoutDegree(word) !== word;
  const scale = withoutDegree(word);
  if (OTHER_SCALES.has(scale) && (isMarked || scale.length > 2)) return 'other';
  if (TENTHS.test(word)) return 'other';
  return TIME_WORDS.get(word) ?? (OTHER_WORDS.has(word) ? 'other' : null);
};

/** A true degree sign (or its remains inside brackets) with its letter, anywhere in a name. */
const DEGREE_LETTER = /[°º˚]\s?([CFK])(?![a-z])(\s?\/\s?(?:s|sec|m|min|h|hr|hour|std)\b)?/;
const BRACKETED = /[[({]([^[\](){}]{1,24})[\])}]/g;

/** A temperature's word right before a bare letter: `Temp C`, `temperature_f`, `T/K`, `tempF`. */
const WORD_AND_LETTER =
  /(?:(?:^|[^a-z])(?:t|tmp|temp|temps|temperature|temperatur|temperatura|temperatuur)\.?[\s_/,.:-]*(?:in\s)?|(?:^|[^a-z])(?:deg|degrees|grad)[\s_.]?)([cfk])$/;
const LAST_PART = /[\s_/,.:-]([^\s_/,.:-]{1,12})$/;

/**
 * The unit that a column's name carries: in brackets, after a slash or an underscore, or as a
 * degree sign anywhere. Null if it carries none.
 */
export const unitInName = (name: string): PrintedUnit | null => {
  const whole = unitOfText(name);
  if (whole !== null && name.trim().length > 1) return whole;
  const inBrackets = [...name.matchAll(BRACKETED)]
    .map(([, inner = '']) => unitOfText(inner))
    .filter((unit) => unit !== null);
  if (inBrackets.length > 0) return inBrackets[inBrackets.length - 1]!;
  if (name.includes('℃')) return 'C';
  if (name.includes('℉')) return 'F';
  const degree = DEGREE_LETTER.exec(name);
  if (degree !== null) return degree[2] === undefined ? (degree[1] as ChannelUnit) : 'rate';
  const folded = fold(name).trim();
  const letter = WORD_AND_LETTER.exec(folded)?.[1];
  if (letter !== undefined) return letter.toUpperCase() as ChannelUnit;
  return lastPartUnit(name, folded);
};

/** `elapsed_s`, `Temp./°C`, `kiln degC`: the last part as a unit, if it cannot be a label. */
const lastPartUnit = (name: string, folded: string): PrintedUnit | null => {
  const slash = name.indexOf('/');
  const afterSlash = slash > 0 ? unitOfText(name.slice(slash + 1)) : null;
  if (afterSlash !== null) return afterSlash;
  const last = LAST_PART.exec(folded)?.[1];
  if (last === undefined) return null;
  const unit = unitOfText(last);
  const isSingleLetter = last.length === 1;
  // `Zone C` is a place; `elapsed_s` and `time h` are units.
  const isTime = unit === 's' || unit === 'h' || unit === 'd';
  return isSingleLetter && !(isTime && /time|elapsed|zeit|temps|hora|tijd|tempo|dauer/.test(folded))
    ? null
    : unit;
};

/** The temperature scale of a printed unit, or null if it is not one of temperature. */
export const temperatureScale = (unit: PrintedUnit | null): ChannelUnit | null =>
  unit === 'C' || unit === 'F' || unit === 'K' || isVoltage(unit) ? unit : null;

/** Whether a unit is a couple's bare voltage, which needs the couple's type to be a temperature. */
export const isVoltage = (unit: PrintedUnit | null): unit is 'mV' | 'uV' =>
  unit === 'mV' || unit === 'uV';

/** The time unit of a printed unit, or null if it is none. */
export const timeScale = (unit: PrintedUnit | null): TimeUnit | null => {
  const scales: readonly string[] = ['ns', 'us', 'ms', 's', 'min', 'h', 'd'];
  return unit !== null && scales.includes(unit) ? (unit as TimeUnit) : null;
};

const SECONDS_IN: Readonly<Record<TimeUnit, number>> = {
  ns: 1e-9,
  us: 1e-6,
  ms: 1e-3,
  s: 1,
  min: 60,
  h: 3600,
  d: 86_400,
};

export const secondsIn = (unit: TimeUnit): number => SECONDS_IN[unit];
