import type { MouseEvent } from 'react';
import { prose } from '../../core/report/clean.ts';
import type { Line } from '../../core/wording/line.ts';
import type { EvidenceLink } from '../../core/wording/verdict.ts';
import type { Words } from '../../core/wording/wording.ts';
import './verdict.css';

/** A number and its unit stay together; a place between two cones may break (chosen). */
const SHORT_LETTERS = 14;

const unbroken = (text: string): string =>
  text.length <= SHORT_LETTERS ? text.replace(/ /g, '\u00a0') : text;

/** A line with the numbers that matter set larger. */
const LineText = ({ parts }: Line) =>
  parts.map(({ text, large }, index) =>
    large ? (
      <strong key={index} className="large">
        {unbroken(text)}
      </strong>
    ) : (
      prose(text)
    ),
  );

/** The address on the sheet of what a sentence rests on. */
const addressOf = (evidence: EvidenceLink, { findings }: Words): string =>
  evidence.to === 'finding'
    ? `#finding-${findings[evidence.index]?.letter ?? ''}`
    : `#${evidence.section}`;

const TO_LOAD: EvidenceLink = { to: 'section', section: 'load' };

interface VerdictProps {
  readonly words: Words;
  readonly onEvidence: (evidence: EvidenceLink) => void;
}

/** Two to four sentences in plain words, and what becomes of the load: each a link to its evidence. */
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
      <p className="load-answer">
        <a href="#load" onClick={(event) => follow(event, TO_LOAD)}>
          <strong>{prose(words.load.answer)}</strong>
        </a>
      </p>
    </section>
  );
};
