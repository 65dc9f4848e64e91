import { AMONG_LOWER_WARE, AMONG_UPPER_WARE } from './couple.ts';
import type { KilnPlan } from './kiln.ts';
import { BACKED_BRICK, THICK_BRICK, THIN_BRICK } from './kilns.ts';
import type { Shape } from './sample-shapes.ts';
import * as shape from './sample-shapes.ts';
import {
  DECAL,
  GLAZE_WITH_HOLD,
  SLOW_BISQUE,
  SLOW_COOLED_GLAZE,
  TIMED_EARTHENWARE,
} from './schedules.ts';
import type { ScheduleFile, Setup } from './types.ts';

/** A bundled sample: a firing, the file it is logged in, and what is to be found in it. */
export interface Sample {
  readonly file: string;
  readonly scheduleFile: string;
  /** What the schedule file says, which need not be what the controller ran. */
  readonly schedule: ScheduleFile;
  readonly setup: Setup;
  readonly shape: Shape;
  readonly shapeInWords: string;
  /** What happened in the kiln. */
  readonly story: string;
  /** Ids of findings that must be there; none of severity `act` where empty. */
  readonly mustFind: readonly string[];
  /** The hottest cone that the reading brings fully down. */
  readonly coneExpected: string;
}

const RECORD = { untilC: 120, atMostHours: 40 };
const EVERY_30_S = { intervalSeconds: 30 };
const EVERY_MINUTE = { intervalSeconds: 60 };
const WHOLE_FAHRENHEIT = { unit: 'F', step: 1 } as const;

/** What the cone 6 load got instead: the programme of a cone 06 bisque. */
const BISQUE_06: ScheduleFile = {
  name: 'Bisque 06',
  cone: '06',
  unit: 'C',
  segments: [
    { ratePerHour: 105, target: 130, holdMinutes: 20 },
    { ratePerHour: 165, target: 890 },
    { ratePerHour: 60, target: 997, holdMinutes: 8 },
  ],
};

const STUDIO_GLAZE: ScheduleFile = {
  name: 'Studio glaze',
  cone: '6',
  unit: 'F',
  segments: [
    { ratePerHour: 210, target: 250, holdMinutes: 15 },
    { ratePerHour: 300, target: 2000 },
    { ratePerHour: 108, target: 2208, holdMinutes: 5 },
  ],
};

/** The thin-brick kiln with smaller elements: little in reserve at stoneware heat even when new. */
const LEAN_KILN: KilnPlan = {
  ...THIN_BRICK,
  name: 'lean',
  elements: { ...THIN_BRICK.elements, ratedWatts: 8_600 },
};

/** A kiln rated for 240 V on a 208 V supply: 0.7511 of its power. */
const LOW_SUPPLY = { factor: 208 / 240, wander: 0.004 };

/** The studio's firings: kiln, programme and load, recorded until they can be opened. */
const studioFiring = (
  seed: number,
  kiln: KilnPlan,
  schedule: ScheduleFile,
  loadKg: number,
  rest: Omit<Setup, 'seed' | 'kiln' | 'schedule' | 'loadKg' | 'roomC'> & { roomC?: number },
): Setup => ({ seed, kiln, schedule, loadKg, roomC: 18, record: RECORD, ...rest });

const UPPER_AND_LOWER = {
  couple: { place: AMONG_UPPER_WARE },
  zones: [{ place: AMONG_LOWER_WARE }],
};

export const SAMPLES: readonly Sample[] = [
  {
    file: 'good-bisque.csv',
    scheduleFile: 'good-bisque.schedule.json',
    schedule: SLOW_BISQUE,
    setup: studioFiring(101, THIN_BRICK, SLOW_BISQUE, 38, {
      ware: 'green',
      dampShare: 0.006,
      roomC: 16,
      roomWarmsC: 5,
      logger: EVERY_MINUTE,
      idleMinutes: 8,
    }),
    shape: shape.isoWithOffset('2026-01-20T07:12:00', '+01:00'),
    shapeInWords: 'comma, ISO 8601 with offset, setpoint and output columns, 60 s',
    story: 'A bisque of green ware that went as planned.',
    mustFind: [],
    coneExpected: '04',
  },
  {
    file: 'good-glaze.csv',
    scheduleFile: 'good-glaze.schedule.csv',
    schedule: GLAZE_WITH_HOLD,
    setup: studioFiring(102, THICK_BRICK, GLAZE_WITH_HOLD, 42, {
      roomC: 19,
      controller: { waits: false },
      logger: EVERY_30_S,
    }),
    shape: shape.dayFirst('2026-01-27T08:05:30'),
    shapeInWords:
      'semicolon, decimal comma, day-first date and time apart, Latin-1 degree sign, CR LF, 30 s',
    story: 'A glaze firing with a hold that went as planned.',
    mustFind: [],
    coneExpected: '6',
  },
  {
    file: 'underfired-glaze.txt',
    scheduleFile: 'underfired-glaze.schedule.json',
    schedule: GLAZE_WITH_HOLD,
    setup: studioFiring(103, THIN_BRICK, GLAZE_WITH_HOLD, 54, {
      roomC: 12,
      supply: LOW_SUPPLY,
      controller: { waits: false },
      logger: EVERY_MINUTE,
    }),
    shape: shape.minutesUnderPreamble([
      'KILN RECORD (an invented kiln in an invented studio)',
      'Load: mugs and bowls, full',
      'Started: 23.02.2026 06:30',
    ]),
    shapeInWords: 'tabs, elapsed minutes, preamble and row of units, setpoint and power, 60 s',
    story:
      'Heavy load, 240 V kiln on 208 V, controller does not wait: full power, ever further behind, off by the clock before the peak.',
    mustFind: ['underfired', 'peak-not-reached'],
    coneExpected: '4',
  },
  {
    file: 'worn-elements.csv',
    scheduleFile: 'worn-elements.schedule.csv',
    schedule: STUDIO_GLAZE,
    setup: studioFiring(104, LEAN_KILN, STUDIO_GLAZE, 36, {
      roomC: 15,
      elementWear: 1.17,
      logger: { ...EVERY_30_S, rounding: WHOLE_FAHRENHEIT },
    }),
    shape: shape.monthFirst('2026-02-17T06:45:00'),
    shapeInWords: 'comma, month-first date with AM and PM, whole °F, setpoint, 30 s',
    story:
      'Elements at 1.17 times their first resistance: slow at full power, the last ramp late; the controller waits.',
    mustFind: ['ramp-slow'],
    coneExpected: '6',
  },
  {
    file: 'element-lost.json',
    scheduleFile: 'element-lost.schedule.json',
    schedule: STUDIO_GLAZE,
    setup: studioFiring(105, THIN_BRICK, STUDIO_GLAZE, 40, {
      logger: EVERY_MINUTE,
      faults: [{ kind: 'circuit-open', when: { heatingPastC: 910 }, circuit: 1 }],
    }),
    shape: shape.jsonRecords('2026-02-24T05:30:00'),
    shapeInWords: 'JSON array of records, epoch seconds, setpoint and output, 60 s',
    story:
      'One of three element circuits opens at 910 °C: on at full power, slower; the controller waits.',
    mustFind: ['element-lost', 'ramp-slow'],
    coneExpected: '6',
  },
  {
    file: 'overshoot.csv',
    scheduleFile: 'overshoot.schedule.json',
    schedule: GLAZE_WITH_HOLD,
    setup: studioFiring(106, BACKED_BRICK, GLAZE_WITH_HOLD, 34, {
      roomC: 17,
      logger: EVERY_30_S,
      faults: [{ kind: 'relay-stuck', when: { rampEndOf: 2 }, minutes: 12 }],
    }),
    shape: shape.wideElapsed,
    shapeInWords: 'UTF-16 with byte-order mark, tabs, elapsed h:mm:ss, CR LF, 30 s',
    story:
      'A relay sticks for 12 minutes as the last ramp ends: far over the peak, and a cone too far.',
    mustFind: ['overshoot', 'overfired'],
    coneExpected: '7',
  },
  {
    file: 'aborted.jsonl',
    scheduleFile: 'aborted.schedule.json',
    schedule: SLOW_BISQUE,
    setup: studioFiring(107, THICK_BRICK, SLOW_BISQUE, 45, {
      ware: 'green',
      dampShare: 0.004,
      roomC: 20,
      logger: EVERY_MINUTE,
      faults: [{ kind: 'abort', when: { heatingPastC: 900 } }],
    }),
    shape: shape.jsonLines('2026-03-03T09:00:00'),
    shapeInWords: 'JSON lines, instants in UTC, 60 s',
    story: 'A bisque stopped at 900 °C, two segments before its end, and left to cool.',
    mustFind: ['ended-early', 'underfired'],
    coneExpected: '011',
  },
  {
    file: 'cone-06-for-6.json',
    scheduleFile: 'cone-06-for-6.schedule.json',
    schedule: GLAZE_WITH_HOLD,
    setup: studioFiring(108, THIN_BRICK, BISQUE_06, 33, {
      logger: EVERY_MINUTE,
    }),
    shape: shape.jsonColumns('2026-03-10T07:20:00+01:00'),
    shapeInWords: 'one JSON object of columns, elapsed seconds, 60 s',
    story: 'A cone 6 glaze was meant; the controller ran a cone 06 bisque to the letter.',
    mustFind: ['wrong-end-cone'],
    coneExpected: '06',
  },
  {
    file: 'power-cut.csv',
    scheduleFile: 'power-cut.schedule.json',
    schedule: GLAZE_WITH_HOLD,
    setup: studioFiring(109, THIN_BRICK, GLAZE_WITH_HOLD, 36, {
      roomC: 14,
      logger: EVERY_MINUTE,
      ...UPPER_AND_LOWER,
      faults: [{ kind: 'power-cut', when: { heatingPastC: 905 }, minutes: 40 }],
    }),
    shape: shape.twoZones('2026-03-17T06:00:00'),
    shapeInWords: 'comma, year-first date and time apart, two zones, 60 s',
    story: 'Forty minutes without power at 905 °C, then the programme goes on.',
    mustFind: ['power-interrupted', 'ramp-slow'],
    coneExpected: '6',
  },
  {
    file: 'failing-couple.csv',
    scheduleFile: 'failing-couple.schedule.json',
    schedule: TIMED_EARTHENWARE,
    setup: studioFiring(110, BACKED_BRICK, TIMED_EARTHENWARE, 30, {
      roomC: 21,
      logger: EVERY_30_S,
      record: { ...RECORD, untilC: 200 },
      faults: [
        {
          kind: 'couple-spikes',
          when: { heatingPastC: 480 },
          minutes: 170,
          everySamples: 12,
          sizeC: 260,
        },
        { kind: 'couple-open', when: { heatingPastC: 610 }, minutes: 2 },
        { kind: 'couple-open', when: { heatingPastC: 690 }, minutes: 3 },
        { kind: 'couple-open', when: { heatingPastC: 800 }, minutes: 14 },
      ],
    }),
    shape: shape.openAsWord('2026-03-24T08:30:00'),
    shapeInWords: 'comma and quotes, numbered rows, year-first local time, OPEN as a word, 30 s',
    story:
      'The couple leaps between 480 and 900 °C, opens twice for minutes, then for 14; the firing itself went as planned.',
    mustFind: ['sensor-open', 'sensor-spikes'],
    coneExpected: '05',
  },
  {
    file: 'slow-cooled-glaze.csv',
    scheduleFile: 'slow-cooled-glaze.schedule.csv',
    schedule: SLOW_COOLED_GLAZE,
    setup: studioFiring(111, THIN_BRICK, SLOW_COOLED_GLAZE, 40, {
      logger: EVERY_MINUTE,
      ...UPPER_AND_LOWER,
      idleMinutes: 20,
    }),
    shape: shape.secondsInFahrenheit,
    shapeInWords: 'semicolon, elapsed seconds, comment line, two zones and setpoint in °F, 60 s',
    story: 'A glaze with two stretches of controlled cooling that went as planned.',
    mustFind: [],
    coneExpected: '6',
  },
  {
    file: 'decal.txt',
    scheduleFile: 'decal.schedule.csv',
    schedule: DECAL,
    setup: studioFiring(112, THICK_BRICK, DECAL, 22, {
      logger: { ...EVERY_30_S, noiseC: 0.5 },
    }),
    shape: shape.bareColumns('2026-03-31T10:00:00'),
    shapeInWords: 'blanks, no header, year-first date and time, 30 s',
    story: 'A decal firing that went as planned.',
    mustFind: [],
    coneExpected: '017',
  },
];
