import type { AnalysisDocument } from '../../core/model/document.ts';
import { celsius, type TemperatureUnit } from '../../core/units.ts';
import { duration, speechIn } from '../../core/wording/speech.ts';
import { SmallCurve } from './small-curve.tsx';

interface DeskPlotProps {
  readonly document: Pick<AnalysisDocument, 'curve' | 'trace'>;
  readonly unit: TemperatureUnit;
}

const startText = (startInstant: string | null): string =>
  startInstant === null
    ? 'The log does not say when it began'
    : `It began ${startInstant.replace('T', ' ').slice(0, 16)}`;

/** The curve as it is read now. */
export const DeskPlot = ({ document: { curve, trace }, unit }: DeskPlotProps) => {
  const { temperature } = speechIn(unit);
  const said = `${startText(trace.startInstant)}, lasts ${duration(trace.durationSeconds)} and goes from ${temperature(celsius(trace.minC))} to ${temperature(celsius(trace.peakC))}.`;
  return (
    <figure className="desk-plot">
      <SmallCurve readings={curve} unit={unit} title={`The curve as it is read now. ${said}`} />
      <figcaption>{said}</figcaption>
    </figure>
  );
};
