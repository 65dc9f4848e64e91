import { mean } from '../numeric/statistics.ts';
import { ZERO_CELSIUS_IN_KELVIN } from '../units.ts';
import { kelvinAtLnIntegral, lnClimbIntegral, type Arrhenius } from './arrhenius.ts';
import { scaledE2 } from './exponential-integral.ts';

/** One charted cell: the end point of a constant climb. */
export interface ChartedEndPoint {
  readonly rateCPerHour: number;
  readonly endPointC: number;
}

export interface ArrheniusFit {
  readonly kinetics: Arrhenius;
  /** Fitted minus charted end point, in the order of the cells. */
  readonly residualsC: readonly number[];
}

const MOST_ROUNDS = 50;
/** Rounds end when the activation temperature moves by less than this, in K (of some 10⁵). */
const SETTLED_K = 1e-4;

const kelvinOf = (cell: ChartedEndPoint): number => cell.endPointC + ZERO_CELSIUS_IN_KELVIN;

const withResiduals = (kinetics: Arrhenius, cells: readonly ChartedEndPoint[]): ArrheniusFit => ({
  kinetics,
  residualsC: cells.map((cell) => {
    const lnIntegral = kinetics.lnThresholdHours + Math.log(cell.rateCPerHour);
    const kelvin = kelvinAtLnIntegral(kinetics.activationK, kinetics.referenceK, lnIntegral);
    return kelvin - kelvinOf(cell);
  }),
});

/** A first activation temperature from the slope of ln(β/T²) against 1/T (Kissinger 1957). */
const firstActivation = (cells: readonly ChartedEndPoint[]): number => {
  const inverse = cells.map((cell) => 1 / kelvinOf(cell));
  const ln = cells.map((cell) => Math.log(cell.rateCPerHour / kelvinOf(cell) ** 2));
  const centre = mean(inverse);
  const level = mean(ln);
  const products = inverse.map((x, i) => (x - centre) * (ln[i]! - level));
  const squares = inverse.map((x) => (x - centre) ** 2);
  return -mean(products) / mean(squares);
};

/** One Gauss–Newton step in (E/R, ln threshold) on the end points' errors. */
const step = (kinetics: Arrhenius, cells: readonly ChartedEndPoint[]): Arrhenius => {
  const { activationK, referenceK, lnThresholdHours } = kinetics;
  let [aa, al, ll, ar, lr] = [0, 0, 0, 0, 0];
  for (const cell of cells) {
    const lnIntegral = lnThresholdHours + Math.log(cell.rateCPerHour);
    const kelvin = kelvinAtLnIntegral(activationK, referenceK, lnIntegral);
    const x = activationK / kelvin;
    const e2 = scaledE2(x);
    // d ln I / dT = 1/(T·e2) and d ln I / da = 1/T₀ − E₁/(T·E₂), with E₁ = (e⁻ˣ − E₂)/x.
    const byThreshold = kelvin * e2;
    const byActivation = (1 - e2) / x - byThreshold / referenceK;
    const error = kelvin - kelvinOf(cell);
    aa += byActivation ** 2;
    al += byActivation * byThreshold;
    ll += byThreshold ** 2;
    ar += byActivation * error;
    lr += byThreshold * error;
  }
  const determinant = aa * ll - al ** 2;
  return {
    referenceK,
    activationK: activationK - (ll * ar - al * lr) / determinant,
    lnThresholdHours: lnThresholdHours - (aa * lr - al * ar) / determinant,
  };
};

/**
 * The threshold that a given activation temperature needs for charted end points: least squares in
 * their ln dose, which for one cell is exact.
 */
export const fitThreshold = (
  activationK: number,
  cells: readonly ChartedEndPoint[],
): ArrheniusFit => {
  const referenceK = mean(cells.map(kelvinOf));
  const lnThresholdHours = mean(
    cells.map(
      (cell) =>
        lnClimbIntegral(activationK, referenceK, kelvinOf(cell)) - Math.log(cell.rateCPerHour),
    ),
  );
  return withResiduals({ activationK, referenceK, lnThresholdHours }, cells);
};

/**
 * Activation energy and threshold by least squares in end-point temperature, from two or more
 * charted rates of one cone. With two rates the fit passes through both.
 */
export const fitArrhenius = (cells: readonly ChartedEndPoint[]): ArrheniusFit => {
  if (new Set(cells.map((cell) => cell.rateCPerHour)).size < 2) {
    throw new RangeError('an activation energy needs end points at two rates');
  }
  let { kinetics } = fitThreshold(firstActivation(cells), cells);
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const next = step(kinetics, cells);
    const moved = Math.abs(next.activationK - kinetics.activationK);
    kinetics = next;
    if (moved < SETTLED_K) break;
  }
  return withResiduals(kinetics, cells);
};
