import type { Cone } from '../../../core/model/cone.ts';
import type { FindingId } from '../../../core/model/finding.ts';
import type { Recorded } from '../../builders/fired.ts';
import { outcomeOf } from '../../kiln/cone-dose.ts';
import { fire } from '../../kiln/fire.ts';
import { KILNS } from '../../kiln/kilns.ts';
import type { Random } from '../../kiln/random.ts';
import { GLAZE_WITH_HOLD, SLOW_BISQUE } from '../../kiln/schedules.ts';
import type { Setup } from '../../kiln/types.ts';
import { plain, withSegment, type FaultCase, type FaultRow } from './fault-row.ts';

const good = (random: Random, more: Partial<Setup> = {}): Setup =>
  plain(random, {
    kiln: random.pick(KILNS),
    schedule: random.pick([GLAZE_WITH_HOLD, SLOW_BISQUE]),
    loadKg: random.between(22, 36),
    ...more,
  });

const gap = (random: Random, minutes: number): FaultCase => {
  const when = { heatingPastC: random.between(200, 1000) };
  return { setup: good(random, { faults: [{ kind: 'log-gap', when, minutes }] }) };
};

const recordFrom = ({ atSeconds, celsius }: Recorded, from: number, to?: number): Recorded => ({
  atSeconds: atSeconds.slice(from, to),
  celsius: celsius.slice(from, to),
});

/** The logger was switched on when the kiln stood at so much. */
const startedAt = (random: Random, startC: number): FaultCase => ({
  setup: good(random),
  told: {
    changed: (record) =>
      recordFrom(
        record,
        record.celsius.findIndex((celsius) => celsius >= startC),
      ),
  },
});

/** … and off when it had climbed to so much; null: never. */
const endedAt = (random: Random, endC: number | null): FaultCase => ({
  setup: good(random),
  told: {
    changed: (record) =>
      endC === null
        ? record
        : recordFrom(
            record,
            0,
            record.celsius.findIndex((celsius) => celsius >= endC),
          ),
  },
});

/** The clock was put on or back while the kiln heated. */
const clockMoved = (random: Random, bySeconds: number): FaultCase => {
  const atC = random.between(300, 900);
  const changed = ({ atSeconds, celsius }: Recorded): Recorded => {
    const from = celsius.findIndex((value) => value >= atC);
    return { atSeconds: atSeconds.map((at, i) => (i < from ? at : at + bySeconds)), celsius };
  };
  return { setup: good(random), told: { changed } };
};

const coarse = (random: Random, intervalSeconds: number): FaultCase => ({
  setup: good(random, {
    logger: { intervalSeconds, noiseC: random.between(0, 1), rounding: null },
  }),
});

/** The same log again, some hours later; or only once. */
const twice = (random: Random, isTwice: boolean): FaultCase => {
  const laterSeconds = random.between(6, 30) * 3600;
  const changed = (record: Recorded): Recorded => {
    if (!isTwice) return record;
    const by = record.atSeconds.at(-1)! + laterSeconds;
    return {
      atSeconds: Float64Array.of(...record.atSeconds, ...record.atSeconds.map((at) => at + by)),
      celsius: Float64Array.of(...record.celsius, ...record.celsius),
    };
  };
  const setup = good(random, { record: { untilC: 60, atMostHours: 60 } });
  return { setup, told: { changed } };
};

/** Nearer than this to its end point a cone stands with its tip at its base, 90°. */
const AT_END_CONES = 0.15;
const MOST_DRAWS = 400;

/** A witness cone just down beside a couple that reads so many degrees off. */
const witnessed = (random: Random, offsetC: number): FaultCase => {
  for (let draw = 0; draw < MOST_DRAWS; draw++) {
    const schedule = withSegment(GLAZE_WITH_HOLD, 2, ({ target }) => ({
      target: target + random.between(-20, 15),
    }));
    const setup = good(random, { schedule, couple: { offsetC } });
    const { atSeconds, trueSensorSpotC } = fire(setup);
    const { cone, position } = outcomeOf(atSeconds, trueSensorSpotC);
    if (position === null || position - Math.floor(position) > AT_END_CONES) continue;
    const observedCones = [{ cone: cone as Cone, place: 'beside the couple', bendDegrees: 90 }];
    return { setup, told: { options: { observedCones } } };
  }
  throw new Error('no cone just down');
};

const row = (
  id: FindingId,
  what: string,
  beyond: FaultRow['beyond'],
  short: FaultRow['short'],
): FaultRow => ({ id, what, beyond, short });

const eitherWay = (random: Random, value: number): number => (random.chance(0.5) ? value : -value);

/** What befalls the record, and what witness cones say of the couple. */
export const LOG_ROWS: readonly FaultRow[] = [
  row(
    'sensor-drift',
    'couple 25–45 °C off beside a cone; short: under 5 °C',
    (random) => witnessed(random, eitherWay(random, random.between(25, 45))),
    (random) => witnessed(random, random.between(-5, 5)),
  ),
  row(
    'log-gap',
    'no rows for 12–90 min; short: under 2 min',
    (random) => gap(random, random.between(12, 90)),
    (random) => gap(random, random.between(0.5, 2)),
  ),
  row(
    'log-starts-hot',
    'from 60–400 °C on; short: from the room’s 35 °C',
    (random) => startedAt(random, random.between(60, 400)),
    (random) => startedAt(random, 35),
  ),
  row(
    'log-ends-early',
    'up to 300–1000 °C on the way up; short: until cool',
    (random) => endedAt(random, random.between(300, 1000)),
    (random) => endedAt(random, null),
  ),
  row(
    'clock-jump',
    'an hour on or back, or 20–50 min back; short: under half an interval',
    (random) => clockMoved(random, random.pick([3600, -3600, -60 * random.between(20, 50)])),
    (random) => clockMoved(random, random.between(0, 4)),
  ),
  row(
    'log-coarse',
    'every 6–20 min; short: every 1–4 min',
    (random) => coarse(random, random.between(360, 1200)),
    (random) => coarse(random, random.between(60, 240)),
  ),
  row(
    'several-firings',
    'two in one log; short: one',
    (random) => twice(random, true),
    (random) => twice(random, false),
  ),
];
