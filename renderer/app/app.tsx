import { useEffect, useLayoutEffect, useMemo, useRef } from 'react';
import { fitsWords } from '../../core/wording/fits.ts';
import { openDesk } from '../desk/open-desk.ts';
import { useViewStore } from '../curve/use-view.ts';
import { HistoryPage } from '../history/history-page.tsx';
import { useHistory } from '../history/use-history.ts';
import { goTo } from '../sheet/go-to.ts';
import { EmptyState } from '../sheet/empty-state.tsx';
import { ArrivingState, ReadingState } from '../sheet/reading-state.tsx';
import { RefusedState } from '../sheet/refused-state.tsx';
import { Sheet } from '../sheet/sheet.tsx';
import { bundledSchedules } from '../samples/sample-schedules.ts';
import type { Firing } from '../state/firing.ts';
import { openFiring } from '../state/store.ts';
import { useApp, useAppStore } from '../state/use-app.ts';
import { useIsNarrow, useTextSize, useTheme } from '../theme/use-theme.ts';
import { ToldPanel, type OfferedSchedule } from '../told/told-panel.tsx';
import { Bar } from './bar.tsx';
import { Dialogs } from './dialogs.tsx';
import { DropAnywhere } from './drop.tsx';
import { Announcer, NoticeBar } from './notice-bar.tsx';
import { listenForKeys } from './shortcuts.ts';
import { useActions } from './use-actions.ts';
import '../controls/controls.css';
import './app.css';

const Shown = ({ firing }: { readonly firing: Firing }) => {
  const isHistory = useHistory((state) => state.isShown);
  const history = useHistory((state) => state.history);
  const arriving = useApp((state) => state.arriving);
  if (arriving) return <ArrivingState arriving={arriving} />;
  if (isHistory) return <HistoryPage history={history} />;
  switch (firing.kind) {
    case 'empty':
      return <EmptyState />;
    case 'reading':
      return <ReadingState firing={firing} />;
    case 'refused':
      return <RefusedState firing={firing} />;
    case 'open':
      return <Sheet firing={firing} />;
  }
};

const OF_SAMPLES = bundledSchedules.map((schedule, index): OfferedSchedule => ({
  id: `sample-${index}`,
  origin: 'sample',
  schedule,
}));

/** The schedules at hand: those kept, the best first where they were laid on a log, then samples. */
const useOffered = (): readonly OfferedSchedule[] => {
  const kept = useApp((state) => state.kept);
  const fits = useApp((state) => state.fits);
  return useMemo(() => {
    const percents = fitsWords(fits?.map(({ confidence }) => confidence) ?? []).percents;
    const mine = fits?.map(({ schedule }) => schedule) ?? kept;
    const offered = mine.map((schedule, index): OfferedSchedule => {
      const fit = percents[index];
      return {
        ...{ id: `kept-${schedule.name}`, origin: 'kept', schedule },
        ...(fit === undefined ? {} : { fit }),
      };
    });
    return [...offered, ...OF_SAMPLES];
  }, [kept, fits]);
};

const Telling = () => {
  const actions = useActions();
  const told = useApp((state) => state.told);
  const drafts = useApp((state) => state.drafts);
  const unit = useApp((state) => state.preferences.unit);
  const scheduleRefused = useApp((state) => state.scheduleRefused);
  const offered = useOffered();
  const isOfSeveral = useHistory((state) => state.isShown);
  const { setTold, setDrafts, forgetSchedule, showTelling } = useAppStore().getState();
  const panel = useRef<HTMLElement>(null);
  // Who opens the panel by a key goes on in it; closed, the focus goes back to where it came from.
  useEffect(() => {
    const before = document.activeElement;
    panel.current?.focus({ preventScroll: true });
    return () => {
      if (before instanceof HTMLElement) before.focus({ preventScroll: true });
    };
  }, []);
  return (
    <aside
      ref={panel}
      className="telling"
      id="telling"
      aria-label="What you can tell"
      tabIndex={-1}
    >
      <button type="button" className="button telling-close" onClick={() => showTelling(false)}>
        Close
      </button>
      <ToldPanel
        options={told}
        unit={unit}
        onOptions={(next) => void setTold(next)}
        drafts={drafts}
        onDrafts={setDrafts}
        offered={offered}
        onForget={(name) => void forgetSchedule(name)}
        onOpenSchedule={actions.openSchedule}
        scheduleRefused={scheduleRefused}
        onSaveSchedule={actions.save}
        isOfSeveral={isOfSeveral}
      />
    </aside>
  );
};

const useKeys = (): void => {
  const store = useAppStore();
  const actions = useActions();
  const view = useViewStore();
  useLayoutEffect(
    () =>
      listenForKeys(store, (state) => ({
        ...{ state, actions, view },
        choose: (finding) => {
          const { words } = openFiring(state) ?? {};
          state.select(finding);
          if (finding !== null) goTo(`finding-${words?.findings[finding]?.letter ?? ''}`);
        },
        focusCurve: () => goTo('crosshair'),
        openDesk: () => openDesk(store),
      })),
    [store, actions, view],
  );
};

/** A control of the reading desk by its words, which are the same before and after. */
const deskControl = (label: string): HTMLElement | null =>
  [...document.querySelectorAll<HTMLElement>('#desk button, #desk input')].find(
    (control) => labelOf(control) === label,
  ) ?? null;

const labelOf = (control: Element): string =>
  control.closest('.field')?.querySelector('.field-label, .unseen')?.textContent ?? '';

/**
 * What was pressed may be gone with the state before: the focus then goes to the same control of the
 * reading desk, where it was there, else to the new heading.
 */
const useFocusKept = (kind: string): void => {
  const isFirst = useRef(true);
  const atDesk = useRef('');
  useEffect(() => {
    const note = ({ target }: FocusEvent): void => {
      const isThere = target instanceof Element && target.closest('#desk') !== null;
      atDesk.current = isThere ? labelOf(target) : '';
    };
    document.addEventListener('focusin', note);
    return () => document.removeEventListener('focusin', note);
  }, []);
  useEffect(() => {
    if (isFirst.current) {
      isFirst.current = false;
      return;
    }
    if (document.activeElement !== document.body) return;
    const control = atDesk.current === '' ? null : deskControl(atDesk.current);
    if (control) {
      control.focus();
      return;
    }
    const heading = document.querySelector<HTMLElement>('main h1');
    if (!heading) return;
    heading.tabIndex = -1;
    heading.focus({ preventScroll: true });
  }, [kind]);
};

const firingName = (firing: Firing): string | null =>
  firing.kind === 'empty' ? null : firing.log.fileName;

const titled = (name: string | null): string =>
  name === null ? 'Afterfire' : `${name} – Afterfire`;

/** The window: a bar, what can be told, and the sheet. */
export const App = () => {
  const firing = useApp((state) => state.firing);
  const isTelling = useApp((state) => state.isTelling);
  const { theme, textPercent } = useApp((state) => state.preferences);
  useTheme(theme);
  useTextSize(textPercent);
  const isNarrow = useIsNarrow(textPercent);
  useKeys();
  const isHistory = useHistory((state) => state.isShown);
  const historyKind = useHistory((state) => state.history.kind);
  const isArriving = useApp((state) => state.arriving !== null);
  const kind = isHistory ? `history-${historyKind}` : firing.kind;
  useFocusKept(isArriving ? 'arriving' : kind);
  useEffect(() => {
    document.title = titled(isHistory ? 'History' : firingName(firing));
  }, [firing, isHistory]);
  return (
    <>
      <Bar />
      <NoticeBar />
      <div className={`room${isTelling ? ' room-telling' : ''}${isNarrow ? ' room-narrow' : ''}`}>
        {isTelling ? <Telling /> : null}
        <main className="sheet-room">
          <Shown firing={firing} />
        </main>
      </div>
      <Announcer />
      <Dialogs />
      <DropAnywhere />
    </>
  );
};
