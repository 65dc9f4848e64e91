import '../no-code-from-text.ts';
import { detect } from 'chardet';
import { buffersOf, createAnswerer, refusedBy } from './answerer.ts';
import type { AnalysisRequest, FitRequest, WorkerMessage, WorkerRequest } from './protocol.ts';

/** The worker's own side of `self`, which the DOM's types take for a window. */
interface WorkerSelf {
  postMessage(message: WorkerMessage, transfer?: Transferable[]): void;
  onmessage: ((event: MessageEvent<WorkerRequest>) => void) | null;
}
const worker = self as unknown as WorkerSelf;

/** The system's own hash is there in secure contexts only. */
const sha256 = async (bytes: Uint8Array<ArrayBuffer>): Promise<string | null> => {
  if (!isSecureContext) return null;
  const hash = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
  return Array.from(hash, (byte) => byte.toString(16).padStart(2, '0')).join('');
};

const { answer, fit } = createAnswerer({ guessEncoding: detect, sha256 });

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
