import { useId } from 'react';
import type { Options } from '../../core/model/options.ts';
import { coneName } from '../../core/wording/speech.ts';
import { Choice, type ChoiceOf } from '../controls/choice.tsx';
import { CONE_CHOICES, CONE_TYPE_CHOICES } from '../controls/cone-names.ts';
import { Pick } from '../controls/pick.tsx';
import { retold } from '../state/told.ts';

const PURPOSES: readonly ChoiceOf<NonNullable<Options['purpose']>>[] = [
  { value: 'bisque', label: 'bisque' },
  { value: 'glaze', label: 'glaze' },
  { value: 'other', label: 'other' },
];

interface AimPartProps {
  readonly options: Options;
  readonly onOptions: (next: Options) => void;
}

/** What the firing was for. */
export const AimPart = ({ options, onOptions }: AimPartProps) => {
  const id = useId();
  const ofSchedule = options.schedule?.cone ?? null;
  const none = ofSchedule === null ? 'not said' : `as the schedule says: ${coneName(ofSchedule)}`;
  return (
    <section aria-labelledby={id} className="told-part">
      <h3 id={id}>What was meant</h3>
      <div className="fields">
        <Choice
          label="Cone"
          value={options.cone ?? null}
          none={none}
          choices={CONE_CHOICES}
          onChoice={(cone) => onOptions(retold(options, { cone: cone ?? undefined }))}
        />
        <Choice
          label="Kind of cones"
          value={options.coneType ?? null}
          none="not said: self-supporting"
          choices={CONE_TYPE_CHOICES}
          onChoice={(coneType) => onOptions(retold(options, { coneType: coneType ?? undefined }))}
        />
        <Pick
          label="Firing"
          value={options.purpose ?? null}
          none="not said"
          choices={PURPOSES}
          onPick={(purpose) => onOptions(retold(options, { purpose: purpose ?? undefined }))}
        />
      </div>
    </section>
  );
};
