import './no-way-out.ts';
import './no-code-from-text.ts';
import { StrictMode } from 'react';
import { I18nProvider } from 'react-aria-components';
import { createRoot } from 'react-dom/client';
import type { Schedule } from '../core/model/schedule.ts';
import { createActions } from './app/actions.ts';
import { App } from './app/app.tsx';
import { ActionsContext } from './app/use-actions.ts';
import { createHistoryStore } from './history/history-store.ts';
import { HistoryContext } from './history/use-history.ts';
import { createHistorian } from './worker/historian.ts';
import { createViewStore } from './curve/view-store.ts';
import { ViewContext } from './curve/use-view.ts';
import { connectHost } from './host/host.ts';
import { bundledSchedules } from './samples/sample-schedules.ts';
import { createShelf } from './state/shelf.ts';
import { createAppStore } from './state/store.ts';
import { AppContext } from './state/use-app.ts';
import { isSameSchedule } from './told/schedule-draft.ts';
import { createAnalyst } from './worker/analyst.ts';
import './theme/base.css';

const spawn = (): Worker =>
  new Worker(new URL('./worker/analysis.worker.ts', import.meta.url), { type: 'module' });

const spawnForHistory = (): Worker =>
  new Worker(new URL('./worker/history.worker.ts', import.meta.url), { type: 'module' });

const start = async (): Promise<void> => {
  const host = await connectHost();
  const { coming, preferences, schedules, rules } = await host.initial();
  const isBundled = (schedule: Schedule): boolean =>
    bundledSchedules.some((one) => isSameSchedule(one, schedule));
  const store = createAppStore(
    createAnalyst(spawn),
    { preferences, schedules, rules },
    {
      // Lost preferences are no reason to stop anyone: a host that is gone says so by itself.
      keepPreferences: (kept) => void host.keepPreferences(kept).catch(() => undefined),
      shelf: createShelf(host, isBundled),
      // As with preferences: a host that is gone says so by itself.
      keepRule: (rule) => host.keepRule(rule).catch(() => null),
      forgetRule: (shape) => host.forgetRule(shape).catch(() => null),
    },
  );
  const view = createViewStore({
    nextFrame: (callback) => requestAnimationFrame(callback),
    isWanted: () => !matchMedia('(prefers-reduced-motion: reduce)').matches,
  });
  const history = createHistoryStore(createHistorian(spawnForHistory), store);
  const actions = createActions(host, store, view, history);
  const { notify } = store.getState();
  host.onFilesOpened(actions.receive);
  host.onMenuCommand(actions.obey);
  host.onGone(() => {
    const text = 'Afterfire has been ended where it was started. What is open here stays usable.';
    notify({ tone: 'problem', text });
  });
  const root = document.getElementById('root');
  if (!root) throw new Error('the page has no root');
  createRoot(root).render(
    <StrictMode>
      <AppContext value={store}>
        <ViewContext value={view}>
          <HistoryContext value={history}>
            <ActionsContext value={actions}>
              {/* All words are English and all numbers plain, whatever the machine speaks. */}
              <I18nProvider locale="en">
                <App />
              </I18nProvider>
            </ActionsContext>
          </HistoryContext>
        </ViewContext>
      </AppContext>
    </StrictMode>,
  );
  actions.receive(coming);
};

start().catch((cause: unknown) => {
  console.error(cause);
  document.body.textContent =
    'Afterfire could not reach the program that serves this page. Start it again, and open the page anew.';
});
