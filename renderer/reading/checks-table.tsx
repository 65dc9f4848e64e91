import { useId, useState } from 'react';
import type { Check } from '../../core/model/finding.ts';
import { prose } from '../../core/report/clean.ts';
import type { CheckWords } from '../../core/wording/checks.ts';
import { Pick } from '../controls/pick.tsx';

type Outcome = Check['outcome'];

/** Shape and word say the outcome; no colour is needed. */
const MARKS: Readonly<Record<Outcome, string>> = {
  found: '◆',
  clear: '✓',
  'not-applicable': '–',
  failed: '▲',
};

/** Every check, also those that found nothing or could not tell. */
export const ChecksTable = ({ checks }: { readonly checks: readonly CheckWords[] }) => {
  const id = useId();
  const [only, setOnly] = useState<Outcome | null>(null);
  const outcomes = [...new Map(checks.map((check) => [check.outcome, check.outcomeWord]))];
  const shown = checks.filter(({ outcome }) => only === null || outcome === only);
  return (
    <section id="checks" aria-labelledby={id}>
      <h3 id={id}>What was looked for</h3>
      <p className="quiet">Silence is no clean bill of health: each check says how it came out.</p>
      <Pick
        label="Show"
        isBeside
        value={only}
        none={`all ${checks.length}`}
        choices={outcomes.map(([value, word]) => ({
          value,
          label: `${word} (${checks.filter(({ outcome }) => outcome === value).length})`,
        }))}
        onPick={setOnly}
      />
      <table className="sheet-table">
        <caption className="unseen">What was looked for, and how it came out</caption>
        <thead>
          <tr>
            <th scope="col">looked for</th>
            <th scope="col">outcome</th>
            <th scope="col">because</th>
          </tr>
        </thead>
        <tbody>
          {shown.map(({ id: check, name, outcome, outcomeWord, reason }) => (
            <tr key={check}>
              <th scope="row">{prose(name)}</th>
              <td className={outcome === 'found' ? 'unbroken strong' : 'unbroken'}>
                <span aria-hidden="true" className="check-mark">
                  {MARKS[outcome]}
                </span>
                {outcomeWord}
              </td>
              <td>{prose(reason)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
};
