import { useId } from 'react';
import type { HeatWork } from '../../core/model/document.ts';
import { HOTTER_CAUTION } from '../../core/wording/cautions.ts';
import { Caution } from '../controls/caution.tsx';
import { SaidList } from '../controls/said-list.tsx';

const HOTTER: readonly HeatWork['remedies'][number]['kind'][] = [
  'longer-hold',
  'higher-peak',
  'slower-last-ramp',
];

interface RemediesProps {
  readonly said: readonly string[];
  readonly note: string | null;
  readonly remedies: HeatWork['remedies'];
}

/** What hold or peak would have done it. */
export const Remedies = ({ said, note, remedies }: RemediesProps) => {
  const id = useId();
  if (said.length === 0) return null;
  const isHotter = remedies.some(({ kind }) => HOTTER.includes(kind));
  return (
    <section aria-labelledby={id}>
      <h3 id={id}>What would have done it</h3>
      <SaidList said={said} />
      {note === null ? null : <p className="quiet">{note}</p>}
      {isHotter ? <Caution>{HOTTER_CAUTION}</Caution> : null}
    </section>
  );
};
