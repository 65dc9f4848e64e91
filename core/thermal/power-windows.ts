import { hotPowerFactor } from './hot-wire.ts';
import { FULL, OFF, type PowerCourse } from './power-course.ts';
import { requiredPower, type Load, type Wall } from './wall-model.ts';

/** Why nothing can be fitted to a firing. */
export type NoWindows = 'log-starts-hot' | 'no-cooling-logged' | 'never-at-full-power';

/** Intervals that are judged together: ten minutes, so that noise and relays are averaged out. */
export const TOGETHER = 5;
/** What a model this plain leaves over while heating and cooling, as a share of full power (chosen). */
export const HEATING_SHARE = 0.03;
const COOLING_SHARE = 0.02;
/** Less than this says too little, in windows of ten minutes: half an hour, an hour (chosen). */
const FEWEST_HEATED = 3;
const FEWEST_OFF = 6;

/** Ten minutes throughout which the power is known. */
export interface PowerWindow {
  /** Index of its first interval. */
  readonly from: number;
  /** Mean share of full power that was on; 0 after shut-off. */
  readonly share: number;
  readonly hotFactor: number;
}

/** Shares of full power: all and none where that is known, NaN elsewhere. */
export const wholeShares = ({ power }: PowerCourse): Float64Array =>
  Float64Array.from(power, (value) => (value === FULL ? 1 : value === OFF ? 0 : NaN));

/** Mean over a window that begins at an interval. */
export const meanOver = (values: Float64Array, from: number): number => {
  let sum = 0;
  for (let i = from; i < from + TOGETHER; i++) sum += values[i]!;
  return sum / TOGETHER;
};

const windowsOf = ({ celsius }: PowerCourse, shares: Float64Array): PowerWindow[] => {
  const windows: PowerWindow[] = [];
  for (let from = 1; from + TOGETHER <= shares.length; from += TOGETHER) {
    const share = meanOver(shares, from);
    if (Number.isNaN(share)) continue;
    // Shut-off within a window leaves neither heating nor free cooling.
    const none = shares.subarray(from, from + TOGETHER).filter((value) => value === 0).length;
    if (none > 0 && none < TOGETHER) continue;
    windows.push({ from, share, hotFactor: hotPowerFactor(celsius[from + (TOGETHER >> 1)]!) });
  }
  return windows;
};

/** Windows enough for a fit, or why not. */
export const usableWindows = (
  course: PowerCourse | null,
  shares: Float64Array | null = course && wholeShares(course),
): PowerWindow[] | NoWindows => {
  if (course === null || shares === null) return 'log-starts-hot';
  const windows = windowsOf(course, shares);
  const heated = windows.filter(({ share }) => share > 0).length;
  if (windows.length - heated < FEWEST_OFF) return 'no-cooling-logged';
  return heated < FEWEST_HEATED ? 'never-at-full-power' : windows;
};

const allowed = ({ share }: PowerWindow): number => (share > 0 ? HEATING_SHARE : COOLING_SHARE);

/** What is left over in each window, as a share of a power, over what the model may leave. */
export const leftOver = (
  course: PowerCourse,
  windows: readonly PowerWindow[],
  [wall, load]: readonly [Wall, Load],
  power: number,
  unitPower: number,
): number[] => {
  const required = requiredPower(course, wall, load);
  return windows.map((window) => {
    const had = power * window.share * window.hotFactor;
    return (meanOver(required, window.from) - had) / unitPower / allowed(window);
  });
};

/** Root mean square of what is left over, as a share of the unit of power. */
export const misfitOf = (left: readonly number[], windows: readonly PowerWindow[]): number => {
  const squares = left.reduce((sum, value, i) => sum + (value * allowed(windows[i]!)) ** 2, 0);
  return Math.sqrt(squares / left.length);
};
