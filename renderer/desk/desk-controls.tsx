import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { ReadingShown } from '../../core/log/show/shown.ts';
import type { Options, ReadingDecisions } from '../../core/model/options.ts';
import { celsius, fromFahrenheit, temperatureIn, type TemperatureUnit } from '../../core/units.ts';
import { Choice, type ChoiceOf } from '../controls/choice.tsx';
import { NumberEntry } from '../controls/number-entry.tsx';
import {
  DAY_ORDER_CHOICES,
  DECIMAL_MARK_CHOICES,
  judgeInterval,
  toldReading,
  UNIT_CHOICES,
} from '../reading/reading-choices.ts';
import { retold } from '../state/told.ts';
import {
  ALL_DELIMITER_CHOICES,
  asTheFileSays,
  decisionOf,
  COUPLE_CHOICES,
  ENCODING_CHOICES,
  headerChoices,
  headerFrom,
  headerTold,
  judgeDate,
  judgeZone,
  marksFrom,
  mattersOf,
  ownChoice,
  TIME_ORIGIN_CHOICES,
  TIME_UNIT_CHOICES,
} from './desk-choices.ts';
import { SettledText } from './settled-text.tsx';

type Told = Parameters<typeof toldReading>[1];

interface PartProps {
  readonly reading: ReadingShown;
  readonly told: ReadingDecisions;
  readonly tell: (change: Told) => void;
  /** Whether a matter is in sight. */
  readonly raises: (matter: keyof ReadingDecisions) => boolean;
}

/** Matters with a few ways to go. */
type Matter =
  | 'delimiter'
  | 'decimalMark'
  | 'encoding'
  | 'dayOrder'
  | 'timeUnit'
  | 'timeFrom'
  | 'unit'
  | 'coupleType';

interface OneProps<Key extends Matter> extends PartProps {
  readonly label: string;
  readonly matter: Key;
  readonly choices: readonly ChoiceOf<NonNullable<ReadingDecisions[Key]>>[];
}

/** One such matter; none chosen is as the file says. */
const One = <Key extends Matter>(props: OneProps<Key>) => {
  const { reading, told, tell, raises, label, matter, choices } = props;
  if (!raises(matter)) return null;
  const own = ownChoice(reading.decisions, decisionOf(matter));
  return (
    <Choice<NonNullable<ReadingDecisions[Key]>>
      label={label}
      value={told[matter] ?? null}
      none={asTheFileSays(own)}
      choices={choices}
      hint={own.why}
      onChoice={(value) => tell({ [matter]: value ?? undefined })}
    />
  );
};

const HeaderLine = ({ reading, told, tell, raises }: PartProps) => {
  if (!raises('headerLine')) return null;
  const own = ownChoice(reading.decisions, 'header-line');
  return (
    <Choice
      label="The columns are named on"
      value={headerTold(told)}
      none={asTheFileSays(own)}
      choices={headerChoices(reading.lines)}
      hint={own.why}
      onChoice={(line) => tell({ headerLine: headerFrom(line) })}
    />
  );
};

const isText = ({ decisions }: ReadingShown): boolean =>
  !decisions.some(({ what, choice }) => what === 'format' && choice.startsWith('json'));

const FilePart = (props: PartProps) => {
  const { reading, told, tell } = props;
  const marks = ownChoice(reading.decisions, 'no-reading-marks');
  return (
    <fieldset className="desk-group">
      <legend>The file</legend>
      {isText(reading) ? (
        <>
          <One
            {...props}
            label="Cells are parted by"
            matter="delimiter"
            choices={ALL_DELIMITER_CHOICES}
          />
          <HeaderLine {...props} />
        </>
      ) : null}
      <One
        {...props}
        label="The decimal mark is"
        matter="decimalMark"
        choices={DECIMAL_MARK_CHOICES}
      />
      <One
        {...props}
        label="Characters are written as"
        matter="encoding"
        choices={ENCODING_CHOICES}
      />
      <SettledText
        label="These mean no reading, too"
        hint={
          marks.choice === null
            ? 'Words or numbers, as the cells have them.'
            : `Found: ${marks.choice}`
        }
        value={(told.noReadingMarks ?? []).join(' ')}
        judge={() => null}
        onSettled={(text) => tell({ noReadingMarks: text === null ? undefined : marksFrom(text) })}
      />
    </fieldset>
  );
};

/** The pattern of the times, which follows from the decisions below it. */
const AsWritten = ({ reading }: PartProps) => {
  const { choice, why } = ownChoice(reading.decisions, 'time-pattern');
  return choice === null ? null : (
    <p className="field-hint desk-pattern">
      Read as {choice}; {why}
    </p>
  );
};

const TimePart = (props: PartProps) => {
  const { reading, told, tell, raises } = props;
  const interval = ownChoice(reading.decisions, 'interval');
  return (
    <fieldset className="desk-group">
      <legend>The time</legend>
      <AsWritten {...props} />
      <One {...props} label="Dates are written" matter="dayOrder" choices={DAY_ORDER_CHOICES} />
      <One {...props} label="Bare numbers count" matter="timeUnit" choices={TIME_UNIT_CHOICES} />
      <One {...props} label="They count from" matter="timeFrom" choices={TIME_ORIGIN_CHOICES} />
      {raises('intervalSeconds') ? (
        <NumberEntry
          label="Without times, a row every"
          unit="s"
          value={told.intervalSeconds ?? null}
          judge={judgeInterval}
          hint={interval.choice === null ? undefined : `${interval.choice}; ${interval.why ?? ''}`}
          onNumber={(intervalSeconds) => tell({ intervalSeconds: intervalSeconds ?? undefined })}
        />
      ) : null}
      {raises('firstDate') ? (
        <SettledText
          label="Without a date, it began on"
          hint="Year-month-day: 2026-03-14."
          value={told.firstDate ?? ''}
          judge={judgeDate}
          onSettled={(firstDate) => tell({ firstDate: firstDate ?? undefined })}
        />
      ) : null}
      {raises('timeZone') ? (
        <SettledText
          label="The clock’s zone"
          hint="By its place: Europe/Berlin."
          value={told.timeZone ?? ''}
          judge={judgeZone}
          onSettled={(timeZone) => tell({ timeZone: timeZone ?? undefined })}
        />
      ) : null}
    </fieldset>
  );
};

const celsiusFrom = (degrees: number, unit: TemperatureUnit): number =>
  unit === 'F' ? fromFahrenheit(degrees) : degrees;

/** The range of `coldJunctionC` in the model. */
const COLDEST_C = -60;
const WARMEST_C = 120;

const TemperaturePart = ({ unit, ...props }: PartProps & { readonly unit: TemperatureUnit }) => {
  const { told, tell, raises } = props;
  const shownCold = told.coldJunctionC;
  return (
    <fieldset className="desk-group">
      <legend>The temperature</legend>
      <One {...props} label="Readings are in" matter="unit" choices={UNIT_CHOICES} />
      <One
        {...props}
        label="Couple that gave millivolts"
        matter="coupleType"
        choices={COUPLE_CHOICES}
      />
      {raises('coldJunctionC') ? (
        <NumberEntry
          label="Its cold end stood at"
          unit={`°${unit}`}
          value={shownCold === undefined ? null : temperatureIn(celsius(shownCold), unit)}
          judge={(degrees) => {
            const cold = celsiusFrom(degrees, unit);
            return cold >= COLDEST_C && cold <= WARMEST_C ? null : 'No logger works there.';
          }}
          onNumber={(degrees) =>
            tell({ coldJunctionC: degrees === null ? undefined : celsiusFrom(degrees, unit) })
          }
        />
      ) : null}
    </fieldset>
  );
};

interface DeskControlsProps {
  readonly reading: ReadingShown;
  readonly options: Options;
  readonly unit: TemperatureUnit;
  readonly onOptions: (next: Options) => void;
}

/** Every decision about the reading but the columns' roles; each can be taken back by itself. */
export const DeskControls = ({ reading, options, unit, onOptions }: DeskControlsProps) => {
  const [showsAll, setShowsAll] = useState(false);
  const told = options.reading ?? {};
  const matters = mattersOf(reading, told);
  const part: PartProps = {
    reading,
    told,
    tell: (change) => onOptions(toldReading(options, change)),
    raises: (matter) => showsAll || matters.has(matter),
  };
  return (
    <div className="desk-controls">
      <TemperaturePart {...part} unit={unit} />
      <TimePart {...part} />
      <FilePart {...part} />
      <p className="desk-more">
        <Button
          className="button-plain"
          aria-expanded={showsAll}
          onPress={() => setShowsAll(!showsAll)}
        >
          {showsAll ? 'only what this log raises' : 'every decision'}
        </Button>
        {options.reading === undefined ? null : (
          <Button
            className="button-plain"
            onPress={() => onOptions(retold(options, { reading: undefined }))}
          >
            read all of it as the file says
          </Button>
        )}
      </p>
    </div>
  );
};
