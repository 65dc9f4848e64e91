import { Button } from 'react-aria-components';
import { celsius, type TemperatureUnit } from '../../core/units.ts';
import { counted, speechIn } from '../../core/wording/speech.ts';
import type { OfferedSchedule } from './told-props.ts';

interface KeptSchedulesProps {
  readonly kept: readonly OfferedSchedule[];
  readonly unit: TemperatureUnit;
  readonly onForget: (name: string) => void;
}

/** The schedules that are kept on this computer, and the way to be rid of one. */
export const KeptSchedules = ({ kept, unit, onForget }: KeptSchedulesProps) =>
  kept.length === 0 ? null : (
    <details className="quiet told-kept">
      <summary>{`Schedules kept on this computer: ${kept.length}`}</summary>
      <p className="told-muted">
        What was opened or typed here is kept under its name, the last used first.
      </p>
      <ul>
        {kept.map(({ id, schedule: { name, segments } }) => {
          const topC = celsius(Math.max(...segments.map(({ targetC }) => targetC)));
          const top = speechIn(unit).temperature(topC);
          return (
            <li key={id}>
              {name}{' '}
              <span className="told-muted">{`· ${counted(segments.length, 'leg')} up to ${top}`}</span>{' '}
              <Button
                className="button-plain"
                aria-label={`Forget the schedule ${name}`}
                onPress={() => onForget(name)}
              >
                forget
              </Button>
            </li>
          );
        })}
      </ul>
    </details>
  );
