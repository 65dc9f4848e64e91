import { HostGone, type OpenedLog, type OpenedSchedule } from '../host/host.ts';

/** A bundled firing to try the window with; all of them are invented. */
export interface Sample {
  readonly logName: string;
  readonly scheduleName: string;
  /** What is in it, without giving the answer away. */
  readonly about: string;
}

export const SAMPLES: readonly Sample[] = [
  {
    logName: 'good-glaze.csv',
    scheduleName: 'good-glaze.schedule.csv',
    about: 'A cone 6 glaze with a hold',
  },
  {
    logName: 'good-bisque.csv',
    scheduleName: 'good-bisque.schedule.json',
    about: 'A bisque of green ware',
  },
  {
    logName: 'overshoot.csv',
    scheduleName: 'overshoot.schedule.json',
    about: 'A glaze whose peak looks too high',
  },
  {
    logName: 'underfired-glaze.txt',
    scheduleName: 'underfired-glaze.schedule.json',
    about: 'A heavy load that fell behind',
  },
  {
    logName: 'worn-elements.csv',
    scheduleName: 'worn-elements.schedule.csv',
    about: 'A kiln that takes longer than it used to',
  },
  {
    logName: 'element-lost.json',
    scheduleName: 'element-lost.schedule.json',
    about: 'A firing that slowed down halfway',
  },
  {
    logName: 'power-cut.csv',
    scheduleName: 'power-cut.schedule.json',
    about: 'A firing with the power out for a while',
  },
  {
    logName: 'aborted.jsonl',
    scheduleName: 'aborted.schedule.json',
    about: 'A bisque that stopped before its time',
  },
  {
    logName: 'cone-06-for-6.json',
    scheduleName: 'cone-06-for-6.schedule.json',
    about: 'A glaze that came out of the kiln dry',
  },
  {
    logName: 'failing-couple.csv',
    scheduleName: 'failing-couple.schedule.json',
    about: 'Readings that leap about',
  },
  {
    logName: 'slow-cooled-glaze.csv',
    scheduleName: 'slow-cooled-glaze.schedule.csv',
    about: 'A glaze with controlled cooling, two couples',
  },
  {
    logName: 'decal.txt',
    scheduleName: 'decal.schedule.csv',
    about: 'A decal firing',
  },
];

const addresses = import.meta.glob<string>(
  ['../../sample-traces/*', '!../../sample-traces/README.md'],
  { query: '?url', import: 'default', eager: true },
);

const gone = (): never => {
  throw new HostGone();
};

const fetched = async (name: string): Promise<Response> => {
  const address = addresses[`../../sample-traces/${name}`];
  // The samples come from whoever serves the page: only where that has ended is there no answer.
  const response = address === undefined ? null : await fetch(address).catch(gone);
  if (!response?.ok) throw new Error(`the sample ${name} is not in this build`);
  return response;
};

/**
 * A sample's log and schedule, as if they had been opened from the disk.
 *
 * @throws HostGone where the host that served the page has ended
 */
export const openSample = async ({
  logName,
  scheduleName,
}: Sample): Promise<{ log: OpenedLog; schedule: OpenedSchedule }> => {
  const [log, schedule] = await Promise.all([fetched(logName), fetched(scheduleName)]);
  return {
    log: { fileName: logName, bytes: new Uint8Array(await log.arrayBuffer().catch(gone)) },
    schedule: { fileName: scheduleName, text: await schedule.text().catch(gone) },
  };
};
