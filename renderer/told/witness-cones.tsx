import { useId, useRef, useState } from 'react';
import { Button } from 'react-aria-components';
import type { ObservedCone, Options } from '../../core/model/options.ts';
import { coneName } from '../../core/wording/speech.ts';
import { Choice } from '../controls/choice.tsx';
import { CONE_CHOICES } from '../controls/cone-names.ts';
import { NumberEntry } from '../controls/number-entry.tsx';
import { TextEntry } from '../controls/text-entry.tsx';
import { useSettled } from '../controls/use-settled.ts';
import { BendControl } from './bend-control.tsx';
import { MOST_BENT_DEGREES } from './bend.ts';
import { changedWitness, meantCone, toldWitnesses, withoutWitness } from './told-options.ts';

const judgeBend = (degrees: number): string | null =>
  degrees >= 0 && degrees <= MOST_BENT_DEGREES
    ? null
    : `A bend lies between 0 (upright) and ${MOST_BENT_DEGREES} (flat).`;

interface WitnessFieldsProps {
  readonly witness: ObservedCone;
  readonly onWitness: (next: ObservedCone) => void;
  /** What parts this cone from the others, for screen readers. */
  readonly called: string;
}

const WitnessFields = ({ witness, onWitness, called }: WitnessFieldsProps) => {
  const { cone, place, bendDegrees } = witness;
  const [typed, setTyped] = useState<string | null>(null);
  const settled = useSettled<string>((next) => onWitness({ ...witness, place: next }));
  return (
    <>
      <BendControl
        label={`How far down, ${called}`}
        bendDegrees={bendDegrees}
        onBend={(bend) => onWitness({ ...witness, bendDegrees: bend })}
      />
      <div className="fields">
        <Choice
          label="Cone"
          value={cone}
          choices={CONE_CHOICES}
          onChoice={(next) => next && onWitness({ ...witness, cone: next })}
        />
        <div
          className="contents"
          onBlur={() => {
            settled.now();
            setTyped(null);
          }}
        >
          <TextEntry
            label="Where it stood"
            value={typed ?? place}
            maxLength={60}
            onText={(text) => {
              setTyped(text);
              settled.soon(text);
            }}
          />
        </div>
        <NumberEntry
          label="How far down"
          unit="°"
          value={bendDegrees}
          judge={judgeBend}
          onNumber={(bend) => bend !== null && onWitness({ ...witness, bendDegrees: bend })}
        />
      </div>
    </>
  );
};

interface NewWitnessProps {
  readonly witness: ObservedCone;
  readonly onWitness: (witness: ObservedCone) => void;
  readonly onAdd: () => void;
  readonly onGiveUp: () => void;
}

/** A cone is told only when it is added: until then nobody has said how far down it was. */
const NewWitness = ({ witness, onWitness, onAdd, onGiveUp }: NewWitnessProps) => (
  <div className="witness" role="group" aria-label="A cone that was seen">
    <WitnessFields witness={witness} onWitness={onWitness} called="the new cone" />
    <div className="told-buttons">
      <Button className="button" onPress={onAdd}>
        Add this cone
      </Button>
      <Button className="button-plain" onPress={onGiveUp}>
        leave it
      </Button>
    </div>
  </div>
);

interface WitnessConesProps {
  readonly options: Options;
  readonly onOptions: (next: Options) => void;
  /** The cone that is being described and not added yet. */
  readonly begun: ObservedCone | null;
  readonly onBegun: (witness: ObservedCone | null) => void;
}

/** The witness cones that were seen when the kiln was opened: which, where, how far down. */
export const WitnessCones = ({ options, onOptions, begun, onBegun }: WitnessConesProps) => {
  const id = useId();
  const addButton = useRef<HTMLButtonElement>(null);
  const cones = options.observedCones ?? [];
  const backToButton = () => requestAnimationFrame(() => addButton.current?.focus());
  return (
    <section aria-labelledby={id} className="told-part">
      <h3 id={id}>Witness cones seen</h3>
      <p className="told-muted">
        Cones beside the ware say whether the couple told the truth. Pull a cone’s tip to where it
        was, or use the arrow keys; at 90° it is down, its tip level with its base.
      </p>
      <div className="witnesses">
        {cones.map((witness, index) => {
          const called = `${coneName(witness.cone)}, cone ${index + 1} of those seen`;
          return (
            <div key={index} className="witness" role="group" aria-label={called}>
              <WitnessFields
                witness={witness}
                called={called}
                onWitness={(next) => onOptions(changedWitness(options, index, next))}
              />
              <div className="told-buttons">
                <Button
                  className="button-plain"
                  aria-label={`Remove ${called}`}
                  onPress={() => {
                    onOptions(withoutWitness(options, index));
                    backToButton();
                  }}
                >
                  remove
                </Button>
              </div>
            </div>
          );
        })}
        {begun === null ? null : (
          <NewWitness
            witness={begun}
            onWitness={onBegun}
            onAdd={() => {
              onOptions(toldWitnesses(options, [...cones, begun]));
              onBegun(null);
              backToButton();
            }}
            onGiveUp={() => {
              onBegun(null);
              backToButton();
            }}
          />
        )}
      </div>
      {begun !== null ? null : (
        <Button
          ref={addButton}
          className="button"
          onPress={() => onBegun({ cone: meantCone(options) ?? '6', place: '', bendDegrees: 0 })}
        >
          Add a cone that was seen
        </Button>
      )}
    </section>
  );
};
