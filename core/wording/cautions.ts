import { celsius } from '../units.ts';
import type { HeatSource } from '../model/heat-source.ts';
import type { Speech } from './speech.ts';

/** Before anyone touches what carries current. */
export const ELECTRICAL_CAUTION =
  'Before touching elements, terminals, relays or wiring, switch the kiln off at its breaker and ' +
  'lock it out; contacts that have welded keep it heating after the switch says off. This is work ' +
  'for a qualified person, under your local electrical code.';

/** Before anyone touches what burns: gas, flame, fumes. */
export const FUEL_CAUTION =
  'If you smell gas, light and switch nothing: shut the supply off if that is safe, get everyone ' +
  'out and call for help from outside. After a flame failure shut the gas off and air the chamber ' +
  'as the kiln’s maker says before anyone lights it again. Fire gives off carbon monoxide, most of ' +
  'all in reduction: ventilate, and have an alarm for it. Pressure, burners, orifices and flame ' +
  'safeguards are work for a licensed gas fitter, under your local codes.';

/** Before anyone acts on a hot kiln. */
export const hotKilnCaution = (say: Speech): string =>
  `Leave the kiln closed while it is hot: below ${say.temperature(celsius(200))} is a common ` +
  'practice for the first crack, and room temperature is safer for ware and hands. Look through a ' +
  'spy-hole only with shade-rated eyewear.';

/** Where burnout or combustion gives off gases. */
export const FUMES_CAUTION =
  'Burning out gives off carbon monoxide and sulphur dioxide: run the ventilation, and do not stay ' +
  'in a room that smells of the kiln. Local ventilation codes decide what is enough.';

/** Where the answer is to fire hotter or longer. */
export const HOTTER_CAUTION =
  'Stay within what the kiln, its furniture and your clay are rated for, set an over-temperature ' +
  'cut-out above the new peak, and be there when the firing ends.';

/** Where pots may have stuck or run. */
export const STUCK_WARE_CAUTION =
  'Glaze that has run is sharp once it breaks: free stuck ware only when it is cold, with gloves ' +
  'and eye protection.';

/** Where damp ware may burst. */
export const BURST_CAUTION =
  'Damp ware can burst in the kiln: keep the lid and spy-holes shut and stand clear while it dries.';

/** Where someone may change a thermocouple or its leads. */
export const COUPLE_CAUTION =
  'Change or move a couple only with the kiln cold and locked out at the breaker. Until it is ' +
  'sorted out, watch the firing with cones: a controller that is told too low a temperature goes ' +
  'on heating.';

/** The same at a kiln that burns fuel, where it is often a person who is told too little. */
export const FUEL_COUPLE_CAUTION =
  'Change or move a couple only with the kiln cold and its fuel shut off. Until it is sorted out, ' +
  'watch the firing with cones: whoever, or whatever, is told too low a temperature goes on heating.';

const CODES: Readonly<Record<HeatSource, readonly string[]>> = {
  electric: [
    'Local electrical and ventilation codes and licensed practice decide, also where they differ ' +
      'from what is said here.',
  ],
  fuel: [
    'A kiln that burns fuel gives off carbon monoxide, which nobody can smell: never fire it ' +
      'without ventilation that your local code accepts, and keep an alarm for it.',
    'Local gas, fire, flue and ventilation codes and licensed practice decide, also where they ' +
      'differ from what is said here.',
  ],
};

/** What stands at the foot of every answer, whatever was found. */
export const alwaysCautions = (heat: HeatSource): readonly string[] => [
  'This reading of a log is advice, not protection: it replaces neither witness cones nor an ' +
    'over-temperature cut-out.',
  'Old linings may hold asbestos or ceramic fibre: do not brush, cut or blow them out.',
  ...CODES[heat],
];
