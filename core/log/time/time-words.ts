/**
 * The words that stand in dates and times: months, weekdays, half-day marks and zones, in English,
 * German, French, Spanish, Italian and Dutch, without accents and in lower case.
 */

const MONTH_STEMS: readonly (readonly string[])[] = [
  [
    'jan',
    'janv',
    'ene',
    'gen',
    'jaen',
    'januar',
    'january',
    'janvier',
    'enero',
    'gennaio',
    'januari',
  ],
  [
    'feb',
    'fev',
    'fevr',
    'febr',
    'februar',
    'february',
    'fevrier',
    'febrero',
    'febbraio',
    'februari',
  ],
  ['mar', 'mars', 'mrz', 'mrt', 'maer', 'maerz', 'marz', 'march', 'marzo', 'maart'],
  ['apr', 'avr', 'abr', 'april', 'avril', 'abril', 'aprile'],
  ['may', 'mai', 'mag', 'mei', 'mayo', 'maggio'],
  ['jun', 'juin', 'giu', 'juni', 'june', 'junio', 'giugno'],
  ['jul', 'juil', 'lug', 'juli', 'july', 'juillet', 'julio', 'luglio'],
  ['aug', 'aou', 'aout', 'ago', 'august', 'agosto', 'augustus'],
  ['sep', 'sept', 'set', 'sett', 'september', 'septembre', 'septiembre', 'settembre', 'setiembre'],
  ['oct', 'okt', 'ott', 'oktober', 'october', 'octobre', 'octubre', 'ottobre'],
  ['nov', 'november', 'novembre', 'noviembre'],
  ['dec', 'dez', 'dic', 'dezember', 'december', 'decembre', 'diciembre', 'dicembre'],
];

const WEEKDAYS: readonly string[] = [
  ...['mon', 'tue', 'tues', 'wed', 'thu', 'thur', 'thurs', 'fri', 'sat', 'sun'],
  ...['monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday'],
  ...['mo', 'di', 'mi', 'do', 'fr', 'sa', 'so'],
  ...['montag', 'dienstag', 'mittwoch', 'donnerstag', 'freitag', 'samstag', 'sonntag', 'sonnabend'],
  ...['lun', 'mer', 'jeu', 'ven', 'sam', 'dim'],
  ...['lundi', 'mardi', 'mercredi', 'jeudi', 'vendredi', 'samedi', 'dimanche'],
  ...['mie', 'jue', 'vie', 'sab', 'dom'],
  ...['lunes', 'martes', 'miercoles', 'jueves', 'viernes', 'sabado', 'domingo'],
  ...['gio', 'lunedi', 'martedi', 'mercoledi', 'giovedi', 'venerdi', 'sabato', 'domenica'],
  ...['ma', 'wo', 'vr', 'za', 'zo'],
  ...['maandag', 'dinsdag', 'woensdag', 'donderdag', 'vrijdag', 'zaterdag', 'zondag'],
];

/** Words that may stand between the parts and say nothing: `5 de mayo`, `14:05 Uhr`, `le 5 mai`. */
const FILLERS: readonly string[] = [
  ...['t', 'at', 'de', 'del', 'um', 'uhr', 'le', 'a', 'alle', 'om', 'h', 'hrs', 'uur', 'st', 'nd'],
  ...['rd', 'th', 'den', 'der', 'the', 'ore', 'heures', 'er', 'of', 'du', 'di', 'la', 'l', 's'],
];

const MORNING: readonly string[] = [
  ...['am', 'vorm', 'vormittags', 'morgens', 'matin', 'manana', 'madrugada', 'mattino', 'mattina'],
  ...['vm', 'ochtends', 'morgens'],
];
const AFTERNOON: readonly string[] = [
  ...['pm', 'nachm', 'nachmittags', 'mittags', 'abends', 'apres-midi', 'soir', 'tarde'],
  ...['pomeriggio', 'sera', 'nm', 'middags', 'avonds'],
];
const NIGHT: readonly string[] = ['nachts', 'nuit', 'noche', 'notte'];

/** Minutes east of Greenwich. */
const ZONES: readonly (readonly [string, number])[] = [
  ...(['z', 'utc', 'gmt', 'ut', 'wet'] as const).map((name) => [name, 0] as const),
  ...(['cet', 'mez', 'met', 'bst', 'west'] as const).map((name) => [name, 60] as const),
  ...(['cest', 'mesz', 'mest', 'eet'] as const).map((name) => [name, 120] as const),
  ...([
    ['eest', 180],
    ['ast', -240],
    ['edt', -240],
    ['est', -300],
    ['cdt', -300],
  ] as const),
  ...([
    ['cst', -360],
    ['mdt', -360],
    ['mst', -420],
    ['pdt', -420],
    ['pst', -480],
  ] as const),
  ...([
    ['jst', 540],
    ['aest', 600],
    ['aedt', 660],
    ['nzst', 720],
    ['nzdt', 780],
  ] as const),
];

export type TimeWord =
  | { readonly kind: 'month'; readonly month: number }
  | { readonly kind: 'half'; readonly afternoon: boolean }
  /** Before or after midnight, which the hour tells. */
  | { readonly kind: 'night' }
  | { readonly kind: 'zone'; readonly offsetMinutes: number }
  | { readonly kind: 'nothing' };

const NOTHING: TimeWord = { kind: 'nothing' };

const WORDS: ReadonlyMap<string, TimeWord> = new Map<string, TimeWord>([
  ...[...WEEKDAYS, ...FILLERS].map((word) => [word, NOTHING] as const),
  ...ZONES.map(([word, offsetMinutes]) => [word, { kind: 'zone', offsetMinutes }] as const),
  ...MORNING.map((word) => [word, { kind: 'half', afternoon: false }] as const),
  ...NIGHT.map((word) => [word, { kind: 'night' }] as const),
  ...AFTERNOON.map((word) => [word, { kind: 'half', afternoon: true }] as const),
  ...MONTH_STEMS.flatMap((stems, index) =>
    stems.map((word) => [word, { kind: 'month', month: index + 1 }] as const),
  ),
]);

/** What a word of a date or time means, or null if it belongs in none. */
export const timeWord = (word: string): TimeWord | null => WORDS.get(word) ?? null;
