import type { Alternative } from '../topic.ts';
import { COMMON_PRACTICE, LOOK_AT_FIRE, SHORT_OF_HEAT, STOPPED } from './fuel-causes.ts';
import { OPENED, SLOW_WORDS, type Slowness, type SlowWords } from './slow-climb.ts';

const FELL =
  'The curve falls in mid-climb and climbs again: the fire was out or turned down for a while, or ' +
  'cold air came in. Time lost like that is no slowness of the kiln.';

const FIND_THE_CAUSE =
  'Find out what took the heat away before the next firing: the flame and its safeguard, the ' +
  'supply of fuel, the damper, or somebody at the burners.';

const LOOK = `To find out which it is, ${LOOK_AT_FIRE}.`;

const TOO_MUCH_ASKED: Alternative = {
  cause: 'The schedule asks more than this kiln can do at that temperature',
  tell: 'it never kept this rate, also with full pressure and a well-set damper',
};

/** {@link SLOW_WORDS} of a kiln that burns fuel. */
export const FUEL_SLOW_WORDS: Readonly<Record<Slowness, SlowWords>> = {
  slow: {
    why:
      'The reading fell behind the plan and stayed behind. A kiln that cannot keep up gets too ' +
      'little heat from its fuel, or loses too much of it: the log shows that it was slow, not by ' +
      `itself why. ${COMMON_PRACTICE}`,
    couldBe: [...SHORT_OF_HEAT, TOO_MUCH_ASKED],
    remedy: `Plan this climb at the rate the kiln did make, or lighten the load. ${LOOK}`,
  },
  fell: {
    why: `${FELL} Apart from it the climb kept its pace. ${COMMON_PRACTICE}`,
    couldBe: [...STOPPED, OPENED],
    remedy: FIND_THE_CAUSE,
  },
  'fell-and-slow': {
    why: `${FELL} But the climb was slow apart from it, too. ${COMMON_PRACTICE}`,
    couldBe: [...STOPPED, OPENED, ...SHORT_OF_HEAT, TOO_MUCH_ASKED],
    remedy: `${FIND_THE_CAUSE} ${LOOK}`,
  },
  'at-next-rate': {
    ...SLOW_WORDS['at-next-rate'],
    couldBe: [...SLOW_WORDS['at-next-rate'].couldBe.slice(0, 1), TOO_MUCH_ASKED],
  },
};
