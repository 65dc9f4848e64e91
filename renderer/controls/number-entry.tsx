import { useState } from 'react';
import { numberText, readNumber } from './number-text.ts';
import { TextEntry, type TextEntryProps } from './text-entry.tsx';
import { useSettled } from './use-settled.ts';

interface NumberEntryProps extends Omit<TextEntryProps, 'value' | 'onText' | 'wrong' | 'isNumber'> {
  /** The number told, in the unit shown; null where none is. */
  readonly value: number | null;
  /** Told once the typing has come to rest, or the field is left. */
  readonly onNumber: (value: number | null) => void;
  /** One plain sentence against a number that cannot be; null where it can. */
  readonly judge: (value: number) => string | null;
}

interface Typed {
  readonly text: string;
  /** The number told that the text belongs to: once another is told, the text is stale. */
  readonly over: number | null;
}

/** Conversions between units leave a trace in the last digits. */
const isSame = (a: number | null, b: number | null): boolean =>
  a === b || (a !== null && b !== null && Math.abs(a - b) < 1e-6);

/** A number that may be left out. What cannot be is said beside it and not told. */
export const NumberEntry = ({ value, onNumber, judge, ...field }: NumberEntryProps) => {
  const [typed, setTyped] = useState<Typed | null>(null);
  const isFresh = typed !== null && isSame(typed.over, value);
  const text = isFresh ? typed.text : value === null ? '' : numberText(value);
  const number = readNumber(text);
  const wrong = number === null ? null : 'wrong' in number ? number.wrong : judge(number.value);
  const settled = useSettled<number | null>((next) => {
    setTyped((latest) => latest && { ...latest, over: next });
    onNumber(next);
  });
  const take = (next: string): void => {
    setTyped({ text: next, over: value });
    const read = readNumber(next);
    if (read === null) settled.soon(null);
    else if ('value' in read && judge(read.value) === null) settled.soon(read.value);
    else settled.drop();
  };
  return (
    <div onBlur={settled.now} className="contents">
      <TextEntry {...field} isNumber value={text} onText={take} wrong={wrong} />
    </div>
  );
};
