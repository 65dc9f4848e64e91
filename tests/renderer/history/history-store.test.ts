import { describe, expect, it, vi } from 'vitest';
import { DEFAULT_PREFERENCES } from '../../../electron/host/contract.ts';
import { historyOf } from '../../../core/history/history.ts';
import type { Schedule } from '../../../core/model/schedule.ts';
import { celsius } from '../../../core/units.ts';
import { createHistoryStore } from '../../../renderer/history/history-store.ts';
import { createAppStore } from '../../../renderer/state/store.ts';
import type { Analyst } from '../../../renderer/worker/analyst.ts';
import type { Historian, HistoryOutcome } from '../../../renderer/worker/historian.ts';
import { shownTrace } from '../../builders/shown-trace.ts';
import { exampleDocument } from '../../fixtures/documents/load.ts';

const document = exampleDocument('good-firing');
const SCHEDULE: Schedule = {
  ...{ name: 'Mine', cone: null },
  segments: [{ rateCPerHour: 'full', minutes: null, targetC: celsius(1000), holdMinutes: 0 }],
};
const log = (fileName: string) => ({ fileName, bytes: new TextEncoder().encode(fileName) });
const TOLD: HistoryOutcome = {
  kind: 'told',
  ...{ history: historyOf([]), firings: [], leftOut: [] },
};

const setUp = () => {
  const analyst: Analyst = {
    ask: (_log, options) =>
      Promise.resolve({
        kind: 'answered',
        document: { ...document, options },
        trace: shownTrace(document.trace),
      }),
    fit: () => Promise.resolve(null),
    cancel: () => undefined,
  };
  const shelf = { keep: () => Promise.resolve(null), forget: () => Promise.resolve(null) };
  const app = createAppStore(
    analyst,
    { preferences: DEFAULT_PREFERENCES, schedules: [] },
    { keepPreferences: () => undefined, shelf },
  );
  const ask = vi.fn<Historian['ask']>(() => Promise.resolve(TOLD));
  const history = createHistoryStore({ ask, stop: vi.fn() }, app);
  const asked = () => ask.mock.calls.at(-1)![0];
  return { app, history, ask, asked, state: history.getState };
};

describe('a history of several logs', () => {
  it('is told by what was told before, stands on the page, and takes more logs', async () => {
    const { app, state, asked } = setUp();
    await app.getState().tell({ schedule: SCHEDULE });
    await state().open([log('a.csv'), log('b.csv')]);
    expect(state()).toMatchObject({ isShown: true, history: { kind: 'told' } });
    expect(asked().options).toEqual({ schedule: SCHEDULE });
    await state().add([log('c.csv')]);
    expect(asked().logs.map(({ fileName }) => fileName)).toEqual(['a.csv', 'b.csv', 'c.csv']);
  });

  it('puts the firing on the page away, with what was told of that one', async () => {
    const { app, state, asked } = setUp();
    await app.getState().openLog(log('one.csv'));
    await app.getState().tell({ cone: '6', kiln: { circuits: 3 } });
    await state().open([log('a.csv'), log('b.csv')]);
    expect(app.getState().firing.kind).toBe('empty');
    expect(asked().options).toEqual({ kiln: { circuits: 3 } });
  });

  it('is told again when something is told while it stands on the page, and only then', async () => {
    const { app, state, ask, asked } = setUp();
    await state().open([log('a.csv'), log('b.csv')]);
    await app.getState().tell({ cone: '5' });
    expect(ask).toHaveBeenCalledTimes(2);
    expect(asked().options).toEqual({ cone: '5' });
    state().hide();
    await app.getState().tell({ cone: '6' });
    expect(ask).toHaveBeenCalledTimes(2);
  });

  it('keeps with a log what was told of it on its own sheet', async () => {
    const { app, state, ask, asked } = setUp();
    await app.getState().tell({ schedule: SCHEDULE });
    await state().open([log('a.csv'), log('b.csv')]);
    await state().openOne(state().logs[1]!);
    expect(state().isShown).toBe(false);
    expect(app.getState().told).toEqual({ schedule: SCHEDULE });
    const observedCones = [{ cone: '6' as const, place: 'top', bendDegrees: 90 }];
    await app.getState().tell({ observedCones });
    await state().comeBack();
    expect(ask).toHaveBeenCalledTimes(2);
    expect(asked().logs.map(({ own }) => own)).toEqual([{}, { observedCones }]);
    expect(asked().options).toEqual({ schedule: SCHEDULE });
    expect(app.getState()).toMatchObject({ firing: { kind: 'empty' }, told: asked().options });
    await state().openOne(state().logs[1]!);
    expect(app.getState().told).toEqual({ schedule: SCHEDULE, observedCones });
  });

  it('keeps it, too, where another log is opened before anyone comes back', async () => {
    const { app, state, ask, asked } = setUp();
    await state().open([log('a.csv'), log('b.csv')]);
    await state().openOne(state().logs[0]!);
    await app.getState().tell({ kiln: { heat: 'fuel' } });
    const observedCones = [{ cone: '6' as const, place: 'top', bendDegrees: 90 }];
    await app.getState().tell({ observedCones });
    state().hide();
    await app.getState().openLog(log('other.csv'));
    await state().comeBack();
    expect(ask).toHaveBeenCalledTimes(2);
    expect(asked().logs.map(({ own }) => own)).toEqual([{ observedCones }, {}]);
    expect(asked().options).toEqual({ kiln: { heat: 'fuel' } });
  });

  it('is not told again for a look at a sheet, nor by what was told of another log', async () => {
    const { app, state, ask } = setUp();
    await app.getState().tell({ schedule: SCHEDULE });
    await state().open([log('a.csv'), log('b.csv')]);
    await state().openOne(state().logs[0]!);
    await app.getState().openLog(log('other.csv'));
    await app.getState().tell({ cone: '04' });
    await state().comeBack();
    expect(ask).toHaveBeenCalledTimes(1);
    expect(app.getState().told).toEqual({ schedule: SCHEDULE });
  });

  it('leaves nothing that was told of it to a log of another kind', async () => {
    const { app, state, asked } = setUp();
    await app.getState().tell({ schedule: SCHEDULE, kiln: { circuits: 3 } });
    await state().open([log('a.csv'), log('b.csv')]);
    state().hide();
    expect(app.getState().told).toEqual({ kiln: { circuits: 3 } });
    await state().comeBack();
    expect(app.getState().told).toEqual({ schedule: SCHEDULE, kiln: { circuits: 3 } });
    await state().open([log('c.csv'), log('d.csv')]);
    expect(asked().options).toEqual({ kiln: { circuits: 3 } });
    await app.getState().tell({ schedule: SCHEDULE });
    state().close();
    expect(app.getState().told).toEqual({ kiln: { circuits: 3 } });
  });

  it('goes back, when it is stopped, to what was told before', async () => {
    const { app, state, ask } = setUp();
    await state().open([log('a.csv'), log('b.csv')]);
    const before = state().logs;
    ask.mockImplementation(() => new Promise(() => undefined));
    void app.getState().tell({ cone: '6' });
    expect(state().history.kind).toBe('reading');
    state().stop();
    expect(state()).toMatchObject({ isShown: true, history: { kind: 'told' } });
    expect(app.getState().told).toEqual({});
    void state().add([log('c.csv')]);
    state().stop();
    expect(state().logs).toEqual(before);
    expect(ask).toHaveBeenCalledTimes(3);
    void state().open([log('d.csv'), log('e.csv')]);
    state().stop();
    expect(state()).toMatchObject({ isShown: false, logs: [] });
  });

  it('ends with its last log, or when it is closed', async () => {
    const { state, asked } = setUp();
    await state().open([log('a.csv'), log('b.csv')]);
    await state().leaveOut(state().logs[0]!);
    expect(asked().logs.map(({ fileName }) => fileName)).toEqual(['b.csv']);
    await state().leaveOut(state().logs[0]!);
    expect(state()).toMatchObject({ logs: [], history: { kind: 'none' }, isShown: false });
  });
});
