import type { TimeTick } from './time-ticks.ts';
import { placeIn, type View } from './view.ts';

interface TimeAxisProps {
  readonly ticks: readonly TimeTick[];
  readonly view: View;
  readonly left: number;
  readonly width: number;
}

/** The clock under the lanes: time since the first reading, and the time of day where there is one. */
export const TimeAxis = ({ ticks, view, left, width }: TimeAxisProps) => {
  const hasClock = ticks.some(({ clock }) => clock !== null);
  return (
    <div
      className={`time-axis${hasClock ? ' time-axis-two' : ''}`}
      style={{ marginLeft: left, width }}
      aria-hidden="true"
    >
      {ticks.map(({ atSeconds, elapsed, clock }) => (
        <span
          key={atSeconds}
          className="time-tick"
          style={{ left: placeIn(view, width, atSeconds) }}
        >
          {elapsed}
          {clock === null ? null : <span className="time-clock">{clock}</span>}
        </span>
      ))}
    </div>
  );
};
