import type { Severity } from '../model/finding.ts';
import type { History, HistoryFinding, HistoryFiring } from '../model/history.ts';
import { canHave, type HeatSource } from '../model/heat-source.ts';
import { celsiusDelta, celsiusPerHour, celsius } from '../units.ts';
import {
  alwaysCautions,
  COUPLE_CAUTION,
  ELECTRICAL_CAUTION,
  FUEL_COUPLE_CAUTION,
  hotKilnCaution,
} from './cautions.ts';
import { checkReason } from './checks.ts';
import { wordingOf } from './findings/index.ts';
import { conePlace, counted, duration, plainNumber, type Speech } from './speech.ts';
import { sentence, type Alternative } from './topic.ts';

/** One finding of a history in words. */
export interface HistoryFindingWords {
  readonly id: HistoryFinding['id'];
  readonly severity: Severity;
  readonly title: string;
  readonly why: string;
  readonly couldBe: readonly Alternative[];
  readonly remedy: string;
  readonly caution: string | null;
}

/** One firing's row in words. */
export interface HistoryRowWords {
  readonly fileName: string;
  readonly began: string;
  readonly peak: string;
  readonly climb: string;
  /** The cone that the heat-work comes to. */
  readonly cone: string;
  readonly power: string;
  readonly note: string;
}

/** A kiln's history in words. */
export interface HistoryWords {
  readonly title: string;
  readonly order: string | null;
  readonly rows: readonly HistoryRowWords[];
  readonly trend: string;
  readonly steps: readonly string[];
  readonly forecast: string;
  readonly cooling: readonly string[];
  readonly findings: readonly HistoryFindingWords[];
  readonly cautions: readonly string[];
}

const percent = (value: number, digits = 0): string => `${plainNumber(value, digits)} %`;
const nth = (index: number): string => `firing ${index + 1}`;

/** A history tells its kiln's heat source only by why it has no power. */
const heatOf = ({ trendReason }: History): HeatSource =>
  trendReason === 'fuel-fired' ? 'fuel' : 'electric';

/** Why a trend or a forecast is not told. */
const MISSING: Readonly<Record<string, string>> = {
  'no-relative-power': 'no firing could be held against another at full power',
  'too-few-firings': 'more firings at full power are needed',
  'too-few-since-restored': 'too few firings have been logged since the power was restored',
  'no-clear-fall': 'the power does not fall clearly enough',
  'range-too-wide': 'the firings so far leave too wide a range; each further one narrows it',
  'no-reference-fit': 'no firing shows the kiln’s power by itself',
  'not-measured': 'the power was not measured',
};

const because = (reason: string | null): string =>
  reason === null ? '' : (MISSING[reason] ?? checkReason(reason));

const noteOf = (firing: HistoryFiring): string => {
  const notes: string[] = [];
  if (firing.isReference) notes.push('reference');
  if (firing.tookLonger && firing.usualHeatingSeconds !== null) {
    notes.push(`took longer than the usual ${duration(firing.usualHeatingSeconds)}`);
  }
  if (firing.relativePower === null) notes.push(`power unknown: ${because(firing.powerReason)}`);
  return notes.join('; ');
};

const rowOf = (firing: HistoryFiring, say: Speech): HistoryRowWords => ({
  fileName: firing.fileName,
  began: firing.startInstant?.slice(0, 16).replace('T', ' ') ?? '–',
  peak: say.temperature(firing.peakC),
  climb: firing.heatingSeconds === null ? '–' : duration(firing.heatingSeconds),
  cone: firing.conePosition === null ? '–' : conePlace(firing.conePosition),
  power:
    firing.relativePower === null || firing.low === null || firing.high === null
      ? '–'
      : `${percent(100 * firing.relativePower)} (${plainNumber(100 * firing.low)} to ${percent(100 * firing.high)})`,
  note: noteOf(firing),
});

const trendOf = (history: History): string => {
  const { trend, trendReason } = history;
  if (heatOf(history) === 'fuel') {
    return 'Whether its power falls is not told of a kiln that burns fuel: what it gives turns on fuel, air and damper.';
  }
  if (trend === null)
    return `Whether the power falls is not yet to be told: ${because(trendReason)}.`;
  const { perFiringPercent, low, high, nowPower, firings } = trend;
  const range = `${plainNumber(low, 2)} to ${percent(high, 2)}`;
  const change = `${percent(perFiringPercent, 2)} a firing (80 % range ${range})`;
  return `Over ${counted(firings, 'firing')} the power changed by ${change} and stands at ${percent(100 * nowPower)} of what it was in the reference firings.`;
};

/** So near to a half, a third … of the power, a loss fits one of so many sections (chosen). */
const FITS_PERCENT = 2.5;
const PARTS = ['half', 'a third', 'a quarter', 'a fifth', 'a sixth'] as const;

/** `, about a third,` where a loss is what one of two to six like sections gives. */
const partOf = (percentLost: number): string => {
  const part = PARTS.findIndex((_, i) => Math.abs(percentLost - 100 / (i + 2)) <= FITS_PERCENT);
  return part < 0 ? '' : `, about ${PARTS[part]},`;
};

const stepsOf = ({ steps }: History, say: Speech): string[] =>
  steps.map(({ kind, firing, powerPercent, coupleDeltaC }) => {
    const power = percent(Math.abs(powerPercent ?? 0));
    if (kind === 'restored') {
      return `From ${nth(firing)} on the kiln had ${power} more power, as after new elements; the trend is drawn from there.`;
    }
    if (kind === 'lost')
      return `From ${nth(firing)} on the kiln had ${power}${partOf(Math.abs(powerPercent ?? 0))} less power at once.`;
    const by = coupleDeltaC === null ? '' : ` by ${say.signedDifference(coupleDeltaC)}`;
    return `From ${nth(firing)} on the couple reads otherwise${by}, as the cones show; the readings before are re-based, not mixed with those after.`;
  });

const LIMITS = {
  'last-ramp': 'until the last ramp can no longer be held',
  'usual-replacement':
    'until resistance is a tenth above new, where elements are usually replaced (no firing shows what the last ramp needs)',
} as const;

const forecastOf = (history: History): string => {
  const { forecast } = history;
  if (heatOf(history) === 'fuel') return 'Nor is it told how many firings are left.';
  const { firings, reason, limitKind } = forecast;
  if (firings === null) {
    return `How many firings are left ${LIMITS[limitKind]} is not yet to be told: ${because(reason)}.`;
  }
  const { low, high, estimate } = firings;
  if (estimate < 0.5) return `None are left ${LIMITS[limitKind]}, as the power stands.`;
  const range = `${Math.floor(low)} to ${Math.ceil(high)}`;
  const left = counted(Math.round(estimate), 'firing is left', 'firings are left');
  return `About ${left} ${LIMITS[limitKind]} (80 % range ${range}), if they wear it as those before.`;
};

const coolingOf = ({ cooling, firings }: History, say: Speech): string[] => {
  if (cooling === null) return [];
  const good = firings[cooling.goodFiring]?.fileName ?? nth(cooling.goodFiring);
  return cooling.bands.map((band) => {
    const from = say.temperature(band.fromC);
    const to = say.temperature(band.toC);
    return `${from} to ${to}: ${say.rate(band.lastCPerHour)}, against ${say.rate(band.goodCPerHour)} in ${good}, the last good one.`;
  });
};

const figure = ({ figures }: HistoryFinding, name: string): number => figures[name] ?? NaN;

/** How much less voltage makes so much less power: power goes with its square. */
const voltsPercent = (powerPercent: number): number =>
  100 * (1 - Math.sqrt(Math.max(0, 1 - powerPercent / 100)));

const MONTHS = [
  ...['January', 'February', 'March', 'April', 'May', 'June', 'July', 'August', 'September'],
  ...['October', 'November', 'December'],
];

const lowestWhen = (finding: HistoryFinding): string => {
  const { lowestAtHour, lowestInMonth } = finding.figures;
  if (lowestAtHour !== undefined) {
    return `in firings that peak about ${plainNumber(Math.round(lowestAtHour) % 24)} o’clock`;
  }
  return `in ${MONTHS[(lowestInMonth ?? 1) - 1] ?? 'one season'}`;
};

interface Sentences {
  readonly title: (finding: HistoryFinding, say: Speech) => string;
  readonly why: string;
  readonly remedy: string;
  readonly caution: ((say: Speech, heat: HeatSource) => string) | null;
}

const MEASURE =
  'Have the resistance of each section measured cold and held against new ones, and the voltage under load';

const SENTENCES: Readonly<Record<HistoryFinding['id'], Sentences>> = {
  'elements-weak': {
    title: (finding) =>
      `The power has fallen to ${percent(figure(finding, 'powerPercent'))} of what it was, by about ${percent(Math.abs(figure(finding, 'perFiringPercent')), 1)} a firing.`,
    why: 'It fell smoothly over the firings, as resistance wire does that gains resistance with age.',
    remedy: `${MEASURE}. A tenth more resistance than new is the usual point to replace elements, as a set.`,
    caution: () => ELECTRICAL_CAUTION,
  },
  'element-lost': {
    title: (finding) =>
      `From ${nth(finding.firings[0] ?? 0)} on the kiln has had ${percent(figure(finding, 'lostPercent'))}${partOf(figure(finding, 'lostPercent'))} less power.`,
    why: 'Wear comes slowly; a step from one firing to the next means that a part stopped heating.',
    remedy: `Look for the dead section before the next firing: its relay and wiring first, then its element. ${MEASURE}.`,
    caution: () => ELECTRICAL_CAUTION,
  },
  'supply-varies': {
    title: (finding) =>
      `The power comes and goes by ${percent(figure(finding, 'amplitudePercent'), 1)} either way, as ${percent(voltsPercent(figure(finding, 'amplitudePercent')), 1)} of voltage would make it, and is least ${lowestWhen(finding)}.`,
    why: 'Elements do not recover; a supply does. Power goes with the square of the voltage: 6 % fewer volts are 12 % less power.',
    remedy:
      'Run one firing at another hour to compare, and ask the supplier or an electrician to record the voltage.',
    caution: () => ELECTRICAL_CAUTION,
  },
  'sensor-drift': {
    title: (finding, say) => {
      const by = finding.figures['stepDeltaC'];
      const step = by === undefined ? '' : ` by ${say.signedDifference(celsiusDelta(by))}`;
      return `From ${nth(finding.firings[0] ?? 0)} on the couple reads otherwise than before${step}.`;
    },
    why: 'By the witness cones the same reading has stood for another temperature since then, as after a new couple, a moved one or another offset.',
    remedy:
      'Programme by the cones of the firings since, not by the readings of those before; they are not comparable as read.',
    caution: (_, heat) => (heat === 'fuel' ? FUEL_COUPLE_CAUTION : COUPLE_CAUTION),
  },
  'cooling-differs': {
    title: (finding, say) =>
      `The last firing cooled at ${say.rate(celsiusPerHour(figure(finding, 'cooledCPerHour')))} from ${say.temperature(celsius(figure(finding, 'fromC')))} to ${say.temperature(celsius(figure(finding, 'toC')))}, where the last good one took ${say.rate(celsiusPerHour(figure(finding, 'referenceCPerHour')))}.`,
    why: 'Surfaces and some bodies answer to the cooling as much as to the climb.',
    remedy:
      'If the ware came out otherwise, cool as in the good firing: same load, same vents, lid shut.',
    caution: (say) => hotKilnCaution(say),
  },
};

const findingWords = (
  finding: HistoryFinding,
  heat: HeatSource,
  say: Speech,
): HistoryFindingWords => {
  const said = SENTENCES[finding.id];
  return {
    id: finding.id,
    severity: finding.severity,
    title: said.title(finding, say),
    why: said.why,
    couldBe: finding.instead
      .filter((id) => canHave(heat, id))
      .map((id) => {
        const { cause, tell } = wordingOf(id, heat).alternative;
        return { cause: `${sentence(cause)}.`, tell: `${sentence(tell)}.` };
      }),
    remedy: said.remedy,
    caution: said.caution?.(say, heat) ?? null,
  };
};

/** A kiln's history in the reader's unit. */
export const historyWords = (history: History, say: Speech): HistoryWords => ({
  title: `The history of one kiln over ${counted(history.firings.length, 'firing')}`,
  order:
    history.order === 'by-date'
      ? null
      : 'At least one log has no date, so the firings stand in the order in which they were given.',
  rows: history.firings.map((firing) => rowOf(firing, say)),
  trend: trendOf(history),
  steps: stepsOf(history, say),
  forecast: forecastOf(history),
  cooling: coolingOf(history, say),
  findings: history.findings.map((finding) => findingWords(finding, heatOf(history), say)),
  cautions: alwaysCautions(heatOf(history)),
});
