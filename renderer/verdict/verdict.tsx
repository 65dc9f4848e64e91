import type { MouseEvent } from 'react';
import type { LoadWords } from '../../core/wording/load.ts';
import type { Line } from '../../core/wording/line.ts';
import type { EvidenceLink } from '../../core/wording/verdict.ts';
import type { Words } from '../../core/wording/wording.ts';
import './verdict.css';

/** A line with the numbers that matter set larger. */
const LineText = ({ parts }: Line) =>
  parts.map(({ text, large }, index) =>
    large ? (
      <strong key={index} className="large">
        {text}
      </strong>
    ) : (
      text
    ),
  );

/** The address on the sheet of what a sentence rests on. */
const addressOf = (evidence: EvidenceLink, { findings }: Words): string =>
  evidence.to === 'finding'
    ? `#finding-${findings[evidence.index]?.letter ?? ''}`
    : `#${evidence.section}`;

const Load = ({ answer, advice, caution }: LoadWords) => (
  <div className="load" id="load">
    <p>
      <strong>{answer}</strong> {advice}
    </p>
    {caution === null ? null : <p className="caution">{caution}</p>}
  </div>
);

interface VerdictProps {
  readonly words: Words;
  readonly onEvidence: (evidence: EvidenceLink) => void;
}

/** Two to four sentences in plain words, each a link to its evidence, and what becomes of the load. */
export const Verdict = ({ words, onEvidence }: VerdictProps) => {
  const follow = (event: MouseEvent, evidence: EvidenceLink): void => {
    event.preventDefault();
    onEvidence(evidence);
  };
  return (
    <section className="verdict" id="verdict" aria-label="Verdict">
      {words.verdict.map((said) => (
        <p key={said.text}>
          <a
            href={addressOf(said.evidence, words)}
            onClick={(event) => follow(event, said.evidence)}
          >
            <LineText {...said} />
          </a>
        </p>
      ))}
      <Load {...words.load} />
    </section>
  );
};
