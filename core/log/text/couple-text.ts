import type { CoupleType } from '../../model/options.ts';
import { fromFahrenheit, fromKelvin } from '../../units.ts';
import { fold } from './fold.ts';
import { parseNumber } from './number.ts';
import type { Preamble } from './preamble.ts';
import { parseQuantity } from './quantity.ts';

/** `type K`, `Typ: S`, `Thermoelement R`, `TC-N`. */
const WORD_AND_TYPE =
  /(?:^|[^\p{L}])(?:(?:type|typ|tipo|thermocouple|thermoelement|thermopaar|couple|termopar|termocoppia|thermokoppel)[\s:=,;"'([-]{1,4}|tc[-_])([KSRBNJTE])(?![\p{L}\p{N}])/giu;
/** `K-type`, `S thermocouple`, `K TC`. */
const TYPE_AND_WORD =
  /(?:^|[^\p{L}\p{N}])([KSRBNJTE])[\s-](?:type|typ|thermocouple|thermoelement|couple|tc)(?!\p{L})/giu;

const typesIn = (text: string): string[] =>
  [WORD_AND_TYPE, TYPE_AND_WORD].flatMap((pattern) =>
    [...text.matchAll(pattern)].map(([, letter = '']) => letter.toUpperCase()),
  );

/** The couple types that texts name, each once. */
export const coupleTypesIn = (texts: readonly string[]): readonly CoupleType[] => [
  ...new Set(texts.flatMap(typesIn) as CoupleType[]),
];

/** The one couple type that texts name; null if they name none or several. */
export const coupleTypeIn = (texts: readonly string[]): CoupleType | null => {
  const types = coupleTypesIn(texts);
  return types.length === 1 ? types[0]! : null;
};

/** A name as it stands in lines about its channel: without its unit and marks. */
const asChannel = (name: string): string =>
  fold(name.replace(/[[({].*$/, ''))
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();

/**
 * The type that the preamble names for one channel: beside its name, as in `Ch1: type K` or, as a
 * letter alone, `Ch1;K`. Null where it says none, or several.
 */
export const coupleTypeFor = (name: string, { lines, entries }: Preamble): CoupleType | null => {
  const channel = asChannel(name).replace(/\s(?:mv|uv|µv)$/, '');
  if (channel === '') return null;
  const isOf = (text: string): boolean => ` ${asChannel(text)} `.includes(` ${channel} `);
  const beside = coupleTypeIn(lines.filter(isOf));
  if (beside !== null) return beside;
  const letters = entries.filter(
    ({ key, value }) => asChannel(key) === channel && /^[KSRBNJTE]$/.test(value),
  );
  const types = new Set(letters.map(({ value }) => value as CoupleType));
  return types.size === 1 ? [...types][0]! : null;
};

/** What stands above a table, as texts; entries of JSON have no lines. */
export const textsOf = ({ lines, entries }: Preamble): readonly string[] =>
  lines.length > 0 ? lines : entries.map(({ key, value }) => `${key}: ${value}`);

/** What a file says of the cold junction: its temperature in °C, that it is allowed for, or not. */
export type ColdJunctionSaid = number | 'compensated' | 'raw';

const JUNCTION =
  /cold.?junction|ref(?:erence)?.?junction|\bcjc?\b|vergleichsstell|kaltstell|soudure froide|jonction froide|union fria|junta fria|giunt\w+ fredd|koude.?las/;
const COMPENSATION = /compens|kompens/;
/** Right before a word of compensation. */
const NOT =
  /(?:\bun|\bnot |\bnon |\bnicht |\bunk|\bsin |\bno |\bohne |\bsans |\bsenza |\bniet |\bgeen |\bkeine |\bwithout )(?:compens|kompens|gecompens|ompens)/;
const OFF =
  /^(?:off|no|none|false|disabled|aus|nein|keine?|ohne|non|sans|desactiv|apagad|spent|disattiv|uit|nee|geen|arret)/;
const ON =
  /^(?:on|yes|true|internal|enabled|auto|ein|ja|intern|aktiv|oui|activ|marche|si$|encendid|acces|attiv|aan|compens|kompens|gecompens)/;
/** A bare number is °C only where a logger can stand (chosen). */
const ROOM_C = [1, 60] as const;

const degreesIn = (value: string): number | null => {
  const mark = /\d,\d/.test(value) ? ',' : '.';
  const quantity = parseQuantity(value, mark);
  if (quantity?.unit === 'C' || quantity?.unit === 'degrees') return quantity.value;
  if (quantity?.unit === 'F') return fromFahrenheit(quantity.value);
  if (quantity?.unit === 'K') return fromKelvin(quantity.value);
  const bare = parseNumber(value, mark);
  return bare >= ROOM_C[0] && bare <= ROOM_C[1] ? bare : null;
};

const saidByEntry = (key: string, value: string): ColdJunctionSaid | null => {
  if (!JUNCTION.test(fold(key))) return null;
  const folded = fold(value);
  if (NOT.test(folded) || OFF.test(folded)) return 'raw';
  return ON.test(folded) ? 'compensated' : degreesIn(value);
};

const saidByText = (text: string): ColdJunctionSaid | null => {
  const folded = fold(text);
  if (!COMPENSATION.test(folded)) return null;
  if (NOT.test(folded)) return 'raw';
  return JUNCTION.test(folded) ||
    /(?:compensated|kompensiert|compensee?s?|compensad[oa]s?|compensat[oaie]|gecompenseerd)\b/.test(
      folded,
    )
    ? 'compensated'
    : null;
};

/** What a name, such as `TC (mV, compensated)`, says of the cold junction; null if nothing. */
export const coldJunctionInName = (name: string): ColdJunctionSaid | null => saidByText(name);

/** What the preamble says of the cold junction; null if nothing. */
export const declaredColdJunction = (preamble: Preamble): ColdJunctionSaid | null => {
  for (const { key, value } of preamble.entries) {
    const said = saidByEntry(key, value);
    if (said !== null) return said;
  }
  for (const text of textsOf(preamble)) {
    const said = saidByText(text);
    if (said !== null) return said;
  }
  return null;
};
