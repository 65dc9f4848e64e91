import { useMemo } from 'react';
import { speechIn } from '../../core/wording/speech.ts';
import type { OpenFiring } from '../state/firing.ts';
import { readoutAt, readoutWords, type ReadoutWords } from './readout.ts';
import { useView } from './use-view.ts';

/** The readout at the crosshair, in words. */
export const useReadout = ({
  document,
  trace,
  words,
}: OpenFiring): ReadoutWords & { at: number } => {
  const moment = useView(({ atSeconds }) => atSeconds);
  return useMemo(() => {
    const readout = readoutAt(trace, document, moment);
    const said = readoutWords(readout, document.trace.startInstant, speechIn(words.unit));
    return { ...said, at: readout.atSeconds };
  }, [document, trace, words.unit, moment]);
};

interface CellProps {
  readonly name: string;
  readonly value: string;
  /** A value that says by itself what it is. */
  readonly isPlain?: boolean;
}

const Cell = ({ name, value, isPlain = false }: CellProps) => (
  <div className="readout-cell">
    <dt className={isPlain ? 'unseen' : undefined}>{name}</dt>
    <dd>{value}</dd>
  </div>
);

/** What stands under the crosshair, in the margin: nothing covers the data. */
export const ReadoutMargin = ({ firing }: { readonly firing: OpenFiring }) => {
  const readout = useReadout(firing);
  const hasPlan = firing.document.alignment !== null;
  return (
    <dl className="readout" aria-label="Under the crosshair">
      <Cell
        name="time"
        isPlain
        value={readout.clock === null ? readout.time : `${readout.time} · ${readout.clock}`}
      />
      <Cell name="kiln" value={readout.kiln} />
      {hasPlan ? <Cell name="planned" value={readout.planned} /> : null}
      {hasPlan ? <Cell name="difference" value={readout.difference} /> : null}
      <Cell name="slope" value={readout.slope} />
    </dl>
  );
};
