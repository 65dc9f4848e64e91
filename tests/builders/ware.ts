import type { Facts } from '../../core/findings/facts.ts';
import type { Cone } from '../../core/model/cone.ts';
import type { Options } from '../../core/model/options.ts';
import { measureBands } from '../../core/thermal/bands.ts';
import { facts, withoutSchedule } from './facts.ts';
import { firing, traceFrom, type Stretch } from './trace.ts';

interface WareOptions extends Options {
  /** The cone that was meant; a stoneware glaze unless told. */
  readonly cone?: Cone;
}

/** The facts of a firing without a schedule that went through these stretches from 20 °C. */
export const wareFacts = (stretches: readonly Stretch[], options: WareOptions = {}): Facts => {
  const samples = traceFrom(firing(20, ...stretches));
  const { cone = '6', ...told } = options;
  const base = withoutSchedule();
  return {
    ...base,
    options: told,
    samples,
    trace: samples.summary,
    bands: measureBands(samples),
    heatWork: { ...base.heatWork!, target: { ...facts().heatWork!.target!, cone } },
  };
};

/** A plain firing: moderate up to a peak of 1000 °C, then down by itself; parts of it at other rates. */
export const plainFiring = (
  rates: {
    readonly drying?: number;
    readonly quartzUp?: number;
    readonly burnout?: number;
    readonly crystals?: number;
    readonly quartzDown?: number;
    readonly cristobalite?: number;
  } = {},
): Stretch[] => [
  { rateCPerHour: 60, toC: 70 },
  { rateCPerHour: rates.drying ?? 60, toC: 140 },
  { rateCPerHour: 100, toC: 540 },
  { rateCPerHour: rates.quartzUp ?? 100, toC: 610 },
  { rateCPerHour: 100, toC: 690 },
  { rateCPerHour: rates.burnout ?? 100, toC: 910 },
  { rateCPerHour: 80, toC: 1050 },
  { rateCPerHour: rates.crystals ?? 150, toC: 790 },
  { rateCPerHour: 100, toC: 610 },
  { rateCPerHour: rates.quartzDown ?? 80, toC: 540 },
  { rateCPerHour: 60, toC: 260 },
  { rateCPerHour: rates.cristobalite ?? 30, toC: 190 },
  { rateCPerHour: 20, toC: 60 },
];
