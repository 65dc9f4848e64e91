import { useMemo } from 'react';
import { Button } from 'react-aria-components';
import type { AnalysisDocument } from '../../core/model/document.ts';
import type { Span } from '../../core/model/scalars.ts';
import { powerChart } from '../../core/report/chart/power.ts';
import { prose } from '../../core/report/clean.ts';
import type { TemperatureUnit } from '../../core/units.ts';
import type { CapabilityWords, FullPowerWords } from '../../core/wording/power.ts';
import type { Words } from '../../core/wording/wording.ts';
import { PowerCurve } from './power-curve.tsx';
import '../controls/controls.css';
import './power.css';

export interface PowerPanelProps {
  readonly document: AnalysisDocument;
  readonly words: Words;
  readonly unit: TemperatureUnit;
  /** Brings a stretch of the firing into view on the curve; left out where there is no curve. */
  readonly onShowStretch?: (span: Span) => void;
}

interface FullPowerProps {
  readonly rows: readonly FullPowerWords[];
  readonly show: (index: number) => (() => void) | null;
}

const FullPower = ({ rows, show }: FullPowerProps) => (
  <table className="sheet-table">
    <caption className="table-caption">Where it was at full power</caption>
    <thead>
      <tr>
        <th scope="col">stretch</th>
        <th scope="col" className="number">
          lasted
        </th>
        <th scope="col" className="number">
          made
        </th>
        <th scope="col" className="number">
          planned
        </th>
      </tr>
    </thead>
    <tbody>
      {rows.map(({ index, stretch, lasted, made, planned }) => {
        const onShow = show(index);
        return (
          <tr key={index}>
            <th scope="row">
              {onShow ? (
                <Button className="button-link" onPress={onShow}>
                  {prose(stretch)}
                </Button>
              ) : (
                prose(stretch)
              )}
            </th>
            <td className="number">{prose(lasted)}</td>
            <td className="number">{prose(made)}</td>
            <td className="number">{prose(planned)}</td>
          </tr>
        );
      })}
    </tbody>
  </table>
);

const Capability = ({ rows }: { readonly rows: readonly CapabilityWords[] }) => (
  <table className="sheet-table">
    <caption className="table-caption">What it can do, by temperature</caption>
    <thead>
      <tr>
        <th scope="col">at</th>
        <th scope="col" className="number">
          climbs at full power
        </th>
        <th scope="col" className="number">
          cools without
        </th>
        <th scope="col" className="number">
          power over loss
        </th>
      </tr>
    </thead>
    <tbody>
      {rows.map(({ at, heating, cooling, powerToLoss }) => (
        <tr key={at}>
          <th scope="row">{prose(at)}</th>
          <td className="number">{prose(heating)}</td>
          <td className="number">{prose(cooling)}</td>
          <td className="number">{prose(powerToLoss)}</td>
        </tr>
      ))}
    </tbody>
  </table>
);

/** Power and loss: what the kiln can do, how it heats and cools, and its ceiling. */
export const PowerPanel = ({ document, words, unit, onShowStretch }: PowerPanelProps) => {
  const { elements } = document;
  const { answers, fullPower, capability, note } = words.power;
  const chart = useMemo(
    () => (elements === null ? null : powerChart(elements, unit)),
    [elements, unit],
  );
  const show = (index: number) => {
    const span = elements?.limited[index];
    return span && onShowStretch ? () => onShowStretch(span) : null;
  };
  return (
    <section id="power" aria-labelledby="power-title" className="panel power">
      <h2 id="power-title">Power and loss</h2>
      {answers.map((line) => (
        <p key={line}>{prose(line)}</p>
      ))}
      <div className="power-columns">
        <div>
          {chart === null ? null : <PowerCurve chart={chart} unit={unit} />}
          {note === null ? null : <p className="quiet">{prose(note)}</p>}
        </div>
        <div className="power-tables">
          {fullPower.length === 0 ? null : <FullPower rows={fullPower} show={show} />}
          {capability.length === 0 ? null : <Capability rows={capability} />}
        </div>
      </div>
    </section>
  );
};
