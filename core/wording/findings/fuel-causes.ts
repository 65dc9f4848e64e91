import type { Alternative } from '../topic.ts';

/**
 * What slows, stops or unevens a kiln that burns fuel. All of it is common practice among those who
 * fire with gas, oil or wood; none of it can be read off a temperature log, so each has a check.
 */

/** Stands in the text wherever these causes do. */
export const COMMON_PRACTICE =
  'What it may come from in a kiln that burns fuel is common practice; the log by itself shows none of it.';

export const LITTLE_FUEL: Alternative = {
  cause: 'The gas pressure was low, or a cylinder was nearly empty or icing up',
  tell: 'the gauge while all burners are lit, against an earlier firing; a cylinder that is light or frosted',
};

export const POOR_FUEL: Alternative = {
  cause:
    'With wood or oil, the fuel burned badly: damp wood, a choked ember bed, cold or dirty oil',
  tell: 'smoke, the embers and what the stoking notes say, against a firing that went well',
};

export const BLOCKED_BURNER: Alternative = {
  cause: 'A burner, its orifice or its air inlet was partly blocked',
  tell: 'one flame is shorter, yellower or noisier than its neighbours, seen from outside',
};

export const DRAUGHT: Alternative = {
  cause: 'The damper or the secondary air was too far open or too far shut',
  tell: 'too far open: the spy-holes draw air in and heat leaves by the stack; too far shut: smoke, soot, and flame at every hole',
};

export const STALLED_IN_REDUCTION: Alternative = {
  cause: 'The kiln stalled in reduction: fuel that finds no air in the chamber does not heat it',
  tell: 'the climb went on when damper or air were opened a little',
};

export const DAMP: Alternative = {
  cause: 'Ware, shelves or brick were damp',
  tell: 'only the first hours were slow, while water left',
};

export const WEATHER: Alternative = {
  cause: 'Wind at the stack, or the weather, changed the draught',
  tell: 'the notes of the day; in gusts the slope comes and goes',
};

export const FLAME_OUT: Alternative = {
  cause: 'A flame went out, or its safeguard shut the gas off',
  tell: 'the state of the safeguard and its valve, and whoever was there',
};

export const TURNED_DOWN: Alternative = {
  cause: 'Somebody turned the burners down or off, let the fire die back, or moved the damper',
  tell: 'whoever was there, and the firing notes',
};

export const RAN_OUT: Alternative = {
  cause: 'The fuel ran out: an empty or iced-up cylinder, or no more wood or oil',
  tell: 'the gauge, the weight of the cylinder, the stock',
};

/** Why a kiln that burns fuel can be short of heat, the likeliest first (common practice). */
export const SHORT_OF_HEAT: readonly Alternative[] = [
  LITTLE_FUEL,
  DRAUGHT,
  STALLED_IN_REDUCTION,
  BLOCKED_BURNER,
  POOR_FUEL,
  DAMP,
  WEATHER,
];

/** Why its heat can stop (common practice). */
export const STOPPED: readonly Alternative[] = [FLAME_OUT, RAN_OUT, TURNED_DOWN];

/** What a potter can look at without touching the gas train. */
export const LOOK_AT_FIRE =
  'note gauge pressure, damper and air settings at each reading in the next firing, and look at ' +
  'every flame from outside';
