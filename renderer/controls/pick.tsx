import { Label, RadioButton, RadioField, RadioGroup } from 'react-aria-components';
import type { ChoiceOf } from './choice.tsx';

interface PickProps<Value extends string> {
  readonly label: string;
  readonly value: Value | null;
  /** The words for nothing picked. */
  readonly none: string;
  readonly choices: readonly ChoiceOf<Value>[];
  readonly onPick: (value: Value | null) => void;
  /** The label stands beside the choices, not above them. */
  readonly isBeside?: boolean;
}

const NONE = '(none)';

/** One of a few, all in sight. */
export const Pick = <Value extends string>(props: PickProps<Value>) => {
  const { label, value, none, choices, onPick, isBeside = false } = props;
  return (
    <RadioGroup
      className={`field pick-field ${isBeside ? 'field-beside' : ''}`}
      orientation="horizontal"
      value={value ?? NONE}
      onChange={(key) => onPick(choices.find((choice) => choice.value === key)?.value ?? null)}
    >
      <Label className="field-label">{label}</Label>
      <div className="pick">
        {[...choices, { value: NONE, label: none }].map((choice) => (
          <RadioField key={choice.value} value={choice.value}>
            <RadioButton className="pick-one">
              <span aria-hidden="true" className="pick-dot" />
              {choice.label}
            </RadioButton>
          </RadioField>
        ))}
      </div>
    </RadioGroup>
  );
};
