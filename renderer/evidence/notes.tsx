import type { Words } from '../../core/wording/wording.ts';
import { Note } from './note.tsx';
import './evidence.css';

interface NotesProps {
  readonly words: Words;
  readonly selected: number | null;
  readonly onSelect: (index: number | null) => void;
}

/** The findings as margin notes, keyed to the curve by their letters. */
export const Notes = ({ words, selected, onSelect }: NotesProps) => (
  <section className="notes" id="findings" aria-labelledby="findings-title">
    <h2 id="findings-title" tabIndex={-1}>
      Evidence
    </h2>
    {words.findings.length === 0 ? (
      <p className="muted">
        No finding. What was looked for in this record, and what could not be told from it, stands
        under <a href="#checks">what was looked for</a>.
      </p>
    ) : (
      <ol className="note-items">
        {words.findings.map((finding, index) => (
          <Note
            key={finding.letter}
            finding={finding}
            isOpen={selected === index}
            isDim={selected !== null && selected !== index}
            onToggle={() => onSelect(selected === index ? null : index)}
          />
        ))}
      </ol>
    )}
  </section>
);
