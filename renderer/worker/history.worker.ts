import '../no-way-out.ts';
import '../no-code-from-text.ts';
import { answerHistory } from './answer-history.ts';
import type { HistoryMessage, HistoryRequest } from './history-protocol.ts';
import { SURROUNDINGS } from './surroundings.ts';

/** The worker's own side of `self`, which the DOM's types take for a window. */
interface WorkerSelf {
  postMessage(message: HistoryMessage): void;
  onmessage: ((event: MessageEvent<HistoryRequest>) => void) | null;
}
const worker = self as unknown as WorkerSelf;

const fail = (cause: unknown): void => {
  // Past a promise no error reaches the page by itself.
  setTimeout(() => {
    throw cause;
  });
};

worker.onmessage = ({ data }) => {
  answerHistory(data, SURROUNDINGS, (done) => worker.postMessage({ kind: 'progress', done })).then(
    (told) => worker.postMessage({ kind: 'told', told }),
    fail,
  );
};
