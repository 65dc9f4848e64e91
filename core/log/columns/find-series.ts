import { meaningOf, wordsOf, type NameMeaning } from './name-meaning.ts';
import type { TableSample } from './sample.ts';
import type { ColumnProfile } from './profile.ts';

/**
 * The time stands still or falls back at this share of the changes from one channel to the next in
 * a long table; in a column of remarks or states it moves on (chosen).
 */
const STANDS_STILL = 0.4;
/** Or, where every reading has its own time: channels apart waver less than taken together by this
 * ratio (chosen). */
const SMOOTHER_APART = 0.5;

/** Words by which exports head the column of their channels' names. */
const CHANNEL_WORDS: ReadonlySet<string> = new Set([
  ...['channel', 'series', 'sensor', 'probe', 'tag', 'name', 'field', 'kanal', 'canal', 'voie'],
  ...['topic', 'entity', 'metric', 'variable', 'location', 'point', 'signal', 'kanaal', 'canale'],
  ...['messstelle', 'serie', 'punto', 'device', 'zone', 'measurement', 'item'],
]);

const namesChannels = (name: string): boolean =>
  wordsOf(name).some((word) => CHANNEL_WORDS.has(word));

const isLabelColumn = (profile: ColumnProfile, rows: number): boolean =>
  profile.distinct >= 2 && profile.distinct <= rows / 2 && profile.filled > 0.99;

const variation = (values: readonly number[]): number =>
  values.slice(1).reduce((sum, value, index) => sum + Math.abs(value - values[index]!), 0);

const byLabel = (labels: readonly string[], values: Float64Array): Map<string, number[]> => {
  const groups = new Map<string, number[]>();
  labels.forEach((label, row) => {
    const value = values[row]!;
    if (Number.isNaN(value)) return;
    const group = groups.get(label);
    if (group === undefined) groups.set(label, [value]);
    else group.push(value);
  });
  return groups;
};

const isSmootherApart = (labels: readonly string[], values: Float64Array): boolean => {
  const together = variation([...values].filter((value) => !Number.isNaN(value)));
  const apart = [...byLabel(labels, values).values()].reduce((sum, one) => sum + variation(one), 0);
  return together > 0 && apart < SMOOTHER_APART * together;
};

const standsStillAtChanges = (labels: readonly string[], times: readonly number[]): boolean => {
  const changes = labels.flatMap((label, row) =>
    row > 0 && label !== labels[row - 1] ? [row] : [],
  );
  if (changes.length === 0) return false;
  const still = changes.filter((row) => times[row]! <= times[row - 1]!).length;
  return still >= STANDS_STILL * changes.length;
};

/** Numbers that name channels: few, whole, under a heading that says so. */
const areChannelNumbers = ({ kind, numbers }: ColumnProfile, isNamed: boolean): boolean =>
  kind === 'number' && isNamed && numbers?.isInteger === true;

/**
 * Finds the column that names the channel of each row in a long table (time, channel, value).
 * `value` is the column of the readings, `taken` are columns that are known to hold something else,
 * `times` the sampled rows' times in seconds. Null if the table is not long.
 */
export const findSeries = (
  sample: TableSample,
  value: number,
  taken: readonly number[],
  times: readonly number[],
): number | null => {
  const { rows, profiles, names } = sample;
  const labelled = profiles.find((profile) => {
    const { column, kind } = profile;
    const isTaken = column === value || taken.includes(column);
    if (isTaken || !isLabelColumn(profile, rows.length)) return false;
    const isNamed = sample.isNamed && namesChannels(names[column] ?? '');
    if (kind !== 'text' && !areChannelNumbers(profile, isNamed)) return false;
    const labels = rows.map((row) => row[column] ?? '');
    if (standsStillAtChanges(labels, times)) return true;
    return isNamed && isSmootherApart(labels, profiles[value]!.values);
  });
  return labelled?.column ?? null;
};

const PREFERENCE: readonly NameMeaning[] = ['measured', 'temperature', 'probe', 'unknown'];

/** Which of a long table's channels is the main temperature: by its name, else the first met. */
export const mainSeries = (labels: readonly string[]): string | null => {
  const meanings = labels.map((label) => meaningOf(label));
  for (const wanted of PREFERENCE) {
    const index = meanings.indexOf(wanted);
    if (index >= 0) return labels[index]!;
  }
  return labels[0] ?? null;
};
