import type { Schedule } from '../../core/model/schedule.ts';
import type { FitRequest } from './protocol.ts';

/** How well a schedule lies on a log: the alignment's own confidence, 0 to 1. */
export interface ScheduleFit {
  readonly schedule: Schedule;
  readonly confidence: number;
}

interface Round {
  readonly logKey: number;
  readonly schedules: readonly Schedule[];
  readonly confidences: number[];
  readonly settle: (fits: readonly ScheduleFit[] | null) => void;
}

/** The best first; of equals the one that was used later, which comes in first. */
const bestFirst = ({ schedules, confidences }: Round): ScheduleFit[] =>
  schedules
    .map((schedule, index) => ({ schedule, confidence: confidences[index]! }))
    .sort((a, b) => b.confidence - a.confidence);

/**
 * Lays schedules on the log that the worker has read, one a message, so that whatever else is asked
 * waits for one of them at most.
 *
 * @param post puts a request to the worker; false where there is none or it is busy with a question
 */
export const createFitting = (post: (request: FitRequest) => boolean) => {
  let round: Round | null = null;
  let isOut = false;
  let lastId = 0;

  const end = (fits: readonly ScheduleFit[] | null): void => {
    const ended = round;
    round = null;
    isOut = false;
    ended?.settle(fits);
  };

  /** Goes on where it can: after a start, after each answer, and when the worker is free again. */
  const goOn = (): void => {
    if (!round || isOut) return;
    const schedule = round.schedules[round.confidences.length];
    if (schedule === undefined) end(bestFirst(round));
    else isOut = post({ kind: 'fit', id: ++lastId, logKey: round.logKey, schedule });
  };

  return {
    /** Null where it came to nothing: another log, another round, a worker that was ended. */
    start: (
      logKey: number,
      schedules: readonly Schedule[],
    ): Promise<readonly ScheduleFit[] | null> => {
      end(null);
      return new Promise((settle) => {
        round = { logKey, schedules, confidences: [], settle };
        goOn();
      });
    },
    receive: (id: number, confidence: number | null): void => {
      if (id !== lastId || !round || !isOut) return;
      isOut = false;
      if (confidence === null) return end(null);
      round.confidences.push(confidence);
      goOn();
    },
    goOn,
    stop: () => end(null),
  };
};
