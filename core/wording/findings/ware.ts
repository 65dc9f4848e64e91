import { celsius } from '../../units.ts';
import { purposeOf } from '../../model/purpose.ts';
import { BURST_CAUTION, FUMES_CAUTION, hotKilnCaution } from '../cautions.ts';
import { line, type Line } from '../line.ts';
import type { Speech } from '../speech.ts';
import {
  percentOf,
  rateOf,
  targetOf,
  temperatureOf,
  type FindingWording,
  type Topic,
} from '../topic.ts';

/** Where the published sources put quartz inversion; the start of the common cristobalite range. */
const QUARTZ = celsius(573);
const CRISTOBALITE = celsius(226);

const boiling = (say: Speech) => say.temperature(celsius(100));

const DUNT_TELL =
  'a crack with sharp edges came on cooling; one that glaze has flowed into came before';

export const WARE_WORDINGS = {
  'drying-fast': {
    name: 'drying too fast',
    title: (topic) =>
      line`Through drying the kiln climbed at ${rateOf(topic, 'fastestCPerHour', 'a fast rate')}: ${dryingJudgement(topic)}.`,
    why: ({ say }) =>
      `Water left in the clay boils at ${boiling(say)}; if steam cannot get out as fast as it forms, it bursts the ware.`,
    couldBe: () => [
      {
        cause: 'The ware was damp, thick or had closed hollows',
        tell: 'which pieces broke: thin dry ones in the same load survive',
      },
    ],
    alternative: {
      cause: 'The ware dried too fast',
      tell: 'pieces burst early, into flakes and shards through the whole kiln',
    },
    remedy: ({ say }) =>
      `Hold just below ${boiling(say)} until no more moisture shows on a cold mirror at the spy-hole, ` +
      'longer for thick ware.',
    caution: () => BURST_CAUTION,
  },

  'burnout-fast': {
    name: 'burnout too fast',
    title: (topic) =>
      line`Through burnout the kiln climbed at ${rateOf(topic, 'fastestCPerHour', 'a fast rate')}: little time for carbon and sulphur to leave.`,
    why: ({ say }) =>
      `Between about ${say.temperature(celsius(700))} and ${say.temperature(celsius(900))} carbon and sulphur burn out of the clay. What stays behind can ` +
      'blacken the core, bloat the body or pit the glaze.',
    couldBe: () => [
      {
        cause: 'The kiln was packed tightly or badly ventilated',
        tell: 'black cores sit where ware touched ware',
      },
    ],
    alternative: {
      cause: 'Burnout was too fast',
      tell: 'a broken piece shows a dark core',
    },
    remedy: () => 'Slow down through this stretch, stack openly and let air in.',
    caution: () => FUMES_CAUTION,
  },

  'quartz-fast-heating': {
    name: 'quartz inversion too fast on heating',
    title: (topic) =>
      line`On the way up the kiln went through quartz inversion at ${rateOf(topic, 'fastestCPerHour', 'a fast rate')}.`,
    why: ({ say }) =>
      `At ${say.temperature(QUARTZ)} quartz in the clay changes size at once. Thick or large ware that is unevenly hot cracks then.`,
    couldBe: () => [{ cause: 'The crack was there before firing', tell: DUNT_TELL }],
    alternative: { cause: 'Quartz inversion was crossed too fast on heating', tell: DUNT_TELL },
    remedy: () => 'Slow down for large or thick ware; for ordinary ware this is rarely the fault.',
    caution: null,
  },

  'quartz-fast-cooling': {
    name: 'quartz inversion too fast on cooling',
    title: (topic) =>
      line`On the way down the kiln went through ${changeOf(topic)} at ${rateOf(topic, 'fastestCPerHour', 'a fast rate')}.`,
    why: ({ say }) =>
      `At ${say.temperature(QUARTZ)} quartz shrinks at once, and a second change follows near ${say.temperature(CRISTOBALITE)}; uneven ware dunts.`,
    couldBe: () => [{ cause: 'The crack was there before firing', tell: DUNT_TELL }],
    alternative: { cause: 'Quartz inversion was crossed too fast on cooling', tell: DUNT_TELL },
    remedy: () =>
      'Keep lid, door, bungs and damper shut until well below that, and cool large ware slower.',
    caution: hotKilnCaution,
  },

  'cooling-fast': {
    name: 'cooling too fast',
    title: (topic) => coolingTitle(topic),
    why: ({ say }) =>
      `Crystals and matte surfaces grow between about ${say.temperature(celsius(1025))} and ${say.temperature(celsius(800))}; cooled faster, the same glaze comes out glossier.`,
    couldBe: () => [
      { cause: 'The glaze itself changed', tell: 'a test tile of the old batch in the same load' },
    ],
    alternative: { cause: 'It cooled too fast', tell: 'matte glazes came out glossy' },
    remedy: () => 'Add a controlled fall through that stretch if the surface matters.',
    caution: hotKilnCaution,
  },

  'cooling-differs': {
    name: 'cooling unlike the good firing',
    title: (topic) =>
      line`Between ${temperatureOf(topic, 'fromC', 'the peak')} and ${temperatureOf(topic, 'toC', 'the end')} the cooling differs by ${percentOf(topic, 'differsPercent', 'a good deal')} from the good firing it is held against.`,
    why: () => 'The same peak cooled at another pace can give another surface.',
    couldBe: () => [
      { cause: 'The load was heavier or lighter', tell: 'the weights of the two loads' },
      { cause: 'A bung, damper or vent stood otherwise', tell: 'how it was left that night' },
    ],
    alternative: {
      cause: 'It cooled otherwise than the good firing',
      tell: 'the two coolings laid over each other',
    },
    remedy: () => 'Repeat the good firing’s load and vents, or programme its cooling.',
    caution: null,
  },

  'opened-hot': {
    name: 'a kiln opened hot',
    title: (topic) =>
      line`The reading drops suddenly at ${temperatureOf(topic, 'openedC', 'a high temperature')}: the kiln seems to have been opened hot.`,
    why: ({ say }) =>
      `Cold air on hot ware can crack it, most of all through ${say.temperature(CRISTOBALITE)}, and cracks the brick as well.`,
    couldBe: () => [
      {
        cause: 'The couple was pulled out or lost its contact',
        tell: 'the reading jumps back, or falls faster than any kiln cools',
      },
    ],
    alternative: { cause: 'The kiln was opened hot', tell: 'whoever was there' },
    remedy: () => 'Leave it shut until it is cool enough to touch what is inside.',
    caution: hotKilnCaution,
  },
} satisfies Record<string, FindingWording>;

const dryingJudgement = ({ document }: Topic): string => {
  const purpose = purposeOf(document)?.purpose ?? 'bisque';
  return purpose === 'bisque'
    ? 'fast for ware that is not bone dry'
    : 'fast even for ware that was fired before and has taken water in with its glaze';
};

/** Quartz and cristobalite are told apart by where the stretch begins. */
const changeOf = ({ finding }: Topic): string =>
  (finding.figures['fromC'] ?? Infinity) > 300 ? 'quartz inversion' : 'the change of cristobalite';

/** A controlled fall that was not kept is named with its plan. */
const coolingTitle = (topic: Topic): Line => {
  const cooled = rateOf(topic, 'fastestCPerHour', 'a fast rate');
  return topic.finding.figures['plannedCPerHour'] === undefined
    ? line`From the peak the kiln cooled at ${cooled}, faster than closed kilns do by themselves.`
    : line`On the fall to ${temperatureOfTarget(topic)} the kiln cooled at ${cooled} where ${rateOf(topic, 'plannedCPerHour', 'less')} was planned.`;
};

const temperatureOfTarget = (topic: Topic): string => {
  const target = targetOf(topic);
  return target === null ? 'its target' : topic.say.temperature(target);
};
