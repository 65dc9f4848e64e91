import type { Dispatch } from 'react';
import { Button } from 'react-aria-components';
import type { TemperatureUnit } from '../../core/units.ts';
import { Choice, type ChoiceOf } from '../controls/choice.tsx';
import { TextEntry } from '../controls/text-entry.tsx';
import { entryText } from './entry.ts';
import type { LegDraft, LegFaults, LegField, Way } from './leg-draft.ts';
import type { DraftChange } from './schedule-draft.ts';

const WAYS: readonly ChoiceOf<Way>[] = [
  { value: 'rate', label: 'at a rate' },
  { value: 'full', label: 'at full power' },
  { value: 'minutes', label: 'in a time' },
];

interface LegRowProps {
  readonly leg: LegDraft;
  readonly number: number;
  readonly unit: TemperatureUnit;
  readonly faults: LegFaults | undefined;
  readonly isOnly: boolean;
  readonly onChange: Dispatch<DraftChange>;
  readonly onFocus: () => void;
}

const Pace = ({ leg, number, unit, faults, onChange }: LegRowProps) => {
  const enter = (field: LegField) => (text: string) =>
    onChange({ change: 'enter', id: leg.id, field, text, unit });
  if (leg.way === 'full') return <span className="told-muted">as fast as it goes</span>;
  if (leg.way === 'minutes')
    return (
      <TextEntry
        label={`Leg ${number}, time`}
        isLabelHidden
        isNumber
        unit="min"
        value={leg.minutes}
        onText={enter('minutes')}
        wrong={faults?.wrong.minutes ?? null}
      />
    );
  return (
    <TextEntry
      label={`Leg ${number}, rate`}
      isLabelHidden
      isNumber
      unit={`°${unit}/h`}
      value={entryText(leg.rate, 'rate', unit)}
      onText={enter('rate')}
      wrong={faults?.wrong.rate ?? null}
    />
  );
};

const LegRow = (props: LegRowProps) => {
  const { leg, number, unit, faults, isOnly, onChange, onFocus } = props;
  const { id } = leg;
  return (
    <tr onFocus={onFocus}>
      <th scope="row">{number}</th>
      <td>
        <Choice
          label={`Leg ${number}, goes`}
          isLabelHidden
          value={leg.way}
          choices={WAYS}
          onChoice={(way) => way && onChange({ change: 'way', id, way })}
        />
      </td>
      <td>
        <Pace {...props} />
      </td>
      <td>
        <TextEntry
          label={`Leg ${number}, target`}
          isLabelHidden
          isNumber
          unit={`°${unit}`}
          value={entryText(leg.target, 'temperature', unit)}
          onText={(text) => onChange({ change: 'enter', id, field: 'target', text, unit })}
          wrong={faults?.wrong.target ?? null}
        />
      </td>
      <td>
        <TextEntry
          label={`Leg ${number}, hold`}
          isLabelHidden
          isNumber
          unit="min"
          value={leg.hold}
          onText={(text) => onChange({ change: 'enter', id, field: 'hold', text, unit })}
          wrong={faults?.wrong.hold ?? null}
        />
      </td>
      <td className="told-leg-buttons">
        <Button
          className="button-plain"
          aria-label={`Put a leg before leg ${number}`}
          onPress={() => onChange({ change: 'add', before: id, unit })}
        >
          insert above
        </Button>
        <Button
          className="button-plain"
          aria-label={`Remove leg ${number}`}
          isDisabled={isOnly}
          onPress={() => onChange({ change: 'remove', id })}
        >
          remove
        </Button>
      </td>
    </tr>
  );
};

interface LegEntriesProps {
  readonly legs: readonly LegDraft[];
  readonly faults: ReadonlyMap<number, LegFaults>;
  readonly unit: TemperatureUnit;
  readonly onChange: Dispatch<DraftChange>;
  /** The leg that is worked on, by its place. */
  readonly onWork: (index: number) => void;
}

/** The legs of a schedule as a table of fields. */
export const LegEntries = ({ legs, faults, unit, onChange, onWork }: LegEntriesProps) => (
  <table className="told-legs">
    <caption className="unseen">The legs of the schedule</caption>
    <thead>
      <tr>
        <th scope="col">#</th>
        <th scope="col">goes</th>
        <th scope="col">rate or time</th>
        <th scope="col">to</th>
        <th scope="col">then holds</th>
        <th scope="col">
          <span className="unseen">change</span>
        </th>
      </tr>
    </thead>
    <tbody>
      {legs.map((leg, index) => (
        <LegRow
          key={leg.id}
          leg={leg}
          number={index + 1}
          unit={unit}
          faults={faults.get(leg.id)}
          isOnly={legs.length === 1}
          onChange={onChange}
          onFocus={() => onWork(index)}
        />
      ))}
    </tbody>
  </table>
);
