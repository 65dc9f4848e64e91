import { useEffect, useMemo } from 'react';
import { prose } from '../../core/report/clean.ts';
import { historyWords, type HistoryWords } from '../../core/wording/history.ts';
import { counted, speechIn } from '../../core/wording/speech.ts';
import { useActions } from '../app/use-actions.ts';
import { Note, type NoteWords } from '../evidence/note.tsx';
import { useApp } from '../state/use-app.ts';
import type { HistoryLog, HistoryTold } from '../worker/history-protocol.ts';
import { FiringsTable } from './firings-table.tsx';
import { HistoryPicture } from './history-chart.tsx';
import type { KilnHistory } from './history-store.ts';
import { standoutOf } from './standout.ts';
import { useHistory, useHistoryStore } from './use-history.ts';
import '../evidence/evidence.css';
import './history.css';

/** A for the first. */
const letterOf = (index: number): string => String.fromCharCode(65 + index);

const noteOf = (finding: HistoryWords['findings'][number], index: number): NoteWords => ({
  ...finding,
  title: { text: finding.title },
  letter: letterOf(index),
  severityWord: finding.severity,
  measured: [],
});

const Reading = ({ done, of }: { readonly done: number; readonly of: number }) => {
  const { stop } = useHistoryStore().getState();
  useEffect(() => {
    const onKey = (event: KeyboardEvent): void => {
      if (event.key === 'Escape' && !event.defaultPrevented) stop();
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, [stop]);
  return (
    <div className="state reading-state" aria-busy="true">
      <h1>Reading {counted(of, 'firing')}</h1>
      <p className="muted">
        {done} of {of} done.
      </p>
      <progress
        className="progress"
        value={done + 0.5}
        max={of}
        aria-label="Progress of the reading"
      />
      <p>
        <button type="button" className="button" onClick={stop}>
          Stop
        </button>
      </p>
    </div>
  );
};

const Failed = () => {
  const { close } = useHistoryStore().getState();
  return (
    <div className="state">
      <h1>The history could not be told</h1>
      <p>
        The analysis came to a sudden end, perhaps for want of memory. Open fewer logs together, or
        each by itself.
      </p>
      <p>
        <button type="button" className="button" onClick={close}>
          Close
        </button>
      </p>
    </div>
  );
};

const Buttons = () => {
  const { addToHistory, saveHistory, copyHistory } = useActions();
  const { close } = useHistoryStore().getState();
  return (
    <div className="buttons">
      <button type="button" className="button" onClick={addToHistory}>
        Add logs…
      </button>
      <button type="button" className="button" onClick={saveHistory}>
        Save as text…
      </button>
      <button type="button" className="button" onClick={copyHistory}>
        Copy as text
      </button>
      <button type="button" className="button" onClick={close}>
        Close the history
      </button>
    </div>
  );
};

interface LeftOutProps extends Pick<HistoryTold, 'leftOut'> {
  readonly logs: readonly HistoryLog[];
}

const LeftOut = ({ leftOut, logs }: LeftOutProps) => {
  const { leaveOut } = useHistoryStore().getState();
  return leftOut.length === 0 ? null : (
    <section className="guesses" aria-labelledby="left-out-title">
      <h2 id="left-out-title">What was left out</h2>
      <ul>
        {leftOut.map(({ place, message, line }) => (
          <li key={place}>
            {`“${prose(logs[place]!.fileName)}”${line === null ? '' : `, line ${line}`}: ${prose(message)}. `}
            <button
              type="button"
              className="button-link"
              onClick={() => void leaveOut(logs[place]!)}
            >
              Leave it out
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
};

const Verdict = ({ words }: { readonly words: HistoryWords }) => (
  <section className="verdict" aria-label="Verdict">
    {words.findings.slice(0, 2).map(({ title }) => (
      <p key={title}>
        <strong className="said-large">{prose(title)}</strong>
      </p>
    ))}
    {[words.trend, ...words.steps, words.forecast].map((said) => (
      <p key={said}>{prose(said)}</p>
    ))}
  </section>
);

const Findings = ({ words }: { readonly words: HistoryWords }) => {
  const selected = useHistory((state) => state.selected);
  const { select } = useHistoryStore().getState();
  return (
    <section className="notes" aria-labelledby="history-evidence">
      <h2 id="history-evidence">Evidence</h2>
      {words.findings.length === 0 ? (
        <p className="muted">
          Nothing stands out over these firings together. Each of them has its own sheet.
        </p>
      ) : (
        <ul className="note-items">
          {words.findings.map((finding, index) => (
            <Note
              key={finding.title}
              finding={noteOf(finding, index)}
              isOpen={selected === index}
              isDim={selected !== null && selected !== index}
              onToggle={() => select(selected === index ? null : index)}
            />
          ))}
        </ul>
      )}
    </section>
  );
};

const Listed = ({ title, said }: { readonly title: string; readonly said: readonly string[] }) =>
  said.length === 0 ? null : (
    <section className="panel">
      <h2>{title}</h2>
      <ul className="said-list">
        {said.map((one) => (
          <li key={one}>{prose(one)}</li>
        ))}
      </ul>
    </section>
  );

const Told = ({ told }: { readonly told: HistoryTold }) => {
  const { history, firings, leftOut } = told;
  const logs = useHistory((state) => state.logs);
  const unit = useApp((state) => state.preferences.unit);
  const schedule = useApp((state) => state.told.schedule);
  const selected = useHistory((state) => state.selected);
  const { leaveOut } = useHistoryStore().getState();
  const { openFromHistory } = useActions();
  const words = useMemo(() => historyWords(history, speechIn(unit)), [history, unit]);
  const standouts = useMemo(
    () => firings.map(({ document }) => standoutOf(document, unit)),
    [firings, unit],
  );
  const marked = selected === null ? [] : (history.findings[selected]?.firings ?? []);
  if (firings.length === 0) {
    return (
      <div className="state">
        <h1>None of these logs could be read</h1>
        <p>Open one by itself: it can be put right on its reading desk.</p>
        <LeftOut {...{ leftOut, logs }} />
        <Buttons />
      </div>
    );
  }
  const logAt = (index: number): HistoryLog => logs[firings[index]!.place]!;
  return (
    <div className="sheet history">
      <div className="sheet-head">
        <h1>{words.title}</h1>
        <p className="muted small">
          {schedule === undefined
            ? 'No schedule told: the firings are held against each other alone.'
            : `All held against the schedule “${schedule.name}”.`}{' '}
          {words.order}
        </p>
      </div>
      <Verdict words={words} />
      <LeftOut {...{ leftOut, logs }} />
      <Buttons />
      <div className="sheet-columns">
        <section className="curve-column panel" aria-labelledby="history-picture-title">
          <h2 id="history-picture-title" className="unseen">
            Power and cones, firing by firing
          </h2>
          {history.firings.some(({ relativePower }) => relativePower !== null) ? (
            <HistoryPicture history={history} marked={marked} />
          ) : (
            <p className="muted">
              None of these firings shows the kiln’s power, so there is no course of it to draw.
            </p>
          )}
        </section>
        <Findings words={words} />
      </div>
      <section className="panel" aria-labelledby="firings-title">
        <h2 id="firings-title">The firings</h2>
        <FiringsTable
          {...{ rows: words.rows, standouts, marked }}
          onOpen={(index) => openFromHistory(logAt(index))}
          onLeaveOut={(index) => void leaveOut(logAt(index))}
        />
      </section>
      <Listed title="Cooling of the last firing" said={words.cooling} />
      <Listed title="Cautions" said={words.cautions} />
    </div>
  );
};

/** Several firings of one kiln: what they say together, and each of them to be opened. */
export const HistoryPage = ({ history }: { readonly history: KilnHistory }) => {
  switch (history.kind) {
    case 'none':
      return null;
    case 'reading':
      return <Reading {...history} />;
    case 'failed':
      return <Failed />;
    case 'told':
      return <Told told={history} />;
  }
};
