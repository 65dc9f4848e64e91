import '../controls/controls.css';
import './desk.css';
import type { ReactNode } from 'react';
import { Button } from 'react-aria-components';
import type { ReadingShown } from '../../core/log/show/shown.ts';
import type { AnalysisDocument } from '../../core/model/document.ts';
import type { Options } from '../../core/model/options.ts';
import { prose } from '../../core/report/clean.ts';
import type { TemperatureUnit } from '../../core/units.ts';
import { sentence } from '../../core/wording/topic.ts';
import { DeskColumns } from './desk-columns.tsx';
import { DeskControls } from './desk-controls.tsx';
import { DeskLines } from './desk-lines.tsx';
import { DeskPlot } from './desk-plot.tsx';

export interface DeskProps {
  /** Null until the lines are there. */
  readonly reading: ReadingShown | null;
  /** The firing as it is read now; null where the log is refused. */
  readonly document: Pick<AnalysisDocument, 'curve' | 'trace'> | null;
  /** What is to be said of the reading as a whole. */
  readonly account: readonly string[];
  readonly options: Options;
  readonly unit: TemperatureUnit;
  readonly isWorking: boolean;
  /** Why the log cannot be read as was told last. */
  readonly misread: string | null;
  readonly onOptions: (next: Options) => void;
  readonly onTakeBack: () => void;
  /** Left out where the desk is all there is. */
  readonly onClose?: () => void;
  /** The firings in the log, where it holds several. */
  readonly firings?: ReactNode;
  /** The rules that are kept, where they are. */
  readonly children?: ReactNode;
}

interface MisreadProps {
  readonly why: string;
  readonly onTakeBack: () => void;
}

const Misread = ({ why, onTakeBack }: MisreadProps) => (
  <p className="desk-misread" role="alert">
    <span>
      <span aria-hidden="true">▲ </span>
      So it cannot be read: {prose(why)}. The sheet still shows it as it was read before.
    </span>{' '}
    <Button className="button" onPress={onTakeBack}>
      Take it back
    </Button>
  </p>
);

/** How a log is read: its lines beside what was made of them, and every decision to be changed. */
export const Desk = (props: DeskProps) => {
  const { reading, document, account, options, unit, isWorking, misread, onOptions } = props;
  return (
    <section id="desk" aria-labelledby="desk-title" className="panel desk" aria-busy={isWorking}>
      <div className="desk-head">
        <h2 id="desk-title" tabIndex={-1}>
          Reading desk
        </h2>
        {isWorking ? <span className="quiet">… reading it so</span> : null}
        {props.onClose === undefined ? null : (
          <Button className="button desk-close" onPress={props.onClose}>
            Close the desk
          </Button>
        )}
      </div>
      {account.length === 0 ? null : (
        <p className="desk-account">{prose(sentence(account.join(' ')))}</p>
      )}
      {misread === null ? null : <Misread why={misread} onTakeBack={props.onTakeBack} />}
      {reading === null ? (
        <p className="quiet">Its lines are being fetched …</p>
      ) : (
        <div className="desk-halves">
          <div className="desk-seen">
            <div className="desk-made">
              {document === null ? null : <DeskPlot document={document} unit={unit} />}
              {reading.columns.length === 0 ? null : (
                <DeskColumns
                  columns={reading.columns}
                  decisions={reading.decisions}
                  {...{ options, onOptions }}
                />
              )}
            </div>
            <DeskLines reading={reading} unit={unit} />
          </div>
          <div className="desk-decided">
            {props.firings}
            <h3>Read it differently</h3>
            <DeskControls {...{ reading, options, unit, onOptions }} />
            {props.children}
          </div>
        </div>
      )}
    </section>
  );
};
