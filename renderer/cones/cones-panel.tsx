import type { AnalysisDocument } from '../../core/model/document.ts';
import type { Span } from '../../core/model/scalars.ts';
import type { TemperatureUnit } from '../../core/units.ts';
import type { Words } from '../../core/wording/wording.ts';

export interface ConesPanelProps {
  readonly document: AnalysisDocument;
  readonly words: Words;
  readonly unit: TemperatureUnit;
  /** Brings a stretch of the firing into view on the curve; left out where there is no curve. */
  readonly onShowStretch?: (span: Span) => void;
}

/** The heat-work: cones, dose, parts, what would have done it, and whether the load can be saved. */
export const ConesPanel = (_props: ConesPanelProps) => (
  <section id="heat-work" aria-labelledby="heat-work-title">
    <h2 id="heat-work-title">Heat-work</h2>
  </section>
);
