import { useId } from 'react';
import type { Options } from '../../core/model/options.ts';
import { NumberEntry } from '../controls/number-entry.tsx';
import { Pick } from '../controls/pick.tsx';
import { toldKiln } from './told-options.ts';

const HEATS = [
  { value: 'electric', label: 'electric' },
  { value: 'fuel', label: 'fuel' },
] as const;

/** Nothing in this version's answer rests on the rated power. */
const WATTS_HINT = 'Kept with the firing; nothing is reckoned from it yet';
const CIRCUITS_HINT = 'Told for a sudden loss of power: whether it fits one circuit';

/** What the heat source changes, by what is told of it. */
const HEAT_NOTES = {
  untold: 'While this is not said, the answer speaks of an electric kiln.',
  electric: null,
  fuel:
    'The answer speaks of fuel, burners, air and damper, with their cautions. How much a fire gives ' +
    'at most is not fixed, so nothing is judged by full power, and the kiln’s plate is not asked for.',
} as const;

/** More than any studio's kiln draws (chosen). */
const MOST_WATTS = 1_000_000;
/** More than any studio's kiln has (chosen). */
const MOST_CIRCUITS = 100;

const judgeWatts = (watts: number): string | null =>
  watts > 0 && watts <= MOST_WATTS ? null : 'Give the rated power in watts, as on the plate.';

const judgeCircuits = (circuits: number): string | null =>
  Number.isInteger(circuits) && circuits > 0 && circuits <= MOST_CIRCUITS
    ? null
    : 'Give the number of element circuits, a whole number.';

interface KilnPartProps {
  readonly options: Options;
  readonly onOptions: (next: Options) => void;
}

/** What stands on the plate of an electric kiln. */
const Plate = ({ options, onOptions }: KilnPartProps) => (
  <>
    <NumberEntry
      label="Rated power"
      unit="W"
      hint={WATTS_HINT}
      value={options.kiln?.ratedWatts ?? null}
      judge={judgeWatts}
      onNumber={(watts) => onOptions(toldKiln(options, { ratedWatts: watts ?? undefined }))}
    />
    <NumberEntry
      label="Element circuits"
      hint={CIRCUITS_HINT}
      value={options.kiln?.circuits ?? null}
      judge={judgeCircuits}
      onNumber={(count) => onOptions(toldKiln(options, { circuits: count ?? undefined }))}
    />
  </>
);

/** The kiln itself. */
export const KilnPart = ({ options, onOptions }: KilnPartProps) => {
  const id = useId();
  const { kiln } = options;
  const note = HEAT_NOTES[kiln?.heat ?? 'untold'];
  return (
    <section aria-labelledby={id} className="told-part">
      <h3 id={id}>Kiln</h3>
      <div className="fields">
        <Pick
          label="Heated by"
          value={kiln?.heat ?? null}
          none="not said"
          choices={HEATS}
          onPick={(heat) => onOptions(toldKiln(options, { heat: heat ?? undefined }))}
        />
        {kiln?.heat === 'fuel' ? null : <Plate options={options} onOptions={onOptions} />}
      </div>
      {note === null ? null : <p className="told-muted">{note}</p>}
    </section>
  );
};
