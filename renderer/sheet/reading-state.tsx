import { useAppStore } from '../state/use-app.ts';
import type { Arriving, ReadingFiring } from '../state/firing.ts';
import { STAGES, type Stage } from '../worker/protocol.ts';

const STAGE_WORDS: Readonly<Record<Stage, string>> = {
  fetching: 'Taking the file in',
  reading: 'Reading its rows',
  repairing: 'Putting the record in order',
  judging: 'Laying the schedule on it and judging',
};

const sizeText = (bytes: number): string =>
  bytes < 1e6 ? `${Math.max(1, Math.round(bytes / 1e3))} kB` : `${(bytes / 1e6).toFixed(1)} MB`;

interface ProgressProps {
  readonly name: string;
  /** What is known of it beforehand: its size. */
  readonly about?: string;
  readonly stage: Stage;
  readonly onStop: () => void;
}

const Progress = ({ name, about = '', stage, onStop }: ProgressProps) => {
  const done = STAGES.indexOf(stage);
  return (
    <div className="state reading-state" aria-busy="true">
      <h1>Reading {name}</h1>
      <p className="muted">
        {about}
        {STAGE_WORDS[stage]}: step {done + 1} of {STAGES.length}.
      </p>
      <progress
        className="progress"
        value={done + 0.5}
        max={STAGES.length}
        aria-label="Progress of the reading"
      />
      <p>
        <button type="button" className="button" onClick={onStop}>
          Stop
        </button>
      </p>
    </div>
  );
};

/** Files were opened whose bytes the machine has not given yet. */
export const ArrivingState = ({
  arriving: { fileNames, stop },
}: {
  readonly arriving: Arriving;
}) => (
  <Progress
    name={fileNames.length > 2 ? `${fileNames.length} files` : fileNames.join(' and ')}
    stage="fetching"
    onStop={stop}
  />
);

/** A log is being read: what is done now, and a way to stop. */
export const ReadingState = ({ firing }: { readonly firing: ReadingFiring }) => {
  const { cancelReading } = useAppStore().getState();
  const { log, stage } = firing;
  return (
    <Progress
      name={log.fileName}
      about={`${sizeText(log.byteLength)}. `}
      stage={stage}
      onStop={cancelReading}
    />
  );
};
