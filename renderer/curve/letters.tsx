import { SeverityShape } from '../evidence/severity-shape.tsx';
import type { FindingWords } from '../../core/wording/findings.ts';
import type { LetterMark } from './marks.ts';

interface LettersProps {
  readonly marks: readonly LetterMark[];
  readonly findings: readonly FindingWords[];
  readonly left: number;
  readonly selected: number | null;
  readonly onSelect: (index: number | null) => void;
}

/** The findings' letters on the curve: each a button that chooses its note. */
export const Letters = ({ marks, findings, left, selected, onSelect }: LettersProps) => (
  <div className="letters" style={{ left }}>
    {marks.map(({ index, letter, severity, x, y, footX, footY }) => {
      const words = findings[index];
      const isDim = selected !== null && selected !== index;
      return (
        <div key={letter} className={`letter${isDim ? ' letter-dim' : ''}`}>
          <svg className="letter-stem" aria-hidden="true">
            <line x1={x} y1={y} x2={footX} y2={footY} />
          </svg>
          <button
            type="button"
            className="letter-mark"
            style={{ left: x, top: y }}
            aria-pressed={selected === index}
            aria-label={`${letter}, ${words?.severityWord ?? ''}: ${words?.title.text ?? ''}`}
            onClick={() => onSelect(selected === index ? null : index)}
          >
            <SeverityShape severity={severity} letter={letter} />
          </button>
        </div>
      );
    })}
  </div>
);
