import { celsiusDelta } from '../../units.ts';
import { ELECTRICAL_CAUTION } from '../cautions.ts';
import { noteOn } from '../letters.ts';
import { line } from '../line.ts';
import { differenceOf, legOf, rateOf, type FindingWording, type Topic } from '../topic.ts';

/** Whether the climb only made up for temperature that was lost before it. */
export const wasCatchingUp = ({ finding: { figures } }: Topic): boolean =>
  figures['behindDeltaC'] !== undefined;

/** Of a climb that was catching up: it is a consequence, and what made the kiln late is the cause. */
export const catchUpRemedy = ({ document: { findings } }: Topic): string => {
  const slow = noteOn(findings, 'ramp-slow');
  return slow === null
    ? 'Find out what made the kiln late before this climb; this one needs nothing.'
    : `Mend what made the kiln late, which ${slow} tells; this climb needs nothing.`;
};

/** From how hot a last climb counts for the cone: heat-work is negligible far below the peak. */
const lastStretch = ({ say }: Topic) => say.difference(celsiusDelta(100));

/** Of a climb that ran faster than planned: ahead of the plan, or after it. */
export const FAST_CLIMB: FindingWording = {
  name: 'a climb faster than planned',
  title: (topic) => {
    const rates = line`On ${legOf(topic, 'climb')} the kiln made ${rateOf(topic, 'achievedCPerHour', 'more')} where ${rateOf(topic, 'plannedCPerHour', 'less')} was planned`;
    return wasCatchingUp(topic)
      ? line`${rates}: it began ${differenceOf(topic, 'behindDeltaC', 'some degrees')} below the plan and was catching up.`
      : line`${rates}.`;
  },
  why: (topic) =>
    wasCatchingUp(topic)
      ? 'A controller that does not wait for the kiln goes on by its clock, and a kiln that has ' +
        'fallen behind then climbs as fast as it can. Over the last ' +
        `${lastStretch(topic)} that means less heat-work for the same peak.`
      : 'The climb outran the plan. Early in a firing that can burst or crack ware; over the last ' +
        `${lastStretch(topic)} it means less heat-work for the same peak.`,
  couldBe: () => [
    {
      cause: 'The controller ran another programme than the one given here',
      tell: 'the programme as it stands in the controller',
    },
  ],
  alternative: {
    cause: 'The kiln climbed faster than the plan',
    tell: 'the slope lies above the planned rate over the whole leg',
  },
  remedy: (topic) =>
    wasCatchingUp(topic)
      ? catchUpRemedy(topic)
      : 'Compare the programme in the controller with the schedule. If they agree, look for a relay ' +
        'that stays on: heating went on although the controller should have held it back.',
  caution: () => ELECTRICAL_CAUTION,
};
