import { useState } from 'react';
import { TextEntry, type TextEntryProps } from '../controls/text-entry.tsx';
import { useSettled } from '../controls/use-settled.ts';

interface SettledTextProps extends Omit<TextEntryProps, 'value' | 'onText' | 'wrong' | 'isNumber'> {
  /** What is told; empty where nothing is. */
  readonly value: string;
  /** Told once the typing has come to rest, or the field is left; null for nothing. */
  readonly onSettled: (text: string | null) => void;
  /** One plain sentence against a text that cannot be; null where it can. */
  readonly judge: (text: string) => string | null;
}

/** A line of text that is told once the typing rests. What cannot be is said beside it, not told. */
export const SettledText = ({ value, onSettled, judge, ...field }: SettledTextProps) => {
  const [typed, setTyped] = useState<{ readonly text: string; readonly over: string } | null>(null);
  const text = typed !== null && typed.over === value ? typed.text : value;
  const wrong = text.trim() === '' ? null : judge(text.trim());
  const settled = useSettled<string | null>((next) => {
    setTyped((latest) => latest && { ...latest, over: next ?? '' });
    onSettled(next);
  });
  const take = (next: string): void => {
    setTyped({ text: next, over: value });
    const bare = next.trim();
    if (bare === '') settled.soon(null);
    else if (judge(bare) === null) settled.soon(bare);
    else settled.drop();
  };
  return (
    <div onBlur={settled.now} className="contents">
      <TextEntry {...field} value={text} onText={take} wrong={wrong} />
    </div>
  );
};
