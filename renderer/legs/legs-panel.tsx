import type { AnalysisDocument } from '../../core/model/document.ts';
import type { Span } from '../../core/model/scalars.ts';
import type { TemperatureUnit } from '../../core/units.ts';
import type { Words } from '../../core/wording/wording.ts';

export interface LegsPanelProps {
  readonly document: AnalysisDocument;
  readonly words: Words;
  readonly unit: TemperatureUnit;
  /** Brings a stretch of the firing into view on the curve; left out where there is no curve. */
  readonly onShowStretch?: (span: Span) => void;
}

/** The legs planned against driven, slopes by stretch both ways, overshoots, other places. */
export const LegsPanel = ({ words }: LegsPanelProps) => (
  <section id="legs" aria-labelledby="legs-title">
    <h2 id="legs-title">{words.legs.heading}</h2>
  </section>
);
