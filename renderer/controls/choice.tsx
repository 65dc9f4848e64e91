import {
  Button,
  Label,
  ListBox,
  ListBoxItem,
  Popover,
  Select,
  SelectValue,
  Text,
} from 'react-aria-components';

export interface ChoiceOf<Value extends string> {
  readonly value: Value;
  readonly label: string;
}

interface ChoiceProps<Value extends string> {
  readonly label: string;
  /** The label is for screen readers only, where a column's head says it to the eye. */
  readonly isLabelHidden?: boolean;
  readonly value: Value | null;
  /** The words for no choice; left out where there must be one. */
  readonly none?: string;
  readonly choices: readonly ChoiceOf<Value>[];
  readonly onChoice: (value: Value | null) => void;
  readonly hint?: string | undefined;
  readonly isDisabled?: boolean;
}

/** The key of no choice; no value is written like this. */
const NONE = '(none)';

/** One of a list, by pointer, arrow keys or the first letters typed. */
export const Choice = <Value extends string>(props: ChoiceProps<Value>) => {
  const { label, isLabelHidden = false, value, none, choices, onChoice, hint } = props;
  const listed: ChoiceOf<string>[] =
    none === undefined ? [...choices] : [{ value: NONE, label: none }, ...choices];
  return (
    <Select
      className="field"
      value={value ?? (none === undefined ? null : NONE)}
      onChange={(key) => onChoice(choices.find((choice) => choice.value === key)?.value ?? null)}
      isDisabled={props.isDisabled ?? false}
    >
      <Label className={isLabelHidden ? 'unseen' : 'field-label'}>{label}</Label>
      <Button className="field-box choice-button">
        <SelectValue className="choice-value" />
        <span aria-hidden="true" className="choice-mark">
          ▾
        </span>
      </Button>
      {hint === undefined ? null : (
        <Text slot="description" className="field-hint">
          {hint}
        </Text>
      )}
      <Popover className="choice-list">
        <ListBox items={listed}>
          {(choice) => (
            <ListBoxItem id={choice.value} textValue={choice.label} className="choice-item">
              {({ isSelected }) => (
                <>
                  <span aria-hidden="true" className="choice-tick">
                    {isSelected ? '✓' : ''}
                  </span>
                  {choice.label}
                </>
              )}
            </ListBoxItem>
          )}
        </ListBox>
      </Popover>
    </Select>
  );
};
