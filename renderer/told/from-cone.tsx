import { Button } from 'react-aria-components';
import type { ConeType } from '../../core/model/cone.ts';
import type { Schedule } from '../../core/model/schedule.ts';
import type { TemperatureUnit } from '../../core/units.ts';
import { BURST_CAUTION, HOTTER_CAUTION } from '../../core/wording/cautions.ts';
import { Caution } from '../controls/caution.tsx';
import { Choice } from '../controls/choice.tsx';
import { CONE_CHOICES } from '../controls/cone-names.ts';
import { TextEntry } from '../controls/text-entry.tsx';
import { scheduleOfAim, type AimDraft } from './cone-aim.ts';
import { entryText, typedEntry } from './entry.ts';
import { ScheduleCurve } from './schedule-curve.tsx';

interface FromConeProps {
  readonly unit: TemperatureUnit;
  readonly aim: AimDraft;
  readonly onAim: (aim: AimDraft) => void;
  readonly onGiveUp: () => void;
  readonly coneType: ConeType | undefined;
  readonly onSchedule: (schedule: Schedule) => void;
}

/** A schedule from the cone to be reached, the rate of the last climb and the hold at the top. */
export const FromCone = (props: FromConeProps) => {
  const { unit, aim, onAim, onGiveUp, coneType, onSchedule } = props;
  const made = scheduleOfAim(aim, coneType);
  const wrong = 'faults' in made ? made.faults.wrong : {};
  const schedule = 'schedule' in made ? made.schedule : null;
  return (
    <div className="told-from-cone">
      <div className="fields">
        <Choice
          label="Cone to reach"
          value={aim.cone}
          choices={CONE_CHOICES}
          onChoice={(next) => next && onAim({ ...aim, cone: next })}
        />
        <TextEntry
          label="Rate of the last climb"
          isNumber
          unit={`°${unit}/h`}
          value={entryText(aim.rate, 'rate', unit)}
          onText={(text) => onAim({ ...aim, rate: typedEntry(text, unit) })}
          wrong={wrong.rate ?? null}
        />
        <TextEntry
          label="Hold at the top"
          isNumber
          unit="min"
          value={aim.hold}
          onText={(hold) => onAim({ ...aim, hold })}
          wrong={wrong.hold ?? null}
        />
      </div>
      {schedule === null ? (
        <p className="told-muted">Give the last climb a rate, and the schedule is drawn here.</p>
      ) : (
        <ScheduleCurve segments={schedule.segments} unit={unit} />
      )}
      <p className="told-muted">
        The way up is a moderate one, for ordinary ware; thick or damp ware wants it slower. The top
        is reckoned from published end points: let cones prove it.
      </p>
      <Caution>{`${BURST_CAUTION} ${HOTTER_CAUTION}`}</Caution>
      <div className="told-buttons">
        <Button
          className="button"
          isDisabled={schedule === null}
          onPress={() => schedule && onSchedule(schedule)}
        >
          Use this schedule
        </Button>
        <Button className="button-plain" onPress={onGiveUp}>
          leave it
        </Button>
      </div>
    </div>
  );
};
