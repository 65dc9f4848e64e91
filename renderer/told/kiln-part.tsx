import { useId } from 'react';
import type { Options } from '../../core/model/options.ts';
import { NumberEntry } from '../controls/number-entry.tsx';
import { Pick } from '../controls/pick.tsx';
import { toldKiln } from './told-options.ts';

const HEATS = [
  { value: 'electric', label: 'electric' },
  { value: 'fuel', label: 'fuel' },
] as const;

/** Nothing in this version's answer rests on the kiln's plate. */
const NOT_YET = 'Kept with the firing; nothing is reckoned from it yet';

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

/** The kiln itself. */
export const KilnPart = ({ options, onOptions }: KilnPartProps) => {
  const id = useId();
  const { kiln } = options;
  const isFuel = kiln?.heat === 'fuel';
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
        <NumberEntry
          label="Rated power"
          unit="W"
          hint={isFuel ? undefined : NOT_YET}
          value={kiln?.ratedWatts ?? null}
          judge={judgeWatts}
          isDisabled={isFuel}
          onNumber={(watts) => onOptions(toldKiln(options, { ratedWatts: watts ?? undefined }))}
        />
        <NumberEntry
          label="Element circuits"
          hint={isFuel ? undefined : NOT_YET}
          value={kiln?.circuits ?? null}
          judge={judgeCircuits}
          isDisabled={isFuel}
          onNumber={(count) => onOptions(toldKiln(options, { circuits: count ?? undefined }))}
        />
      </div>
      {isFuel ? (
        <p className="told-muted">Power and circuits say nothing about a kiln that burns fuel.</p>
      ) : null}
    </section>
  );
};
