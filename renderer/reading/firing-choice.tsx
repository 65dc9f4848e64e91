import { useId } from 'react';
import type { FiringChoiceWords } from '../../core/wording/reading.ts';
import './reading.css';

interface FiringChoiceProps {
  readonly choices: readonly FiringChoiceWords[];
  readonly onFiring: (number: number) => void;
}

/** Several firings in one log, kept apart: which one is judged. Nothing where there is one. */
export const FiringChoice = ({ choices, onFiring }: FiringChoiceProps) => {
  const id = useId();
  if (choices.length === 0) return null;
  return (
    <section className="firings" aria-labelledby={id}>
      <h2 id={id}>This log holds {choices.length} firings</h2>
      <ul className="firing-list">
        {choices.map(({ number, said, isChosen }) => (
          <li key={number}>
            <button
              type="button"
              className="firing-choice"
              aria-pressed={isChosen}
              onClick={() => onFiring(number)}
            >
              <span className="firing-number">{number}</span>
              <span>{said}</span>
              <span className="firing-mark">{isChosen ? '✓ judged here' : 'judge this one'}</span>
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
};
