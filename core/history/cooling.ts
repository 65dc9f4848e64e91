import type { CoolingComparison } from '../model/history.ts';
import type { FiringEntry } from './entry.ts';

/** The last firing's cooling beside that of the last good one before it, band by band. */
export const compareCooling = (
  entries: readonly FiringEntry[],
): { goodFiring: number; bands: CoolingComparison[] } | null => {
  const last = entries.at(-1);
  const goodFiring = entries.slice(0, -1).findLastIndex(({ isGood, bands }) => {
    return isGood && bands.some(({ direction }) => direction === 'cooling');
  });
  const good = entries[goodFiring];
  if (last === undefined || good === undefined) return null;
  const bands = last.bands.flatMap((band): CoolingComparison[] => {
    const same = good.bands.find(
      (other) =>
        other.name === band.name &&
        other.direction === 'cooling' &&
        other.fromC === band.fromC &&
        other.toC === band.toC,
    );
    if (band.direction !== 'cooling' || same === undefined) return [];
    return [
      {
        name: band.name,
        fromC: band.fromC,
        toC: band.toC,
        lastCPerHour: band.meanCPerHour,
        goodCPerHour: same.meanCPerHour,
        fasterPercent: 100 * (band.meanCPerHour / same.meanCPerHour - 1),
      },
    ];
  });
  return bands.length === 0 ? null : { goodFiring, bands };
};
