import { COUPLE_TYPES } from '../../model/options.ts';
import { celsius } from '../../units.ts';
import { COUPLE_CAUTION } from '../cautions.ts';
import { line } from '../line.ts';
import {
  countOf,
  differenceOf,
  inPieces,
  minutesOf,
  temperatureOf,
  type FindingWording,
  type Topic,
} from '../topic.ts';

const CHECK_TERMINALS =
  'Tighten and clean the couple’s terminals and look along its lead for damage.';

/** Which wire was read as which; types are told apart by letters in every unit and language. */
const wiresOf = ({ finding: { figures } }: Topic): string => {
  const [read, wire] = ['readAs', 'probably'].map((name) => COUPLE_TYPES[figures[name] ?? -1]);
  return read === undefined || wire === undefined
    ? 'The curve makes sense only as another type of couple'
    : `The curve makes sense only as type ${wire} wire that was read as type ${read}`;
};

/** The error that the cones of each place imply, and whether one error could be behind them all. */
const placesSentence = ({ document, say }: Topic): string => {
  const error = document.heatWork?.coupleErrorC;
  if (!error || error.oneOffset === null) return '';
  const places = error.byPlace.map(
    ({ place, estimate }) => `${place}: ${say.signedDifference(estimate)}`,
  );
  const verdict = error.oneOffset
    ? 'One and the same error could explain them all.'
    : 'No single error explains them all: the places themselves differ.';
  return ` By place the cones imply an error of ${places.join(', ')}. ${verdict}`;
};

export const SENSOR_WORDINGS = {
  'sensor-open': {
    name: 'a thermocouple without a reading',
    title: (topic) =>
      line`The thermocouple gave no reading for ${inPieces(topic, 'openMinutes', 'times')}.`,
    why: () =>
      'Rows were written, but without a usable temperature: the circuit was open. Often it opens ' +
      'only when hot, as a break in the wire pulls apart, and so the next firing may lose it for good.',
    couldBe: () => [
      {
        cause: 'A loose terminal or plug',
        tell: 'the reading comes and goes when the lead is moved gently, with the kiln cold',
      },
    ],
    alternative: {
      cause: 'The thermocouple’s circuit was open',
      tell: 'rows are there, but without a reading',
    },
    remedy: () => `${CHECK_TERMINALS} Replace a couple that has opened when hot.`,
    caution: () => COUPLE_CAUTION,
  },

  'sensor-spikes': {
    name: 'spikes in the readings',
    title: (topic) =>
      line`The readings jump out of the curve and return ${countOf(topic, 'times', 'several')} times, by up to ${differenceOf(topic, 'largestDeltaC', 'far more than noise')}.`,
    why: () =>
      'No kiln changes so fast. The jumps were taken out before anything was measured; the account ' +
      'of the reading lists them as spikes and dropouts.',
    couldBe: () => [
      {
        cause: 'A relay or another machine disturbs the lead',
        tell: 'the jumps stand where contacts switch, and go when the lead is moved away from mains wiring',
      },
      {
        cause: 'A terminal is loose, or the couple is near its end',
        tell: 'the jumps grow more frequent as the kiln gets hotter',
      },
    ],
    alternative: {
      cause: 'The reading was disturbed',
      tell: 'single readings stand far off the curve and return at once',
    },
    remedy: () => `${CHECK_TERMINALS} Lead it well away from the mains wiring.`,
    caution: () => COUPLE_CAUTION,
  },

  'sensor-flat': {
    name: 'a reading that stood still',
    title: (topic) =>
      line`The reading stood still at ${temperatureOf(topic, 'flatC', 'one value')} for ${minutesOf(topic, 'flatMinutes', 'some time')}.`,
    why: () =>
      'Even a good hold trembles by a tenth or two. A reading that does not move at all is not being ' +
      'measured.',
    couldBe: () => [
      { cause: 'The logger repeated its last value', tell: 'other columns stand still as well' },
      {
        cause: 'The lead was shorted away from the kiln',
        tell: 'the value is near room temperature',
      },
    ],
    alternative: {
      cause: 'The reading was stuck',
      tell: 'not even its last digit moves',
    },
    remedy: () => CHECK_TERMINALS,
    caution: () => COUPLE_CAUTION,
  },

  'sensor-reversed': {
    name: 'thermocouple leads crossed',
    title: (topic) =>
      line`The reading fell to ${temperatureOf(topic, 'lowestC', 'impossible values')} as the kiln heated: two leads are crossed.`,
    why: () =>
      'A couple connected the wrong way round reads lower the hotter it gets. Crossed twice, at the ' +
      'couple and at the plug, it is merely wrong by tens of degrees.',
    couldBe: () => [
      { cause: 'The kiln was in fact cooling', tell: 'someone saw it, or the ware did' },
    ],
    alternative: {
      cause: 'The couple’s leads are crossed',
      tell: 'the reading falls while the kiln heats',
    },
    remedy: () =>
      'Swap the two leads at the terminal where they are crossed, going by the colour code.',
    caution: () => COUPLE_CAUTION,
  },

  'sensor-wrong-type': {
    name: 'the wrong thermocouple type set',
    title: (topic) =>
      line`${wiresOf(topic)}: the peak would then be ${temperatureOf(topic, 'rereadPeakC', 'plausible')}.`,
    why: ({ say }) =>
      'Every type of couple has its own voltage for a temperature, and the instrument must be set to ' +
      `the one that is in the kiln. Type S wire read as type K shows some ${say.temperature(celsius(321))} when it is ` +
      `${say.temperature(celsius(1222))}.`,
    couldBe: () => [
      { cause: 'The column holds something else', tell: 'the names of the columns in the log' },
    ],
    alternative: {
      cause: 'The instrument is set to another type of couple',
      tell: 'the type printed on the couple against the type set',
    },
    remedy: () => 'Set the instrument to the type of couple that is in the kiln.',
    caution: () => COUPLE_CAUTION,
  },

  'sensor-lag': {
    name: 'a thermocouple that lags',
    title: (topic) =>
      line`The couple lags behind the kiln by about ${minutesOf(topic, 'lagMinutes', 'some minutes')}.`,
    why: () =>
      'A thick protection tube, or a couple drawn back into the wall, follows late: it reads low while ' +
      'the kiln heats and high while it cools.',
    couldBe: () => [
      {
        cause: 'The two places really differ',
        tell: 'the difference stays when the kiln holds still',
      },
    ],
    alternative: {
      cause: 'The couple lags behind the kiln',
      tell: 'it reads low while heating and high while cooling, and right in a hold',
    },
    remedy: () =>
      'Bring the tip further into the chamber, or use a thinner tube; hold before you compare readings.',
    caution: () => COUPLE_CAUTION,
  },

  'sensor-drift': {
    name: 'a thermocouple that has drifted',
    title: (topic) =>
      line`By the cones, the couple reads about ${differenceOf(topic, 'driftDeltaC', 'some degrees')} ${
        (topic.finding.figures['driftDeltaC'] ?? 0) < 0 ? 'low' : 'high'
      } near the peak.`,
    why: (topic) =>
      'Couples age, and an ageing one mostly reads low, so that each firing ends hotter than its ' +
      'readout. The log by itself cannot show this: only cones, or a second couple, can.' +
      placesSentence(topic),
    couldBe: () => [
      {
        cause: 'The cones stood in a place that is hotter or cooler than the couple',
        tell: 'cones beside the couple and beside the ware, in one firing',
      },
    ],
    alternative: {
      cause: 'The couple does not read true',
      tell: 'witness cones beside the ware, and the same error in the firings before',
    },
    remedy: () =>
      'Replace the couple rather than correct it: one fixed offset is usually the wrong cure, since ' +
      'the error changes with temperature.',
    caution: () => COUPLE_CAUTION,
  },

  'zones-apart': {
    name: 'places in the kiln that differ',
    title: (topic) =>
      line`Two places in the kiln differ by ${differenceOf(topic, 'apartDeltaC', 'many degrees')} at the peak.`,
    why: () =>
      'A cone of difference from top to bottom is ordinary. More than that means that one load gets ' +
      'two firings.',
    couldBe: () => [
      { cause: 'One of the couples is off', tell: 'cones at both places, or the couples swapped' },
      { cause: 'The load is packed unevenly', tell: 'the difference changes with the packing' },
    ],
    alternative: {
      cause: 'The ware stood in a hotter or cooler place than the couple',
      tell: 'cones on several shelves',
    },
    remedy: () =>
      'Put cones on the top, middle and bottom shelf of the next load; pack the cooler place more ' +
      'openly, and hold a few minutes at the peak.',
    caution: null,
  },
} satisfies Record<string, FindingWording>;
