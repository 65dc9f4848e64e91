import { describe, expect, it } from 'vitest';
import { Programme } from './programme.ts';
import type { ScheduleFile } from './types.ts';

const TWO_STEPS: ScheduleFile = {
  name: 'two steps',
  unit: 'C',
  segments: [
    { ratePerHour: 120, target: 140, holdMinutes: 10 },
    { ratePerHour: 60, target: 200 },
  ],
};

/** Runs a programme against a kiln given by what it reads for a setpoint. */
const run = (
  schedule: ScheduleFile,
  waitBandC: number | null,
  reading: (setpointC: number, atSeconds: number) => number,
  untilSeconds = 40_000,
): Programme => {
  const programme = new Programme(schedule, waitBandC, 0, 20);
  for (let at = 0; at < untilSeconds && !programme.done; at += 5) {
    programme.advance(at, 5, reading(programme.setpointC, at));
  }
  return programme;
};

describe('the programme', () => {
  it('takes the times that its rates and holds say, where the kiln follows', () => {
    // 120 °C at 120 °C/h is an hour, ten minutes' hold, 60 °C at 60 °C/h another hour.
    const { legs, done } = run(TWO_STEPS, null, (setpointC) => setpointC);
    expect(done).toBe(true);
    expect(legs.map(({ kind, segment }) => [kind, segment])).toEqual([
      ['ramp', 0],
      ['hold', 0],
      ['ramp', 1],
    ]);
    [3600, 4200, 7800].forEach((at, i) => {
      expect(Math.abs(legs[i]!.endSeconds - at)).toBeLessThanOrEqual(10);
    });
    expect(legs.every(({ complete }) => complete)).toBe(true);
  });

  it('reads °F and times for a segment', () => {
    // 32 °F is 0 °C and 180 °F per hour are 100 °C per hour, by definition.
    const { legs } = run(
      {
        name: 'F',
        unit: 'F',
        segments: [
          { ratePerHour: 180, target: 248 },
          { minutes: 30, target: 428 },
        ],
      },
      null,
      (setpointC) => setpointC,
    );
    expect(legs.map(({ targetC }) => targetC)).toEqual([120, 220]);
    expect(Math.abs(legs[0]!.endSeconds - 3600)).toBeLessThanOrEqual(5);
    expect(Math.abs(legs[1]!.endSeconds - 5400)).toBeLessThanOrEqual(10);
  });

  it('waits for the kiln only if it is told to', () => {
    const slow = (_: number, atSeconds: number): number => 20 + atSeconds / 60;
    const waiting = run(TWO_STEPS, 6, slow);
    const hasty = run(TWO_STEPS, null, slow);
    // The kiln climbs 60 °C/h: within 1 °C of 140 °C after 7140 s.
    expect(Math.abs(waiting.legs[0]!.endSeconds - 7140)).toBeLessThanOrEqual(10);
    expect(Math.abs(waiting.legs[0]!.arrivalSeconds! - 7140)).toBeLessThanOrEqual(5);
    expect(waiting.waitedSeconds).toBeGreaterThan(3000);
    expect(Math.abs(hasty.legs[0]!.endSeconds - 3600)).toBeLessThanOrEqual(5);
    expect(hasty.legs[0]!.arrivalSeconds).toBeNull();
    expect(hasty.waitedSeconds).toBe(0);
  });

  it('stays at full power until the target is reached, and off downwards', () => {
    const schedule: ScheduleFile = {
      name: 'full',
      unit: 'C',
      segments: [
        { ratePerHour: 'full', target: 100 },
        { ratePerHour: 'full', target: 50 },
      ],
    };
    const upAndDown = (_: number, at: number): number => (at < 1000 ? 20 + at / 10 : 220 - at / 10);
    const programme = run(schedule, null, upAndDown);
    expect(programme.legs[0]!.endSeconds).toBe(790);
    expect(programme.legs[1]!.endSeconds).toBe(1690);
    const midway = run(schedule, null, upAndDown, 1200);
    expect(midway.heatOff).toBe(true);
    expect(midway.done).toBe(false);
  });

  it('goes on from the reading after a cut in a ramp, and serves the rest of a hold', () => {
    const ramping = run(TWO_STEPS, null, (setpointC) => setpointC, 1800);
    ramping.resume(600, 55);
    expect(ramping.setpointC).toBe(55);
    const holding = run(TWO_STEPS, null, (setpointC) => setpointC, 3900);
    holding.resume(600, 130);
    expect(holding.setpointC).toBe(140);
    let at = 4500;
    while (holding.legs.length === 2) holding.advance((at += 5), 5, 140);
    expect(Math.abs(at - 4800)).toBeLessThanOrEqual(15);
  });

  it('marks the leg that it was stopped in as cut', () => {
    const programme = run(TWO_STEPS, null, (setpointC) => setpointC, 1800);
    programme.stop(1800);
    expect(programme.done).toBe(true);
    expect(programme.legs).toHaveLength(1);
    expect(programme.legs[0]).toMatchObject({ endSeconds: 1800, complete: false });
  });
});
