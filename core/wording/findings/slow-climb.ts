import type { FindingId } from '../../model/finding.ts';
import { noteOn } from '../letters.ts';
import { line, type Line } from '../line.ts';
import { legOf, minutesOf, rateOf, temperatureOf, type Alternative, type Topic } from '../topic.ts';

/** What a climb's lateness looks like: lost in a fall, run at the next segment's rate, or slow. */
export type Slowness = 'fell' | 'fell-and-slow' | 'at-next-rate' | 'slow';

/** What is said of a late climb besides its title. */
export interface SlowWords {
  readonly why: string;
  readonly couldBe: readonly Alternative[];
  readonly remedy: string;
}

/** Which kind of lateness a `ramp-slow` finding tells of, by its figures and what it suspects. */
export const slownessOf = ({ finding: { figures, instead } }: Topic): Slowness => {
  if ((figures['fallenMinutes'] ?? 0) > 0) {
    // The load explains a slow climb of any kiln, and never a fall.
    return instead.includes('heavy-load') ? 'fell-and-slow' : 'fell';
  }
  return figures['nextCPerHour'] === undefined ? 'slow' : 'at-next-rate';
};

const fallTitle = (topic: Topic): Line =>
  line`On ${legOf(topic, 'climb')} the reading fell and ${minutesOf(topic, 'fallenMinutes', 'some time')} went by until it was back; apart from that the kiln made ${rateOf(topic, 'otherwiseCPerHour', 'less')} where ${rateOf(topic, 'plannedCPerHour', 'more')} was planned.`;

const nextTitle = (topic: Topic): Line =>
  line`On ${legOf(topic, 'climb')} the kiln made ${rateOf(topic, 'achievedCPerHour', 'less')}, about as the next segment was to, where ${rateOf(topic, 'plannedCPerHour', 'more')} was planned, and took ${minutesOf(topic, 'lateMinutes', 'some time')} longer than it should.`;

/** A climb that stopped short of its target did not take longer, it came less far. */
const plainTitle = (topic: Topic): Line => {
  const rates = line`On ${legOf(topic, 'climb')} the kiln made ${rateOf(topic, 'achievedCPerHour', 'less')} where ${rateOf(topic, 'plannedCPerHour', 'more')} was planned`;
  return topic.finding.figures['cameToC'] === undefined
    ? line`${rates}, and took ${minutesOf(topic, 'lateMinutes', 'some time')} longer than it should.`
    : line`${rates}: it came to ${temperatureOf(topic, 'cameToC', 'less')} only, ${minutesOf(topic, 'behindPlanMinutes', 'some time')} behind the plan.`;
};

/** The title of a late climb. */
export const slowTitle = (topic: Topic): Line => {
  const slowness = slownessOf(topic);
  if (slowness === 'at-next-rate') return nextTitle(topic);
  return slowness === 'slow' ? plainTitle(topic) : fallTitle(topic);
};

const TOO_MUCH_ASKED: Alternative = {
  cause: 'The schedule asks more than this kiln can do at that temperature',
  tell: 'it never kept this rate, also when the elements were new',
};

export const OPENED: Alternative = {
  cause: 'The lid, the door or a damper stood open for a while',
  tell: 'whoever was there; the fall is then steeper than free cooling',
};

const FELL =
  'The curve falls in mid-climb and climbs again: the power was gone for a while, or heating was ' +
  'stopped. Time lost like that is no slowness of the elements.';

const FIND_THE_CAUSE =
  'Find out what took the heat away before the next firing: the supply, a breaker, a door switch, ' +
  'or somebody at the controller.';

const MEASURE =
  'If it kept up a few firings ago, have the elements’ resistance and the supply voltage measured ' +
  'before the next load.';

/** What is said of each kind of lateness besides its title, of an electric kiln. */
export const SLOW_WORDS: Readonly<Record<Slowness, SlowWords>> = {
  slow: {
    why:
      'The reading fell behind the plan and stayed behind. A kiln that cannot keep up is short of ' +
      'power for what was asked of it: the log shows that it was slow, not by itself why.',
    couldBe: [TOO_MUCH_ASKED],
    remedy: `Plan this climb at the rate the kiln did make, or lighten the load. ${MEASURE}`,
  },
  fell: {
    why: `${FELL} Apart from it the climb kept its pace.`,
    couldBe: [OPENED],
    remedy: FIND_THE_CAUSE,
  },
  'fell-and-slow': {
    why: `${FELL} But the climb was slow apart from it, too.`,
    couldBe: [OPENED, TOO_MUCH_ASKED],
    remedy: `${FIND_THE_CAUSE} ${MEASURE}`,
  },
  'at-next-rate': {
    why:
      'The programme seems to have gone on at the next segment’s rate from far below this target. ' +
      'A weak kiln hardly falls back to just that rate, and does not keep it evenly.',
    couldBe: [
      {
        cause: 'This target was entered too low, so that the next segment began too soon',
        tell: 'the target and the rate of both segments as they stand in the controller',
      },
      TOO_MUCH_ASKED,
    ],
    remedy:
      'Compare the entries in the controller with the schedule, this segment and the next one ' +
      'first. Only if they agree look at what the kiln can do.',
  },
};

/** Whether the document tells of a loss of power before this climb ended. */
const lostPower = ({ finding, document: { findings } }: Topic): boolean => {
  const endSeconds = Math.max(...finding.evidence.map(({ toSeconds }) => toSeconds));
  return findings.some(
    ({ id, evidence }) =>
      id === 'element-lost' && evidence.some(({ fromSeconds }) => fromSeconds < endSeconds),
  );
};

/** The finding that tells of what a late climb comes from, where the document has one. */
export const slowCause = (topic: Topic): FindingId | null => {
  const slowness = slownessOf(topic);
  if (slowness === 'at-next-rate') return null;
  if (slowness !== 'fell') return lostPower(topic) ? 'element-lost' : null;
  const isTold = noteOn(topic.document.findings, 'power-interrupted') !== null;
  return isTold ? 'power-interrupted' : null;
};

const causeNote = (topic: Topic): string | null => {
  const cause = slowCause(topic);
  return cause && noteOn(topic.document.findings, cause);
};

type AllSlowWords = Readonly<Record<Slowness, SlowWords>>;

/** Why a climb was late; of a cause that another note tells, no more than where it stands. */
export const slowWhy = (topic: Topic, words: AllSlowWords): string => {
  const slowness = slownessOf(topic);
  const cause = causeNote(topic);
  return slowness === 'slow' && cause !== null
    ? `A part of the kiln’s power was lost, as ${cause} tells, and with the rest it could not keep this rate.`
    : words[slowness].why;
};

/** What to do about a late climb; where another note tells of the cause, what that note says. */
export const slowRemedy = (topic: Topic, words: AllSlowWords): string => {
  const cause = causeNote(topic);
  return cause === null
    ? words[slownessOf(topic)].remedy
    : `Do what ${cause} says: the cause stands there. The schedule can stay as it is.`;
};
