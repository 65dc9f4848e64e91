import { ELECTRICAL_CAUTION, HOTTER_CAUTION } from '../cautions.ts';
import { line } from '../line.ts';
import { atItsTime, minutesOf, percentOf, temperatureOf, type FindingWording } from '../topic.ts';

const MEASURE_RESISTANCE =
  'Have the resistance of each section measured cold and the supply voltage measured under load.';

export const KILN_WORDINGS = {
  'elements-weak': {
    name: 'weak elements',
    title: (topic) =>
      line`At full power the kiln had ${percentOf(topic, 'relativePowerPercent', 'less')} of the power it should have.`,
    why: () =>
      'Climbing at full power and cooling freely through the same temperatures tell power against ' +
      'loss, whatever the load weighs. Resistance wire gains resistance with age, and the power ' +
      'falls with it; the last climb shows it first.',
    couldBe: () => [
      {
        cause: 'The supply voltage was low',
        tell: 'the voltage measured under load, and whether a firing at night is quicker',
      },
    ],
    alternative: {
      cause: 'The elements are worn',
      tell: 'the slowness grows smoothly over many firings, and resistance measured cold is up by a tenth',
    },
    remedy: () =>
      `${MEASURE_RESISTANCE} A tenth above new is the usual point to replace elements as a set.`,
    caution: () => ELECTRICAL_CAUTION,
  },

  'element-lost': {
    name: 'an element lost part-way',
    title: (topic) =>
      line`The kiln lost ${percentOf(topic, 'lostPercent', 'part')} of its power${atItsTime(topic)}, within minutes.`,
    why: () =>
      'The slope at full power dropped suddenly and stayed down. Wear comes slowly; a step means that ' +
      'a part of the circuit stopped heating.',
    couldBe: () => [
      {
        cause: 'A relay or a terminal failed rather than the element itself',
        tell: 'resistance of that section measured at the element and again at the relay',
      },
      {
        cause: 'One phase of the supply was lost',
        tell: 'the fraction lost fits a phase, and other machines noticed it too',
      },
    ],
    alternative: {
      cause: 'One circuit stopped heating',
      tell: 'one section stays dark when all are switched on, and the slope drops in one step',
    },
    remedy: () =>
      `Do not start the next firing until the dead section is found. ${MEASURE_RESISTANCE}`,
    caution: () => ELECTRICAL_CAUTION,
  },

  'power-stuck-on': {
    name: 'power that stayed on',
    title: (topic) =>
      line`Heating went on for ${minutesOf(topic, 'stuckMinutes', 'some time')} although the kiln was hotter than was asked for.`,
    why: () =>
      'The reading kept climbing although it stood above what was asked for. Contacts that have ' +
      'welded together do this, and they do not stop by themselves.',
    couldBe: () => [
      {
        cause: 'The controller ran another programme than the one given here',
        tell: 'the programme, and its output column if the log has one',
      },
    ],
    alternative: {
      cause: 'A relay stuck and went on heating',
      tell: 'the kiln draws current while the controller asks for none',
    },
    remedy: () =>
      'Do not use the kiln until the relay or contactor is replaced and the over-temperature cut-out ' +
      'has been tried.',
    caution: () => ELECTRICAL_CAUTION,
  },

  'power-interrupted': {
    name: 'an interruption of the power',
    title: (topic) =>
      line`The kiln had no power for ${minutesOf(topic, 'interruptedMinutes', 'some time')}${atItsTime(topic)}, and then went on.`,
    why: () =>
      'The curve breaks from climbing into free cooling and back again, as a kiln does when its ' +
      'supply is gone. That is not wear.',
    couldBe: () => [
      {
        cause: 'Someone switched it off and on, or opened a breaker',
        tell: 'whoever was there, and other things on the same supply',
      },
    ],
    alternative: {
      cause: 'The power was gone for a while',
      tell: 'the curve falls freely and climbs again later',
    },
    remedy: () =>
      'If a breaker or a fuse fell, find out why before the next firing; a breaker that falls again ' +
      'and again is a fault, not a nuisance.',
    caution: () => ELECTRICAL_CAUTION,
  },

  'heavy-load': {
    name: 'a heavy load',
    title: (topic) =>
      line`The load took up ${percentOf(topic, 'heavierPercent', 'clearly')} more heat than in the firing it is held against.`,
    why: () =>
      'A heavier load takes longer to heat and gives its heat back as slowly. Worn elements slow ' +
      'only the heating.',
    couldBe: () => [
      {
        cause: 'Thicker or more shelves, or damp ware',
        tell: 'what was in the kiln, by weight',
      },
    ],
    alternative: {
      cause: 'The load was heavier than usual',
      tell: 'the free cooling was slower by the same share',
    },
    remedy: () =>
      'Note the weight of the load with the log, and plan heavy loads at a slower rate.',
    caution: null,
  },

  'ceiling-near': {
    name: 'the kiln’s ceiling near',
    title: (topic) =>
      line`The kiln runs out of power at about ${temperatureOf(topic, 'ceilingC', 'this peak')}, close to what was asked of it.`,
    why: () =>
      'Losses grow with temperature until they take all the power there is. From there on the kiln ' +
      'goes no hotter, however long it is on.',
    couldBe: () => [
      {
        cause: 'A lid or door that does not close, or worn brick, lets out more heat',
        tell: 'the cooling is faster than it used to be',
      },
    ],
    alternative: {
      cause: 'The kiln is at the top of what it can do',
      tell: 'the curve flattens under full power',
    },
    remedy: () =>
      `${MEASURE_RESISTANCE} Until then choose a cone that leaves the kiln some reserve.`,
    caution: () => `${HOTTER_CAUTION} ${ELECTRICAL_CAUTION}`,
  },

  'supply-varies': {
    name: 'a supply that varies',
    title: (topic) =>
      line`The kiln’s power comes and goes by ${percentOf(topic, 'swingPercent', 'a share')} between firings.`,
    why: () =>
      'The slowness returns with the hour or the season and goes away again. Elements do not recover; ' +
      'a supply does. Power goes with the square of the voltage: 6 % fewer volts are 12 % less power.',
    couldBe: () => [
      {
        cause: 'Light and heavy loads alternate',
        tell: 'the weights, and whether the cooling changes with the heating',
      },
    ],
    alternative: {
      cause: 'The supply voltage was low at that hour',
      tell: 'the same firing run at night is quicker',
    },
    remedy: () =>
      'Run one firing at night to compare, and ask the supplier or an electrician to record the ' +
      'voltage over a day.',
    caution: () => ELECTRICAL_CAUTION,
  },
} satisfies Record<string, FindingWording>;
