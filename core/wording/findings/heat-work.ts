import type { FindingId } from '../../model/finding.ts';
import { celsiusDelta } from '../../units.ts';
import { HOTTER_CAUTION, STUCK_WARE_CAUTION } from '../cautions.ts';
import { large, line, lineOf, type Line } from '../line.ts';
import { letterOf } from '../letters.ts';
import { remedySentence } from '../remedies.ts';
import { coneAtLeast, coneName, conePlace, duration, percent, plainNumber } from '../speech.ts';
import {
  conesOf,
  legOf,
  sentence,
  type Alternative,
  type FindingWording,
  type Topic,
} from '../topic.ts';

/**
 * How far cones 06 and 6 lie apart: 998 and 1222 °C at 60 °C/h on the published end-point chart for
 * self-supporting cones.
 */
const LEADING_ZERO_COSTS = celsiusDelta(1222 - 998);

const gotPlace = ({ document }: Topic): Line => {
  const { position = null, bound = 'both-ways' } = document.heatWork?.cone ?? {};
  if (position === null) return lineOf('less than any cone');
  return bound === 'at-least'
    ? line`at least ${large(coneAtLeast(position))}`
    : lineOf(large(conePlace(position)));
};

const meantCone = ({ document }: Topic): string => {
  const target = document.heatWork?.target;
  return target ? coneName(target.cone) : 'another cone';
};

const doseSentence = ({ document }: Topic): string => {
  const target = document.heatWork?.target;
  if (!target) return '';
  const margin =
    target.dose < 1
      ? `${percent(target.dose)} of the dose`
      : `${plainNumber(target.dose, target.dose < 10 ? 1 : 0)} times the dose`;
  return ` By this record ${coneName(target.cone)} got ${margin} that brings it down.`;
};

/** Where the hold at the top ran long, that is the likely reason and stands before all others. */
const longHold = (topic: Topic): string | null => {
  const { heldMinutes, plannedMinutes } = topic.finding.figures;
  if (heldMinutes === undefined || plannedMinutes === undefined) return null;
  const [held, planned] = [duration(heldMinutes * 60), duration(plannedMinutes * 60)];
  return (
    `The likely reason is ${legOf(topic, 'hold')}: it lasted ${held} where ${planned} was planned, ` +
    `and a hold near the peak goes on adding heat-work although the reading rises no further.${doseSentence(topic)}`
  );
};

const HEAT_WORK_IS =
  'Heat-work is time and temperature together, and nearly all of it is done near the peak.';

/** A firing within the tolerance is told of as that, and nothing is to be changed for it. */
const isWithin = ({ document }: Topic): boolean => document.heatWork?.target?.verdict === 'within';

/** The note on the schedule's hottest target, if a finding of this kind tells of it. */
const noteAtTop = ({ document }: Topic, id: FindingId): string | null => {
  const segments = document.schedule?.segments ?? [];
  const top = Math.max(...segments.map(({ targetC }) => targetC));
  const index = document.findings.findIndex(
    ({ id: other, figures }) => other === id && segments[figures['segment'] ?? -1]?.targetC === top,
  );
  return index < 0 ? null : `note ${letterOf(index)}`;
};

/** What happened at the top that adds heat-work, where a finding tells of it. */
const reasonAtTop = (topic: Topic): string | null => {
  const over = noteAtTop(topic, 'overshoot');
  if (over !== null) {
    return `The likely reason is that the kiln went past its target, as ${over} tells: nearly all heat-work is done near the peak.`;
  }
  const slow = noteAtTop(topic, 'ramp-slow');
  return slow === null
    ? null
    : `The likely reason is that the last climb took longer than planned, as ${slow} tells: time near the peak adds heat-work.`;
};

const CONES_SETTLE_IT = 'witness cones that stood beside the ware settle it';

const ANOTHER_CONE_MEANT: Alternative = {
  cause: 'The clay and glaze are for another cone than the one given here',
  tell: 'the cone on their labels',
};

/** From so far off on, a cone with the zero may have been counted in the wrong direction (chosen). */
const COUNTED_WRONG_CONES = 1.5;

/** Cones with the zero run backwards, so that who counts up from 06 comes to a cooler cone. */
const countedBackwards = (topic: Topic, figure: string): Alternative[] => {
  const target = topic.document.heatWork?.target?.cone;
  const off = topic.finding.figures[figure] ?? 0;
  if (target?.startsWith('0') !== true || off < COUNTED_WRONG_CONES) return [];
  return [
    {
      cause:
        'The cones with the zero were counted the wrong way: the larger number is the cooler one',
      tell: 'the cone that was programmed: 08 is cooler than 06, and 04 is hotter',
    },
  ];
};

export const HEAT_WORK_WORDINGS = {
  underfired: {
    name: 'heat-work short of the cone',
    title: (topic) =>
      isWithin(topic)
        ? line`The heat-work comes to ${gotPlace(topic)} where ${meantCone(topic)} was meant: ${conesOf(topic, 'shortCones', 'some way')} short of it, within the usual half cone.`
        : line`The heat-work comes to ${gotPlace(topic)} where ${meantCone(topic)} was meant, ${conesOf(topic, 'shortCones', 'some way')} short.`,
    why: (topic) => HEAT_WORK_IS + doseSentence(topic),
    couldBe: (topic) => [...countedBackwards(topic, 'shortCones'), ANOTHER_CONE_MEANT],
    alternative: {
      cause: 'The ware simply got too little heat-work',
      tell: `${CONES_SETTLE_IT}: they would stand too straight`,
    },
    remedy: (topic) => shortRemedy(topic),
    caution: () => HOTTER_CAUTION,
  },

  overfired: {
    name: 'heat-work past the cone',
    title: (topic) =>
      isWithin(topic)
        ? line`The heat-work comes to ${gotPlace(topic)} where ${meantCone(topic)} was meant: ${conesOf(topic, 'overCones', 'some way')} past it, within the usual half cone.`
        : line`The heat-work comes to ${gotPlace(topic)} where ${meantCone(topic)} was meant, ${conesOf(topic, 'overCones', 'some way')} too much.`,
    why: (topic) =>
      longHold(topic) ?? `${reasonAtTop(topic) ?? HEAT_WORK_IS}${doseSentence(topic)}`,
    couldBe: (topic) => [...countedBackwards(topic, 'overCones'), ANOTHER_CONE_MEANT],
    alternative: {
      cause: 'The ware got more heat-work than was meant',
      tell: `${CONES_SETTLE_IT}: they would be flat`,
    },
    remedy: (topic) => pastRemedy(topic),
    caution: () => STUCK_WARE_CAUTION,
  },

  'wrong-end-cone': {
    name: 'a cone from the wrong end of the scale',
    title: (topic) =>
      line`The heat-work comes to ${gotPlace(topic)} where ${meantCone(topic)} was meant: the leading zero seems to have been lost or added.`,
    why: ({ say }) =>
      `The zero is part of a cone’s name. Cone 06 is bisque or low-fire glaze, cone 6 is stoneware, ` +
      `and ${say.difference(LEADING_ZERO_COSTS)} lie between them; the two are often mixed up.`,
    couldBe: () => [
      {
        cause: 'The cone was told wrongly here, and the firing was the one you meant',
        tell: 'the programme in the controller, and the cones in the kiln',
      },
    ],
    alternative: {
      cause: 'The cone was entered with the zero lost or added',
      tell: 'the programme as it stands in the controller',
    },
    remedy: (topic) => wrongEndRemedy(topic),
    caution: () =>
      `Ware, glaze and shelves from the low end of the scale melt at the high end. ${STUCK_WARE_CAUTION}`,
  },
} satisfies Record<string, FindingWording>;

const NOTHING_TO_CHANGE = 'Nothing needs changing for this while cones beside the ware agree.';

/** What is to be mended first where the firing went past its cone for a reason that is told. */
const pastRemedy = (topic: Topic): string => {
  const { document, say } = topic;
  if (isWithin(topic)) {
    const slow = noteAtTop(topic, 'ramp-slow');
    return slow === null
      ? NOTHING_TO_CHANGE
      : `${NOTHING_TO_CHANGE} Once the kiln keeps its rate again (${slow}), this goes with it.`;
  }
  const check =
    longHold(topic) === null
      ? ''
      : 'Check the hold in the programme, and whether hours and minutes were mixed up. ';
  return (
    check +
    (remedySentence(document, say) ??
      'Shorten the hold first, then lower the peak, and put cones in to see what it did.')
  );
};

/** From here on a firing was not a little short: something stopped it, or another programme ran. */
const FAR_SHORT_CONES = 2;

const shortRemedy = (topic: Topic): string => {
  const { finding, document, say } = topic;
  if (isWithin(topic)) return NOTHING_TO_CHANGE;
  const isFarShort = (finding.figures['shortCones'] ?? Infinity) >= FAR_SHORT_CONES;
  const reckoned = remedySentence(document, say);
  if (document.heatWork?.remedies.length || !isFarShort) {
    return (
      reckoned ??
      'Hold longer at the peak or go a little higher, and put cones in to see what it did.'
    );
  }
  return 'This is more than a little short: find out what ended the firing or which programme ran, then fire the load again to its full cone.';
};

const wrongEndRemedy = ({ document }: Topic): string => {
  const target = document.heatWork?.target?.cone;
  const check = 'Check the cone in the programme and on the box of clay and glaze.';
  if (!target) return check;
  return document.load.state === 'short'
    ? `${check} ${sentence(coneName(target))} can still be reached by firing the load again.`
    : `${check} Open only when cold: what was meant for the lower cone may have melted.`;
};
