import { describe, expect, it } from 'vitest';
import { historyOf } from '../../../core/history/history.ts';
import { createHistorian, type HistoryWorkerLike } from '../../../renderer/worker/historian.ts';
import type { HistoryMessage } from '../../../renderer/worker/history-protocol.ts';

class HandWorker implements HistoryWorkerLike {
  isEnded = false;
  onmessage: HistoryWorkerLike['onmessage'] = null;
  onerror: HistoryWorkerLike['onerror'] = null;
  postMessage(): void {
    // The test answers by hand.
  }
  terminate(): void {
    this.isEnded = true;
  }
  say(message: HistoryMessage): void {
    this.onmessage?.({ data: message } as MessageEvent<HistoryMessage>);
  }
}

const REQUEST = { logs: [], options: {}, rules: [] };
const TOLD = { history: historyOf([]), firings: [], leftOut: [] };

const setUp = () => {
  const workers: HandWorker[] = [];
  const historian = createHistorian(() => {
    const worker = new HandWorker();
    workers.push(worker);
    return worker;
  });
  return { workers, historian };
};

describe('the historian', () => {
  it('tells progress, then the history, and ends its worker', async () => {
    const { workers, historian } = setUp();
    const done: number[] = [];
    const outcome = historian.ask(REQUEST, (n) => done.push(n));
    workers[0]!.say({ kind: 'progress', done: 1 });
    workers[0]!.say({ kind: 'told', told: TOLD });
    expect(await outcome).toEqual({ kind: 'told', ...TOLD });
    expect(done).toEqual([1]);
    expect(workers[0]!.isEnded).toBe(true);
  });

  it('drops a history for a later one, whatever the first still says', async () => {
    const { workers, historian } = setUp();
    const first = historian.ask(REQUEST, () => undefined);
    const second = historian.ask(REQUEST, () => undefined);
    expect(await first).toEqual({ kind: 'superseded' });
    workers[0]!.say({ kind: 'told', told: TOLD });
    workers[1]!.say({ kind: 'told', told: { ...TOLD, leftOut: [] } });
    expect((await second).kind).toBe('told');
    expect(workers.every(({ isEnded }) => isEnded)).toBe(true);
  });

  it('can be stopped, and says where it fell over', async () => {
    const { workers, historian } = setUp();
    const stopped = historian.ask(REQUEST, () => undefined);
    historian.stop();
    expect(await stopped).toEqual({ kind: 'superseded' });
    const failed = historian.ask(REQUEST, () => undefined);
    workers[1]!.onerror?.({ preventDefault: () => undefined } as ErrorEvent);
    expect(await failed).toEqual({ kind: 'failed' });
  });
});
