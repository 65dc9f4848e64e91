import { heatSourceOf } from '../../model/heat-source.ts';
import { ELECTRICAL_CAUTION } from '../cautions.ts';
import { line, type Line } from '../line.ts';
import { FAST_CLIMB } from './fast-climb.ts';
import { OVERSHOOT } from './overshoot.ts';
import { SCHEDULE_SUSPECT } from './schedule-suspect.ts';
import { SLOW_WORDS, slowCause, slowRemedy, slowTitle, slowWhy, slownessOf } from './slow-climb.ts';
import {
  atItsTime,
  differenceOf,
  legOf,
  minutesOf,
  targetOf,
  temperatureOf,
  type FindingWording,
  type Topic,
} from '../topic.ts';

export const SCHEDULE_WORDINGS = {
  'ramp-slow': {
    name: 'a climb slower than planned',
    title: (topic) => slowTitle(topic),
    why: (topic) => slowWhy(topic, SLOW_WORDS),
    couldBe: (topic) => SLOW_WORDS[slownessOf(topic)].couldBe,
    causedBy: slowCause,
    alternative: {
      cause: 'The kiln could not keep the planned rate',
      tell: 'the curve falls behind the plan while the controller calls for full power',
    },
    remedy: (topic) => slowRemedy(topic, SLOW_WORDS),
    caution: () => ELECTRICAL_CAUTION,
  },

  'ramp-fast': FAST_CLIMB,

  'hold-short': {
    name: 'a hold cut short',
    title: (topic) =>
      line`${holdSubject(topic)} lasted ${minutesOf(topic, 'heldMinutes', 'less')} of the planned ${minutesOf(topic, 'plannedMinutes', 'time')}.`,
    why: () =>
      'A hold evens out the kiln and, near the peak, does much of the heat-work. Time missing there ' +
      'weighs more than time missing anywhere else.',
    couldBe: () => [
      {
        cause: 'Someone ended the hold by hand, or skipped ahead',
        tell: 'whoever was there; the cooling then begins cleanly',
      },
      {
        cause:
          'The controller counts a hold from an earlier moment than the arrival at temperature',
        tell: 'every hold on this controller comes out short by a like amount',
      },
    ],
    alternative: {
      cause: 'The hold ended before its time',
      tell: 'the curve leaves the hold early and goes straight into cooling',
    },
    remedy: () =>
      'Check the hold in the programme, and whether hours and minutes were mixed up. Cones tell ' +
      'whether the missing time mattered to this load.',
    caution: null,
  },

  'hold-drift': {
    name: 'a hold that wandered',
    title: (topic) => driftTitle(topic),
    why: () =>
      'A hold should stay where it was set. A steady drift means that power and loss were not in ' +
      'balance: too little power to hold, or heating that would not stop.',
    couldBe: () => [
      {
        cause: 'The controller was tuned for another load or another part of the range',
        tell: 'the drift swings to and fro rather than going one way',
      },
    ],
    alternative: {
      cause: 'The kiln could not keep the temperature of the hold',
      tell: 'the reading drifts one way through the hold',
    },
    remedy: () =>
      'If it sank, the kiln had no power in reserve there; if it rose, look at the relay and the ' +
      'controller’s settings. Judge the load by its heat-work, which counts the drift.',
    caution: () => ELECTRICAL_CAUTION,
  },

  'segment-missing': {
    name: 'a part of the schedule that never ran',
    title: (topic) =>
      line`The record shows nothing of ${legOf(topic, 'segment')} that was planned.`,
    why: () =>
      'Between its neighbours there is no stretch of the curve that could be this segment.',
    couldBe: () => [
      {
        cause: 'The controller ran another programme than the one given here',
        tell: 'the programme as it stands in the controller',
      },
      {
        cause: 'The segment ran in a gap of the log',
        tell: 'a gap stands where it should have been',
      },
    ],
    alternative: {
      cause: 'A segment was skipped',
      tell: 'the curve goes from the segment before straight to the one after',
    },
    remedy: () => 'Compare the programme in the controller with the schedule, segment by segment.',
    caution: null,
  },

  'ended-early': {
    name: 'a firing stopped before its schedule',
    title: (topic) =>
      line`The firing stopped at ${temperatureOf(topic, 'endedC', 'its peak')}${atItsTime(topic)}, with ${minutesOf(topic, 'leftMinutes', 'some time')} of the schedule still to come.`,
    why: ({ document }) =>
      'The curve goes over from heating to free cooling although climbs or holds were still to come.' +
      (heatSourceOf(document.options) === 'fuel'
        ? ''
        : ' Worn elements slow a climb long before they end it; a breaker, a fuse or a cut-out ends it at once.'),
    couldBe: () => [
      {
        cause: 'Someone, a timer, a cone-tripped switch or an over-temperature cut-out ended it',
        tell: 'whoever was there, and the state of the switch and the cut-out',
      },
      {
        cause: 'The controller stopped with an error',
        tell: 'the message or the event list in the controller',
      },
    ],
    alternative: {
      cause: 'The firing was stopped before the schedule was done',
      tell: 'free cooling begins before the last planned leg',
    },
    remedy: () =>
      'Find what switched it off before firing again. If the load is short of its cone it can be ' +
      'fired again to the full cone: the first firing adds next to nothing to the second.',
    caution: () => ELECTRICAL_CAUTION,
  },

  overshoot: OVERSHOOT,

  'peak-not-reached': {
    name: 'a peak that was never reached',
    title: (topic) =>
      line`The peak was ${temperatureOf(topic, 'peakC', 'low')}, ${differenceOf(topic, 'shortDeltaC', 'some degrees')} below the ${temperatureOf(topic, 'targetC', 'temperature')} that was planned.`,
    why: () =>
      'The hottest reading stays below the schedule’s highest target by more than reading and ' +
      'rounding explain.',
    couldBe: () => [
      {
        cause: 'The kiln was at its limit: power no more than equal to its losses',
        tell: 'the curve flattens towards the end under full power',
      },
      {
        cause: 'The firing was stopped by hand, by a timer or by a cut-out',
        tell: 'the curve still climbs briskly when it breaks off',
      },
    ],
    alternative: {
      cause: 'The planned peak was never reached',
      tell: 'the hottest reading lies below the target',
    },
    remedy: () =>
      'If the curve flattens, have the elements and the supply measured before asking for this peak ' +
      'again; if it breaks off, find what switched the kiln off.',
    caution: () => ELECTRICAL_CAUTION,
  },

  'schedule-suspect': SCHEDULE_SUSPECT,
} satisfies Record<string, FindingWording>;

const holdSubject = (topic: Topic): string => {
  const target = targetOf(topic);
  return target === null ? 'A hold' : `The hold at ${topic.say.temperature(target)}`;
};

/** A hold that stood off its level and one that wandered about it are told apart. */
const driftTitle = (topic: Topic): Line => {
  const { offDeltaC = 0, wanderDeltaC = 0 } = topic.finding.figures;
  if (Math.abs(offDeltaC) >= wanderDeltaC && offDeltaC !== 0) {
    const side = offDeltaC < 0 ? 'below' : 'above';
    return line`${holdSubject(topic)} stood ${differenceOf(topic, 'offDeltaC', 'some degrees')} ${side} its level.`;
  }
  return line`${holdSubject(topic)} wandered over ${differenceOf(topic, 'wanderDeltaC', 'more than its noise')}.`;
};
