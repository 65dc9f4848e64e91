import { useId } from 'react';
import { Button } from 'react-aria-components';
import type { AnalysisDocument } from '../../core/model/document.ts';
import type { Options } from '../../core/model/options.ts';
import { retold } from '../state/told.ts';
import { Choice } from '../controls/choice.tsx';
import { NumberEntry } from '../controls/number-entry.tsx';
import {
  DAY_ORDER_CHOICES,
  decided,
  DECIMAL_MARK_CHOICES,
  DELIMITER_CHOICES,
  judgeInterval,
  temperatureChoices,
  timeChoices,
  toldReading,
  UNIT_CHOICES,
} from './reading-choices.ts';

interface ReadDifferentlyProps {
  readonly document: AnalysisDocument;
  readonly options: Options;
  readonly onOptions: (next: Options) => void;
}

const AS_READ = 'as it was read';

/** What the reader guessed can be put right here; the log is then read anew. */
export const ReadDifferently = ({ document, options, onOptions }: ReadDifferentlyProps) => {
  const id = useId();
  const { reading } = options;
  const isDelimited = document.source.format === 'delimited';
  const hasDates = decided(document, 'day-order') !== null;
  const hasNoTime = decided(document, 'interval') !== null || reading?.intervalSeconds;
  const tell = (change: Parameters<typeof toldReading>[1]) =>
    onOptions(toldReading(options, change));
  return (
    <section aria-labelledby={id} className="read-differently">
      <h3 id={id}>Read it differently</h3>
      <div className="fields">
        <Choice
          label="The kiln’s temperature stands in"
          value={reading?.temperatureColumn ?? null}
          none={AS_READ}
          choices={temperatureChoices(document)}
          onChoice={(temperatureColumn) =>
            tell({ temperatureColumn: temperatureColumn ?? undefined })
          }
        />
        <Choice
          label="Temperatures are in"
          value={reading?.unit ?? null}
          none={AS_READ}
          choices={UNIT_CHOICES}
          onChoice={(unit) => tell({ unit: unit ?? undefined })}
        />
        <Choice
          label="The time stands in"
          value={reading?.timeColumns?.[0] ?? null}
          none={AS_READ}
          choices={timeChoices(document)}
          onChoice={(column) => tell({ timeColumns: column === null ? undefined : [column] })}
        />
        {hasDates ? (
          <Choice
            label="Dates are written"
            value={reading?.dayOrder ?? null}
            none={AS_READ}
            choices={DAY_ORDER_CHOICES}
            onChoice={(dayOrder) => tell({ dayOrder: dayOrder ?? undefined })}
          />
        ) : null}
        {isDelimited ? (
          <>
            <Choice
              label="Cells are parted by"
              value={reading?.delimiter ?? null}
              none={AS_READ}
              choices={DELIMITER_CHOICES}
              onChoice={(delimiter) => tell({ delimiter: delimiter ?? undefined })}
            />
            <Choice
              label="The decimal mark is"
              value={reading?.decimalMark ?? null}
              none={AS_READ}
              choices={DECIMAL_MARK_CHOICES}
              onChoice={(decimalMark) => tell({ decimalMark: decimalMark ?? undefined })}
            />
          </>
        ) : null}
        {hasNoTime ? (
          <NumberEntry
            label="A row every"
            unit="s"
            value={reading?.intervalSeconds ?? null}
            judge={judgeInterval}
            onNumber={(intervalSeconds) => tell({ intervalSeconds: intervalSeconds ?? undefined })}
          />
        ) : null}
      </div>
      {reading === undefined ? null : (
        <Button
          className="button-plain"
          onPress={() => onOptions(retold(options, { reading: undefined }))}
        >
          read it as before
        </Button>
      )}
    </section>
  );
};
