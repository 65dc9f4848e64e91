import { mean } from '../numeric/statistics.ts';
import { SECONDS_PER_HOUR } from '../units.ts';

export interface LineFit {
  readonly ratePerHour: number;
  /** The line's value at the middle of the stretch's times. */
  readonly meanC: number;
  readonly squares: number;
}

const ORDERS = 4;

/**
 * Running sums over a curve from which the least-squares constant, line and parabola of any stretch
 * follow at once, whatever its length: what makes a search over all stretches affordable. Times are
 * counted in hours from the curve's middle and temperatures from its mean, to keep digits.
 */
export class StretchFits {
  private readonly originSeconds: number;
  private readonly originC: number;
  /** sums[k][i]: of hours^k over the first i points. */
  private readonly powers: Float64Array[];
  /** products[k][i]: of hours^k · celsius. */
  private readonly products: Float64Array[];
  private readonly squaresC: Float64Array;

  constructor(atSeconds: ArrayLike<number>, celsius: ArrayLike<number>) {
    const count = atSeconds.length;
    const sums = () => new Float64Array(count + 1);
    this.originSeconds = count > 0 ? (atSeconds[0]! + atSeconds[count - 1]!) / 2 : 0;
    this.originC = count > 0 ? mean(celsius) : 0;
    this.powers = Array.from({ length: ORDERS + 1 }, sums);
    this.products = Array.from({ length: 3 }, sums);
    this.squaresC = sums();
    for (let i = 0; i < count; i++) {
      const hours = (atSeconds[i]! - this.originSeconds) / SECONDS_PER_HOUR;
      const c = celsius[i]! - this.originC;
      let power = 1;
      for (let k = 0; k <= ORDERS; k++, power *= hours) {
        this.powers[k]![i + 1] = this.powers[k]![i]! + power;
        if (k < 3) this.products[k]![i + 1] = this.products[k]![i]! + power * c;
      }
      this.squaresC[i + 1] = this.squaresC[i]! + c * c;
    }
  }

  private power(k: number, from: number, to: number): number {
    return this.powers[k]![to]! - this.powers[k]![from]!;
  }

  private product(k: number, from: number, to: number): number {
    return this.products[k]![to]! - this.products[k]![from]!;
  }

  /** The mean of points `from` … `to − 1`. */
  mean(from: number, to: number): number {
    return this.originC + this.product(0, from, to) / (to - from);
  }

  /** The sum of squares about a level. */
  squaresAbout(levelC: number, from: number, to: number): number {
    const level = levelC - this.originC;
    const n = to - from;
    const sum = this.product(0, from, to);
    const squares = this.squaresC[to]! - this.squaresC[from]!;
    return Math.max(0, squares - 2 * level * sum + n * level * level);
  }

  /** The least-squares line over points `from` … `to − 1`; slope 0 where times do not differ. */
  line(from: number, to: number): LineFit {
    const n = to - from;
    const meanT = this.power(1, from, to) / n;
    const meanC = this.product(0, from, to) / n;
    const spreadT = this.power(2, from, to) - n * meanT * meanT;
    const spreadTC = this.product(1, from, to) - n * meanT * meanC;
    const spreadC = this.squaresC[to]! - this.squaresC[from]! - n * meanC * meanC;
    const ratePerHour = spreadT > 1e-12 ? spreadTC / spreadT : 0;
    return {
      ratePerHour,
      meanC: meanC + this.originC,
      squares: Math.max(0, spreadC - ratePerHour * spreadTC),
    };
  }

  /** The sum of squares left by the least-squares parabola over points `from` … `to − 1`. */
  parabolaSquares(from: number, to: number): number {
    const n = to - from;
    if (n <= 3) return 0;
    const m = this.power(1, from, to) / n;
    // Moments about the stretch's own mean time.
    const p2 = this.power(2, from, to);
    const p3 = this.power(3, from, to);
    const s2 = p2 - n * m * m;
    const s3 = p3 - 3 * m * p2 + 2 * n * m ** 3;
    const s4 = this.power(4, from, to) - 4 * m * p3 + 6 * m * m * p2 - 3 * n * m ** 4;
    const c0 = this.product(0, from, to);
    const c1 = this.product(1, from, to) - m * c0;
    const c2 = this.product(2, from, to) - 2 * m * this.product(1, from, to) + m * m * c0;
    const meanC = c0 / n;
    const spreadC = this.squaresC[to]! - this.squaresC[from]! - n * meanC * meanC;
    if (s2 <= 1e-12) return Math.max(0, spreadC);
    // Orthogonalise t² against 1 and t, then each term takes its share of the spread.
    const q = s4 - (s2 * s2) / n - (s3 * s3) / s2;
    const cq = c2 - s2 * meanC - (s3 / s2) * c1;
    const left = spreadC - (c1 * c1) / s2 - (q > 1e-15 ? (cq * cq) / q : 0);
    return Math.max(0, left);
  }
}
