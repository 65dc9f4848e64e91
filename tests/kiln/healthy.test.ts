import { expect, test } from 'vitest';
import { fire } from './fire.ts';
import { earlierSetup, healthySetup, keptUp } from './healthy.ts';
import { BACKED_BRICK } from './kilns.ts';
import { seededRandom } from './random.ts';
import { CRYSTAL_STEPS, SLOW_BISQUE } from './schedules.ts';
import type { Setup } from './types.ts';

test('a small kiln with a heavy load does not keep up with a quick glaze, nor a worn-out one', () => {
  const setup = { seed: 3, kiln: BACKED_BRICK, loadKg: 60, roomC: 18 };
  expect(keptUp(CRYSTAL_STEPS, fire({ ...setup, schedule: CRYSTAL_STEPS }))).toBe(false);
  expect(keptUp(SLOW_BISQUE, fire({ ...setup, schedule: SLOW_BISQUE }))).toBe(true);
  const worn = { ...setup, schedule: SLOW_BISQUE, elementWear: 2.5 };
  expect(keptUp(SLOW_BISQUE, fire(worn))).toBe(false);
});

test('a healthy setup is drawn again until it keeps up, and the same from the same seed', () => {
  const draw = () => healthySetup(CRYSTAL_STEPS, seededRandom(8));
  const setup = draw();
  expect(keptUp(CRYSTAL_STEPS, fire(setup))).toBe(true);
  expect(draw()).toEqual(setup);
});

test('an earlier firing is of the same kiln with the same power, and another load', () => {
  const random = seededRandom(9);
  const setup = healthySetup(SLOW_BISQUE, random);
  const earlier = earlierSetup(setup, random);
  const same = ({ kiln, supply, elementWear, coupling }: Setup) => [
    kiln,
    supply,
    elementWear,
    coupling,
  ];
  expect(same(earlier)).toEqual(same(setup));
  expect(earlier.loadKg).not.toBe(setup.loadKg);
  expect(earlier.seed).not.toBe(setup.seed);
});
