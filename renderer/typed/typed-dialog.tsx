import '../controls/controls.css';
import '../desk/desk.css';
import './typed.css';
import { useDeferredValue, useId, useMemo, useRef, type RefObject } from 'react';
import { Button } from 'react-aria-components';
import { useActions } from '../app/use-actions.ts';
import { clean } from '../../core/report/clean.ts';
import type { TemperatureUnit } from '../../core/units.ts';
import { LineTable } from '../controls/line-table.tsx';
import { Pick } from '../controls/pick.tsx';
import { SmallCurve } from '../desk/small-curve.tsx';
import { useApp, useAppStore } from '../state/use-app.ts';
import { typedAccount, type TypedAccount, type TypedLine } from './typed-account.ts';
import { MOST_TYPED_CHARS, NOTHING_TYPED, type TypedDraft } from './typed-draft.ts';

const UNIT_CHOICES = [
  { value: 'C', label: '°C' },
  { value: 'F', label: '°F' },
] as const;

/** So few that each can be told from the next on a small curve (chosen). */
const MOST_DOTS = 60;

const Cells = ({ line, text, said, kind }: TypedLine) => (
  <>
    <span role="cell" className="number line-number">
      {line}
    </span>
    <span role="cell" className="line-raw">
      {clean(text)}
    </span>
    <span role="cell" className={`typed-said typed-said-${kind}`}>
      {kind === 'rejected' ? <span aria-hidden="true">▲ </span> : null}
      {said}
    </span>
  </>
);

interface UnderstoodProps {
  readonly account: TypedAccount;
  readonly unit: TemperatureUnit;
}

/** How what was typed is understood so far. */
const Understood = ({ account, unit }: UnderstoodProps) => {
  const { lines, said, unitSaid, log } = account;
  return (
    <div className="typed-understood">
      <p className="typed-count" role="status">
        {said}
        {unitSaid === null ? null : <span className="quiet"> {unitSaid}</span>}
      </p>
      {lines.length === 0 ? null : (
        <LineTable
          label="What was typed, line by line"
          heads={['line', 'as typed', 'as read']}
          rows={lines}
          cellsOf={Cells}
          className="typed-lines"
        />
      )}
      {log === null ? null : (
        <SmallCurve
          readings={{ atSeconds: [...log.atSeconds], celsius: [...log.celsius] }}
          unit={unit}
          title="The readings as they are understood, joined by straight lines"
          isDotted={log.celsius.length <= MOST_DOTS}
        />
      )}
    </div>
  );
};

interface TypingProps {
  readonly box: RefObject<HTMLTextAreaElement | null>;
  readonly draft: TypedDraft;
  readonly onChange: (change: Partial<TypedDraft>) => void;
}

const Typing = ({ box, draft, onChange }: TypingProps) => {
  const id = useId();
  return (
    <div className="typed-typing">
      <div className="field">
        <label className="field-label" htmlFor={id}>
          Times and temperatures
        </label>
        <textarea
          id={id}
          className="field-box typed-text"
          rows={9}
          maxLength={MOST_TYPED_CHARS}
          spellCheck={false}
          autoComplete="off"
          data-first
          ref={box}
          aria-describedby={`${id}-hint`}
          value={draft.text}
          onChange={({ target }) => onChange({ text: target.value })}
        />
        <span id={`${id}-hint`} className="field-hint">
          A reading a line, or several parted by / or ; as in 0:00 20 / 3h 600 / 9:30 1222. Times of
          day or times since the start; lines without a number are remarks.
        </span>
      </div>
      <Pick
        label="Without a unit they are in"
        value={draft.unit}
        none="whatever suits a kiln"
        choices={UNIT_CHOICES}
        onPick={(unit) => onChange({ unit })}
      />
    </div>
  );
};

/** Readings that somebody wrote down, typed or pasted in, and opened as a firing. */
export const TypedDialog = () => {
  const actions = useActions();
  const draft = useApp((state) => state.typed);
  const unit = useApp((state) => state.preferences.unit);
  const { setTyped } = useAppStore().getState();
  const settled = useDeferredValue(draft);
  const account = useMemo(() => typedAccount(settled, unit), [settled, unit]);
  const box = useRef<HTMLTextAreaElement>(null);
  const beginAnother = (): void => {
    setTyped(NOTHING_TYPED);
    box.current?.focus();
  };
  const isEmpty = draft.text.trim() === '';
  return (
    <>
      <p className="quiet typed-about">
        A few readings written down are a log too. Only wide ranges can be told from them, and the
        sheet says what cannot be told at all.
      </p>
      <div className="typed">
        <Typing box={box} draft={draft} onChange={setTyped} />
        <Understood account={account} unit={unit} />
      </div>
      <div className="buttons typed-buttons">
        <Button
          className="button button-main"
          isDisabled={!account.canOpen}
          onPress={actions.openTyped}
        >
          {draft.log === null ? 'Open as a firing' : 'Open it so'}
        </Button>
        <Button className="button" isDisabled={isEmpty} onPress={actions.saveTyped}>
          Save as text…
        </Button>
        <Button
          className="button"
          isDisabled={isEmpty && draft.log === null}
          onPress={beginAnother}
        >
          Begin another
        </Button>
      </div>
    </>
  );
};
