import '../controls/controls.css';
import './legs.css';
import type { AnalysisDocument } from '../../core/model/document.ts';
import type { Span } from '../../core/model/scalars.ts';
import { prose } from '../../core/report/clean.ts';
import type { TemperatureUnit } from '../../core/units.ts';
import type { Words } from '../../core/wording/wording.ts';
import { SaidList } from '../controls/said-list.tsx';
import { LegsTable } from './legs-table.tsx';
import { bandRows, traceLegRows } from './slope-rows.ts';
import { SlopesTable } from './slopes-table.tsx';

export interface LegsPanelProps {
  readonly document: AnalysisDocument;
  readonly words: Words;
  readonly unit: TemperatureUnit;
  /** Brings a stretch of the firing into view on the curve; left out where there is no curve. */
  readonly onShowStretch?: (span: Span) => void;
}

/** Where each row of the legs' table lies on the log's clock; null for a leg that never ran. */
const spansOf = ({ alignment, trace }: AnalysisDocument): (Span | null)[] =>
  (alignment?.legs.map(({ actual }) => actual) ?? trace.legs).map(
    (leg) => leg && { fromSeconds: leg.startSeconds, toSeconds: leg.endSeconds },
  );

const BAND_HEADS = ['stretch', 'from and to', 'lasted', 'mean slope', 'fastest'];
const TRACE_HEADS = ['leg', 'from and to', 'lasted', 'slope'];

const Slopes = ({ document, words, unit }: LegsPanelProps) => {
  const up = bandRows(document, words, 'heating');
  const down = bandRows(document, words, 'cooling');
  const traceLegs = document.alignment === null ? [] : traceLegRows(document, unit);
  return (
    <>
      <h3>Slopes, stretch by stretch</h3>
      {up.length + down.length === 0 ? (
        <p className="quiet">The log goes through none of the stretches that matter to the ware.</p>
      ) : null}
      <div className="legs-columns">
        <div>
          {up.length === 0 ? null : (
            <SlopesTable caption="On the way up" heads={BAND_HEADS} rows={up} />
          )}
          {down.length === 0 ? null : (
            <SlopesTable caption="On the way down" heads={BAND_HEADS} rows={down} />
          )}
        </div>
        {traceLegs.length === 0 ? null : (
          <SlopesTable
            caption="As the curve itself shows it, whatever was planned"
            heads={TRACE_HEADS}
            rows={traceLegs}
          />
        )}
      </div>
    </>
  );
};

/** The legs planned against driven, slopes by stretch both ways, overshoots, other places. */
export const LegsPanel = (props: LegsPanelProps) => {
  const { document, words, onShowStretch } = props;
  const { heading, note, rows } = words.legs;
  const spans = spansOf(document);
  const show = (index: number) => {
    const span = spans[index];
    return span && onShowStretch ? () => onShowStretch(span) : null;
  };
  return (
    <section id="legs" aria-labelledby="legs-title" className="panel legs">
      <h2 id="legs-title">{heading}</h2>
      <LegsTable caption={heading} rows={rows} show={show} />
      {note === null ? null : <p className="quiet">{prose(note)}</p>}
      <SaidList said={words.overshoots} />
      <Slopes {...props} />
      {words.zones.length === 0 ? null : (
        <>
          <h3>Other measured places</h3>
          <SaidList said={words.zones} />
        </>
      )}
    </section>
  );
};
