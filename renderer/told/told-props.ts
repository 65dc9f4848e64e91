import type { FileToSave } from '../../electron/host/contract.ts';
import type { Options } from '../../core/model/options.ts';
import type { Schedule } from '../../core/model/schedule.ts';
import type { TemperatureUnit } from '../../core/units.ts';
import type { Drafts } from './drafts.ts';

/** A schedule that can be chosen without opening a file. */
export interface OfferedSchedule {
  /** Unique among those offered. */
  readonly id: string;
  readonly origin: 'kept' | 'sample';
  /** How well it lies on the log that is open, `83 %`; left out where that is not known. */
  readonly fit?: string;
  readonly schedule: Schedule;
}

/** A schedule file that could not be used, as a Refusal says it. */
export interface RefusedSchedule {
  readonly fileName: string;
  readonly message: string;
  /** 1-based line of the file, where one line is to blame. */
  readonly line: number | null;
}

export interface ToldPanelProps {
  /** What has been told so far. */
  readonly options: Options;
  /** The unit that temperatures are shown and typed in. */
  readonly unit: TemperatureUnit;
  /** Everything told, with one change in it; called only with options that hold by `zOptions`. */
  readonly onOptions: (next: Options) => void;
  /** What was begun and is not told yet. */
  readonly drafts: Drafts;
  readonly onDrafts: (change: Partial<Drafts>) => void;
  readonly offered: readonly OfferedSchedule[];
  /** Forgets a kept schedule by its name. */
  readonly onForget: (name: string) => void;
  /** Lets the person choose a schedule file, and puts it into the options or refuses it. */
  readonly onOpenSchedule: () => void;
  readonly scheduleRefused: RefusedSchedule | null;
  readonly onSaveSchedule: (file: FileToSave) => void;
  /** Whether it is told of several firings at once: cones seen beside one load are then no matter. */
  readonly isOfSeveral?: boolean;
}
