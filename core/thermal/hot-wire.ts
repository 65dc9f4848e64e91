/**
 * Hot over cold resistance of iron-chromium-aluminium heating wire, at °C: an alloy maker's data
 * sheet (reference notes, seen). Between the printed points straight lines.
 */
const FACTORS: readonly (readonly [celsius: number, factor: number])[] = [
  [400, 1],
  [500, 1.01],
  [600, 1.02],
  [700, 1.02],
  [800, 1.03],
  [900, 1.03],
  [1000, 1.04],
  [1300, 1.04],
  [1400, 1.05],
];

/** Power of hot wire over that of the same wire cold, at the same voltage: V²/R. */
export const hotPowerFactor = (celsius: number): number => {
  const next = FACTORS.findIndex(([printedC]) => printedC > celsius);
  if (next === 0) return 1 / FACTORS[0]![1];
  if (next < 0) return 1 / FACTORS.at(-1)![1];
  const [fromC, from] = FACTORS[next - 1]!;
  const [toC, to] = FACTORS[next]!;
  return 1 / (from + ((to - from) * (celsius - fromC)) / (toC - fromC));
};
