import { describe, expect, it } from 'vitest';
import {
  findFirings,
  mayHoldSeveral,
  showsItsBeginning,
} from '../../../core/trace/find-firings.ts';
import { firing, traceFrom, type Stretch } from '../../builders/trace.ts';

/** A glaze firing and its cooling to a temperature. */
const glazeTo = (endC: number): Stretch[] => [
  { rateCPerHour: 150, toC: 1220 },
  { holdMinutes: 15 },
  { rateCPerHour: 120, toC: endC },
];
const bisqueTo = (endC: number): Stretch[] => [
  { rateCPerHour: 100, toC: 1000 },
  { rateCPerHour: 120, toC: endC },
];

const courseOf = (
  stretches: readonly Stretch[],
  { startC = 20, anewAtC = Number.NaN }: { startC?: number; anewAtC?: number } = {},
) => {
  const { atSeconds, celsius } = traceFrom(firing(startC, ...stretches), { intervalSeconds: 60 });
  // Where the course is told to begin anew: at its lowest sample near that temperature.
  const anew = celsius.findIndex((value, i) => i > 300 && Math.abs(value - anewAtC) < 1.5);
  return { atSeconds, celsius, beginsAnew: (i: number) => i === anew };
};

const peaksOf = (...args: Parameters<typeof courseOf>): number[] => {
  const course = courseOf(...args);
  return findFirings(course).map(({ peak }) => Math.round(course.celsius[peak]!));
};

describe('firings in one record', () => {
  it.each<[string, number[], readonly Stretch[]]>([
    ['one', [1220], glazeTo(40)],
    ['two, the kiln cold between them', [1000, 1220], [...bisqueTo(30), ...glazeTo(40)]],
    ['two, loaded again while it was warm', [1000, 1220], [...bisqueTo(140), ...glazeTo(40)]],
    [
      'three, days apart',
      [1000, 1220, 1000],
      [
        ...bisqueTo(25),
        { holdMinutes: 3000 },
        ...glazeTo(25),
        { holdMinutes: 20 },
        ...bisqueTo(60),
      ],
    ],
    ['one that ends in mid-air', [1220], glazeTo(900)],
    [
      'none at all',
      [80],
      [
        { rateCPerHour: 30, toC: 80 },
        { rateCPerHour: 30, toC: 20 },
      ],
    ],
  ])('%s', (_, peaks, stretches) => {
    expect(peaksOf(stretches)).toEqual(peaks);
  });
});

describe('what does not part a firing', () => {
  const climb = { rateCPerHour: 150, toC: 1220 };
  it.each<[string, readonly Stretch[]]>([
    ['candling overnight', [{ rateCPerHour: 60, toC: 90 }, { holdMinutes: 600 }, ...glazeTo(40)]],
    [
      'a preheat the evening before, cold by the morning',
      [
        { rateCPerHour: 80, toC: 180 },
        { holdMinutes: 60 },
        { rateCPerHour: 40, toC: 30 },
        ...glazeTo(40),
      ],
    ],
    [
      'power lost in mid-climb, back before the kiln was cool',
      [{ rateCPerHour: 150, toC: 800 }, { rateCPerHour: 200, toC: 260 }, ...glazeTo(40)],
    ],
    [
      'a crash-cool and reheating, as for crystals',
      [
        climb,
        { rateCPerHour: 600, toC: 1020 },
        { rateCPerHour: 200, toC: 1090 },
        { holdMinutes: 120 },
        { rateCPerHour: 400, toC: 700 },
        { rateCPerHour: 200, toC: 1000 },
        { rateCPerHour: 120, toC: 60 },
      ],
    ],
    ['a rest at 400 °C', [{ rateCPerHour: 150, toC: 405 }, { rateCPerHour: 60, toC: 380 }, climb]],
  ])('%s', (_, stretches) => {
    expect(peaksOf(stretches)).toEqual([1220]);
  });

  it('an open couple that reads the room for hours', () => {
    const course = courseOf(glazeTo(40));
    course.celsius.fill(21, 300, 480);
    expect(findFirings(course)).toHaveLength(1);
  });
});

describe('the same, further on, do part one', () => {
  it('power lost until the kiln was cold', () => {
    const cold = [{ rateCPerHour: 150, toC: 800 }, { rateCPerHour: 200, toC: 60 }, ...glazeTo(40)];
    expect(peaksOf(cold)).toEqual([800, 1220]);
  });

  it('a kiln at 260 °C on which the record begins anew', () => {
    const warm = [{ rateCPerHour: 150, toC: 800 }, { rateCPerHour: 200, toC: 260 }, ...glazeTo(40)];
    expect(peaksOf(warm)).toEqual([1220]);
    expect(peaksOf(warm, { anewAtC: 262 })).toEqual([800, 1220]);
  });

  it('a kiln at 260 °C after a night without a record, but not after three hours', () => {
    const parted = (pauseHours: number) => {
      const course = courseOf([...bisqueTo(260), ...glazeTo(40)]);
      const lowest = course.celsius.findIndex((value, i) => i > 500 && value < 262);
      const atSeconds = course.atSeconds.map((at, i) => (i < lowest ? at : at + pauseHours * 3600));
      return findFirings({ ...course, atSeconds }).length;
    };
    expect([parted(3), parted(13)]).toEqual([1, 2]);
  });
});

describe('where one ends and the next begins', () => {
  const stretches = [...bisqueTo(25), { holdMinutes: 3000 }, ...glazeTo(40)];
  const course = courseOf(stretches);
  const [first, second] = findFirings(course);

  it('leaves the days between them to neither', () => {
    expect(course.celsius[first!.to - 1]).toBeCloseTo(30, 0);
    const restHours = (course.atSeconds[second!.from]! - course.atSeconds[first!.to]!) / 3600;
    expect(restHours).toBeGreaterThan(48);
  });

  it('keeps an hour of rest before the second, to see where its heating began', () => {
    expect(course.celsius[second!.from]).toBe(25);
    expect(course.celsius[second!.from + 55]).toBe(25);
    expect(course.celsius[second!.from + 90]).toBeGreaterThan(40);
    expect(second!.to).toBe(course.celsius.length);
  });

  it('gives a preheat between two firings to the second', () => {
    const preheat = [
      ...bisqueTo(25),
      { holdMinutes: 300 },
      { rateCPerHour: 80, toC: 180 },
      { rateCPerHour: 40, toC: 30 },
      ...glazeTo(40),
    ];
    const [, glaze] = findFirings(courseOf(preheat));
    const { celsius } = courseOf(preheat);
    expect(celsius[glaze!.from]).toBe(25);
    expect(Math.max(...celsius.subarray(glaze!.from, glaze!.from + 240))).toBeGreaterThan(170);
  });

  it('knows the rest of an earlier firing by its hot beginning', () => {
    const remnant = courseOf([{ rateCPerHour: 120, toC: 30 }, ...glazeTo(40)], { startC: 1100 });
    const spans = findFirings(remnant);
    expect(spans.map((span) => showsItsBeginning(remnant, span))).toEqual([false, true]);
  });
});

it('a cheap look never misses several, in any order of the rows', () => {
  const two = courseOf([...bisqueTo(140), ...glazeTo(40)]).celsius;
  expect([two, two.slice().reverse()].map(mayHoldSeveral)).toEqual([true, true]);
  expect(mayHoldSeveral(courseOf(glazeTo(40)).celsius)).toBe(false);
});
