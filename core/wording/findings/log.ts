import { large, line, type Line } from '../line.ts';
import { interval } from '../speech.ts';
import {
  atItsTime,
  countOf,
  differenceOf,
  inPieces,
  temperatureOf,
  type FindingWording,
  type Topic,
} from '../topic.ts';

export const LOG_WORDINGS = {
  'log-gap': {
    name: 'a gap in the log',
    title: (topic) => line`The log is silent for ${inPieces(topic, 'gapMinutes', 'gaps')}.`,
    why: () =>
      'What the kiln did there cannot be told. Where heat-work is concerned the gap is bridged in a ' +
      'straight line, and the range is widened for it.',
    couldBe: () => [
      {
        cause: 'The logger slept, lost its link or its battery',
        tell: 'the logger’s own messages',
      },
    ],
    alternative: {
      cause: 'The log has a gap there',
      tell: 'no rows at all between two times',
    },
    remedy: () => 'Check the logger’s power, memory and link before the next firing.',
    caution: null,
  },

  'log-starts-hot': {
    name: 'a log that begins hot',
    title: (topic) =>
      line`The log begins at ${temperatureOf(topic, 'firstC', 'a high temperature')}: what came before cannot be told.`,
    why: () => 'Drying and the first climb are not in the record, so nothing can be said of them.',
    couldBe: () => [
      {
        cause: 'The kiln was still warm from the firing before',
        tell: 'when it was last fired, and whether the first readings fall or rise',
      },
    ],
    alternative: {
      cause: 'The record begins part-way',
      tell: 'the first reading is far above room temperature',
    },
    remedy: () => 'Start the logger before the kiln.',
    caution: null,
  },

  'log-ends-early': {
    name: 'a log that ends before the firing',
    title: (topic) =>
      line`The log ends at ${temperatureOf(topic, 'lastC', 'a high temperature')}, while the firing may have gone on.`,
    why: () =>
      'The last reading is no end of a firing. Heat-work is therefore “at least this much”, and nothing ' +
      'can be said of the cooling.',
    couldBe: () => [
      {
        cause: 'The firing itself stopped there',
        tell: 'whoever was there, or the ware',
      },
    ],
    alternative: {
      cause: 'The record stops while the firing went on',
      tell: 'the last readings show no cooling',
    },
    remedy: () =>
      'Let the logger run until the kiln is cold: the cooling tells as much as the heating.',
    caution: null,
  },

  'clock-jump': {
    name: 'a jump of the clock',
    title: (topic) => line`The log’s clock jumps ${timesOf(topic, 'jumps')}${atItsTime(topic)}.`,
    why: () =>
      'The time changes although the temperature goes on smoothly: the clock was set, or daylight ' +
      'saving began or ended. The times were put straight before anything was measured.',
    couldBe: () => [
      {
        cause: 'Two logs were joined in one file',
        tell: 'the temperature jumps at the same row',
      },
    ],
    alternative: {
      cause: 'The logger’s clock was changed',
      tell: 'the time jumps and the temperature does not',
    },
    remedy: () => 'Set the logger’s clock before a firing, not during one.',
    caution: null,
  },

  'log-coarse': {
    name: 'a log too coarse to judge by',
    title: (topic) => coarseTitle(topic),
    why: () =>
      'Short holds, overshoots and sudden changes can hide between two readings. What is said here is ' +
      'said with wider ranges.',
    couldBe: () => [
      {
        cause: 'The file was thinned when it was exported',
        tell: 'the logger’s own memory holds more readings',
      },
    ],
    alternative: {
      cause: 'The log is too coarse to show it',
      tell: 'a log with a reading a minute',
    },
    remedy: () => 'Log a reading every minute or oftener if the logger can.',
    caution: null,
  },

  'several-firings': {
    name: 'several firings in one log',
    title: (topic) => severalTitle(topic),
    why: () =>
      'The kiln heats, cools far enough to be opened, and heats again in one file. The firings are kept ' +
      'apart: nothing that is said here mixes them.',
    couldBe: () => [
      {
        cause: 'One firing was interrupted for a long time and run again',
        tell: 'whether it is the same load',
      },
    ],
    alternative: {
      cause: 'The log holds more than one firing',
      tell: 'the curve comes back to room temperature in between',
    },
    remedy: () => 'Choose the firing you mean, or split the file.',
    caution: null,
  },
} satisfies Record<string, FindingWording>;

/** `once`, `twice`, `5 times`. */
const timesOf = ({ finding }: Topic, name: string): string => {
  const times = finding.figures[name] ?? 1;
  if (times === 1) return 'once';
  return times === 2 ? 'twice' : `${times} times`;
};

/** Which one is judged, so that nobody takes it for another. */
const severalTitle = (topic: Topic): Line => {
  const { firing } = topic.finding.figures;
  const firings = countOf(topic, 'firings', 'more than one');
  if (firing === undefined) return line`The log holds ${firings} firings; only one is judged here.`;
  const peak = temperatureOf(topic, 'peakC', 'its own peak');
  return line`The log holds ${firings} firings; number ${large(String(firing))}, to ${peak}, is judged here.`;
};

/** Readings can be too far apart, too roughly rounded, or both. */
const coarseTitle = (topic: Topic): Line => {
  const { figures, thresholds } = topic.finding;
  const { intervalMinutes, stepDeltaC = 0 } = figures;
  const every = intervalMinutes === undefined ? 'so often' : large(interval(intervalMinutes * 60));
  const step = differenceOf(topic, 'stepDeltaC', 'some degrees');
  if (stepDeltaC < (thresholds['stepDeltaC'] ?? Infinity)) {
    return line`The log has a reading only every ${every}.`;
  }
  return line`The log has a reading every ${every}, in steps of ${step}.`;
};
