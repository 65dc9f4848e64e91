import type { FindingId } from '../../model/finding.ts';
import { FUEL_CAUTION, FUEL_COUPLE_CAUTION } from '../cautions.ts';
import type { Alternative, FindingWording } from '../topic.ts';
import {
  COMMON_PRACTICE,
  DRAUGHT,
  LOOK_AT_FIRE,
  SHORT_OF_HEAT,
  STALLED_IN_REDUCTION,
  STOPPED,
  WEATHER,
} from './fuel-causes.ts';
import { FUEL_SLOW_WORDS } from './fuel-slow-climb.ts';
import { catchUpRemedy, wasCatchingUp } from './fast-climb.ts';
import { wasHeatedOn } from './overshoot.ts';
import { slownessOf } from './slow-climb.ts';

/** What is said otherwise of a kiln that burns fuel; the rest is said as of any kiln. */
type FuelWordings = Readonly<Partial<Record<FindingId, Partial<FindingWording>>>>;

const OTHER_PROGRAMME: Alternative = {
  cause: 'Another programme ran, or another plan was fired by hand, than the one given here',
  tell: 'the programme in the controller, or the firing notes',
};

const FUEL_SCHEDULE = {
  'ramp-slow': {
    why: (topic) => FUEL_SLOW_WORDS[slownessOf(topic)].why,
    couldBe: (topic) => FUEL_SLOW_WORDS[slownessOf(topic)].couldBe,
    alternative: {
      cause: 'The kiln could not keep the planned rate',
      tell: 'the curve falls behind the plan although the burners give all they can',
    },
    remedy: (topic) => FUEL_SLOW_WORDS[slownessOf(topic)].remedy,
    caution: () => FUEL_CAUTION,
  },

  'ramp-fast': {
    couldBe: () => [
      OTHER_PROGRAMME,
      {
        cause: 'Burners were turned up, or damper and air were set so that more heat stayed in',
        tell: 'gauge pressure and damper setting in the firing notes',
      },
    ],
    remedy: (topic) =>
      wasCatchingUp(topic)
        ? catchUpRemedy(topic)
        : 'Compare what was fired with the schedule. If they agree, turn up in smaller steps and let ' +
          'the reading answer each; a valve that does not turn down is for a gas fitter.',
    caution: () => FUEL_CAUTION,
  },

  'hold-drift': {
    why: () =>
      'A hold should stay where it was set. A steady drift means that the heat of the fire and ' +
      `the losses were not in balance. ${COMMON_PRACTICE}`,
    couldBe: () => [
      {
        cause: 'The burners were set for a climb, or for another load, and not set again',
        tell: 'the drift begins with the last change of pressure or damper in the firing notes',
      },
      STALLED_IN_REDUCTION,
      DRAUGHT,
      WEATHER,
    ],
    remedy: () =>
      'If it sank, a little more fuel or less draught would have kept it; if it rose, the other ' +
      `way round. For the next hold, ${LOOK_AT_FIRE}. Judge the load by its heat-work, which counts the drift.`,
    caution: () => FUEL_CAUTION,
  },

  'segment-missing': {
    couldBe: () => [
      OTHER_PROGRAMME,
      {
        cause: 'The segment ran in a gap of the log',
        tell: 'a gap stands where it should have been',
      },
    ],
    remedy: () => 'Compare what was fired with the schedule, segment by segment.',
  },

  'ended-early': {
    why: () =>
      'The curve goes over from heating to free cooling although climbs or holds were still to ' +
      `come: the fire was out from there on. ${COMMON_PRACTICE}`,
    couldBe: () => [
      ...STOPPED,
      {
        cause: 'A timer, a cone-tripped switch or an over-temperature cut-out shut it down',
        tell: 'the state of the switch and the cut-out, and what the controller tells',
      },
    ],
    remedy: () =>
      'Find what put the fire out before firing again. If the load is short of its cone it can be ' +
      'fired again to the full cone: the first firing adds next to nothing to the second.',
    caution: () => FUEL_CAUTION,
  },

  overshoot: {
    couldBe: () => [
      {
        cause: 'The burners were turned down too late, or not far enough for a small load',
        tell: 'every target reached at a fast rate is overshot in the same way',
      },
    ],
    remedy: (topic) =>
      wasHeatedOn(topic)
        ? 'Turn down at that target, or before it: a slower approach does not help where the fire ' +
          'stays as it was. A valve that does not turn down is for a gas fitter.'
        : 'Turn down before that target and approach it at a slower rate, or put a short segment at ' +
          'half the rate before it. Hot brick goes on giving heat after the flame is down.',
    caution: () => FUEL_CAUTION,
  },

  'peak-not-reached': {
    why: () =>
      'The hottest reading stays below the schedule’s highest target by more than reading and ' +
      `rounding explain. ${COMMON_PRACTICE}`,
    couldBe: () => [
      {
        cause: 'The kiln was at its limit: the fire gave no more than the losses took',
        tell: 'the curve flattens towards the end with the burners full on',
      },
      ...SHORT_OF_HEAT,
      ...STOPPED,
    ],
    remedy: () =>
      `If the curve flattens, have pressure and burners seen to before asking for this peak again, and ${LOOK_AT_FIRE}; ` +
      'if it breaks off, find what put the fire out.',
    caution: () => FUEL_CAUTION,
  },
} satisfies FuelWordings;

/** None of these is found in a kiln that burns fuel; in the list of checks they need a name. */
const FUEL_NAMES = {
  'elements-weak': { name: 'less power than in the good firing' },
  'element-lost': { name: 'a part of the power lost at once' },
} satisfies FuelWordings;

const FUEL_KILN = {
  'heavy-load': {
    why: () => 'A heavier load takes longer to heat and gives its heat back as slowly.',
  },

  'zones-apart': {
    couldBe: () => [
      {
        cause: 'The flame favours one place: damper, bag wall or an uneven pair of burners',
        tell: 'the difference moves when damper or burners are set otherwise',
      },
      { cause: 'One of the couples is off', tell: 'cones at both places, or the couples swapped' },
      { cause: 'The load is packed unevenly', tell: 'the difference changes with the packing' },
    ],
    caution: () => FUEL_CAUTION,
  },
} satisfies FuelWordings;

const FUEL_COUPLE = {
  'sensor-open': { caution: () => FUEL_COUPLE_CAUTION },
  'sensor-spikes': {
    couldBe: () => [
      {
        cause: 'An igniter, a blower or another machine disturbs the lead',
        tell: 'the jumps stand where it runs, and go when the lead is moved away from it',
      },
      {
        cause: 'A terminal is loose, or the couple is near its end',
        tell: 'the jumps grow more frequent as the kiln gets hotter',
      },
      {
        cause: 'A flame strikes the couple',
        tell: 'the jumps go when the burner is turned down or the couple is moved out of its way',
      },
    ],
    caution: () => FUEL_COUPLE_CAUTION,
  },
  'sensor-flat': { caution: () => FUEL_COUPLE_CAUTION },
  'sensor-reversed': { caution: () => FUEL_COUPLE_CAUTION },
  'sensor-wrong-type': { caution: () => FUEL_COUPLE_CAUTION },
  'sensor-lag': { caution: () => FUEL_COUPLE_CAUTION },
  'sensor-drift': {
    couldBe: () => [
      {
        cause: 'The cones stood in a place that is hotter or cooler than the couple',
        tell: 'cones beside the couple and beside the ware, in one firing',
      },
      {
        cause: 'Heavy reduction changed the couple’s wire',
        tell: 'a new couple beside the old one, in one firing',
      },
    ],
    caution: () => FUEL_COUPLE_CAUTION,
  },
} satisfies FuelWordings;

const FUEL_WARE = {
  'cooling-fast': {
    couldBe: () => [
      {
        cause: 'Damper, burner ports or air inlets were left open and drew cold air through',
        tell: 'how they were left after the fire was out',
      },
      { cause: 'The glaze itself changed', tell: 'a test tile of the old batch in the same load' },
    ],
  },
} satisfies FuelWordings;

/** The sentences that differ for a kiln that burns fuel, by finding (common practice). */
export const FUEL_WORDINGS: FuelWordings = {
  ...FUEL_SCHEDULE,
  ...FUEL_NAMES,
  ...FUEL_KILN,
  ...FUEL_COUPLE,
  ...FUEL_WARE,
};
