import type { AlignedLeg, AnalysisDocument } from '../model/document.ts';
import { isCutByRecord, planRecord, unseenLeg } from '../model/unseen-legs.ts';
import { large, line, type Line } from './line.ts';
import { duration, type Speech } from './speech.ts';

/** A leg that took this much more or less of its time, in share and in time, is no small matter. */
const LARGE_SHARE = 0.2;
const LARGE_SECONDS = 600;

const lasted = (leg: { readonly startSeconds: number; readonly endSeconds: number }): number =>
  leg.endSeconds - leg.startSeconds;

const excessSeconds = ({ planned, actual }: AlignedLeg): number =>
  actual === null || planned.rateCPerHour === null ? 0 : lasted(actual) - lasted(planned);

const isLarge = (leg: AlignedLeg): boolean =>
  Math.abs(excessSeconds(leg)) > Math.max(LARGE_SECONDS, LARGE_SHARE * lasted(leg.planned));

const LEG_KINDS = { ramp: 'climb to', hold: 'hold at', cooling: 'fall to' } as const;

/** The leg that departed most, where that is no small matter. */
const largestLine = (departing: readonly AlignedLeg[], say: Speech): Line | null => {
  const [largest] = departing
    .filter(isLarge)
    .sort((a, b) => Math.abs(excessSeconds(b)) - Math.abs(excessSeconds(a)));
  if (largest === undefined) return null;
  const excess = excessSeconds(largest);
  const leg = `${LEG_KINDS[largest.kind]} ${say.temperature(largest.planned.endC)}`;
  const by = large(duration(excess));
  const planned = duration(lasted(largest.planned));
  return line`The ${leg} took ${by} ${excess > 0 ? 'longer' : 'less'} than the ${planned} planned.`;
};

const legsCounted = (legs: number): string => (legs === 1 ? 'one leg' : `${legs} legs`);

/** Whether a part of the firing was not recorded: the legs that ran there are bridged, not seen. */
const hasUnseenStretch = ({ trace, findings }: AnalysisDocument): boolean => {
  const from = trace.startSeconds ?? 0;
  const to = trace.offSeconds ?? trace.durationSeconds;
  return findings
    .filter(({ id }) => id === 'log-gap' || id === 'sensor-open')
    .some(({ evidence }) =>
      evidence.some(({ fromSeconds, toSeconds }) => toSeconds > from && fromSeconds < to),
    );
};

/** How the legs went where no finding speaks of them; for a document with an alignment. */
export const departuresLine = (document: AnalysisDocument, say: Speech): Line => {
  const legs = document.alignment?.legs ?? [];
  const record = planRecord(document);
  const unseen = legs.map((_, index) => unseenLeg(legs, index, record));
  const departing = legs.filter(
    ({ verdict }, index) =>
      verdict !== 'as-planned' && unseen[index] === null && !isCutByRecord(legs, index, record),
  );
  const undone = departing.filter(
    ({ verdict }) => verdict === 'missing' || verdict === 'not-reached',
  );
  if (departing.length === 0) {
    const isWhole =
      unseen.every((why) => why === null) &&
      !legs.some((_, index) => isCutByRecord(legs, index, record)) &&
      !hasUnseenStretch(document);
    return isWhole
      ? line`The kiln kept to the schedule from start to finish: the record shows ${large('no departure')}.`
      : line`The record, where it has readings, shows ${large('no departure')} from the schedule.`;
  }
  if (undone.length > 0) {
    return line`The kiln did not run the schedule to its end: ${large(legsCounted(undone.length))} of ${String(legs.length)} never ran or never got to the target.`;
  }
  return (
    largestLine(departing, say) ??
    line`The kiln kept to the schedule but for small departures in ${large(legsCounted(departing.length))}.`
  );
};
