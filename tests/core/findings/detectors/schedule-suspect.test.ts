import { describe, expect, it } from 'vitest';
import { scheduleSuspect } from '../../../../core/findings/detectors/schedule-suspect.ts';
import type { Schedule } from '../../../../core/model/schedule.ts';
import { readSchedule } from '../../../../core/schedule/read-schedule.ts';
import { facts, heatWorkAt, withoutSchedule } from '../../../builders/facts.ts';
import { inapplicable, judge, NOTHING, onlyFinding } from '../../../builders/judge.ts';
import { SANE_SCHEDULES } from '../../../builders/sane-schedules.ts';
import { SCHEDULES } from '../../../kiln/schedules.ts';

const given = (schedule: Schedule) => ({ ...facts(), options: {}, schedule, heatWork: null });
const typed = (head: string, ...rows: readonly string[]) =>
  given(readSchedule(`${head}rate_per_hour,target,hold_minutes\n${rows.join('\n')}\n`, 'x.csv'));
const UP = ['100,120,30', '150,1020,0'] as const;

describe('a sane schedule', () => {
  it.each([...SANE_SCHEDULES, ...SCHEDULES].map((file) => [file.name, file] as const))(
    'is not suspected: %s',
    (_, file) => {
      const schedule = readSchedule(JSON.stringify(file), 'sane.json');
      expect(judge(scheduleSuspect, given(schedule))).toEqual(NOTHING);
    },
  );

  // By the chart's 60 °C/h column cone 5 ends at 1205 °C and cone 7 at 1239.
  it.each([
    [1190, false],
    [1160, true],
    [1228, false],
    [1262, true],
  ])('for cone 6 with a top of %d °C is suspected: %s', (top, isFound) => {
    const { outcome } = judge(scheduleSuspect, typed('# cone: 6\n', ...UP, `60,${top},10`));
    expect(outcome === 'found').toBe(isFound);
  });
});

describe('a slip', () => {
  it('says how many cones it makes: none where the last climb is the same', () => {
    // 93 °C is 200 °F typed for 2000 °F.
    const { figures } = onlyFinding(scheduleSuspect, typed('', '167,93,0', '60,1196,0'));
    expect(figures['segment']).toBe(0);
    expect(Math.abs(figures['slippedCones']!)).toBeLessThan(0.05);
    const top = onlyFinding(scheduleSuspect, typed('# cone: 6\n', ...UP, '60,1215,900'));
    expect(top.figures['slippedCones']).toBeGreaterThan(1);
  });

  it('of hours for minutes', () => {
    const { severity, figures } = onlyFinding(
      scheduleSuspect,
      typed('# cone: 6\n', ...UP, '60,1215,900'),
    );
    expect(severity).toBe('act');
    expect(figures).toMatchObject({ segment: 2, enteredMinutes: 900, meantMinutes: 15 });
  });

  it('of hours for minutes, where no cone was given', () => {
    expect(onlyFinding(scheduleSuspect, typed('', ...UP, '60,1215,900')).severity).toBe('watch');
  });

  it('of a digit in the top', () => {
    const { figures } = onlyFinding(scheduleSuspect, typed('# cone: 6\n', ...UP, '60,121,15'));
    expect(figures).toMatchObject({ segment: 2, enteredC: 121 });
    expect(Math.floor(figures['meantC']! / 10)).toBe(121);
  });

  it('of a digit in a rate', () => {
    const { figures } = onlyFinding(scheduleSuspect, typed('# cone: 6\n', ...UP, '6,1215,15'));
    expect(figures).toMatchObject({ segment: 2, enteredCPerHour: 6, meantCPerHour: 60 });
  });

  it('of °F for °C, and of °C for °F', () => {
    const inF = typed('# unit: F\n# cone: 6\n', ...UP, '60,1215,15');
    expect(onlyFinding(scheduleSuspect, inF).figures['meantPeakC']).toBeCloseTo(1215, 6);
    const inC = typed('# cone: 018\n', '250,900,0', '120,1320,10');
    expect(onlyFinding(scheduleSuspect, inC).figures['meantPeakC']).toBeCloseTo(715.6, 1);
  });

  it.each([
    ['06', '60,1215,15'],
    ['6', '60,995,10'],
  ])('of the zero of cone %s', (cone, last) => {
    const lead = cone === '06' ? UP : ['100,120,30', '150,900,0'];
    const finding = onlyFinding(scheduleSuspect, typed(`# cone: ${cone}\n`, ...lead, last));
    expect(finding.severity).toBe('act');
    expect(Math.abs(finding.figures['fromNamesakeCones']!)).toBeLessThan(1);
    expect(finding.instead).toContain('wrong-end-cone');
  });
});

it('a miss that nothing explains is told with how far it goes', () => {
  const { severity, figures } = onlyFinding(
    scheduleSuspect,
    typed('# cone: 6\n', ...UP, '60,1150,15'),
  );
  expect(severity).toBe('watch');
  expect(figures['offCones']).toBeLessThan(-1.5);
  expect(figures).toMatchObject({ scheduledPeakC: 1150 });
  expect(figures).not.toHaveProperty('segment');
});

it('ware that got its cone all the same asks for no action', () => {
  const wrong = typed('# cone: 6\n', ...UP, '60,1215,900');
  const { severity } = onlyFinding(scheduleSuspect, { ...wrong, heatWork: heatWorkAt(6) });
  expect(severity).toBe('watch');
});

it('the cone that was told counts before the schedule’s own', () => {
  const fine = typed('# cone: 6\n', ...UP, '60,1215,10');
  expect(judge(scheduleSuspect, { ...fine, options: { cone: '10' } }).outcome).toBe('found');
});

it('nothing is said where no schedule was given', () => {
  expect(judge(scheduleSuspect, withoutSchedule())).toEqual(inapplicable('no-schedule'));
});
