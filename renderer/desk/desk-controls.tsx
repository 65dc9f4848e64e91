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
  COUPLE_CHOICES,
  ENCODING_CHOICES,
  headerChoices,
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

interface OneProps<Value extends string> extends PartProps {
  readonly label: string;
  readonly matter: keyof ReadingDecisions;
  /** The id of the reader's own decision. */
  readonly what: string;
  readonly value: Value | undefined;
  readonly choices: readonly ChoiceOf<Value>[];
  readonly onValue: (value: Value | undefined) => void;
}

/** One matter with a few ways to go; none chosen is as the file says. */
const One = <Value extends string>({ reading, what, onValue, ...props }: OneProps<Value>) => {
  if (!props.raises(props.matter)) return null;
  const own = ownChoice(reading.decisions, what);
  return (
    <Choice
      label={props.label}
      value={props.value ?? null}
      none={asTheFileSays(own)}
      choices={props.choices}
      hint={own.why}
      onChoice={(value) => onValue(value ?? undefined)}
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
            what="delimiter"
            value={told.delimiter}
            choices={ALL_DELIMITER_CHOICES}
            onValue={(delimiter) => tell({ delimiter })}
          />
          <One
            {...props}
            label="The columns are named on"
            matter="headerLine"
            what="header-line"
            value={headerTold(told) ?? undefined}
            choices={headerChoices(reading.lines)}
            onValue={(line) =>
              tell({
                headerLine: line === undefined ? undefined : line === 'none' ? null : Number(line),
              })
            }
          />
        </>
      ) : null}
      <One
        {...props}
        label="The decimal mark is"
        matter="decimalMark"
        what="decimal-mark"
        value={told.decimalMark}
        choices={DECIMAL_MARK_CHOICES}
        onValue={(decimalMark) => tell({ decimalMark })}
      />
      <One
        {...props}
        label="Characters are written as"
        matter="encoding"
        what="encoding"
        value={told.encoding}
        choices={ENCODING_CHOICES}
        onValue={(encoding) => tell({ encoding })}
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

const TimePart = (props: PartProps) => {
  const { reading, told, tell, raises } = props;
  const interval = ownChoice(reading.decisions, 'interval');
  return (
    <fieldset className="desk-group">
      <legend>The time</legend>
      <One
        {...props}
        label="Dates are written"
        matter="dayOrder"
        what="day-order"
        value={told.dayOrder}
        choices={DAY_ORDER_CHOICES}
        onValue={(dayOrder) => tell({ dayOrder })}
      />
      <One
        {...props}
        label="Bare numbers count"
        matter="timeUnit"
        what="time-unit"
        value={told.timeUnit}
        choices={TIME_UNIT_CHOICES}
        onValue={(timeUnit) => tell({ timeUnit })}
      />
      <One
        {...props}
        label="They count from"
        matter="timeFrom"
        what="time-from"
        value={told.timeFrom}
        choices={TIME_ORIGIN_CHOICES}
        onValue={(timeFrom) => tell({ timeFrom })}
      />
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
      <One
        {...props}
        label="Readings are in"
        matter="unit"
        what="unit"
        value={told.unit}
        choices={UNIT_CHOICES}
        onValue={(chosen) => tell({ unit: chosen })}
      />
      <One
        {...props}
        label="Couple that gave millivolts"
        matter="coupleType"
        what="couple-type"
        value={told.coupleType}
        choices={COUPLE_CHOICES}
        onValue={(coupleType) => tell({ coupleType })}
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
