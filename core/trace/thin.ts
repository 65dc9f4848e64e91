/** A curve with fewer points than the trace it stands for. */
export interface ThinCurve {
  readonly atSeconds: Float64Array;
  readonly celsius: Float64Array;
}

/**
 * Averages the samples of equal stretches of time, at most `count` of them: what a search over legs
 * works on. Stretches without samples are left out, so a gap stays a gap. A trace with no more
 * samples than that comes back as it is.
 */
export const averaged = (
  atSeconds: Float64Array,
  celsius: Float64Array,
  count: number,
): ThinCurve => {
  const samples = atSeconds.length;
  if (samples <= count) return { atSeconds, celsius };
  const width = (atSeconds[samples - 1]! - atSeconds[0]!) / count;
  const thinSeconds: number[] = [];
  const thinC: number[] = [];
  for (let i = 0; i < samples;) {
    const end = atSeconds[0]! + width * (Math.floor((atSeconds[i]! - atSeconds[0]!) / width) + 1);
    let sumT = 0;
    let sumC = 0;
    let n = 0;
    for (; i < samples && (atSeconds[i]! < end || n === 0); i++, n++) {
      sumT += atSeconds[i]!;
      sumC += celsius[i]!;
    }
    thinSeconds.push(sumT / n);
    thinC.push(sumC / n);
  }
  return { atSeconds: Float64Array.from(thinSeconds), celsius: Float64Array.from(thinC) };
};

/**
 * The indices of the lowest and the highest sample of equal stretches of time, with both ends: what
 * a picture shows, since no peak is lost. At most `count` indices, ascending.
 */
export const minMaxIndices = (
  atSeconds: Float64Array,
  celsius: Float64Array,
  count: number,
): number[] => {
  const samples = atSeconds.length;
  if (samples <= count) return Array.from(atSeconds, (_, i) => i);
  const stretches = Math.max(1, (count - 2) >> 1);
  const width = (atSeconds[samples - 1]! - atSeconds[0]!) / stretches;
  const picked = new Set([0, samples - 1]);
  for (let i = 0; i < samples;) {
    const end = atSeconds[0]! + width * (Math.floor((atSeconds[i]! - atSeconds[0]!) / width) + 1);
    let lowest = i;
    let highest = i;
    for (const first = i; i < samples && (atSeconds[i]! < end || i === first); i++) {
      if (celsius[i]! < celsius[lowest]!) lowest = i;
      if (celsius[i]! > celsius[highest]!) highest = i;
    }
    picked.add(lowest).add(highest);
  }
  return [...picked].sort((a, b) => a - b).slice(0, Math.max(count, 2));
};
