import type {
  FileToSave,
  HandedFile,
  KeptRules,
  KeptSchedules,
  MenuCommand,
  Preferences,
  Saved,
} from '../../electron/host/contract.ts';
import type { Schedule } from '../../core/model/schedule.ts';

export type { FileToSave, KeptRules, KeptSchedules, MenuCommand, Preferences, Saved };

/** A log as it lies on the disk. */
export interface OpenedLog {
  readonly fileName: string;
  /** The page's own copy: it may be transferred to a worker. */
  readonly bytes: Uint8Array<ArrayBuffer>;
}

/** A schedule file's text, not yet read: `readSchedule(text, fileName)` reads or refuses it. */
export interface OpenedSchedule {
  readonly fileName: string;
  readonly text: string;
}

/** A file that was not taken: the machine would not give it, or another was taken in its place. */
export interface RefusedFile {
  readonly fileName: string;
  readonly role: HandedFile['role'];
  /** One plain sentence. */
  readonly why: string;
}

/** Files that came in together, by whichever way. All empty: the person changed their mind. */
export interface Opened {
  readonly logs: readonly OpenedLog[];
  /** The last one, where several schedules came in together; the others are refused. */
  readonly schedule: OpenedSchedule | null;
  readonly refused: readonly RefusedFile[];
}

/** Files on their way in: named at once, their bytes as soon as the machine gives them. */
export interface Coming {
  readonly fileNames: readonly string[];
  readonly opened: Promise<Opened>;
}

/** What the page begins with. */
export interface Beginning {
  /** The files of the command line; nothing where none were given. */
  readonly coming: Coming;
  readonly preferences: Preferences;
  /** The schedules that were kept, the last used first. */
  readonly schedules: KeptSchedules;
  /** The reading rules that were kept, the last changed first. */
  readonly rules: KeptRules;
}

/**
 * What the page can do with the machine, the same in the desktop window and in a browser. The page
 * knows no other way to files. Every promise resolves with an outcome; one rejects only where the
 * host is gone (`HostGone`).
 */
export interface Host {
  /** Whether this is the desktop window, with native menus and dialogs. */
  readonly isDesktop: boolean;
  /** The files to begin with and the kept preferences; the same on every call. */
  initial(): Promise<Beginning>;
  /**
   * Lets the person choose logs. In a browser this must be called from a click or a key press.
   */
  openLogs(): Promise<Coming>;
  /** Lets the person choose a schedule file; as {@link openLogs}. */
  openSchedule(): Promise<Coming>;
  /** Takes files that were dropped or pasted, and tells logs from schedules. */
  takeFiles(files: readonly File[]): Coming;
  /** Offers to save a file (desktop), or downloads it (browser). */
  save(file: FileToSave): Promise<Saved>;
  /** Puts text on the clipboard; false where the system would not have it. */
  copyText(text: string): Promise<boolean>;
  /** Keeps the preferences for the next session. */
  keepPreferences(preferences: Preferences): Promise<void>;
  /**
   * Keeps a schedule under its name, in the place of an earlier state of it if one is named.
   * Resolves with all that are kept.
   */
  keepSchedule(schedule: Schedule, insteadOf: string | null): Promise<KeptSchedules>;
  /** Keeps a reading rule in the place of an earlier one for its shape; resolves with all. */
  keepRule(rule: KeptRules[number]): Promise<KeptRules>;
  /** Forgets the rule for a shape of file; as {@link keepRule}. */
  forgetRule(shape: string): Promise<KeptRules>;
  /** Forgets the kept schedule of a name; as {@link keepSchedule}. */
  forgetSchedule(name: string): Promise<KeptSchedules>;
  /** Files that the system or a second start handed over. Returns what ends the listening. */
  onFilesOpened(listener: (coming: Coming) => void): () => void;
  /** Choices in the desktop's menu. Never called in a browser. */
  onMenuCommand(listener: (command: MenuCommand) => void): () => void;
  /** The host has ended (Ctrl-C, a closed terminal); what is loaded stays usable. */
  onGone(listener: () => void): () => void;
}
