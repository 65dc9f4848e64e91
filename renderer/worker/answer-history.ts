import { entriesOf } from '../../core/history/entries.ts';
import { firingOrder, historyOf } from '../../core/history/history.ts';
import type { AnalysisDocument } from '../../core/model/document.ts';
import { createAnswerer, refusedBy, type Surroundings } from './answerer.ts';
import type {
  FiringTold,
  HistoryLog,
  HistoryRequest,
  HistoryTold,
  LogLeftOut,
} from './history-protocol.ts';

const TWICE = {
  code: 'cannot-join',
  message: 'this is the same log as another one here, and is counted once',
  line: null,
} as const;

/** Two firings of one log are two; the same firing of one file is one. */
const isSameFile = (a: AnalysisDocument, b: AnalysisDocument): boolean =>
  a.source.sha256 !== null &&
  a.source.sha256 === b.source.sha256 &&
  a.options.reading?.firing === b.options.reading?.firing;

const UNHEARD = { stage: () => undefined, kept: () => undefined };

/**
 * Reads and judges each log, and tells them as one kiln's history. A log that cannot be read is left
 * out and named; the others are told without it.
 *
 * @param done is told after each log how many are done
 */
export const answerHistory = async (
  { logs, options, rules }: HistoryRequest,
  surroundings: Surroundings,
  done: (count: number) => void,
): Promise<HistoryTold> => {
  const { answer } = createAnswerer(surroundings);
  const firings: FiringTold[] = [];
  const leftOut: LogLeftOut[] = [];
  const judge = async (log: HistoryLog, place: number): Promise<void> => {
    const content = { blob: log.blob };
    const request = {
      ...({ kind: 'analyse', id: place, logKey: place, rules } as const),
      options: { ...options, ...log.own },
      log: { fileName: log.fileName, content },
    };
    try {
      const { document } = await answer(request, UNHEARD);
      const twin = firings.find((other) => isSameFile(other.document, document));
      if (twin === undefined) firings.push({ place, document });
      else leftOut.push({ place, ...TWICE });
    } catch (cause) {
      const { code, message, line } = refusedBy(cause);
      leftOut.push({ place, code, message, line });
    }
  };
  for (const [index, log] of logs.entries()) {
    await judge(log, index);
    done(index + 1);
  }
  const documents = firings.map(({ document }) => document);
  const { places } = firingOrder(documents.map(({ trace }) => trace));
  return {
    history: historyOf(entriesOf(documents)),
    firings: places.map((place) => firings[place]!),
    leftOut,
  };
};
