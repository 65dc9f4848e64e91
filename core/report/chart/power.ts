import type { Elements } from '../../model/document.ts';
import { celsius, differenceIn, temperatureIn, type TemperatureUnit } from '../../units.ts';
import { linePath, outlinePath, type Point } from './path.ts';
import { bottomOf, linearScale, rightOf, type Box } from './scale.ts';
import { roundRange, roundTicks } from './ticks.ts';

interface Tick {
  readonly value: number;
  readonly at: number;
}

interface Lane {
  readonly plot: Box;
  readonly ticks: readonly Tick[];
}

/** How a kiln heats, cools, and has power over its losses, against temperature, as geometry. */
export interface PowerChart {
  readonly width: number;
  readonly height: number;
  readonly slopes: Lane & { readonly heating: string; readonly cooling: string };
  readonly ratio: Lane & {
    readonly line: string;
    /** Its 80 % range. */
    readonly range: string;
    /** Where power and loss are equal. */
    readonly oneY: number;
  };
  readonly temperatureTicks: readonly Tick[];
  /** Where the ceiling lies; null where it is not known or lies far above what was fired. */
  readonly ceilingX: number | null;
}

const WIDTH = 520;
const AREA = { left: 48, width: WIDTH - 48 - 18 };
const SLOPES: Box = { ...AREA, top: 18, height: 120 };
const RATIO: Box = { ...AREA, top: bottomOf(SLOPES) + 34, height: 110 };
const HEIGHT = bottomOf(RATIO) + 28;
/** A ceiling farther above the last measured temperature than this is no part of the picture, °C. */
const NEAR_CEILING_C = 250;

/** Against temperature; null where fewer than two temperatures show both heating and cooling. */
export const powerChart = (
  { capability, ceilingC }: Pick<Elements, 'capability' | 'ceilingC'>,
  unit: TemperatureUnit,
): PowerChart | null => {
  const [first] = capability;
  const last = capability.at(-1);
  if (first === undefined || last === undefined || capability.length < 2) return null;
  const isNear = ceilingC !== null && ceilingC - last.celsius < NEAR_CEILING_C;
  const hottest = celsius(Math.max(last.celsius, isNear ? ceilingC : -Infinity));
  const [from, to] = roundRange(
    temperatureIn(first.celsius, unit),
    temperatureIn(hottest, unit),
    6,
  );
  const x = linearScale(from, to, AREA.left, rightOf(SLOPES));
  const at = (c: number): number => x(temperatureIn(celsius(c), unit));

  const rates = capability.flatMap(({ heatingCPerHour, coolingCPerHour }) => [
    differenceIn(heatingCPerHour, unit),
    -differenceIn(coolingCPerHour, unit),
  ]);
  const [, fastest] = roundRange(0, Math.max(...rates), 4);
  const rateY = linearScale(0, fastest, bottomOf(SLOPES), SLOPES.top);
  const [, most] = roundRange(0, Math.max(1.2, ...capability.map(({ high }) => high)), 4);
  const ratioY = linearScale(0, most, bottomOf(RATIO), RATIO.top);
  const along = (y: (point: Elements['capability'][number]) => number): Point[] =>
    capability.map((point) => [at(point.celsius), y(point)]);

  return {
    ...{ width: WIDTH, height: HEIGHT },
    slopes: {
      plot: SLOPES,
      heating: linePath(along(({ heatingCPerHour }) => rateY(differenceIn(heatingCPerHour, unit)))),
      cooling: linePath(
        along(({ coolingCPerHour }) => rateY(-differenceIn(coolingCPerHour, unit))),
      ),
      ticks: roundTicks(0, fastest, 4).map((value) => ({ value, at: rateY(value) })),
    },
    ratio: {
      plot: RATIO,
      line: linePath(along(({ powerToLoss }) => ratioY(powerToLoss))),
      range: outlinePath([
        ...along(({ high }) => ratioY(high)),
        ...along(({ low }) => ratioY(low)).reverse(),
      ]),
      oneY: ratioY(1),
      ticks: roundTicks(0, most, 4).map((value) => ({ value, at: ratioY(value) })),
    },
    temperatureTicks: roundTicks(from, to, 6).map((value) => ({ value, at: x(value) })),
    ceilingX: isNear ? at(ceilingC) : null,
  };
};
