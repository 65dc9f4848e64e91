/**
 * The cheapest way to cut `count` points into consecutive pieces, where a piece costs what
 * `pieceCost(from, to)` says (points `from` … `to − 1`) plus a fixed `penalty`: optimal
 * partitioning by dynamic programming (Jackson et al., "An algorithm for optimal partitioning of
 * data on an interval", IEEE Signal Processing Letters 12 (2005) 105). Returns the pieces' ends.
 */
export const cheapestPieces = (
  count: number,
  shortest: number,
  penalty: number,
  pieceCost: (from: number, to: number) => number,
): number[] => {
  const best = new Float64Array(count + 1).fill(Infinity);
  const cut = new Int32Array(count + 1);
  best[0] = -penalty;
  for (let to = shortest; to <= count; to++) {
    for (let from = 0; from <= to - shortest; from++) {
      if (best[from] === Infinity) continue;
      const cost = best[from]! + pieceCost(from, to) + penalty;
      if (cost >= best[to]!) continue;
      best[to] = cost;
      cut[to] = from;
    }
  }
  const ends: number[] = [];
  for (let to = count; to > 0 && best[to] !== Infinity; to = cut[to]!) ends.push(to);
  return ends.reverse();
};
