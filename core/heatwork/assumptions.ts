import type { KineticsSource } from '../cones/cone-kinetics.ts';
import type { Cone } from '../model/cone.ts';
import type { CoupleAssumption } from './couple-tolerance.ts';
import type { Measured } from './measured.ts';

/** What the heat-work may take for granted; the wording has a sentence for each. */
export type HeatWorkAssumption =
  | CoupleAssumption
  /** The firing went hotter than the class's own range; its last formula is carried on. */
  | 'couple-beyond-class'
  | 'chart-self-supporting'
  | 'chart-large'
  | 'chart-small'
  | 'chart-iron-free'
  /** A cone near the result has its activation energy from another cone or type. */
  | 'cone-activation-borrowed'
  /** A cone near the result is left out by its chart and stands midway between neighbours. */
  | 'cone-between-neighbours'
  /** A cone near the result lies beyond its chart: the self-supporting cone stands in. */
  | 'cone-borrowed'
  /** The last 100 °C were slower or faster than the chart's rates: the range is wider. */
  | 'rate-outside-chart'
  /** A hold added heat-work, on which published rules conflict: the range is wider. */
  | 'hold-rules-conflict'
  /** Unseen time near the top is bridged in a straight line: the range is wider. */
  | 'gap-interpolated'
  /** Two logs of one load are added; the time between them is not counted. */
  | 'logs-joined'
  /** The record starts near its top: what went before is not counted. */
  | 'record-starts-hot'
  /** The record ends near its top: what came after is not counted. */
  | 'record-ends-hot'
  /** Even the hottest cone of the chart is down. */
  | 'beyond-hottest-cone'
  /** The readings were corrected by the witness cones that were seen. */
  | 'corrected-by-cones';

const SOURCE_ASSUMPTIONS: Readonly<Record<KineticsSource, HeatWorkAssumption | null>> = {
  fitted: null,
  'borrowed-activation': 'cone-activation-borrowed',
  'between-neighbours': 'cone-between-neighbours',
  'borrowed-cone': 'cone-borrowed',
};

/** Where the constants of the cones near the result, and of the target, were not their own. */
const sourceAssumptions = (
  { record, standing }: Measured,
  target: Cone | null,
): HeatWorkAssumption[] => {
  const near = record.cones.filter(
    ({ cone, position }) =>
      cone === target ||
      (standing.position !== null && Math.abs(position - standing.position) <= 1),
  );
  return near.flatMap(({ source }) => SOURCE_ASSUMPTIONS[source] ?? []);
};

/** Everything that the measure of a firing took for granted, each once. */
export const assumptionsOf = (all: Measured, target: Cone | null): HeatWorkAssumption[] => {
  const { record, uncertainty, standing, startsHot, endsHot } = all;
  const { spread, unseen, byCones } = uncertainty;
  const when = (holds: boolean, id: HeatWorkAssumption): HeatWorkAssumption[] =>
    holds ? [id] : [];
  const listed: HeatWorkAssumption[] = [
    ...record.tolerance.assumptions,
    ...when(record.top.topC > record.tolerance.upToC, 'couple-beyond-class'),
    `chart-${record.coneType}`,
    ...sourceAssumptions(all, target),
    ...when(spread.outsideChart, 'rate-outside-chart'),
    ...when(spread.holdsAdded, 'hold-rules-conflict'),
    ...when(unseen.any, 'gap-interpolated'),
    ...when(record.trace.joinedAt !== undefined, 'logs-joined'),
    ...when(startsHot, 'record-starts-hot'),
    ...when(endsHot, 'record-ends-hot'),
    ...when(standing.beyond, 'beyond-hottest-cone'),
    ...when(byCones, 'corrected-by-cones'),
  ];
  return [...new Set(listed)];
};
