import '../controls/controls.css';
import './reading.css';
import { Button } from 'react-aria-components';
import type { AnalysisDocument } from '../../core/model/document.ts';
import type { Options } from '../../core/model/options.ts';
import { prose } from '../../core/report/clean.ts';
import type { TemperatureUnit } from '../../core/units.ts';
import type { Words } from '../../core/wording/wording.ts';
import { SaidList } from '../controls/said-list.tsx';
import { ChannelsTable } from './channels-table.tsx';
import { ChecksTable } from './checks-table.tsx';
import { DecisionsTable } from './decisions-table.tsx';
import { ReadDifferently } from './read-differently.tsx';
import { RejectedRows } from './rejected-rows.tsx';

export interface ReadingPanelProps {
  readonly document: AnalysisDocument;
  readonly words: Words;
  readonly unit: TemperatureUnit;
  /** What has been told so far, and how it is changed: here a guess of the reader is put right. */
  readonly options: Options;
  readonly onOptions: (next: Options) => void;
  /** Opens the reading desk; left out where there is none. */
  readonly onDesk?: () => void;
}

const Warnings = ({ warnings }: { readonly warnings: readonly string[] }) =>
  warnings.length === 0 ? null : (
    <ul className="reading-warnings">
      {warnings.map((warning) => (
        <li key={warning}>
          <span aria-hidden="true">▲ </span>
          {prose(warning)}
        </li>
      ))}
    </ul>
  );

/** How the log was read: every decision and each rejected row; and everything that was looked for. */
export const ReadingPanel = (props: ReadingPanelProps) => {
  const { document, words, options, onOptions, onDesk } = props;
  const { account, warnings, assumptions, decisions, rejected, rejectedUnlisted } = words.reading;
  return (
    <section id="reading" aria-labelledby="reading-title" className="panel reading">
      <h2 id="reading-title">How the log was read</h2>
      <Warnings warnings={warnings} />
      <div className="reading-columns">
        <div>
          <SaidList said={[...account, ...assumptions]} />
          <ReadDifferently document={document} options={options} onOptions={onOptions} />
          {onDesk === undefined ? null : (
            <p>
              <Button className="button" onPress={onDesk}>
                Look at it line by line
              </Button>
            </p>
          )}
          <DecisionsTable decisions={decisions} />
          <ChannelsTable channels={document.source.channels} />
        </div>
        <div>
          {rejected.length === 0 ? null : (
            <RejectedRows rows={rejected} unlisted={rejectedUnlisted} />
          )}
          <ChecksTable checks={words.checks} />
        </div>
      </div>
    </section>
  );
};
