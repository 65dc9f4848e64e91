import '../controls/controls.css';
import './cones.css';
import type { AnalysisDocument } from '../../core/model/document.ts';
import type { Span } from '../../core/model/scalars.ts';
import { doseChart } from '../../core/report/chart/dose.ts';
import { prose } from '../../core/report/clean.ts';
import type { TemperatureUnit } from '../../core/units.ts';
import type { Words } from '../../core/wording/wording.ts';
import { SaidLine } from '../controls/said-line.tsx';
import { SaidList } from '../controls/said-list.tsx';
import { ConePack } from './cone-pack.tsx';
import { DoseCurve } from './dose-curve.tsx';
import { LoadAnswer } from './load-answer.tsx';
import { packCones, seenCones } from './pack-cones.ts';
import { PartsTable } from './parts-table.tsx';
import { Remedies } from './remedies.tsx';
import { SeenTable } from './seen-table.tsx';

export interface ConesPanelProps {
  readonly document: AnalysisDocument;
  readonly words: Words;
  readonly unit: TemperatureUnit;
  /** Brings a stretch of the firing into view on the curve; left out where there is no curve. */
  readonly onShowStretch?: (span: Span) => void;
}

const HeatWorkFigures = ({ document, words }: ConesPanelProps) => {
  const { heatWork } = document;
  const cones = packCones(document, words.heatWork);
  const firing = words.heatWork?.pack.find(({ role }) => role === 'firing');
  const chart = heatWork && firing ? doseChart(heatWork) : null;
  if (cones.length === 0 && chart === null) return null;
  return (
    <div className="cones-figures">
      {cones.length === 0 ? null : <ConePack cones={cones} />}
      {chart && firing ? <DoseCurve chart={chart} coneName={firing.name} /> : null}
    </div>
  );
};

const HeatWorkSaid = (props: ConesPanelProps) => {
  const { document, words, onShowStretch } = props;
  const { heatWork } = document;
  const said = words.heatWork;
  const seen = seenCones(document);
  if (heatWork === null || said === null) {
    return <p>{prose(words.verdict[0]?.text ?? '')}</p>;
  }
  return (
    <>
      <p>
        <SaidLine line={said.headline} />
      </p>
      {said.target === null ? null : <p>{prose(said.target)}</p>}
      <HeatWorkFigures {...props} />
      {seen.length === 0 ? null : <SeenTable cones={seen} />}
      {said.coupleError === null ? null : <p>{prose(said.coupleError)}</p>}
      {said.parts.length === 0 ? null : (
        <>
          <h3>Where the heat-work came from</h3>
          <PartsTable words={said.parts} parts={heatWork.parts} onShowStretch={onShowStretch} />
        </>
      )}
    </>
  );
};

/** The heat-work: cones, dose, parts, what would have done it, and whether the load can be saved. */
export const ConesPanel = (props: ConesPanelProps) => {
  const { document, words } = props;
  const remedies = document.heatWork?.remedies ?? [];
  const assumptions = words.heatWork?.assumptions ?? [];
  return (
    <section id="heat-work" aria-labelledby="heat-work-title" className="panel cones">
      <h2 id="heat-work-title">Heat-work</h2>
      <div className="cones-body">
        <div>
          <HeatWorkSaid {...props} />
        </div>
        <div>
          <LoadAnswer state={document.load.state} words={words.load} />
          <Remedies
            said={words.heatWork?.remedies ?? []}
            note={words.heatWork?.remediesNote ?? null}
            remedies={remedies}
          />
          {assumptions.length === 0 ? null : (
            <details className="quiet">
              <summary>What this takes for granted</summary>
              <SaidList said={assumptions} />
            </details>
          )}
        </div>
      </div>
    </section>
  );
};
