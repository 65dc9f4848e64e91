import { useId } from 'react';
import type { Load } from '../../core/model/document.ts';
import { prose } from '../../core/report/clean.ts';
import type { LoadWords } from '../../core/wording/load.ts';
import { Caution } from '../controls/caution.tsx';

interface LoadAnswerProps {
  readonly state: Load['state'];
  readonly words: LoadWords;
}

/** Can this load be saved? */
export const LoadAnswer = ({ state, words }: LoadAnswerProps) => {
  const id = useId();
  return (
    <section id="load" aria-labelledby={id} className={`load load-${state}`}>
      <h3 id={id}>Can this load be saved?</h3>
      <p className="load-answer">{prose(words.answer)}</p>
      <p>{prose(words.advice)}</p>
      {words.caution === null ? null : <Caution>{words.caution}</Caution>}
    </section>
  );
};
