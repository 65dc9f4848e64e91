import { SECONDS_PER_HOUR } from '../units.ts';

/** The standard error aimed at where the sampling allows it, in °C per hour (chosen). */
const AIMED_ERROR_C_PER_HOUR = 5;
/** The window is never narrower: a relay-driven kiln ripples faster than this (chosen). */
const NARROWEST_WINDOW_SECONDS = 300;
/** … nor wider, or a ten-minute hold would vanish from the slopes (chosen). */
const WIDEST_WINDOW_SECONDS = 1200;
/** A line needs a few samples to have an error. */
const FEWEST_SAMPLES = 4;
/**
 * Where so few samples reach over more than this, the firing bends between them more than they are
 * noisy, as in readings taken by hand: none is smoothed, and slopes go to the neighbours (chosen).
 */
const SPARSE_SECONDS = 3600;
/** Sums are counted afresh once the window has moved this many half-widths from their origin. */
const ORIGIN_REACH_WINDOWS = 16;

export interface Slopes {
  readonly smoothC: Float64Array;
  readonly slopeCPerHour: Float64Array;
  readonly slopeErrorCPerHour: Float64Array;
}

/**
 * The width that brings a line's slope to the aimed error: for samples `interval` apart the error of
 * a slope over a window w is σ·√12/(w·√(w/interval)).
 */
const windowSeconds = (noiseC: number, intervalSeconds: number): number => {
  const aimed = AIMED_ERROR_C_PER_HOUR / SECONDS_PER_HOUR;
  const wanted = ((noiseC * Math.sqrt(12 * intervalSeconds)) / aimed) ** (2 / 3);
  const narrowest = Math.max(NARROWEST_WINDOW_SECONDS, FEWEST_SAMPLES * intervalSeconds);
  return Math.min(Math.max(wanted, narrowest), Math.max(WIDEST_WINDOW_SECONDS, narrowest));
};

/** A least-squares line over a window of samples that slides along them. */
class SlidingLine {
  private readonly atSeconds: Float64Array;
  private readonly celsius: Float64Array;
  private from = 0;
  private to = 0;
  // Sums are counted from a sample nearby, so that long logs lose nothing to rounding.
  private originSeconds = 0;
  private originC = 0;
  private sumT = 0;
  private sumC = 0;
  private sumTT = 0;
  private sumTC = 0;
  private sumCC = 0;
  fittedC = NaN;
  slopePerSecond = NaN;
  slopeError = NaN;

  constructor(atSeconds: Float64Array, celsius: Float64Array) {
    this.atSeconds = atSeconds;
    this.celsius = celsius;
  }

  private take(i: number, sign: 1 | -1): void {
    const t = this.atSeconds[i]! - this.originSeconds;
    const c = this.celsius[i]! - this.originC;
    this.sumT += sign * t;
    this.sumC += sign * c;
    this.sumTT += sign * t * t;
    this.sumTC += sign * t * c;
    this.sumCC += sign * c * c;
  }

  restart(from: number, to: number): void {
    this.from = from;
    this.to = to;
    this.originSeconds = this.atSeconds[from]!;
    this.originC = this.celsius[from]!;
    this.sumT = this.sumC = this.sumTT = this.sumTC = this.sumCC = 0;
    for (let k = from; k < to; k++) this.take(k, 1);
  }

  slideTo(from: number, to: number): void {
    while (this.to < to) this.take(this.to++, 1);
    while (this.to > to) this.take(--this.to, -1);
    while (this.from < from) this.take(this.from++, -1);
  }

  /** Whether the sums have moved too far from their origin, or the window runs backwards. */
  isStale(from: number, reachSeconds: number): boolean {
    return from < this.from || this.atSeconds[from]! - this.originSeconds > reachSeconds;
  }

  /** Fits the line to the window; the results stand in fields, since this runs once a sample. */
  fitAt(momentSeconds: number, noiseC: number): void {
    const n = this.to - this.from;
    const meanT = this.sumT / n;
    const meanC = this.sumC / n;
    const spreadT = this.sumTT - this.sumT * meanT;
    const slope = spreadT > 0 ? (this.sumTC - this.sumT * meanC) / spreadT : 0;
    const squares = Math.max(0, this.sumCC - this.sumC * meanC - slope * slope * spreadT);
    const variance = Math.max(noiseC * noiseC, n > 2 ? squares / (n - 2) : 0);
    this.fittedC = this.originC + meanC + slope * (momentSeconds - this.originSeconds - meanT);
    this.slopePerSecond = slope;
    this.slopeError = spreadT > 0 ? Math.sqrt(variance / spreadT) : Infinity;
  }
}

/** The nearest few samples, where a window of the usual width holds fewer. */
const nearestFew = (i: number, count: number): readonly [from: number, to: number] => {
  const from = Math.max(0, Math.min(i - (FEWEST_SAMPLES >> 1), count - FEWEST_SAMPLES));
  return [from, Math.min(count, from + FEWEST_SAMPLES)];
};

/** The neighbours alone, where the nearest few samples lie too far apart to be one line. */
const neighboursIfSparse = (
  i: number,
  atSeconds: Float64Array,
): readonly [from: number, to: number] | null => {
  const [from, to] = nearestFew(i, atSeconds.length);
  const isSparse = atSeconds[to - 1]! - atSeconds[from]! > SPARSE_SECONDS;
  return isSparse ? [Math.max(0, i - 1), Math.min(atSeconds.length, i + 2)] : null;
};

/**
 * Slopes by local linear regression on irregular times, with their standard errors. Each sample's
 * window is centred on it and as wide as the noise and the interval ask for; at the ends, and where
 * samples are few, it takes the nearest ones; where they are far apart, its neighbours. The cost is linear in the samples.
 */
export const localSlopes = (
  atSeconds: Float64Array,
  celsius: Float64Array,
  noiseC: number,
  medianIntervalSeconds: number,
): Slopes => {
  const smoothC = new Float64Array(atSeconds.length);
  const slopeCPerHour = new Float64Array(atSeconds.length);
  const slopeErrorCPerHour = new Float64Array(atSeconds.length);
  const half = windowSeconds(noiseC, medianIntervalSeconds) / 2;
  const line = new SlidingLine(atSeconds, celsius);
  const count = atSeconds.length;
  let wideFrom = 0;
  let wideTo = 0;
  for (let i = 0; i < count; i++) {
    const moment = atSeconds[i]!;
    while (wideTo < count && atSeconds[wideTo]! <= moment + half) wideTo++;
    while (atSeconds[wideFrom]! < moment - half) wideFrom++;
    const isFew = wideTo - wideFrom < FEWEST_SAMPLES;
    const mayBeSparse = isFew || 2 * half > SPARSE_SECONDS;
    const neighbours = mayBeSparse ? neighboursIfSparse(i, atSeconds) : null;
    const [from, to] = neighbours ?? (isFew ? nearestFew(i, count) : [wideFrom, wideTo]);
    if (i === 0 || line.isStale(from, ORIGIN_REACH_WINDOWS * half)) line.restart(from, to);
    else line.slideTo(from, to);
    line.fitAt(moment, noiseC);
    smoothC[i] = neighbours === null ? line.fittedC : celsius[i]!;
    slopeCPerHour[i] = line.slopePerSecond * SECONDS_PER_HOUR;
    slopeErrorCPerHour[i] = line.slopeError * SECONDS_PER_HOUR;
  }
  return { smoothC, slopeCPerHour, slopeErrorCPerHour };
};
