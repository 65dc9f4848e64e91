import type { Schedule } from '../../core/model/schedule.ts';
import { readSchedule } from '../../core/schedule/read-schedule.ts';
import { isSameSchedule } from '../told/schedule-draft.ts';

const texts = import.meta.glob<string>('../../sample-traces/*.schedule.*', {
  query: '?raw',
  import: 'default',
  eager: true,
});

const readAll = Object.entries(texts).map(([path, text]) =>
  readSchedule(text, path.replace(/^.*\//, '')),
);

/** The schedules of the samples, which can be chosen for any log; one that two samples share, once. */
export const bundledSchedules: readonly Schedule[] = readAll.filter(
  (one, index) => readAll.findIndex((other) => isSameSchedule(one, other)) === index,
);
