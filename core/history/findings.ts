import type { Severity } from '../model/finding.ts';
import type { History, HistoryFinding } from '../model/history.ts';

/** Common practice: elements are replaced at 10 % more resistance, 1/1.1 of their power. */
const WEAK_POWER = 1 / 1.1;
/**
 * Chosen: where losses take 80 % of full power, 10 % more resistance already leaves little more than
 * half of the heating rate (reference notes, computed); this is half as much again.
 */
const VERY_WEAK_POWER = 0.85;
/** The fall must be no chance (chosen). */
const MOST_CHANCE = 0.1;
/** Chosen: the sixth that one circuit of six takes with it, less what a step is known to. */
const LOST_ACT_PERCENT = 12;
/** Chosen, as in a single firing: a load of another weight alone changes cooling by up to a quarter. */
const COOLING_PERCENT = { note: 25, watch: 40 } as const;

type Told = Omit<History, 'findings'>;

const elementsWeak = ({ trend, firings }: Told): HistoryFinding[] => {
  if (trend === null || trend.chance > MOST_CHANCE || trend.nowPower > WEAK_POWER) return [];
  const isVery = trend.nowPower <= VERY_WEAK_POWER;
  return [
    {
      id: 'elements-weak',
      severity: isVery ? 'act' : 'watch',
      firings: firings.flatMap((firing, i) =>
        i >= trend.since && firing.relativePower !== null ? [i] : [],
      ),
      figures: {
        powerPercent: 100 * trend.nowPower,
        lostPercent: 100 * (1 - trend.nowPower),
        perFiringPercent: trend.perFiringPercent,
      },
      thresholds: { powerPercent: 100 * (isVery ? VERY_WEAK_POWER : WEAK_POWER) },
      instead: ['supply-varies', 'heavy-load', 'sensor-drift'],
    },
  ];
};

const elementLost = ({ steps }: Told): HistoryFinding[] =>
  steps
    .filter(({ kind }) => kind === 'lost')
    .map(({ firing, powerPercent }) => {
      const lostPercent = -(powerPercent ?? 0);
      return {
        id: 'element-lost',
        severity: lostPercent >= LOST_ACT_PERCENT ? 'act' : 'watch',
        firings: [firing],
        figures: { lostPercent },
        thresholds: lostPercent >= LOST_ACT_PERCENT ? { lostPercent: LOST_ACT_PERCENT } : {},
        instead: ['supply-varies', 'sensor-drift', 'heavy-load'],
      };
    });

const coupleStep = ({ steps }: Told): HistoryFinding[] =>
  steps
    .filter(({ kind }) => kind === 'couple')
    .map(({ firing, coupleDeltaC, powerPercent }) => ({
      id: 'sensor-drift',
      severity: 'watch',
      firings: [firing],
      figures: {
        ...(coupleDeltaC === null ? {} : { stepDeltaC: coupleDeltaC }),
        ...(powerPercent === null ? {} : { powerStepPercent: powerPercent }),
      },
      thresholds: {},
      instead: ['zones-apart'],
    }));

const supplyVaries = ({ supply, firings }: Told): HistoryFinding[] =>
  supply.map(({ cycle, amplitudePercent, lowestAt }) => ({
    id: 'supply-varies',
    severity: 'watch',
    firings: firings.flatMap(({ relativePower }, i) => (relativePower === null ? [] : [i])),
    figures: {
      amplitudePercent,
      ...(cycle === 'day' ? { lowestAtHour: lowestAt } : { lowestInMonth: lowestAt }),
    },
    thresholds: {},
    instead: ['heavy-load', 'elements-weak'],
  }));

const coolingDiffers = ({ cooling, firings }: Told): HistoryFinding[] => {
  const worst = cooling?.bands.reduce((most, band) =>
    Math.abs(band.fasterPercent) > Math.abs(most.fasterPercent) ? band : most,
  );
  if (cooling === null || worst === undefined) return [];
  const differsPercent = Math.abs(worst.fasterPercent);
  if (differsPercent < COOLING_PERCENT.note) return [];
  const severity: Severity = differsPercent >= COOLING_PERCENT.watch ? 'watch' : 'note';
  return [
    {
      id: 'cooling-differs',
      severity,
      firings: [cooling.goodFiring, firings.length - 1],
      figures: {
        differsPercent,
        fromC: worst.fromC,
        toC: worst.toC,
        cooledCPerHour: Math.abs(worst.lastCPerHour),
        referenceCPerHour: Math.abs(worst.goodCPerHour),
      },
      thresholds: { differsPercent: COOLING_PERCENT[severity] },
      instead: ['cooling-fast', 'opened-hot', 'heavy-load'],
    },
  ];
};

const URGENCY: Record<Severity, number> = { act: 0, watch: 1, note: 2 };

/** What a history's firings show together, the most urgent first. */
export const historyFindings = (history: Told): HistoryFinding[] =>
  [elementLost, elementsWeak, supplyVaries, coupleStep, coolingDiffers]
    .flatMap((judge) => judge(history))
    .sort((a, b) => URGENCY[a.severity] - URGENCY[b.severity]);
