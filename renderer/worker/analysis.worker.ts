import '../no-way-out.ts';
import '../no-code-from-text.ts';
import { buffersOf, createAnswerer, refusedBy } from './answerer.ts';
import type { AnalysisRequest, FitRequest, WorkerMessage, WorkerRequest } from './protocol.ts';
import { SURROUNDINGS } from './surroundings.ts';

/** The worker's own side of `self`, which the DOM's types take for a window. */
interface WorkerSelf {
  postMessage(message: WorkerMessage, transfer?: Transferable[]): void;
  onmessage: ((event: MessageEvent<WorkerRequest>) => void) | null;
}
const worker = self as unknown as WorkerSelf;

const { answer, fit } = createAnswerer(SURROUNDINGS);

const analyse = async (request: AnalysisRequest): Promise<void> => {
  const { id } = request;
  try {
    const answered = await answer(request, {
      stage: (stage) => worker.postMessage({ kind: 'stage', id, stage }),
      kept: (blob) => worker.postMessage({ kind: 'kept', id, blob }),
    });
    const { trace } = answered;
    worker.postMessage({ kind: 'answered', id, ...answered }, trace ? buffersOf(trace) : []);
  } catch (cause) {
    worker.postMessage({ kind: 'refused', id, ...refusedBy(cause) });
  }
};

const layOn = (request: FitRequest): void => {
  const { id } = request;
  let confidence: number | null = null;
  try {
    confidence = fit(request);
  } catch {
    // Only a help in choosing is lost; whoever chooses that schedule is told of the fault.
  }
  worker.postMessage({ kind: 'fitted', id, confidence });
};

let last: Promise<void> = Promise.resolve();
worker.onmessage = ({ data }) => {
  last = last.then(() => (data.kind === 'fit' ? layOn(data) : analyse(data)));
};
