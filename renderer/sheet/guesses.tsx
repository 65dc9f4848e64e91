import type { MouseEvent } from 'react';
import type { OpenFiring } from '../state/firing.ts';

/** Below this the alignment is told as uncertain, as the wording does. */
const SURE_OF_LEGS = 0.65;

interface GuessesProps {
  readonly firing: OpenFiring;
  readonly onSection: (id: string) => void;
  readonly onDesk: () => void;
}

/** Low certainty: what was guessed, and where it is put right. Nothing where all is sure. */
export const Guesses = ({ firing, onSection, onDesk }: GuessesProps) => {
  const { document, words } = firing;
  const { decisions } = document.source;
  // Which of several firings is meant has a choice of its own.
  const guesses = words.reading.decisions.filter(
    ({ isGuess }, index) => isGuess && decisions[index]?.what !== 'firing',
  );
  const confidence = document.alignment?.confidence ?? 1;
  const isUnsureOfLegs = confidence < SURE_OF_LEGS && words.legs.note !== null;
  if (guesses.length === 0 && !isUnsureOfLegs) return null;
  const go = (event: MouseEvent, id: string): void => {
    event.preventDefault();
    onSection(id);
  };
  return (
    <section className="guesses" aria-labelledby="guesses-title">
      <h2 id="guesses-title">What is not certain here</h2>
      <ul>
        {guesses.map(({ said }) => (
          <li key={said}>
            A guess: {said}{' '}
            <button type="button" className="button-link" onClick={onDesk}>
              Put it right
            </button>
          </li>
        ))}
        {isUnsureOfLegs ? (
          <li>
            {words.legs.note}{' '}
            <a href="#legs" onClick={(event) => go(event, 'legs')}>
              See the legs
            </a>
          </li>
        ) : null}
      </ul>
    </section>
  );
};
