import { useId } from 'react';
import { COUPLE_TYPES, type CoupleClass, type Options } from '../../core/model/options.ts';
import {
  celsiusDelta,
  differenceIn,
  fromFahrenheitDelta,
  type TemperatureUnit,
} from '../../core/units.ts';
import { Choice, type ChoiceOf } from '../controls/choice.tsx';
import { NumberEntry } from '../controls/number-entry.tsx';
import { speechIn } from '../../core/wording/speech.ts';
import { toldCouple, toldCoupleType } from './told-options.ts';

const TYPES = COUPLE_TYPES.map((value) => ({ value, label: `type ${value}` }));

const CLASSES: readonly ChoiceOf<CoupleClass>[] = [
  { value: 'class-1', label: 'IEC 60584, class 1' },
  { value: 'class-2', label: 'IEC 60584, class 2' },
  { value: 'standard', label: 'ASTM E230, standard' },
];

/** No logger is corrected by more; what is further off is another couple (chosen). */
const LARGEST_OFFSET_C = celsiusDelta(100);

/** The readings are taken as they stand in the log, whatever was added to them before. */
const OFFSET_HINT =
  'What the logger had added to its readings. Kept with the firing; nothing is reckoned from it yet';

interface CouplePartProps {
  readonly options: Options;
  readonly unit: TemperatureUnit;
  readonly onOptions: (next: Options) => void;
}

/** The thermocouple that the log was written with. */
export const CouplePart = ({ options, unit, onOptions }: CouplePartProps) => {
  const id = useId();
  const { couple } = options;
  const offset = couple?.offsetC;
  const inCelsius = (value: number) =>
    unit === 'F' ? fromFahrenheitDelta(value) : celsiusDelta(value);
  const judge = (value: number): string | null =>
    Math.abs(inCelsius(value)) <= LARGEST_OFFSET_C
      ? null
      : `More than ${speechIn(unit).difference(LARGEST_OFFSET_C)} is no correction any more.`;
  return (
    <section aria-labelledby={id} className="told-part">
      <h3 id={id}>Thermocouple</h3>
      <div className="fields">
        <Choice
          label="Type"
          value={couple?.type ?? null}
          none="not said: taken for K"
          choices={TYPES}
          onChoice={(type) => onOptions(toldCoupleType(options, type))}
        />
        <Choice
          label="Tolerance class"
          value={couple?.class ?? null}
          none="not said: class 2"
          choices={CLASSES}
          isDisabled={!couple}
          hint={couple ? undefined : 'Say the type first'}
          onChoice={(grade) => onOptions(toldCouple(options, { class: grade ?? undefined }))}
        />
        <NumberEntry
          label="Offset already in the readings"
          unit={`°${unit}`}
          value={offset === undefined ? null : differenceIn(offset, unit)}
          judge={judge}
          isDisabled={!couple}
          hint={couple ? OFFSET_HINT : 'Say the type first'}
          onNumber={(value) =>
            onOptions(
              toldCouple(options, { offsetC: value === null ? undefined : inCelsius(value) }),
            )
          }
        />
      </div>
    </section>
  );
};
