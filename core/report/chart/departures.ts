import type { Curve } from '../../model/document.ts';

/** A stretch in which the kiln was off its plan on one side, from crossing to crossing. */
export interface Departure {
  readonly side: 'hot' | 'cold';
  /** The moments, the kiln's temperature and the plan's at each. */
  readonly atSeconds: readonly number[];
  readonly celsius: readonly number[];
  readonly plannedC: readonly number[];
  readonly largestDeltaC: number;
}

/**
 * A departure is worth filling from here on, °C (chosen: at cone 6 this much for a whole hold moves
 * the work done by a quarter, and it is what an overshoot is watched from).
 */
export const NOTABLE_DELTA_C = 8;

interface Sample {
  readonly at: number;
  readonly celsius: number;
  readonly delta: number;
}

/** Where the difference passes zero between two samples. */
const crossing = (a: Sample, b: Sample): Sample => {
  const share = a.delta / (a.delta - b.delta);
  return {
    at: a.at + share * (b.at - a.at),
    celsius: a.celsius + share * (b.celsius - a.celsius),
    delta: 0,
  };
};

/** Runs of samples on one side of the plan, each closed by the crossings at its ends. */
const oneSided = (samples: readonly Sample[]): Sample[][] => {
  const runs: Sample[][] = [];
  let run: Sample[] = [];
  samples.forEach((sample, index) => {
    const before = samples[index - 1];
    if (before && before.delta * sample.delta < 0) {
      const zero = crossing(before, sample);
      runs.push([...run, zero]);
      run = [zero];
    }
    run.push(sample);
  });
  return [...runs, run];
};

const departureOf = (run: readonly Sample[]): Departure => {
  const largest = run.reduce(
    (most, { delta }) => (Math.abs(delta) > Math.abs(most) ? delta : most),
    0,
  );
  return {
    side: largest < 0 ? 'cold' : 'hot',
    atSeconds: run.map(({ at }) => at),
    celsius: run.map(({ celsius }) => celsius),
    plannedC: run.map(({ celsius, delta }) => celsius - delta),
    largestDeltaC: Math.abs(largest),
  };
};

/** The stretches of one unbroken run of the curve in which the plan was notably departed from. */
export const departuresIn = (
  { atSeconds, celsius, differenceC }: Curve,
  [from, to]: readonly [number, number],
): Departure[] => {
  const known: Sample[] = [];
  for (let index = from; index < to; index++) {
    const delta = differenceC?.[index] ?? null;
    if (delta === null) continue;
    known.push({ at: atSeconds[index]!, celsius: celsius[index]!, delta });
  }
  return oneSided(known)
    .map(departureOf)
    .filter(
      ({ largestDeltaC, atSeconds: at }) => at.length > 1 && largestDeltaC >= NOTABLE_DELTA_C,
    );
};
