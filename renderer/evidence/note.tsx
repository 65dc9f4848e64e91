import { useId } from 'react';
import { prose } from '../../core/report/clean.ts';
import type { FindingWords } from '../../core/wording/findings.ts';
import { Caution } from '../controls/caution.tsx';
import { SeverityShape } from './severity-shape.tsx';

/** As much of a finding's words as its note shows, of one firing or of a kiln's history. */
export type NoteWords = Omit<FindingWords, 'id' | 'name' | 'title'> & {
  readonly title: Pick<FindingWords['title'], 'text'>;
};

interface NoteProps {
  readonly finding: NoteWords;
  readonly isOpen: boolean;
  readonly isDim: boolean;
  readonly onToggle: () => void;
}

const Measured = ({ measured }: Pick<FindingWords, 'measured'>) => (
  <table className="note-table">
    <thead>
      <tr>
        <th scope="col">measured</th>
        <td />
        <th scope="col">held against</th>
      </tr>
    </thead>
    <tbody>
      {measured.map(({ label, value, limit }) => (
        <tr key={label}>
          <th scope="row">{prose(label)}</th>
          <td>{prose(value)}</td>
          <td>{prose(limit ?? '')}</td>
        </tr>
      ))}
    </tbody>
  </table>
);

const Alternatives = ({ couldBe }: Pick<FindingWords, 'couldBe'>) => (
  <ul className="note-list">
    {couldBe.map(({ cause, tell }) => (
      <li key={cause}>
        {prose(cause)} <span className="tell">To tell: {prose(tell)}</span>
      </li>
    ))}
  </ul>
);

const Body = ({ why, measured, couldBe, remedy, caution }: NoteWords) => (
  <>
    <p>{prose(why)}</p>
    {measured.length === 0 ? null : <Measured measured={measured} />}
    <h4>What to do</h4>
    <p>{prose(remedy)}</p>
    {caution === null ? null : <Caution>{prose(caution)}</Caution>}
    {couldBe.length === 0 ? null : (
      <>
        <h4>What else it could be</h4>
        <Alternatives couldBe={couldBe} />
      </>
    )}
  </>
);

/** One finding in the margin; it opens to what was measured, against what, and what to do. */
export const Note = ({ finding, isOpen, isDim, onToggle }: NoteProps) => {
  const { letter, severity, severityWord, title } = finding;
  const body = useId();
  return (
    <li className={`note${isOpen ? ' note-open' : ''}${isDim ? ' note-dim' : ''}`}>
      <h3>
        <button
          type="button"
          id={`finding-${letter}`}
          className="note-head"
          aria-expanded={isOpen}
          aria-controls={body}
          onClick={onToggle}
        >
          <span className="note-mark">
            <SeverityShape severity={severity} letter={letter} />
            <span className="unseen">{letter}, </span>
            <span className={`severity-word severity-word-${severity}`}>{severityWord}</span>
          </span>
          <span className="note-title">{prose(title.text)}</span>
        </button>
      </h3>
      <div id={body} className="note-body" hidden={!isOpen}>
        {isOpen ? <Body {...finding} /> : null}
      </div>
    </li>
  );
};
