/**
 * What a witness cone's bend says of its heat-work.
 *
 * From the reference notes: a cone takes about 20–30 °C from straight to fully down, the last stages
 * about 5 °C, and its end point is the tip level with the base, 90°. Between those three facts the
 * course is drawn straight (chosen).
 */

/** Bend in degrees, °C of end point by which the cone is short of being down, and how sure that is. */
const COURSE = [
  // The middle and the half spread of 20–30 °C.
  { bendDegrees: 0, marginC: -25, spreadC: 5 },
  { bendDegrees: 60, marginC: -5, spreadC: 3 },
  // A tip within the last stage's half is called level.
  { bendDegrees: 90, marginC: 0, spreadC: 2.5 },
] as const;

/** Below this a cone is upright: it only says that it had less (chosen: a tilt that shows). */
const UPRIGHT_BELOW_DEGREES = 5;
/** Above this a cone is past its end point: it only says that it had at least its own (chosen). */
const PAST_ABOVE_DEGREES = 95;
/** A cone may be misread or be from another box: no bend rules out any heat-work (chosen). */
const FLOOR = 0.001;

const between = (bendDegrees: number): { marginC: number; spreadC: number } => {
  const bend = Math.min(Math.max(bendDegrees, 0), 90);
  const above = COURSE.findIndex((point) => point.bendDegrees >= bend);
  const to = COURSE[Math.max(above, 1)]!;
  const from = COURSE[Math.max(above, 1) - 1]!;
  const share = (bend - from.bendDegrees) / (to.bendDegrees - from.bendDegrees);
  return {
    marginC: from.marginC + share * (to.marginC - from.marginC),
    spreadC: from.spreadC + share * (to.spreadC - from.spreadC),
  };
};

/** °C of end point by which a cone of this bend has passed (or, negative, missed) being down. */
export const marginOfBend = (bendDegrees: number): number => between(bendDegrees).marginC;

/**
 * How well a heat-work, given as the cone's margin in °C of end point, agrees with the bend that was
 * seen: 1 at best, never 0.
 */
export const bendLikelihood = (bendDegrees: number, marginC: number): number => {
  const expected = between(bendDegrees);
  const off = (marginC - expected.marginC) / expected.spreadC;
  const agrees =
    (bendDegrees < UPRIGHT_BELOW_DEGREES && off < 0) ||
    (bendDegrees > PAST_ABOVE_DEGREES && off > 0);
  return FLOOR + (1 - FLOOR) * (agrees ? 1 : Math.exp(-(off ** 2) / 2));
};
