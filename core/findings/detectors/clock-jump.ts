import type { Repair, TraceSummary } from '../../model/trace.ts';
import { clear, defineDetector, found } from '../detector.ts';
import { SECONDS_PER_MINUTE } from '../../units.ts';
import { longest } from '../marks.ts';

/** One is enough: a clock that was moved makes every time after it a guess. */
const LEAST_JUMPS = 1;

const isInFiring = ({ fromSeconds, toSeconds }: Repair, trace: TraceSummary): boolean =>
  toSeconds >= (trace.startSeconds ?? 0) &&
  fromSeconds <= (trace.offSeconds ?? trace.durationSeconds);

/** How far the clock was moved at the largest jump, where the repair says. */
const largestMove = (jumps: readonly Repair[]): { jumpMinutes?: number } => {
  const moves = jumps.flatMap(({ movedSeconds }) =>
    movedSeconds === undefined ? [] : [movedSeconds],
  );
  if (moves.length === 0) return {};
  return { jumpMinutes: Math.max(...moves.map(Math.abs)) / SECONDS_PER_MINUTE };
};

/**
 * Was the logger's clock moved while it wrote? Never `act`: it is the logger's, and the times were
 * followed on. It is watched while the kiln was heating, where rates and holds hang on it.
 */
export const clockJump = defineDetector({
  id: 'clock-jump',
  needs: ['trace'],
  detect: ({ trace }) => {
    const jumps = trace.repairs.filter(({ kind }) => kind === 'clock-jump');
    if (jumps.length < LEAST_JUMPS) return clear();
    return found({
      severity: jumps.some((jump) => isInFiring(jump, trace)) ? 'watch' : 'note',
      evidence: longest(jumps),
      figures: { jumps: jumps.length, ...largestMove(jumps) },
      thresholds: { jumps: LEAST_JUMPS },
      instead: ['log-gap', 'several-firings', 'power-interrupted'],
    });
  },
});
