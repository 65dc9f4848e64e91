import { useActions } from '../app/use-actions.ts';
import { SAMPLES } from '../samples/samples.ts';
import { useApp } from '../state/use-app.ts';

/** Nothing open: drop a log here, or try a sample. */
export const EmptyState = () => {
  const actions = useActions();
  const schedule = useApp((state) => state.told.schedule);
  return (
    <div className="state empty-state">
      <h1>Drop the log of a firing here</h1>
      <p>
        The file your logger or controller wrote: CSV, text or JSON, as it is. Drop the schedule
        beside it if you have it as a file; you can also choose or type it later.
      </p>
      <p className="muted">
        Several logs of one kiln, opened or dropped together, are told as its history.
      </p>
      {schedule === undefined ? null : (
        <p>
          <strong>Schedule “{schedule.name}” is ready</strong> for the log you open next.
        </p>
      )}
      <p className="buttons">
        <button type="button" className="button button-main" onClick={actions.openLogs}>
          Open a log…
        </button>
        <button type="button" className="button" onClick={actions.typeIn}>
          Type readings in…
        </button>
        <span className="muted small">No logger? A few times and temperatures will do.</span>
      </p>
      <section aria-labelledby="samples-title">
        <h2 id="samples-title">Or try a sample</h2>
        <p className="muted small">Twelve firings of a studio that does not exist.</p>
        <ul className="sample-list">
          {SAMPLES.map((sample) => (
            <li key={sample.logName}>
              <button type="button" className="sample" onClick={() => actions.trySample(sample)}>
                {sample.about}
                <span className="muted small"> {sample.logName}</span>
              </button>
            </li>
          ))}
        </ul>
      </section>
    </div>
  );
};
