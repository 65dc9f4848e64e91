import { fold } from './fold.ts';

/**
 * Words that loggers write where a thermocouple gives no reading, in English, German, French,
 * Spanish, Italian and Dutch; common practice, no source. Compared without accents, case and marks.
 */
const WORDS: ReadonlySet<string> = new Set([
  ...[
    'nan',
    'null',
    'none',
    'nil',
    'na',
    'unavailable',
    'unknown',
    'nodata',
    'noreading',
    'novalue',
    'undefined',
    'missing',
  ],
  ...[
    'open',
    'opencircuit',
    'opentc',
    'tcopen',
    'sensoropen',
    'opensensor',
    'openloop',
    'ol',
    'or',
  ],
  ...[
    'over',
    'overrange',
    'overrange',
    'overflow',
    'ovr',
    'ovf',
    'ur',
    'under',
    'underrange',
    'unf',
  ],
  ...['underflow', 'hi', 'lo', 'high', 'low', 'hhh', 'hhhh', 'lll', 'llll', 'uuu', 'uuuu', 'ooo'],
  ...[
    'oooo',
    'err',
    'error',
    'fault',
    'fail',
    'failed',
    'failure',
    'bad',
    'invalid',
    'void',
    'inv',
  ],
  ...['disconnected', 'disconnect', 'unplugged', 'notconnected', 'nc', 'nosensor', 'sensorerror'],
  ...['sensorfault', 'sensorfail', 'burnout', 'break', 'sensorbreak', 'short', 'shorted', 'off'],
  ...['inf', 'infinity', '1qnan', '1inf', '1ind', 'ref', 'value', 'div0', 'nd', 'xxx', 'xxxx'],
  ...['fehler', 'fuhlerbruch', 'fuehlerbruch', 'bruch', 'offen', 'defekt', 'ungultig', 'storung'],
  ...['keinwert', 'kurzschluss', 'erreur', 'rupture', 'coupe', 'ouvert', 'defaut', 'invalide'],
  ...['abierto', 'roto', 'rotura', 'fallo', 'invalido', 'sinlectura', 'aperto', 'rotto', 'guasto'],
  ...['nosignal', 'keinsignal', 'keinemessung', 'horsservice', 'pasdemesure', 'pasdesignal'],
  ...['sinsenal', 'sinmedida', 'nessunalettura', 'senzasegnale', 'geenmeting', 'geensignaal'],
  ...['errore', 'nonvalido', 'fout', 'kapot', 'breuk', 'onderbroken', 'ongeldig', 'geenwaarde'],
]);

/** Error codes of the kind `E1`, `Err 02`, `E-3`. */
const CODE = /^e(?:rr|rror)?[-_ ]?\d{1,4}$/;

/**
 * Whether a cell that is no number says "no reading": a known word, an error code, or signs alone
 * (`---`, `****`). An empty cell is not a mark.
 */
export const isNoReadingMark = (cell: string): boolean => {
  if (cell.length === 0 || cell.length > 24) return false;
  const folded = fold(cell);
  const bare = folded.replace(/[^\p{L}\p{N}]+/gu, '');
  if (bare.length === 0) return true;
  return WORDS.has(bare) || CODE.test(folded);
};
