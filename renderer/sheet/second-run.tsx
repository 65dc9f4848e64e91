import { useActions } from '../app/use-actions.ts';
import { SaidList } from '../controls/said-list.tsx';
import type { OpenFiring } from '../state/firing.ts';
import { useAppStore } from '../state/use-app.ts';

/** A load that was fired again after its log broke off: the second log is taken with the first. */
export const SecondRunPart = ({ firing }: { readonly firing: OpenFiring }) => {
  const { joinLog } = useActions();
  const { join } = useAppStore().getState();
  const { joined } = firing.words;
  if (joined.length === 0) {
    return (
      <p className="muted small">
        Was this load fired again after the log broke off?{' '}
        <button type="button" className="button-link" onClick={joinLog}>
          Join the second run’s log…
        </button>
      </p>
    );
  }
  return (
    <section className="second-run" aria-labelledby="second-run-title">
      <h2 id="second-run-title">Two logs of one load</h2>
      <SaidList said={joined} />
      <button type="button" className="button" onClick={() => void join(null)}>
        Take them apart
      </button>
    </section>
  );
};
