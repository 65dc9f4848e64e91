import { useCallback, useEffect, useRef } from 'react';
import type { Span } from '../../core/model/scalars.ts';
import type { EvidenceLink } from '../../core/wording/verdict.ts';
import { useActions } from '../app/use-actions.ts';
import { ConesPanel } from '../cones/cones-panel.tsx';
import { FiringDesk, ReadByRule } from '../desk/firing-desk.tsx';
import { openDesk } from '../desk/open-desk.ts';
import { Curve } from '../curve/curve.tsx';
import { ReadoutMargin } from '../curve/readout-margin.tsx';
import { useView, useViewStore } from '../curve/use-view.ts';
import { isWhole } from '../curve/view.ts';
import { Notes } from '../evidence/notes.tsx';
import { LegsPanel } from '../legs/legs-panel.tsx';
import { PowerPanel } from '../power/power-panel.tsx';
import { FiringChoice } from '../reading/firing-choice.tsx';
import { toldReading } from '../reading/reading-choices.ts';
import { ReadingPanel } from '../reading/reading-panel.tsx';
import type { OpenFiring } from '../state/firing.ts';
import { useApp, useAppStore } from '../state/use-app.ts';
import { useTheme } from '../theme/use-theme.ts';
import { Verdict } from '../verdict/verdict.tsx';
import { Guesses } from './guesses.tsx';
import { goTo } from './go-to.ts';
import { NoSchedule } from './no-schedule.tsx';
import { SecondRunPart } from './second-run.tsx';
import './sheet.css';

const ResetZoom = () => {
  const isAll = useView(({ limits, view }) => isWhole(limits, view));
  const store = useViewStore();
  return isAll ? null : (
    <button
      type="button"
      className="button-plain whole-firing"
      onClick={() => store.getState().showWhole()}
    >
      Whole firing
    </button>
  );
};

/** Brings what is chosen into view on the curve, and the whole back when nothing is. */
const useChosenInView = (firing: OpenFiring, selected: number | null): void => {
  const view = useViewStore();
  const last = useRef<number | null>(null);
  const evidence =
    selected === null ? null : (firing.document.findings[selected]?.evidence ?? null);
  useEffect(() => {
    if (selected === last.current) return;
    last.current = selected;
    if (evidence && evidence.length > 0) view.getState().show(evidence);
    else view.getState().showWhole();
  }, [selected, evidence, view]);
};

interface HeadProps {
  readonly firing: OpenFiring;
  readonly onDesk: () => void;
}

const Head = ({ firing, onDesk }: HeadProps) => {
  const { title, facts } = firing.words.firing;
  const actions = useActions();
  return (
    <div className="sheet-head">
      <h1>{title}</h1>
      <p className="muted small">
        {facts.join(' · ')} ·{' '}
        <button type="button" className="button-link" onClick={onDesk}>
          How it was read
        </button>
        {firing.document.source.format === 'typed-in' ? (
          <>
            {' · '}
            <button type="button" className="button-link" onClick={actions.typeIn}>
              Put the readings right
            </button>
          </>
        ) : null}
      </p>
      {firing.isWorking ? (
        <p className="working small">
          <span aria-hidden="true">… </span>Working in what you told
        </p>
      ) : null}
    </div>
  );
};

/** What the lines are. */
const Legend = ({ firing }: { readonly firing: OpenFiring }) => {
  const hasPlan = firing.document.alignment !== null;
  const says = [
    'Solid: the kiln.',
    firing.trace.zones.length > 0 ? 'Thin: other places in it.' : null,
    hasPlan ? 'Dashed: the plan. Filled: where the kiln was notably hotter or cooler.' : null,
    firing.trace.removed.length > 0 ? 'Crosses: readings that were taken out.' : null,
    hasPlan
      ? 'Below: the difference, the slope, and the legs, planned above driven.'
      : 'Below: its slope and its legs.',
  ];
  return <p className="muted small legend">{says.filter((said) => said !== null).join(' ')}</p>;
};

const Cautions = ({ cautions }: { readonly cautions: readonly string[] }) => (
  <section id="cautions" className="panel" aria-labelledby="cautions-title">
    <h2 id="cautions-title" tabIndex={-1}>
      Cautions
    </h2>
    <ul>
      {cautions.map((caution) => (
        <li key={caution}>{caution}</li>
      ))}
    </ul>
  </section>
);

/** One firing: verdict, curve, evidence, and everything behind them. */
export const Sheet = ({ firing }: { readonly firing: OpenFiring }) => {
  const store = useAppStore();
  const view = useViewStore();
  const selected = useApp((state) => state.selected);
  const told = useApp((state) => state.told);
  const { theme, textPercent } = useApp((state) => state.preferences);
  const shownTheme = useTheme(theme);
  const isDesk = useApp((state) => state.isDesk);
  const onDesk = (): void => openDesk(store);
  const { select, setTold } = store.getState();
  const { document, words } = firing;
  const { unit } = words;
  useChosenInView(firing, selected);

  const onSelect = useCallback(
    (index: number | null): void => {
      select(index);
      if (index !== null) goTo(`finding-${words.findings[index]?.letter ?? ''}`);
    },
    [select, words],
  );
  const onEvidence = (evidence: EvidenceLink): void => {
    if (evidence.to === 'finding') onSelect(evidence.index);
    else goTo(evidence.section);
  };
  const onShowStretch = (span: Span): void => {
    view.getState().show([span]);
    goTo('curve');
  };

  return (
    <div className="sheet" aria-busy={firing.isWorking}>
      <Head firing={firing} onDesk={onDesk} />
      <Verdict words={words} onEvidence={onEvidence} />
      <Guesses firing={firing} onSection={goTo} onDesk={onDesk} />
      {isDesk ? null : (
        <FiringChoice
          choices={words.reading.firingChoices}
          onFiring={(number) => void setTold(toldReading(told, { firing: number }))}
        />
      )}
      <ReadByRule firing={firing} />
      {isDesk ? <FiringDesk firing={firing} /> : null}
      <div className="sheet-columns">
        <section className="curve-column" id="curve" aria-labelledby="curve-title" tabIndex={-1}>
          <div className="curve-head">
            <h2 id="curve-title" className="unseen">
              The curve
            </h2>
            <ReadoutMargin firing={firing} />
            <ResetZoom />
          </div>
          <Curve {...{ firing, textPercent, selected, onSelect }} theme={shownTheme} />
          <Legend firing={firing} />
          <SecondRunPart firing={firing} />
          {document.schedule === null ? <NoSchedule /> : null}
        </section>
        <Notes words={words} selected={selected} onSelect={onSelect} />
      </div>
      <ConesPanel {...{ document, words, unit, onShowStretch }} />
      <LegsPanel {...{ document, words, unit, onShowStretch }} />
      <PowerPanel {...{ document, words, unit, onShowStretch }} />
      <ReadingPanel
        {...{ document, words, unit }}
        options={told}
        onOptions={(next) => void setTold(next)}
        onDesk={onDesk}
      />
      <Cautions cautions={words.cautions} />
    </div>
  );
};
