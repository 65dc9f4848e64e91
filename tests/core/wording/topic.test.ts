import { describe, expect, it } from 'vitest';
import {
  atItsTime,
  beginsAt,
  conesOf,
  countOf,
  differenceOf,
  legOf,
  minutesOf,
  percentOf,
  rateOf,
  sentence,
  targetOf,
  temperatureOf,
} from '../../../core/wording/topic.ts';
import { topic } from './builders.ts';

describe('a topic’s figures', () => {
  const about = topic(
    'ramp-slow',
    {
      reachedC: 100,
      overDeltaC: 10,
      achievedCPerHour: 60,
      lateMinutes: 65,
      shortCones: 1,
      times: 3,
      lostPercent: 17,
    },
    'F',
  );

  it('are said in the reader’s unit and marked as what matters', () => {
    expect(temperatureOf(about, 'reachedC', '-')).toEqual({ text: '212 °F', large: true });
    expect(differenceOf(about, 'overDeltaC', '-').text).toBe('18 °F');
    expect(rateOf(about, 'achievedCPerHour', '-').text).toBe('108 °F/h');
    expect(minutesOf(about, 'lateMinutes', '-').text).toBe('1 h 05 min');
    expect(conesOf(about, 'shortCones', '-').text).toBe('one cone');
    expect(countOf(about, 'times', '-').text).toBe('3');
    expect(percentOf(about, 'lostPercent', '-').text).toBe('17 %');
  });

  it('give way to plain words where the finding lacks them', () => {
    expect(minutesOf(about, 'gapMinutes', 'some time')).toEqual({
      text: 'some time',
      large: false,
    });
  });
});

describe('where and when a topic is', () => {
  it('names the leg by its target, or leaves it unnamed', () => {
    expect(legOf(topic('ramp-slow', { segment: 2 }), 'climb')).toBe('the climb to 1188 °C');
    expect(legOf(topic('hold-short', { segment: 0 }, 'F'), 'hold')).toBe('the hold at 248 °F');
    expect(legOf(topic('ramp-slow'), 'climb')).toBe('one climb');
    expect(targetOf(topic('ramp-slow', { segment: 99 }))).toBeNull();
  });

  it('says when its evidence begins, if it has any', () => {
    expect(atItsTime(topic('log-gap'))).toBe(', 9 h 00 min into the log');
    const nowhere = topic('log-gap');
    expect(beginsAt({ ...nowhere, finding: { ...nowhere.finding, evidence: [] } })).toBeNull();
  });

  it('begins sentences with a capital', () => {
    expect(sentence('cone 6')).toBe('Cone 6');
    expect(sentence('')).toBe('');
  });
});
