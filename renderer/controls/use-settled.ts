import { useEffect, useRef } from 'react';

/** How long typing rests before the answer is worked out anew (chosen: about a keystroke's pause). */
const REST_MS = 350;

interface Settled<Value> {
  /** Tells the value once nothing newer has come for a moment. */
  readonly soon: (value: Value) => void;
  /** Tells at once what is still waiting, as when a field is left. */
  readonly now: () => void;
  /** Forgets what is still waiting. */
  readonly drop: () => void;
}

/**
 * Holds back a value until the typing has come to rest, so that the answer does not leap through
 * 1, 12 and 122 on its way to 1220.
 */
export const useSettled = <Value>(tell: (value: Value) => void): Settled<Value> => {
  const latest = useRef(tell);
  const waiting = useRef<{ readonly value: Value; readonly timer: number } | null>(null);
  useEffect(() => {
    latest.current = tell;
  });
  const drop = (): void => {
    if (waiting.current !== null) window.clearTimeout(waiting.current.timer);
    waiting.current = null;
  };
  const now = (): void => {
    const held = waiting.current;
    drop();
    if (held !== null) latest.current(held.value);
  };
  const soon = (value: Value): void => {
    drop();
    waiting.current = { value, timer: window.setTimeout(now, REST_MS) };
  };
  // What is still waiting when the panel goes is told, not lost.
  const atEnd = useRef(now);
  useEffect(() => atEnd.current, []);
  return { soon, now, drop };
};
