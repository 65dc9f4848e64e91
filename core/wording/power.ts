import type { AnalysisDocument, Elements } from '../model/document.ts';
import { celsiusPerHour } from '../units.ts';
import { checkReason } from './checks.ts';
import { coneName, duration, plainNumber, type Speech } from './speech.ts';

/** A stretch at full power in words. */
export interface FullPowerWords {
  /** Index into the document's `elements.limited`. */
  readonly index: number;
  readonly stretch: string;
  readonly lasted: string;
  readonly made: string;
  /** What was planned; a dash where it was all the power there is. */
  readonly planned: string;
}

/** How the kiln heats and cools at one temperature, in words. */
export interface CapabilityWords {
  readonly at: string;
  readonly heating: string;
  readonly cooling: string;
  /** Power over loss, with its 80 % range. */
  readonly powerToLoss: string;
}

/** Power and loss of the kiln in words. */
export interface PowerWords {
  /** What the kiln can do, or why it cannot be told. */
  readonly answers: readonly string[];
  readonly fullPower: readonly FullPowerWords[];
  readonly capability: readonly CapabilityWords[];
  /** What the ratio is, for someone who has not met it. */
  readonly note: string | null;
}

/** The last ramp that `hottestCone` is told for. */
const LAST_RAMP = celsiusPerHour(60);

const NO_REFERENCE = ['no-reference', 'no-reference-fit'];

const fullPowerWords = (limited: Elements['limited'], say: Speech): FullPowerWords[] =>
  limited.map(
    ({ fromSeconds, toSeconds, fromC, toC, plannedCPerHour, achievedCPerHour }, index) => ({
      index,
      stretch: `${say.temperature(fromC)} to ${say.temperature(toC)}`,
      lasted: duration(toSeconds - fromSeconds),
      made: say.rate(achievedCPerHour),
      planned: plannedCPerHour === null ? '–' : say.rate(plannedCPerHour),
    }),
  );

/** Under one another in a column, so that all have both decimals. */
const hundredths = (ratio: number): string => ratio.toFixed(2);

const capabilityWords = (capability: Elements['capability'], say: Speech): CapabilityWords[] =>
  capability.map(({ celsius, heatingCPerHour, coolingCPerHour, powerToLoss, low, high }) => ({
    at: say.temperature(celsius),
    heating: say.rate(heatingCPerHour),
    cooling: say.rate(coolingCPerHour),
    powerToLoss: `${hundredths(powerToLoss)} (${hundredths(low)} to ${hundredths(high)})`,
  }));

const ceilingLine = ({ ceilingC, ceilingRange }: Elements, say: Speech): string | null => {
  if (ceilingC === null) return null;
  const range =
    ceilingRange === null
      ? ''
      : ` (80 % range ${say.temperature(ceilingRange.lowC)} to ${say.temperature(ceilingRange.highC)})`;
  return `With this load the kiln’s power and its losses are equal at about ${say.temperature(ceilingC)}${range}: it can go no hotter.`;
};

const hottestConeLine = ({ hottestCone, ceilingC }: Elements, say: Speech): string | null => {
  const ramp = `a last ramp of ${say.rate(LAST_RAMP)}`;
  if (hottestCone !== null)
    return `The hottest cone that ${ramp} still reaches is ${coneName(hottestCone)}.`;
  return ceilingC === null ? null : `No cone is still reached by ${ramp}.`;
};

const relativeLine = ({ relativePower, relativePowerReason }: Elements): string | null => {
  if (relativePower !== null) {
    const { value, low, high } = relativePower;
    const percent = (share: number): string => plainNumber(100 * share);
    return `At full power it had ${percent(value)} % of the reference firing’s power (80 % range ${percent(low)} to ${percent(high)} %).`;
  }
  // Who gave no earlier firing knows that there is nothing to hold this one against.
  if (relativePowerReason === null || NO_REFERENCE.includes(relativePowerReason)) return null;
  return `Its power cannot be held against the reference firing’s, because ${checkReason(relativePowerReason)}.`;
};

const boundLine = ({ ceilingAtLeastC }: Elements, say: Speech): string | null =>
  ceilingAtLeastC === null
    ? null
    : `It got to ${say.temperature(ceilingAtLeastC)}, so its ceiling lies no lower.`;

const unknownLine = ({ fit, fitReason }: Elements): string | null =>
  fit !== null
    ? null
    : `What the kiln can do at most cannot be told from this log, because ${checkReason(fitReason ?? 'power-not-fitted')}.`;

/** Power, loss, ceiling and the hottest cone in words. */
export const powerWords = ({ elements }: AnalysisDocument, say: Speech): PowerWords => {
  if (elements === null) {
    const answers = ['A kiln heated by fuel has no full power that its log could show.'];
    return { answers, fullPower: [], capability: [], note: null };
  }
  const answers = [
    unknownLine(elements),
    boundLine(elements, say),
    ceilingLine(elements, say),
    hottestConeLine(elements, say),
    relativeLine(elements),
  ];
  const hasRatio = elements.capability.length > 0;
  return {
    answers: answers.filter((line) => line !== null),
    fullPower: fullPowerWords(elements.limited, say),
    capability: capabilityWords(elements.capability, say),
    note: hasRatio
      ? 'Slopes are as recorded. The ratio of power to loss is of a kiln fitted to this firing, with its walls soaked through; at 1 it climbs no more.'
      : null,
  };
};
