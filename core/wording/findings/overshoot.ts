import { ELECTRICAL_CAUTION } from '../cautions.ts';
import { noteOn } from '../letters.ts';
import { line, lineOf, type Line } from '../line.ts';
import {
  differenceOf,
  minutesOf,
  rateOf,
  targetOf,
  type Alternative,
  type FindingWording,
  type Topic,
} from '../topic.ts';

/** Whether the kiln was heated on past its target rather than late in coming to rest there. */
export const wasHeatedOn = ({ finding: { figures } }: Topic): boolean =>
  figures['climbedOnMinutes'] !== undefined;

const subject = (topic: Topic): string => {
  const target = targetOf(topic);
  return target === null ? 'A target' : `The target of ${topic.say.temperature(target)}`;
};

/** The note on contacts that stuck, which is then what tells of the heat that stayed on. */
const stuckNote = ({ document }: Topic): string | null =>
  noteOn(document.findings, 'power-stuck-on');

const title = (topic: Topic): Line => {
  const over = line`${subject(topic)} was overshot by ${differenceOf(topic, 'overDeltaC', 'some degrees')}`;
  return wasHeatedOn(topic) && stuckNote(topic) === null
    ? line`${over}: the kiln climbed on at ${rateOf(topic, 'climbedOnCPerHour', 'its rate')} for ${minutesOf(topic, 'climbedOnMinutes', 'some time')}.`
    : lineOf(over, line` for ${minutesOf(topic, 'aboveMinutes', 'some time')}.`);
};

const BRAKES_LATE: Alternative = {
  cause: 'The controller brakes too late for a small load',
  tell: 'every target reached at a fast rate is overshot in the same way',
};

const OTHER_PROGRAMME: Alternative = {
  cause: 'The controller ran another programme than the one given here',
  tell: 'the programme as it stands in the controller',
};

/** A slower approach does not stop contacts that stick. */
const STUCK_REMEDY =
  'Before the next firing have the relay or contactor looked at, and the over-temperature cut-out ' +
  'tried: contacts that stick for minutes can weld for good. A slower approach does not mend that.';

const remedy = (topic: Topic): string => {
  if (!wasHeatedOn(topic)) {
    return (
      'Approach that target at a slower rate, or put a short segment at half the rate before it. ' +
      'If it is new, look at the relay.'
    );
  }
  const stuck = stuckNote(topic);
  return stuck === null
    ? STUCK_REMEDY
    : `Do first what ${stuck} says: it tells of the cause. A slower approach does not mend that.`;
};

const COASTED =
  'The kiln went past its target before it settled. Low down that can rush drying; at the peak it ' +
  'adds heat-work that nobody planned.';

const whyHeatedOn = (topic: Topic): string => {
  const stuck = stuckNote(topic);
  return stuck === null
    ? 'A kiln whose heat is cut slows down at once; this one climbed on about as fast as it had come, ' +
        'or faster. Heat stayed on that the schedule did not ask for, and at the peak it adds ' +
        'heat-work that nobody planned.'
    : `Heat stayed on that the schedule did not ask for: ${stuck} tells of it.`;
};

/** Of a target that was passed: by a kiln that came to rest too late, or one that was heated on. */
export const OVERSHOOT: FindingWording = {
  name: 'a target overshot',
  title,
  why: (topic) => (wasHeatedOn(topic) ? whyHeatedOn(topic) : COASTED),
  causedBy: (topic) => (wasHeatedOn(topic) && stuckNote(topic) !== null ? 'power-stuck-on' : null),
  couldBe: (topic) => [wasHeatedOn(topic) ? OTHER_PROGRAMME : BRAKES_LATE],
  alternative: {
    cause: 'The target was overshot',
    tell: 'the reading rises past the target and comes back',
  },
  remedy,
  caution: () => ELECTRICAL_CAUTION,
};
