import Papa from 'papaparse';
import { analyze } from '../../core/analyze.ts';
import { readLog } from '../../core/log/read-log.ts';
import { medianMsOf, type Bench, type Table } from './bench.ts';
import { BIG_LOG_SCHEDULE, bigLog } from './big-log.ts';
import { timeByRoom } from './profile.ts';
import { wholeProcesses } from './whole-process.ts';

const ROWS = 1_000_000;
const ROUNDS = 3;

const reading = async (bytes: Uint8Array): Promise<Table> => {
  const ms = await medianMsOf(ROUNDS, {
    papaparse: () => Papa.parse(new TextDecoder().decode(bytes), { skipEmptyLines: true }),
    readLog: () => readLog(bytes, 'big.csv'),
    analyze: () => analyze(bytes, 'big.csv', { schedule: BIG_LOG_SCHEDULE }),
  });
  const row = (what: string, taken: number) => [what, taken, taken / ms.papaparse];
  const megabytes = (bytes.length / 1e6).toFixed(0);
  return {
    title: `Reading ${ROWS} rows (${megabytes} MB of CSV: ISO time, temperature, setpoint)`,
    columns: ['what', 'ms', 'against papaparse'],
    rows: [
      row('papaparse alone: bytes to rows of strings, no typing', ms.papaparse),
      row('readLog: bytes to typed columns and the account of reading', ms.readLog),
      row('analyze: bytes to the analysis document, with a schedule', ms.analyze),
    ],
    notes: [`Medians of ${ROUNDS} rounds in which the three take turns, in one process.`],
  };
};

const whereTheTimeGoes = async (bytes: Uint8Array): Promise<Table> => {
  const rooms = await timeByRoom(() => analyze(bytes, 'big.csv', { schedule: BIG_LOG_SCHEDULE }));
  const total = rooms.reduce((sum, { ms }) => sum + ms, 0);
  return {
    title: 'Where the time of analyze goes',
    columns: ['room of core', 'ms', 'share, %'],
    rows: rooms
      .filter(({ ms }) => ms >= total / 1000)
      .map(({ room, ms }) => [room, ms, (100 * ms) / total]),
    notes: [
      'From one run under the sampling profiler; packages count for the room that called them.',
    ],
  };
};

export default {
  name: 'reading',
  run: async () => {
    const bytes = bigLog(ROWS);
    return [
      await reading(bytes),
      await whereTheTimeGoes(bytes),
      ...(await wholeProcesses(bytes, ROUNDS)),
    ];
  },
} satisfies Bench;
