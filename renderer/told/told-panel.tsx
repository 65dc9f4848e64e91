import '../controls/controls.css';
import '../cones/cones.css';
import './told.css';
import { AimPart } from './aim-part.tsx';
import { CouplePart } from './couple-part.tsx';
import { KilnPart } from './kiln-part.tsx';
import { SchedulePart } from './schedule-part.tsx';
import type { ToldPanelProps } from './told-props.ts';
import { WitnessCones } from './witness-cones.tsx';

export type { OfferedSchedule, RefusedSchedule, ToldPanelProps } from './told-props.ts';

/** What the person tells about the firing: all of it optional, all of it changing the answer. */
export const ToldPanel = (props: ToldPanelProps) => {
  const { options, unit, onOptions, drafts, onDrafts } = props;
  return (
    <section id="told" aria-labelledby="told-title" className="panel told">
      <h2 id="told-title">What you can tell</h2>
      <p className="told-muted">
        All of it may be left out; what is told changes the answer at once.
      </p>
      <SchedulePart {...props} />
      <div className="told-parts">
        <AimPart options={options} onOptions={onOptions} />
        <CouplePart options={options} unit={unit} onOptions={onOptions} />
        <KilnPart options={options} onOptions={onOptions} />
      </div>
      {props.isOfSeveral === true ? (
        <p className="told-muted">
          This holds for every firing of the history. Cones seen beside one load are told on the
          sheet of that firing.
        </p>
      ) : (
        <WitnessCones
          options={options}
          onOptions={onOptions}
          begun={drafts.witness}
          onBegun={(witness) => onDrafts({ witness })}
        />
      )}
    </section>
  );
};
