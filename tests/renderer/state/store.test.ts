import { describe, expect, it, vi } from 'vitest';
import { DEFAULT_PREFERENCES } from '../../../electron/host/contract.ts';
import type { Schedule } from '../../../core/model/schedule.ts';
import { readSchedule } from '../../../core/schedule/read-schedule.ts';
import type { Shelf } from '../../../renderer/state/shelf.ts';
import type { Opened, OpenedLog } from '../../../renderer/host/interface.ts';
import { createAppStore, openFiring } from '../../../renderer/state/store.ts';
import type { Analyst, Outcome } from '../../../renderer/worker/analyst.ts';
import { shownTrace } from '../../builders/shown-trace.ts';
import { exampleDocument } from '../../fixtures/documents/load.ts';

const good = exampleDocument('good-firing');
const troubled = exampleDocument('troubled-firing');
const trace = shownTrace(good.trace);
const answered = (document = good): Outcome => ({ kind: 'answered', document, trace });
const refused: Outcome = {
  ...{ kind: 'refused', code: 'no-time', message: 'no column looks like times', line: 2 },
};

const log = (fileName: string): OpenedLog => ({
  fileName,
  bytes: new TextEncoder().encode('x'),
});
const SCHEDULE = {
  fileName: 'mine.schedule.json',
  text: '{"name":"Mine","segments":[{"ratePerHour":100,"target":1000}]}',
};
const opened = (rest: Partial<Opened>): Opened => ({
  logs: [],
  schedule: null,
  refused: [],
  ...rest,
});

/** A store whose analyst answers when the test says so. */
const setUp = (kept: Schedule[] = []) => {
  const waiting: ((outcome: Outcome) => void)[] = [];
  const asked: Parameters<Analyst['ask']>[] = [];
  const cancel = vi.fn(() => {
    for (const settle of waiting.splice(0)) settle({ kind: 'superseded' });
  });
  const fit = vi.fn<Analyst['fit']>((_log, schedules) =>
    Promise.resolve(schedules.map((schedule) => ({ schedule, confidence: 0.8 }))),
  );
  const analyst: Analyst = {
    ask: (...question) => {
      asked.push(question);
      return new Promise((resolve) => waiting.push(resolve));
    },
    fit,
    cancel,
  };
  const keep = vi.fn();
  const shelf = {
    keep: vi.fn<Shelf['keep']>((schedule) => Promise.resolve([schedule])),
    forget: vi.fn<Shelf['forget']>(() => Promise.resolve([])),
  };
  const begun = { preferences: DEFAULT_PREFERENCES, schedules: kept };
  const store = createAppStore(analyst, begun, { keepPreferences: keep, shelf });
  const answer = async (outcome: Outcome): Promise<void> => {
    waiting.shift()?.(outcome);
    await new Promise((resolve) => setTimeout(resolve));
  };
  const open = async (document = good): Promise<void> => {
    void store.getState().openLog(log('a.csv'));
    await answer(answered(document));
  };
  return { store, shelf, fit, cancel, asked, answer, open, keep, state: store.getState };
};

describe('a schedule without a log to lay it on', () => {
  const ready = 'Schedule “Mine” is ready.';

  it('is said to be ready, and waits for the next log', async () => {
    const { state, asked } = setUp();
    await state().take(opened({ schedule: SCHEDULE }));
    expect(state().notice).toEqual({ tone: 'said', text: ready });
    void state().openLog(log('a.csv'));
    expect(asked[0]?.[1].schedule?.name).toBe('Mine');
  });

  it('is said to be ready where the log on the page was refused', async () => {
    const { state, answer } = setUp();
    void state().openLog(log('a.csv'));
    await answer(refused);
    void state().take(opened({ schedule: SCHEDULE }));
    await answer(refused);
    expect(state().firing.kind).toBe('refused');
    expect(state().notice).toEqual({ tone: 'said', text: ready });
  });

  it('is said beside what was not taken with it', async () => {
    const { state } = setUp();
    const over = { fileName: 's1.json', role: 'schedule', why: 'another was taken' } as const;
    await state().take(opened({ schedule: SCHEDULE, refused: [over] }));
    const text = `“s1.json”: another was taken. ${ready}`;
    expect(state().notice).toEqual({ tone: 'problem', text });
  });
});

describe('opening a log', () => {
  it('goes from nothing over reading, with its stages, to the sheet', async () => {
    const { store, asked, answer, state } = setUp();
    expect(state().firing.kind).toBe('empty');
    void state().openLog(log('a.csv'));
    expect(state().firing).toMatchObject({ kind: 'reading', stage: 'fetching' });
    asked[0]![2]?.('repairing');
    expect(state().firing).toMatchObject({ kind: 'reading', stage: 'repairing' });
    await answer(answered());
    const firing = openFiring(store.getState())!;
    expect(firing.document).toBe(good);
    expect(firing.words.unit).toBe('C');
    expect(state().announcement).toBe(firing.words.verdict.map(({ text }) => text).join(' '));
  });

  it('ends in a refusal with its line where the log cannot be used', async () => {
    const { answer, state } = setUp();
    void state().openLog(log('a.csv'));
    await answer(refused);
    expect(state().firing).toMatchObject({ kind: 'refused', code: 'no-time', line: 2 });
  });

  it('can be stopped, and what stood there before stands there again', async () => {
    const { open, cancel, state } = setUp();
    await open();
    void state().tell({ cone: '6' });
    void state().openLog(log('b.csv'));
    state().cancelReading();
    expect(cancel).toHaveBeenCalled();
    expect(openFiring(state())?.log.fileName).toBe('a.csv');
    expect(openFiring(state())?.isWorking).toBe(false);
    expect(state().told).toEqual(good.options);
  });

  it('does not hear the answer of a log that was stopped', async () => {
    const { answer, state } = setUp();
    void state().openLog(log('a.csv'));
    state().cancelReading();
    await answer(answered());
    expect(state().firing.kind).toBe('empty');
  });

  it('lets go of what was told of the firing before, and keeps what was told of the kiln', async () => {
    const { open, answer, asked, state } = setUp();
    await open();
    void state().tell({ cone: '6', kiln: { heat: 'fuel' } });
    await answer(answered());
    void state().openLog(log('b.csv'));
    expect(asked.at(-1)![1]).toEqual({ kiln: { heat: 'fuel' } });
  });

  it('uses the schedule that came with it, and one that was chosen before there was a log', async () => {
    const { asked, answer, state } = setUp();
    await state().takeSchedule(SCHEDULE);
    expect(state().notice?.text).toContain('Mine');
    void state().openLog(log('a.csv'));
    expect(asked[0]![1].schedule?.name).toBe('Mine');
    await answer(answered());
    void state().openLog(log('b.csv'), {
      ...SCHEDULE,
      text: SCHEDULE.text.replace('Mine', 'Other'),
    });
    expect(asked[1]![1].schedule?.name).toBe('Other');
  });
});

describe('files that come in together', () => {
  it('are a log with its schedule', () => {
    const { asked, state } = setUp();
    void state().take(opened({ logs: [log('a.csv')], schedule: SCHEDULE }));
    expect(asked[0]![0].fileName).toBe('a.csv');
    expect(asked[0]![1].schedule?.name).toBe('Mine');
  });

  it('may be opened by what is known of the log', () => {
    const { asked, state } = setUp();
    void state().openLog(log('a.csv'), null, { cone: '6', purpose: 'glaze' });
    expect(asked[0]![1]).toEqual({ cone: '6', purpose: 'glaze' });
  });

  it('may hold a schedule that cannot be used: the log is opened, and the line is said', () => {
    const { asked, state } = setUp();
    const schedule = { fileName: 'bad.json', text: '{"segments":[]}' };
    void state().take(opened({ logs: [log('a.csv')], schedule }));
    expect(asked[0]![1]).toEqual({});
    expect(state().notice).toMatchObject({ tone: 'problem' });
    expect(state().scheduleRefused?.fileName).toBe('bad.json');
  });

  it('may not be had from the machine, which is said', async () => {
    const { state } = setUp();
    const why = 'you may not read this file';
    await state().take(opened({ refused: [{ fileName: 'c.csv', role: 'log', why }] }));
    expect(state().notice?.text).toBe(`“c.csv”: ${why}`);
    expect(state().firing.kind).toBe('empty');
  });
});

describe('telling something', () => {
  it('changes the answer and keeps the sheet in place meanwhile', async () => {
    const { open, answer, asked, state } = setUp();
    await open();
    void state().tell({ cone: '6' });
    expect(openFiring(state())).toMatchObject({ isWorking: true, document: good });
    expect(asked.at(-1)![1]).toMatchObject({ cone: '6' });
    await answer({ kind: 'answered', document: troubled, trace: null });
    expect(openFiring(state())).toMatchObject({ isWorking: false, document: troubled, trace });
  });

  it('while the log is still being read is worked in as soon as it has been', async () => {
    const { answer, asked, state } = setUp();
    void state().openLog(log('a.csv'));
    void state().tell({ cone: '6' });
    await answer(answered());
    expect(asked.at(-1)![1]).toEqual({ cone: '6' });
    expect(openFiring(state())?.isWorking).toBe(true);
    await answer(answered());
    expect(openFiring(state())?.isWorking).toBe(false);
  });

  it('that cannot be is taken back and said', async () => {
    const { open, answer, state } = setUp();
    await open();
    void state().tell({ reading: { temperatureColumn: 'no such' } });
    await answer(refused);
    expect(state().told).toEqual(good.options);
    expect(state().notice?.text).toContain('no column looks like times');
    expect(openFiring(state())).toMatchObject({ isWorking: false, document: good });
  });

  it('is still being worked in while a later change waits', async () => {
    const { open, answer, state } = setUp();
    await open();
    void state().tell({ cone: '5' });
    void state().tell({ cone: '6' });
    await answer(answered());
    expect(openFiring(state())?.isWorking).toBe(true);
    await answer(answered());
    expect(openFiring(state())?.isWorking).toBe(false);
  });

  it('keeps the chosen finding where it is still found, and lets go of it where not', async () => {
    const { open, answer, state } = setUp();
    await open(troubled);
    const last = troubled.findings.length - 1;
    state().select(last);
    void state().tell({ cone: '5' });
    const findings = [troubled.findings[last]!];
    await answer({ kind: 'answered', document: { ...troubled, findings }, trace: null });
    expect(state().selected).toBe(0);
    void state().tell({ cone: '6' });
    await answer({ kind: 'answered', document: { ...troubled, findings: [] }, trace: null });
    expect(state().selected).toBeNull();
  });
});

describe('the preferences', () => {
  it('change every sentence at once with the unit, and are kept', async () => {
    const { open, keep, state } = setUp();
    await open();
    state().setPreferences({ unit: 'F' });
    const { words } = openFiring(state())!;
    expect(words.unit).toBe('F');
    expect(JSON.stringify(words)).not.toMatch(/\d °C/);
    expect(keep).toHaveBeenLastCalledWith({ ...DEFAULT_PREFERENCES, unit: 'F' });
  });

  it('reach the sheet that waits behind a reading, too', async () => {
    const { open, state } = setUp();
    await open();
    void state().openLog(log('b.csv'));
    state().setPreferences({ unit: 'F' });
    state().cancelReading();
    expect(openFiring(state())?.words.unit).toBe('F');
  });

  it('step the text up and down between 80 and 200 %', () => {
    const { state } = setUp();
    for (let i = 0; i < 20; i++) state().stepText(1);
    expect(state().preferences.textPercent).toBe(200);
    for (let i = 0; i < 20; i++) state().stepText(-1);
    expect(state().preferences.textPercent).toBe(80);
  });
});

describe('the schedules that are kept', () => {
  const mine = readSchedule(SCHEDULE.text, SCHEDULE.fileName);
  const noSchedule = exampleDocument('no-schedule');

  it('gain those that are opened and those that are made', async () => {
    const { shelf, state } = setUp();
    await state().takeSchedule(SCHEDULE);
    expect(shelf.keep.mock.calls).toEqual([[mine, 'opened']]);
    expect(state().kept).toEqual([mine]);
    const made = { ...mine, name: 'Made' };
    await state().tell({ schedule: made });
    expect(shelf.keep).toHaveBeenLastCalledWith(made, 'made');
    await state().tell({ cone: '6' });
    await state().tell({ schedule: undefined });
    expect(shelf.keep).toHaveBeenCalledTimes(2);
  });

  it('are laid on a log that has no schedule, once, and none of them is told', async () => {
    const { open, answer, fit, state } = setUp([mine]);
    await open(noSchedule);
    expect(state().fits).toEqual([{ schedule: mine, confidence: 0.8 }]);
    expect(state().told.schedule).toBeUndefined();
    void state().tell({ cone: '6' });
    await answer({ kind: 'answered', document: noSchedule, trace: null });
    expect(fit).toHaveBeenCalledOnce();
    await state().forgetSchedule('Mine');
    expect([state().kept, state().fits]).toEqual([[], null]);
  });

  it('are not laid on one that has a schedule', async () => {
    const { open, fit, state } = setUp([mine]);
    await open(good);
    expect(fit).not.toHaveBeenCalled();
    expect(state().fits).toBeNull();
  });
});
