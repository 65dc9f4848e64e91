import type { AnalysisDocument } from '../../core/model/document.ts';
import type { Options } from '../../core/model/options.ts';
import type { TemperatureUnit } from '../../core/units.ts';
import type { Words } from '../../core/wording/wording.ts';

export interface ReadingPanelProps {
  readonly document: AnalysisDocument;
  readonly words: Words;
  readonly unit: TemperatureUnit;
  /** What has been told so far, and how it is changed: here a guess of the reader is put right. */
  readonly options: Options;
  readonly onOptions: (next: Options) => void;
}

/** How the log was read: every decision and each rejected row; and everything that was looked for. */
export const ReadingPanel = (_props: ReadingPanelProps) => (
  <section id="reading" aria-labelledby="reading-title">
    <h2 id="reading-title">How the log was read</h2>
  </section>
);
