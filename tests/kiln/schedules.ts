import type { ScheduleFile } from './types.ts';

/*
 * Programmes made up for the test kilns: no one's but ours, and none of the published ones. What
 * each is for stands in its name.
 */

export const SLOW_BISQUE: ScheduleFile = {
  name: 'Slow bisque',
  cone: '04',
  unit: 'C',
  segments: [
    { ratePerHour: 70, target: 110, holdMinutes: 50 },
    { ratePerHour: 95, target: 640 },
    { ratePerHour: 140, target: 955 },
    { ratePerHour: 60, target: 1060, holdMinutes: 6 },
  ],
};

export const GLAZE_WITH_HOLD: ScheduleFile = {
  name: 'Stoneware glaze with hold',
  cone: '6',
  unit: 'C',
  segments: [
    { ratePerHour: 110, target: 135, holdMinutes: 20 },
    { ratePerHour: 175, target: 1095 },
    { ratePerHour: 60, target: 1210, holdMinutes: 14 },
  ],
};

export const SLOW_COOLED_GLAZE: ScheduleFile = {
  name: 'Slow-cooled glaze',
  cone: '6',
  unit: 'F',
  segments: [
    { ratePerHour: 230, target: 600 },
    { ratePerHour: 320, target: 2020 },
    { ratePerHour: 108, target: 2205, holdMinutes: 12 },
    { ratePerHour: 240, target: 1890, holdMinutes: 25 },
    { ratePerHour: 115, target: 1500 },
  ],
};

export const FAST_GLAZE: ScheduleFile = {
  name: 'Fast glaze',
  cone: '5',
  unit: 'C',
  segments: [
    { ratePerHour: 220, target: 590 },
    { ratePerHour: 'full', target: 1080 },
    { ratePerHour: 90, target: 1190, holdMinutes: 5 },
  ],
};

export const CRYSTAL_STEPS: ScheduleFile = {
  name: 'Crystal steps',
  cone: '9',
  unit: 'C',
  segments: [
    { ratePerHour: 160, target: 620 },
    { ratePerHour: 240, target: 1165 },
    { ratePerHour: 75, target: 1261, holdMinutes: 6 },
    { ratePerHour: 'full', target: 1108, holdMinutes: 55 },
    { ratePerHour: 120, target: 1132, holdMinutes: 35 },
    { ratePerHour: 150, target: 1072, holdMinutes: 70 },
  ],
};

export const DECAL: ScheduleFile = {
  name: 'Decal and lustre',
  cone: '017',
  unit: 'C',
  segments: [
    { ratePerHour: 115, target: 410, holdMinutes: 12 },
    { ratePerHour: 185, target: 650 },
    { ratePerHour: 62, target: 736, holdMinutes: 9 },
  ],
};

export const TIMED_EARTHENWARE: ScheduleFile = {
  name: 'Earthenware by the clock',
  cone: '05',
  unit: 'C',
  segments: [
    { minutes: 105, target: 190, holdMinutes: 15 },
    { minutes: 200, target: 705 },
    { minutes: 110, target: 930 },
    { minutes: 98, target: 1029, holdMinutes: 8 },
  ],
};

/** Asks more than any of the kilns has for two hours and more. */
export const HARD_GLAZE: ScheduleFile = {
  name: 'Hard glaze',
  cone: '6',
  unit: 'C',
  segments: [
    { ratePerHour: 180, target: 550 },
    { ratePerHour: 360, target: 1120 },
    { ratePerHour: 70, target: 1212, holdMinutes: 10 },
  ],
};

export const SCHEDULES: readonly ScheduleFile[] = [
  SLOW_BISQUE,
  GLAZE_WITH_HOLD,
  SLOW_COOLED_GLAZE,
  FAST_GLAZE,
  CRYSTAL_STEPS,
  DECAL,
  TIMED_EARTHENWARE,
];
