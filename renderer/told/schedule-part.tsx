import { useId } from 'react';
import { Button } from 'react-aria-components';
import { retold } from '../state/told.ts';
import { newAim } from './cone-aim.ts';
import { FromCone } from './from-cone.tsx';
import { KeptSchedules } from './kept-schedules.tsx';
import { OfferedSchedules } from './offered-schedules.tsx';
import { ScheduleEditor } from './schedule-editor.tsx';
import { freeName, namedApart, UNNAMED } from './schedule-name.ts';
import { meantCone } from './told-options.ts';
import type { RefusedSchedule, ToldPanelProps } from './told-props.ts';
import { useScheduleDraft } from './use-schedule-draft.ts';

const Refused = ({ fileName, message, line }: RefusedSchedule) => (
  <p className="told-refused" role="alert">
    <span aria-hidden="true">▲ </span>
    {`“${fileName}” cannot be used as a schedule${line === null ? '' : `: line ${line}`}. `}
    {`${message.charAt(0).toUpperCase()}${message.slice(1)}${/[.!?]$/.test(message) ? '' : '.'}`}
  </p>
);

/** The schedule: chosen, opened, typed, or made from a cone. */
export const SchedulePart = (props: ToldPanelProps) => {
  const { options, unit, onOptions, offered, onOpenSchedule, scheduleRefused } = props;
  const { drafts, onDrafts } = props;
  const id = useId();
  const formId = useId();
  const { isAiming } = drafts;
  const others = offered.map(({ schedule }) => schedule);
  const { draft, change, takeAway, settle } = useScheduleDraft({
    schedule: options.schedule,
    held: drafts.schedule,
    unit,
    onHeld: (schedule) => onDrafts({ schedule }),
    onSchedule: (schedule) => onOptions(retold(options, { schedule })),
  });
  return (
    <section aria-labelledby={id} className="told-part">
      <h3 id={id}>Schedule</h3>
      {draft === null ? (
        <p className="told-muted">
          None told. With the schedule that was meant, the curve is held against it leg by leg.
        </p>
      ) : null}
      <div className="told-buttons">
        <OfferedSchedules
          offered={offered}
          onChoose={({ schedule }) => {
            change({ change: 'take', schedule });
            settle();
          }}
        />
        <Button className="button" onPress={onOpenSchedule}>
          Open a file …
        </Button>
        <Button
          className="button"
          onPress={() => {
            const taken = others.map(({ name }) => name);
            change({ change: 'begin', unit, unnamed: freeName(UNNAMED, taken) });
          }}
        >
          {draft === null ? 'Type one' : 'Type a new one'}
        </Button>
        <Button
          className="button"
          aria-expanded={isAiming}
          {...(isAiming ? { 'aria-controls': formId } : {})}
          onPress={() => onDrafts({ isAiming: !isAiming })}
        >
          Make one from a cone
        </Button>
        {draft === null ? null : (
          <Button className="button-plain" onPress={takeAway}>
            take the schedule away
          </Button>
        )}
      </div>
      <KeptSchedules
        kept={offered.filter(({ origin }) => origin === 'kept')}
        unit={unit}
        onForget={props.onForget}
      />
      {scheduleRefused === null ? null : <Refused {...scheduleRefused} />}
      {isAiming ? (
        <div id={formId} role="group" aria-label="A schedule from a cone">
          <FromCone
            unit={unit}
            aim={drafts.aim ?? newAim(meantCone(options))}
            onAim={(aim) => onDrafts({ aim })}
            onGiveUp={() => onDrafts({ aim: null, isAiming: false })}
            coneType={options.coneType}
            onSchedule={(schedule) => {
              change({ change: 'take', schedule: namedApart(schedule, others) });
              settle();
              onDrafts({ aim: null, isAiming: false });
            }}
          />
        </div>
      ) : null}
      {draft === null ? null : (
        <ScheduleEditor
          draft={draft}
          unit={unit}
          told={options.schedule}
          onChange={change}
          onSettle={settle}
          onSave={props.onSaveSchedule}
        />
      )}
    </section>
  );
};
