import type { ScheduleFile } from '../kiln/types.ts';

type Row = readonly [rate: number | 'full', target: number, holdMinutes?: number];

const sane = (
  name: string,
  cone: string | null,
  unit: 'C' | 'F',
  ...rows: readonly Row[]
): ScheduleFile => ({
  name,
  ...(cone === null ? {} : { cone }),
  unit,
  segments: rows.map(([ratePerHour, target, holdMinutes = 0]) => ({
    ratePerHour,
    target,
    holdMinutes,
  })),
});

/**
 * Schedules that a sane potter would type, from memory of what is common practice; each brings its
 * cone about down. The three published ones are those of the reference notes, for checking only.
 */
export const SANE_SCHEDULES: readonly ScheduleFile[] = [
  // Published, reference notes: slow and medium cone 04 bisque, cone 6 with a slow cooling.
  sane('slow bisque', '04', 'F', [200, 250, 30], [200, 1100], [150, 1700], [108, 1945, 15]),
  sane('medium bisque', '04', 'F', [250, 250], [300, 1100], [200, 1700], [108, 1945, 15]),
  sane('slow cool', '6', 'C', [55, 105, 60], [200, 1080], [85, 1200, 15], [275, 1000], [70, 760]),
  sane('candled overnight', '06', 'C', [40, 85, 600], [60, 600], [120, 900], [60, 1000, 10]),
  sane('large sculpture', '04', 'C', [10, 120, 240], [20, 600], [60, 950], [50, 1055, 20]),
  sane('very slow sculpture', '04', 'C', [15, 95, 480], [12, 300], [25, 650], [60, 1060, 10]),
  sane('one ramp bisque', '06', 'C', [80, 600], [100, 1000]),
  sane('one ramp slow', '06', 'C', [60, 998]),
  sane('fast earthenware', '04', 'C', ['full', 960], [100, 1065, 5]),
  sane('raku', null, 'C', [150, 600], ['full', 980]),
  sane('raku to a cone', '06', 'C', ['full', 1000]),
  sane('decal', '018', 'C', [120, 400], [200, 720, 10]),
  sane('lustre', '019', 'F', [250, 1000], [150, 1240, 12]),
  sane('decal vented', '017', 'C', [90, 500, 20], [150, 740, 5]),
  sane('china paint', '016', 'C', [150, 770, 10]),
  sane('glaze', '6', 'F', [150, 250], [400, 2000], [120, 2200, 15]),
  sane('glaze no hold', '6', 'C', [100, 600], [200, 1100], [60, 1222]),
  sane('glaze by a fast last ramp', '6', 'C', [150, 1100], [150, 1240]),
  sane(
    'glaze drop and soak',
    '6',
    'F',
    [200, 1900],
    [108, 2190, 10],
    ['full', 2050, 45],
    [150, 1400],
  ),
  sane('crash cool', '6', 'C', [150, 1100], [60, 1215, 10], ['full', 1000, 60], [50, 800]),
  sane('crystals', '10', 'C', [250, 1100], [100, 1275, 5], ['full', 1090, 240], [60, 1000]),
  sane(
    'crystals in steps',
    '10',
    'C',
    [200, 1150],
    [80, 1275, 3],
    ['full', 1080, 60],
    [120, 1110, 60],
    [120, 1070, 120],
  ),
  sane('porcelain reduction', '10', 'C', [100, 900, 30], [80, 1200], [50, 1280, 20]),
  sane('wood kiln', '12', 'C', [60, 900], [40, 1200, 120], [30, 1310, 60]),
  sane('held below the cone', '6', 'C', [120, 1100], [80, 1185, 60]),
  sane('tuned low for a hot kiln', '6', 'C', [150, 1100], [60, 1207, 5]),
  sane('tuned high for a cool kiln', '6', 'C', [150, 1100], [60, 1232, 5]),
  sane('low glaze', '05', 'F', [180, 250, 20], [300, 1650], [120, 1888, 5]),
  sane('terracotta', '02', 'C', [80, 600], [120, 1000], [60, 1118, 10]),
  sane('midrange white', '1', 'C', [100, 600], [150, 1040], [60, 1137, 8]),
  sane(
    'majolica held at the quartz change',
    '03',
    'C',
    [100, 550],
    [40, 620],
    [150, 980],
    [60, 1080, 10],
  ),
  sane('even out below the top', '6', 'C', [150, 1150, 20], [30, 1205, 20]),
  sane('drying only', null, 'C', [30, 90, 720]),
  sane('a kiln wash', null, 'C', [150, 1000]),
  sane('elements oxidised', null, 'C', [200, 1050, 180]),
  sane('bisque without a cone', null, 'C', [80, 120, 120], [100, 600], [150, 1000, 15]),
];
