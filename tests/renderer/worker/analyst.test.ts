import { describe, expect, it, vi } from 'vitest';
import type { Schedule } from '../../../core/model/schedule.ts';
import type { ScheduleFit } from '../../../renderer/worker/fitting.ts';
import { createAnalyst, type WorkerLike } from '../../../renderer/worker/analyst.ts';
import type {
  AnalysisRequest,
  FitRequest,
  LogFile,
  WorkerMessage,
  WorkerRequest,
} from '../../../renderer/worker/protocol.ts';
import { exampleDocument } from '../../fixtures/documents/load.ts';

const document = exampleDocument('good-firing');
const log = (fileName: string): LogFile => ({
  ...{ fileName, byteLength: 1 },
  content: { blob: new Blob(['x']) },
});

/** A worker that answers when the test says so. */
class HandWorker implements WorkerLike {
  readonly asked: AnalysisRequest[] = [];
  readonly toFit: FitRequest[] = [];
  readonly transferred: Transferable[][] = [];
  isEnded = false;
  onmessage: WorkerLike['onmessage'] = null;
  onerror: WorkerLike['onerror'] = null;

  postMessage(request: WorkerRequest, transfer: Transferable[]): void {
    if (request.kind === 'fit') {
      this.toFit.push(request);
      return;
    }
    this.asked.push(request);
    this.transferred.push(transfer);
  }

  terminate(): void {
    this.isEnded = true;
  }

  say(message: WorkerMessage): void {
    this.onmessage?.({ data: message } as MessageEvent<WorkerMessage>);
  }

  fits(confidence: number | null): void {
    const { id } = this.toFit.at(-1)!;
    this.say({ kind: 'fitted', id, confidence });
  }

  answer(): void {
    const { id } = this.asked.at(-1)!;
    this.say({ kind: 'answered', id, document, trace: null });
  }
}

const setUp = () => {
  const workers: HandWorker[] = [];
  const analyst = createAnalyst(() => {
    const worker = new HandWorker();
    workers.push(worker);
    return worker;
  });
  return { analyst, workers };
};

describe('the analyst', () => {
  it('starts its worker when it is first asked, tells the stages, and gives the answer', async () => {
    const { analyst, workers } = setUp();
    expect(workers).toHaveLength(0);
    const onStage = vi.fn();
    const outcome = analyst.ask(log('a.csv'), { cone: '6' }, onStage);
    const [worker] = workers;
    const { id } = worker!.asked[0]!;
    worker!.say({ kind: 'stage', id, stage: 'reading' });
    worker!.answer();
    expect(await outcome).toMatchObject({ kind: 'answered', document });
    expect(onStage.mock.calls).toEqual([['reading']]);
    expect(worker!.asked[0]).toMatchObject({ options: { cone: '6' } });
  });

  it('gives each log a key of its own, and one log the same key every time', async () => {
    const { analyst, workers } = setUp();
    const [a, b] = [log('a.csv'), log('b.csv')];
    for (const file of [a, a, b, a]) {
      const outcome = analyst.ask(file, {});
      workers[0]!.answer();
      await outcome;
    }
    const keys = workers[0]!.asked.map(({ logKey }) => logKey);
    expect(keys[0]).toBe(keys[1]);
    expect(keys[3]).toBe(keys[0]);
    expect(keys[2]).not.toBe(keys[0]);
  });

  it('puts only the last of the questions that pile up about one log', async () => {
    const { analyst, workers } = setUp();
    const file = log('a.csv');
    const outcomes = (['4', '5', '6'] as const).map((cone) => analyst.ask(file, { cone }));
    workers[0]!.answer();
    workers[0]!.answer();
    expect((await Promise.all(outcomes)).map(({ kind }) => kind)).toEqual([
      'answered',
      'superseded',
      'answered',
    ]);
    expect(workers[0]!.asked.map(({ options }) => options.cone)).toEqual(['4', '6']);
  });

  it('ends the worker when another log is opened meanwhile, and starts anew', async () => {
    const { analyst, workers } = setUp();
    const first = analyst.ask(log('large.csv'), {});
    const second = analyst.ask(log('small.csv'), {});
    expect(workers.map(({ isEnded }) => isEnded)).toEqual([true, false]);
    workers[1]!.answer();
    expect((await first).kind).toBe('superseded');
    expect((await second).kind).toBe('answered');
  });

  it('ends work on a large log that is to be read otherwise; a small one is waited for', () => {
    for (const [byteLength, endings] of [
      [38e6, [true, false]],
      [1e4, [false]],
    ] as const) {
      const { analyst, workers } = setUp();
      const file = { ...log('a.csv'), byteLength };
      void analyst.ask(file, { reading: { unit: 'C' } });
      void analyst.ask(file, { reading: { unit: 'F' } });
      expect(workers.map(({ isEnded }) => isEnded)).toEqual(endings);
    }
  });

  it('waits for a large log where the same reading is judged otherwise, or its bytes are lent', () => {
    const { analyst, workers } = setUp();
    const file = { ...log('a.csv'), byteLength: 38e6 };
    void analyst.ask(file, { reading: { unit: 'F', firing: 1 } });
    void analyst.ask(file, { reading: { unit: 'F', firing: 2 }, cone: '6' });
    const lent = { ...file, content: { bytes: new Uint8Array(1) } };
    const other = setUp();
    void other.analyst.ask(lent, {});
    void other.analyst.ask(lent, { reading: { unit: 'F' } });
    expect([...workers, ...other.workers].map(({ isEnded }) => isEnded)).toEqual([false, false]);
  });

  it('drops everything on cancel, and hears no more of it', async () => {
    const { analyst, workers } = setUp();
    const outcome = analyst.ask(log('large.csv'), {});
    analyst.cancel();
    expect(workers[0]!.isEnded).toBe(true);
    workers[0]!.answer();
    expect((await outcome).kind).toBe('superseded');
  });

  it('does not end a worker that has nothing to do', async () => {
    const { analyst, workers } = setUp();
    const outcome = analyst.ask(log('a.csv'), {});
    workers[0]!.answer();
    await outcome;
    analyst.cancel();
    expect(workers[0]!.isEnded).toBe(false);
  });

  it('says so when the worker comes to a sudden end, and works on with another', async () => {
    const { analyst, workers } = setUp();
    const outcome = analyst.ask(log('a.csv'), {});
    workers[0]!.onerror?.({ preventDefault: () => undefined } as ErrorEvent);
    expect(await outcome).toMatchObject({ kind: 'refused', code: 'internal' });
    const next = analyst.ask(log('a.csv'), {});
    workers[1]!.answer();
    expect((await next).kind).toBe('answered');
  });

  it('hands bytes over without copying them, and asks again with the blob made of them', async () => {
    const { analyst, workers } = setUp();
    const bytes = new Uint8Array([1, 2, 3]);
    const file: LogFile = { ...log('a.csv'), content: { bytes } };
    const outcome = analyst.ask(file, {});
    const [worker] = workers;
    expect(worker!.transferred[0]).toEqual([bytes.buffer]);
    expect(file.content).toBeNull();
    const blob = new Blob([bytes]);
    worker!.say({ kind: 'kept', id: worker!.asked[0]!.id, blob });
    worker!.answer();
    await outcome;
    expect(file.content).toEqual({ blob });
    void analyst.ask(file, { cone: '6' });
    expect(worker!.asked[1]!.log.content).toEqual({ blob });
    expect(worker!.transferred[1]).toEqual([]);
  });

  it('says so when the worker ended with the bytes in its hands', async () => {
    const { analyst, workers } = setUp();
    const file: LogFile = { ...log('a.csv'), content: { bytes: new Uint8Array([1]) } };
    const outcome = analyst.ask(file, {});
    workers[0]!.onerror?.({ preventDefault: () => undefined } as ErrorEvent);
    await outcome;
    expect(await analyst.ask(file, {})).toMatchObject({ code: 'file-unreadable' });
  });
});

describe('how schedules lie on a log', () => {
  const schedules = ['A', 'B', 'C'].map((name): Schedule => ({ name, cone: null, segments: [] }));
  const names = (fits: readonly ScheduleFit[] | null) => fits?.map(({ schedule }) => schedule.name);

  const read = async () => {
    const { analyst, workers } = setUp();
    const file = log('a.csv');
    const outcome = analyst.ask(file, {});
    workers[0]!.answer();
    await outcome;
    return { analyst, file, worker: workers[0]! };
  };

  it('is asked one by one, and told with the best first and of equals the later used', async () => {
    const { analyst, file, worker } = await read();
    const fits = analyst.fit(file, schedules);
    for (const confidence of [0.4, 0.9, 0.4]) {
      expect(worker.toFit.at(-1)?.logKey).toBe(worker.asked[0]!.logKey);
      worker.fits(confidence);
    }
    expect(worker.toFit).toHaveLength(3);
    expect(names(await fits)).toEqual(['B', 'A', 'C']);
  });

  it('stands back behind a question, and goes on after it', async () => {
    const { analyst, file, worker } = await read();
    const fits = analyst.fit(file, schedules);
    const outcome = analyst.ask(file, { cone: '6' });
    worker.fits(0.1);
    expect(worker.toFit).toHaveLength(1);
    worker.answer();
    await outcome;
    worker.fits(0.2);
    worker.fits(0.3);
    expect(names(await fits)).toEqual(['C', 'B', 'A']);
  });

  it('comes to nothing with another round, another log or a worker that is ended', async () => {
    const { analyst, file, worker } = await read();
    const first = analyst.fit(file, schedules);
    const second = analyst.fit(file, schedules);
    expect(await first).toBeNull();
    worker.fits(null);
    expect(await second).toBeNull();
    const third = analyst.fit(file, schedules);
    void analyst.ask(file, {});
    analyst.cancel();
    expect(await third).toBeNull();
  });
});
