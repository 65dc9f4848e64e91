import { HOTTER_CAUTION } from '../cautions.ts';
import { large, line, lineOf, type Line } from '../line.ts';
import { coneName, duration } from '../speech.ts';
import {
  conesOf,
  minutesOf,
  rateOf,
  targetOf,
  temperatureOf,
  type FindingWording,
  type Topic,
} from '../topic.ts';

/** The entry that slipped, as it stands in the schedule: `entry 3, the hold at 1215 °C,`. */
const entryOf = (topic: Topic): string => {
  const index = topic.finding.figures['segment'];
  return index === undefined ? 'an entry' : `entry ${index + 1}`;
};

const meantCone = ({ document }: Topic): string => {
  const cone = document.options.cone ?? document.schedule?.cone ?? null;
  return cone === null ? 'its cone' : coneName(cone);
};

const holdAt = (topic: Topic): string => {
  const target = targetOf(topic);
  return target === null ? 'the hold' : `the hold at ${topic.say.temperature(target)}`;
};

const climbTo = (topic: Topic): string => {
  const target = targetOf(topic);
  return target === null ? 'the climb' : `the climb to ${topic.say.temperature(target)}`;
};

/** Which entry slipped, and what was likely meant; null where nothing explains it. */
const slipLine = (topic: Topic): Line | null => {
  const { figures } = topic.finding;
  const entry = entryOf(topic);
  if (figures['meantC'] !== undefined) {
    return line`${entry} has the target ${temperatureOf(topic, 'enteredC', 'entered')}, where ${temperatureOf(topic, 'meantC', 'another')} or so was likely meant`;
  }
  if (figures['meantMinutes'] !== undefined) {
    return line`in ${entry}, ${holdAt(topic)} is ${minutesOf(topic, 'enteredMinutes', 'long')}, where ${minutesOf(topic, 'meantMinutes', 'another')} was likely meant`;
  }
  if (figures['meantCPerHour'] !== undefined) {
    return line`in ${entry}, ${climbTo(topic)} runs at ${rateOf(topic, 'enteredCPerHour', 'its rate')}, where ${rateOf(topic, 'meantCPerHour', 'another')} was likely meant`;
  }
  if (figures['meantPeakC'] !== undefined) {
    return line`its numbers seem to be in the other unit: °C and °F mixed up make its peak ${temperatureOf(topic, 'enteredPeakC', 'what it is')} instead of ${temperatureOf(topic, 'meantPeakC', 'another')}`;
  }
  return figures['fromNamesakeCones'] === undefined
    ? null
    : line`the zero of ${meantCone(topic)} seems to have been lost or added`;
};

const title = (topic: Topic): Line => {
  const slip = slipLine(topic);
  if (slip !== null) return line`The schedule itself looks wrong: ${slip}.`;
  const { offCones } = topic.finding.figures;
  const whole = line`followed to the letter it takes ${minutesOf(topic, 'scheduledMinutes', 'its time')} to a peak of ${temperatureOf(topic, 'scheduledPeakC', 'its own')}`;
  if (offCones === undefined) return line`The schedule itself looks wrong: ${whole}.`;
  const side = offCones < 0 ? 'short of' : 'past';
  return line`The schedule itself would miss its cone: ${whole}, ${conesOf(topic, 'offCones', 'some way')} ${side} ${meantCone(topic)}.`;
};

/** So little more or less is the same cone (chosen: no cone shows a twentieth). */
const SAME_CONES = 0.05;

const sameCone = (slippedCones = Infinity): string =>
  Math.abs(slippedCones) <= SAME_CONES
    ? ', and comes to the same cone, because the end of the climb decides it and that is the same'
    : '';

/** What the entry changes: the cone, or only the time. */
const consequence = ({ finding: { figures, thresholds }, ...topic }: Topic): string => {
  const { offCones, mendedMinutes, scheduledMinutes } = figures;
  const about = { finding: { figures, thresholds }, ...topic } as Topic;
  if (offCones !== undefined && Math.abs(offCones) > (thresholds['offCones'] ?? Infinity)) {
    const side = offCones < 0 ? 'short of' : 'past';
    return `Followed to the letter it comes out ${lineOf(conesOf(about, 'offCones', 'some way')).text} ${side} ${meantCone(about)}. `;
  }
  if (mendedMinutes === undefined || scheduledMinutes === undefined) return '';
  const longer = scheduledMinutes - mendedMinutes;
  const by = large(duration(longer * 60)).text;
  if (longer <= 0) return '';
  return `As it stands the firing takes ${by} longer${sameCone(figures['slippedCones'])}. `;
};

/** A schedule that would not do what it is for, by what is likely wrong with it. */
export const SCHEDULE_SUSPECT: FindingWording = {
  name: 'a schedule that would not do its job',
  title,
  why: (topic) =>
    `${consequence(topic)}A kiln that follows a wrong entry to the letter still fires wrongly. Usual ` +
    'slips are hours for minutes, a digit dropped or doubled, a cone with the zero lost, and Celsius for Fahrenheit.',
  couldBe: () => [
    {
      cause: 'The schedule is meant as it stands, for a purpose not told here',
      tell: 'what the firing was for, and cones from firings like it',
    },
  ],
  alternative: {
    cause: 'The schedule was entered wrongly',
    tell: 'the programme as it stands in the controller, entry by entry',
  },
  remedy: () =>
    'Read the programme out entry by entry against what you meant, and correct it there.',
  caution: () => HOTTER_CAUTION,
};
