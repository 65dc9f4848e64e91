import { useEffect, useRef, useState } from 'react';
import { Button } from 'react-aria-components';
import type { Schedule } from '../../core/model/schedule.ts';
import type { TemperatureUnit } from '../../core/units.ts';
import { Choice } from '../controls/choice.tsx';
import { CONE_CHOICES } from '../controls/cone-names.ts';
import { TextEntry } from '../controls/text-entry.tsx';
import type { FileToSave } from '../../electron/host/contract.ts';
import { LegEntries } from './leg-entries.tsx';
import { ScheduleCurve } from './schedule-curve.tsx';
import {
  isSameSchedule,
  readDraft,
  type DraftChange,
  type DraftReading,
  type ScheduleDraft,
} from './schedule-draft.ts';
import { scheduleFile } from './schedule-file.ts';

/** What is still to be done before the schedule counts; null when nothing is. */
const unfinished = (
  { legs }: ScheduleDraft,
  { schedule, faults }: DraftReading,
  told: Schedule | undefined,
): string | null => {
  if (schedule !== null) return null;
  const numbers = legs.flatMap(({ id }, index) => (faults.has(id) ? [index + 1] : []));
  const which = numbers.length === 1 ? 'Leg' : 'Legs';
  const verb = numbers.length === 1 ? 'is' : 'are';
  const still = told ? ` Until then the answer goes by “${told.name}” as it was.` : '';
  return `${which} ${numbers.join(', ')} ${verb} not finished.${still}`;
};

interface ScheduleEditorProps {
  readonly draft: ScheduleDraft;
  readonly unit: TemperatureUnit;
  /** The schedule that the answer goes by at present. */
  readonly told: Schedule | undefined;
  readonly onChange: (by: DraftChange) => void;
  readonly onSettle: () => void;
  readonly onSave: (file: FileToSave) => void;
}

/** A schedule as a table of legs, drawn as it is typed. */
export const ScheduleEditor = (props: ScheduleEditorProps) => {
  const { draft, unit, told, onChange, onSettle, onSave } = props;
  const [worked, setWorked] = useState<number | null>(null);
  const entries = useRef<HTMLDivElement>(null);
  const addButton = useRef<HTMLButtonElement>(null);
  const legCount = useRef(draft.legs.length);
  const reading = readDraft(draft);
  const { schedule, drawable, faults } = reading;
  const status = unfinished(draft, reading, told);
  const isTold = schedule !== null && isSameSchedule(schedule, told);

  // A new leg is what is typed next; a removed one leaves the keyboard nowhere.
  useEffect(() => {
    const before = legCount.current;
    legCount.current = draft.legs.length;
    if (draft.legs.length < before && document.activeElement === document.body) {
      addButton.current?.focus();
    }
    if (draft.legs.length === before + 1) {
      const added = draft.legs.findIndex(({ id }) => id === draft.nextId - 1);
      const rows = entries.current?.querySelectorAll('tbody tr');
      rows?.[added]?.querySelector('input')?.focus();
    }
  }, [draft]);

  return (
    <div className="told-editor" onBlur={onSettle}>
      <div className="fields">
        <TextEntry
          label="Name"
          value={draft.name}
          hint={draft.name.trim() === '' ? `“${draft.unnamed}” until it has one` : undefined}
          maxLength={120}
          onText={(name) => onChange({ change: 'name', name })}
        />
        <Choice
          label="Meant to reach"
          value={draft.cone}
          none="no cone said"
          choices={CONE_CHOICES}
          onChoice={(cone) => onChange({ change: 'cone', cone })}
        />
      </div>
      <div className="told-editor-body">
        <div ref={entries}>
          <LegEntries
            legs={draft.legs}
            faults={faults}
            unit={unit}
            onChange={onChange}
            onWork={setWorked}
          />
          <div className="told-buttons">
            <Button
              ref={addButton}
              className="button"
              onPress={() => onChange({ change: 'add', before: null, unit })}
            >
              Add a leg
            </Button>
          </div>
          <p className="told-muted">
            A target below the one before is controlled cooling; at full power downwards the heat is
            off until there.
          </p>
          <p role="status" className={status === null ? 'told-muted' : 'told-unfinished'}>
            {status ??
              (isTold ? 'The answer goes by this schedule.' : 'Working this into the answer …')}
          </p>
          <div className="told-buttons">
            {(['json', 'csv'] as const).map((format) => (
              <Button
                key={format}
                className="button-plain"
                isDisabled={schedule === null}
                onPress={() => schedule && onSave(scheduleFile(schedule, format, unit))}
              >
                {`Save as ${format.toUpperCase()}`}
              </Button>
            ))}
          </div>
        </div>
        <ScheduleCurve
          segments={drawable}
          unit={unit}
          marked={worked !== null && worked < drawable.length ? worked : null}
        />
      </div>
    </div>
  );
};
