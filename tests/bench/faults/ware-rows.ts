import type { FindingId } from '../../../core/model/finding.ts';
import type { Recorded } from '../../builders/fired.ts';
import { KILNS, THIN_BRICK } from '../../kiln/kilns.ts';
import type { Random } from '../../kiln/random.ts';
import { GLAZE_WITH_HOLD, SLOW_BISQUE, SLOW_COOLED_GLAZE } from '../../kiln/schedules.ts';
import type { ScheduleFile } from '../../kiln/types.ts';
import { plain, rateOf, withSegment, type FaultCase, type FaultRow } from './fault-row.ts';

/** Green ware on a bisque of which one climb runs at a rate. */
const bisque = (random: Random, index: number, ratePerHour: number): FaultCase => {
  const schedule = withSegment(SLOW_BISQUE, index, () => ({ ratePerHour }));
  const loadKg = random.between(20, 28);
  const setup = plain(random, { kiln: THIN_BRICK, schedule, loadKg, ware: 'green' });
  return { setup, told: { options: { purpose: 'bisque' } } };
};

/** The first climb of a bisque without its soak, at a rate. */
const drying = (random: Random, ratePerHour: number): FaultCase => {
  const [, ...rest] = SLOW_BISQUE.segments;
  const schedule = { ...SLOW_BISQUE, segments: [{ ratePerHour, target: 300 }, ...rest] };
  const setup = plain(random, { kiln: random.pick(KILNS), schedule, ware: 'green' });
  return { setup, told: { options: { purpose: 'bisque' } } };
};

const glaze = (random: Random, ratePerHour: number): FaultCase => {
  const schedule = withSegment(GLAZE_WITH_HOLD, 1, () => ({ ratePerHour }));
  return {
    setup: plain(random, { kiln: THIN_BRICK, schedule, loadKg: random.between(20, 28) }),
  };
};

/** Ware of a thickness cools as the kiln lets it. */
const thick = (random: Random, thicknessMm: number): FaultCase => ({
  setup: plain(random, { kiln: THIN_BRICK, schedule: GLAZE_WITH_HOLD, loadKg: 25 }),
  told: { options: { ware: { thicknessMm } } },
});

/** A controlled fall runs at so many times the rate that was told. */
const fallen = (random: Random, share: number): FaultCase => {
  const told = withSegment(SLOW_COOLED_GLAZE, 4, () => ({ ratePerHour: 60 }));
  const schedule = withSegment(told, 4, (segment) => ({ ratePerHour: rateOf(segment) * share }));
  const loadKg = random.between(22, 36);
  return { setup: plain(random, { kiln: THIN_BRICK, schedule, loadKg }), told: { schedule: told } };
};

/** An earlier firing of another cooling is given, or one of the same. */
const cooledLike = (random: Random, earlier: ScheduleFile): FaultCase => {
  const loadKg = random.between(30, 40);
  const both = { kiln: random.pick(KILNS), loadKg };
  return {
    reference: plain(random, { ...both, schedule: earlier }),
    setup: plain(random, { ...both, schedule: GLAZE_WITH_HOLD }),
  };
};

/** The door is opened at a temperature: from there on the kiln cools within the hour. */
const opened = (random: Random, atC: number): FaultCase => {
  const hourShare = random.between(0.4, 0.8);
  const changed = ({ atSeconds, celsius }: Recorded): Recorded => {
    const peak = celsius.indexOf(Math.max(...celsius));
    const from = celsius.findIndex((value, i) => i > peak && value <= atC);
    const [startC, startSeconds] = [celsius[from]!, atSeconds[from]!];
    const shown = celsius.map((value, i) => {
      const hours = (atSeconds[i]! - startSeconds) / 3600;
      return i < from ? value : 25 + (startC - 25) * Math.exp(-hours / hourShare);
    });
    return { atSeconds, celsius: shown };
  };
  const record = { untilC: 100, atMostHours: 48 };
  const schedule = random.pick([GLAZE_WITH_HOLD, SLOW_BISQUE]);
  const loadKg = random.between(22, 36);
  return {
    setup: plain(random, { kiln: random.pick(KILNS), schedule, loadKg, record }),
    told: { changed },
  };
};

const row = (
  id: FindingId,
  what: string,
  beyond: FaultRow['beyond'],
  short: FaultRow['short'],
): FaultRow => ({ id, what, beyond, short });

/** What the ware does not bear. */
export const WARE_ROWS: readonly FaultRow[] = [
  row(
    'drying-fast',
    'green ware at 110–180 °C/h from cold; short: 60–90',
    (random) => drying(random, random.between(110, 180)),
    (random) => drying(random, random.between(60, 90)),
  ),
  row(
    'burnout-fast',
    'green ware at 175–215 °C/h through 700–900 °C; short: 100–140',
    (random) => bisque(random, 2, random.between(175, 215)),
    (random) => bisque(random, 2, random.between(100, 140)),
  ),
  row(
    'quartz-fast-heating',
    '215–260 °C/h through 550–600 °C; short: 120–180',
    (random) => glaze(random, random.between(215, 260)),
    (random) => glaze(random, random.between(120, 180)),
  ),
  row(
    'quartz-fast-cooling',
    'ware of 16–22 mm in a thin kiln; short: 4–7 mm',
    (random) => thick(random, random.between(16, 22)),
    (random) => thick(random, random.between(4, 7)),
  ),
  row(
    'cooling-fast',
    'a fall at 1.4–1.9 of its rate; short: 0.97–1.03',
    (random) => fallen(random, random.between(1.4, 1.9)),
    (random) => fallen(random, random.between(0.97, 1.03)),
  ),
  row(
    'cooling-differs',
    'against a slow-cooled one; short: against its like',
    (random) => cooledLike(random, SLOW_COOLED_GLAZE),
    (random) => cooledLike(random, GLAZE_WITH_HOLD),
  ),
  row(
    'opened-hot',
    'opened at 300–700 °C; short: at 120–170',
    (random) => opened(random, random.between(300, 700)),
    (random) => opened(random, random.between(120, 170)),
  ),
];
