import { FieldError, Input, Label, Text, TextField } from 'react-aria-components';

export interface TextEntryProps {
  readonly label: string;
  /** The label is for screen readers only, where a column's head says it to the eye. */
  readonly isLabelHidden?: boolean;
  readonly value: string;
  readonly onText: (text: string) => void;
  /** What the number counts, shown after the box: `°C`, `min`. */
  readonly unit?: string;
  readonly hint?: string | undefined;
  /** One plain sentence on what is wrong; null where nothing is. */
  readonly wrong?: string | null;
  readonly isNumber?: boolean;
  readonly isDisabled?: boolean;
  readonly maxLength?: number;
  readonly className?: string;
}

/** A line of text, with what is wrong with it in plain words beside it. */
export const TextEntry = (props: TextEntryProps) => {
  const { label, value, onText, unit, hint, isNumber = false } = props;
  const wrong = props.wrong ?? null;
  return (
    <TextField
      className={`field ${isNumber ? 'field-number' : ''} ${props.className ?? ''}`}
      value={value}
      onChange={onText}
      isInvalid={wrong !== null}
      isDisabled={props.isDisabled ?? false}
      maxLength={props.maxLength ?? 200}
      inputMode={isNumber ? 'decimal' : 'text'}
      autoComplete="off"
    >
      <Label className={props.isLabelHidden ? 'unseen' : 'field-label'}>
        {label}
        {unit === undefined ? null : <span className="unseen">, {unit}</span>}
      </Label>
      <div className="field-row">
        <Input className="field-box" />
        {unit === undefined ? null : (
          <span aria-hidden="true" className="field-unit">
            {unit}
          </span>
        )}
      </div>
      {hint === undefined ? null : (
        <Text slot="description" className="field-hint">
          {hint}
        </Text>
      )}
      <FieldError className="field-wrong">
        <span aria-hidden="true">▲ </span>
        {wrong}
      </FieldError>
    </TextField>
  );
};
