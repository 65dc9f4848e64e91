import { describe, expect, it } from 'vitest';
import type { ReadingShown } from '../../../core/log/show/shown.ts';
import { DEFAULT_PREFERENCES } from '../../../electron/host/contract.ts';
import { createAppStore, openFiring } from '../../../renderer/state/store.ts';
import type { Analyst, Outcome } from '../../../renderer/worker/analyst.ts';
import type { Refused } from '../../../renderer/worker/protocol.ts';
import { shownTrace } from '../../builders/shown-trace.ts';
import { exampleDocument } from '../../fixtures/documents/load.ts';

const good = exampleDocument('good-firing');
const trace = shownTrace(good.trace);
const answered = (document = good): Outcome => ({ kind: 'answered', document, trace });
const refused: { readonly kind: 'refused' } & Refused = {
  ...{ kind: 'refused', code: 'no-time', message: 'no column looks like times', line: 2 },
};
const log = (fileName: string) => ({ fileName, bytes: new TextEncoder().encode('x') });

/** A store whose analyst answers when the test says so. */
const setUp = () => {
  const waiting: ((outcome: Outcome) => void)[] = [];
  const asked: Parameters<Analyst['ask']>[] = [];
  const analyst: Analyst = {
    ask: (...question) => {
      asked.push(question);
      return new Promise((resolve) => waiting.push(resolve));
    },
    fit: () => Promise.resolve(null),
    cancel: () => undefined,
  };
  const nothing = () => Promise.resolve(null);
  const store = createAppStore(
    analyst,
    { preferences: DEFAULT_PREFERENCES, schedules: [] },
    { keepPreferences: () => undefined, shelf: { keep: nothing, forget: nothing } },
  );
  const answer = async (outcome: Outcome): Promise<void> => {
    waiting.shift()?.(outcome);
    await new Promise((resolve) => setTimeout(resolve));
  };
  const open = async (document = good): Promise<void> => {
    void store.getState().openLog(log('a.csv'));
    await answer(answered(document));
  };
  return { asked, answer, open, state: store.getState };
};

const reading: ReadingShown = {
  ...{ lineCount: 0, lines: [], columns: [], decisions: [], warnings: [] },
};
const read = (): Outcome => ({ kind: 'answered', document: good, trace, reading });

describe('the reading desk', () => {
  const unsure = (): typeof good => {
    const document = structuredClone(good);
    document.source.decisions[0]!.certainty = 0.4;
    return document;
  };

  it('opens by itself where something about a log is a guess, and not for the next log', async () => {
    const { open, state } = setUp();
    await open();
    expect(state().isDesk).toBe(false);
    await open(unsure());
    expect(state().isDesk).toBe(true);
    await open();
    expect(state().isDesk).toBe(false);
  });

  it('asks for the lines when it is opened, once', async () => {
    const { asked, answer, open, state } = setUp();
    await open();
    void state().showDesk(true);
    expect(asked[1]![3]).toEqual({ wantsReading: true });
    await answer(read());
    expect(openFiring(state())!.reading).toBe(reading);
    void state().showDesk(false);
    void state().showDesk(true);
    expect(asked).toHaveLength(2);
  });

  it('shows why a log cannot be read so, and keeps what was told until it is taken back', async () => {
    const { answer, open, state } = setUp();
    await open();
    void state().showDesk(true);
    await answer(read());
    const before = state().told;
    void state().tell({ reading: { delimiter: '|' } });
    await answer({ ...refused, reading });
    expect(openFiring(state())!.misread?.message).toBe('no column looks like times');
    expect(state().told.reading).toEqual({ delimiter: '|' });
    expect(state().notice).toBeNull();
    void state().showDesk(false);
    expect(openFiring(state())!.misread).toBeNull();
    expect(state().told.reading).toEqual(before.reading);
  });

  it('reads a refused log after all', async () => {
    const { answer, asked, state } = setUp();
    void state().openLog(log('a.csv'));
    await answer(refused);
    void state().tell({ cone: '6' });
    expect(asked).toHaveLength(1);
    void state().tell({ reading: { unit: 'F' } });
    expect(state().firing).toMatchObject({ kind: 'refused', isWorking: true });
    await answer(answered());
    expect(state().firing.kind).toBe('open');
    expect(state().isDesk).toBe(true);
  });
});
