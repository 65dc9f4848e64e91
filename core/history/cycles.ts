import type { SupplyCycle } from '../model/history.ts';
import { stampMs } from './stamp.ts';

/** What is left of power at a firing once wear and steps are taken out, and when it was fired. */
export interface TimedRest {
  readonly instant: string;
  /** Seconds from the instant to the peak, where power is short first. */
  readonly peakAtSeconds: number;
  /** Share of full power. */
  readonly rest: number;
}

/** Fewer firings than this show no coming and going (chosen). */
const FEWEST = 10;
/** A swing of less is within what loads and packing do (chosen; −1 % volts is −2 % power). */
const LEAST_AMPLITUDE = 0.02;
/** Chosen: one history in two hundred shows as much by chance. */
const CHANCE = 0.005;
/** Firings must be spread over at least this share of the cycle, or nothing can come and go. */
const LEAST_SPREAD = 0.25;
/** A season must have come and gone: months from the first to the last firing. */
const LEAST_YEAR_MONTHS = 9;

const DAY_MS = 86_400_000;
const YEAR_MS = 365.25 * DAY_MS;

/** The stamp's own clock, whatever its zone: what counts is the hour at the kiln. */
const localMs = ({ instant, peakAtSeconds }: TimedRest): number =>
  stampMs(instant) + peakAtSeconds * 1000;

/** How much of the circle the phases leave empty in their widest gap, subtracted from the whole. */
const spreadOf = (phases: readonly number[]): number => {
  const sorted = [...phases].sort((a, b) => a - b);
  const gaps = sorted.map((phase, i) => (sorted[i + 1] ?? sorted[0]! + 1) - phase);
  return 1 - Math.max(...gaps);
};

interface Wave {
  readonly amplitude: number;
  /** Phase (0…1) of the firing at which the wave is lowest: it says nothing of hours unfired. */
  readonly lowestAt: number;
  readonly chance: number;
}

/**
 * One wave a cycle fitted by least squares. For two regressors beside the mean the chance of so high a
 * share R² of explained squares is (1 − R²)^((n − 3)/2), exactly, where the rest is normal.
 */
const waveOf = (phases: readonly number[], values: readonly number[]): Wave | null => {
  const n = values.length;
  const centred = (column: readonly number[]): number[] => {
    const mean = column.reduce((sum, value) => sum + value, 0) / n;
    return column.map((value) => value - mean);
  };
  const dot = (a: readonly number[], b: readonly number[]): number =>
    a.reduce((sum, value, i) => sum + value * b[i]!, 0);
  const y = centred(values);
  const c = centred(phases.map((phase) => Math.cos(2 * Math.PI * phase)));
  const s = centred(phases.map((phase) => Math.sin(2 * Math.PI * phase)));
  const determinant = dot(c, c) * dot(s, s) - dot(c, s) ** 2;
  if (determinant < 1e-6 || dot(y, y) === 0) return null;
  const a = (dot(c, y) * dot(s, s) - dot(s, y) * dot(c, s)) / determinant;
  const b = (dot(s, y) * dot(c, c) - dot(c, y) * dot(c, s)) / determinant;
  const share = Math.min(1, (a * dot(c, y) + b * dot(s, y)) / dot(y, y));
  const waveAt = (i: number) => a * c[i]! + b * s[i]!;
  const lowest = phases.reduce((least, _, i) => (waveAt(i) < waveAt(least) ? i : least), 0);
  return {
    amplitude: Math.hypot(a, b),
    lowestAt: phases[lowest]!,
    chance: (1 - share) ** ((n - 3) / 2),
  };
};

const found = (phases: readonly number[], values: readonly number[]): Wave | null => {
  if (values.length < FEWEST || spreadOf(phases) < LEAST_SPREAD) return null;
  const wave = waveOf(phases, values);
  const counts = wave !== null && wave.amplitude >= LEAST_AMPLITUDE && wave.chance <= CHANCE;
  return counts ? wave : null;
};

/**
 * Whether power comes and goes with the hour of the day or the season. A firing stands at its peak,
 * which is hours after it was begun.
 */
export const findCycles = (firings: readonly TimedRest[]): SupplyCycle[] => {
  const times = firings.map(localMs);
  const values = firings.map(({ rest }) => rest);
  const phasesOf = (cycleMs: number) => times.map((time) => (((time / cycleMs) % 1) + 1) % 1);
  const cycles: SupplyCycle[] = [];
  const day = found(phasesOf(DAY_MS), values);
  if (day) {
    const { amplitude, lowestAt, chance } = day;
    cycles.push({
      cycle: 'day',
      amplitudePercent: 100 * amplitude,
      lowestAt: 24 * lowestAt,
      chance,
    });
  }
  const months = (12 * (Math.max(...times) - Math.min(...times))) / YEAR_MS;
  // 1970 began on the first of January, so the phase of the year is that of the calendar.
  const year = months >= LEAST_YEAR_MONTHS ? found(phasesOf(YEAR_MS), values) : null;
  if (year) {
    const { amplitude, lowestAt, chance } = year;
    const month = Math.floor(12 * lowestAt) + 1;
    cycles.push({ cycle: 'year', amplitudePercent: 100 * amplitude, lowestAt: month, chance });
  }
  return cycles;
};
