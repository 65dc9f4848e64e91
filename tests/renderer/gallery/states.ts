import type { AnalysisDocument } from '../../../core/model/document.ts';
import { zAnalysisDocument } from '../../../core/model/document.ts';
import type { Options } from '../../../core/model/options.ts';
import type { Schedule } from '../../../core/model/schedule.ts';
import { analyze } from '../../../core/analyze.ts';
import { readSchedule } from '../../../core/schedule/read-schedule.ts';

const fixtures = import.meta.glob<unknown>('../../fixtures/documents/*.json', {
  eager: true,
  import: 'default',
});
const samples = import.meta.glob<string>(['../../../sample-traces/*', '!**/*.md'], {
  eager: true,
  query: '?url',
  import: 'default',
});

const bareName = (path: string): string => path.replace(/^.*\//, '').replace(/\..*$/, '');

/** The names of all documents that can be shown: the hand-written ones, then the samples. */
export const DOCUMENTS: readonly string[] = [
  ...Object.keys(fixtures).map(bareName),
  ...Object.keys(samples)
    .filter((path) => !path.includes('.schedule.'))
    .map((path) => `sample-${bareName(path)}`),
];

const sampleFile = async (name: string, isSchedule: boolean) => {
  const path = Object.keys(samples).find(
    (one) => bareName(one) === name && one.includes('.schedule.') === isSchedule,
  );
  const response = await fetch(samples[path!]!);
  return {
    fileName: path!.replace(/^.*\//, ''),
    bytes: new Uint8Array(await response.arrayBuffer()),
  };
};

const sampleSchedule = async (name: string): Promise<Schedule> => {
  const { fileName, bytes } = await sampleFile(name, true);
  return readSchedule(new TextDecoder().decode(bytes), fileName);
};

/** The document of a name, with more told than it had. */
export const documentOf = async (name: string, more: Options = {}): Promise<AnalysisDocument> => {
  if (!name.startsWith('sample-')) {
    const path = Object.keys(fixtures).find((one) => bareName(one) === name);
    const document = zAnalysisDocument.parse(fixtures[path!]);
    return { ...document, options: { ...document.options, ...more } };
  }
  const bare = name.replace('sample-', '');
  const schedule = await sampleSchedule(bare);
  const { fileName, bytes } = await sampleFile(bare, false);
  return analyze(bytes, fileName, { schedule, ...more }).document;
};

/** The schedules of a few samples, as the app offers them. */
export const sampleSchedules = (): Promise<Schedule[]> =>
  Promise.all(['good-bisque', 'good-glaze', 'decal', 'slow-cooled-glaze'].map(sampleSchedule));
