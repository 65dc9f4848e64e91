import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Options } from '../../core/model/options.ts';
import type { Schedule } from '../../core/model/schedule.ts';
import type { TemperatureUnit } from '../../core/units.ts';
import { wording } from '../../core/wording/wording.ts';
import type { Opened, OpenedLog, OpenedSchedule, Preferences } from '../host/host.ts';
import type { Beginning, KeptRules, KeptSchedules } from '../host/interface.ts';
import type { Analyst, Outcome } from '../worker/analyst.ts';
import type { ScheduleFit } from '../worker/fitting.ts';
import type { Answered, LogFile, Refused, SecondRun, Stage } from '../worker/protocol.ts';
import { NO_DRAFTS, type Drafts } from '../told/drafts.ts';
import { isSameSchedule } from '../told/schedule-draft.ts';
import type { Arriving, Firing, Notice, OpenFiring } from './firing.ts';
import {
  askedBeside,
  hasDoubt,
  logFile,
  refusedFiring,
  saidIn,
  sameFinding,
  settledLog,
  withoutWork,
  verdictText,
} from './firings.ts';
import { createLaying } from './laying.ts';
import type { Keeping } from './keeping.ts';
import { problem, refusedFiles, withReady } from './notices.ts';
import { ruleToKeep, stillBy } from './rule-keeper.ts';
import { refusedText, scheduleFrom, type ScheduleRefused } from './schedule-file.ts';
import { typing, type TypingState } from './typing.ts';
import { retold, toldOfTheKiln, type OptionsChange } from './told.ts';

/** The text sizes that are offered, in percent of the reader's own. */
export const TEXT_STEPS = [80, 90, 100, 115, 130, 150, 175, 200] as const;

export interface AppState extends TypingState {
  readonly firing: Firing;
  /** The files that the page waits for in sight. */
  readonly arriving: Arriving | null;
  /** What the person told about the firing. */
  readonly told: Options;
  /** What was begun in the panel and is not told yet. */
  readonly drafts: Drafts;
  readonly preferences: Preferences;
  /** The schedules that are kept from one session to the next, the last used first. */
  readonly kept: KeptSchedules;
  /** How they lie on a log that has no schedule, the best first; null elsewhere or until known. */
  readonly fits: readonly ScheduleFit[] | null;
  /** The finding that was chosen, by its place in the document. */
  readonly selected: number | null;
  readonly notice: Notice | null;
  /** Whether the panel of what was told is open, and which dialog is. */
  readonly isTelling: boolean;
  readonly dialog: 'keys' | 'about' | 'rules' | 'typed-in' | null;
  /** The reading rules that are kept, the last changed first. */
  readonly rules: KeptRules;
  /** Whether the reading desk is open. It opens by itself where something about a log is a guess. */
  readonly isDesk: boolean;
  /** The schedule file that could not be used last, for the panel. */
  readonly scheduleRefused: ScheduleRefused | null;
  /** What a screen reader is told next. */
  readonly announcement: string;

  /** Takes files in, by whichever way they came. */
  readonly take: (opened: Opened) => Promise<void>;
  /** Opens a log, by what is `known` to be told of it, else by what stays true of the kiln. */
  readonly openLog: (
    log: OpenedLog,
    schedule?: OpenedSchedule | null,
    known?: Options,
  ) => Promise<void>;
  readonly takeSchedule: (schedule: OpenedSchedule) => Promise<void>;
  /** Replaces all that was told; the answer follows at once. */
  readonly setTold: (told: Options) => Promise<void>;
  /** Changes a part of what was told. */
  readonly tell: (change: OptionsChange) => Promise<void>;
  /** Takes the log of a second run of the open firing's load with it; null parts them again. */
  readonly join: (run: SecondRun | null) => Promise<void>;
  readonly forgetSchedule: (name: string) => Promise<void>;
  readonly setDrafts: (change: Partial<Drafts>) => void;
  readonly showArriving: (arriving: Arriving | null) => void;
  readonly cancelReading: () => void;
  readonly closeFiring: () => void;
  readonly select: (finding: number | null) => void;
  readonly setPreferences: (change: Partial<Preferences>) => void;
  readonly stepText: (steps: number) => void;
  readonly say: (announcement: string) => void;
  readonly notify: (notice: Notice | null) => void;
  readonly showTelling: (isTelling: boolean) => void;
  readonly keepRule: (rule: KeptRules[number]) => Promise<void>;
  readonly forgetRule: (shape: string) => Promise<void>;
  readonly showDesk: (isDesk: boolean) => Promise<void>;
  readonly showDialog: (dialog: AppState['dialog']) => void;
}

export type AppStore = StoreApi<AppState>;

/** The firing on the sheet, or null where there is none. */
export const openFiring = ({ firing }: Pick<AppState, 'firing'>): OpenFiring | null =>
  firing.kind === 'open' ? firing : null;

/** Everything the window holds, and all that can be done in it. */
export const createAppStore = (
  analyst: Analyst,
  begun: Pick<Beginning, 'preferences' | 'schedules'> & Partial<Beginning>,
  keeping: Keeping,
): AppStore =>
  createStore<AppState>((set, get) => {
    const firingFrom = (log: LogFile, answer: Answered, isWorking: boolean): OpenFiring | null => {
      const before = openFiring(get());
      const trace = answer.trace ?? before?.trace;
      if (!trace) return null;
      const { document } = answer;
      const words = wording(document, get().preferences.unit);
      const isReadAgain = answer.trace !== null;
      const reading = answer.reading ?? (isReadAgain ? null : (before?.reading ?? null));
      const shape = answer.shape ?? (isReadAgain ? null : (before?.shape ?? null));
      const rule = answer.rule ?? stillBy(before, log, document);
      return {
        ...{ kind: 'open', log, document, words, trace, isWorking, reading },
        ...{ misread: null, shape, rule },
        joined: document.joined === undefined ? null : (before?.joined ?? null),
      };
    };

    const finishReading = (log: LogFile, outcome: Outcome): void => {
      if (outcome.kind === 'superseded') return;
      if (outcome.kind === 'refused') {
        set({ firing: refusedFiring(log, outcome), selected: null });
        return;
      }
      const firing = firingFrom(log, outcome, false);
      if (!firing) return;
      const isDesk = get().isDesk || hasDoubt(firing.document);
      if (firing.rule) set({ told: retold(get().told, { reading: firing.rule.decisions }) });
      set({ firing, selected: null, isDesk, announcement: verdictText(firing) });
      void layKeptOn();
    };

    const layKeptOn = createLaying(analyst, { get, set });

    const keep = async (schedule: Schedule, how: 'opened' | 'made'): Promise<void> => {
      const kept = await keeping.shelf.keep(schedule, how);
      if (kept) set({ kept });
    };

    const read = async (log: LogFile): Promise<void> => {
      const before = withoutWork(get().firing);
      set({
        firing: { kind: 'reading', log, stage: 'fetching', before },
        announcement: `Reading ${log.fileName}.`,
      });
      const onStage = (stage: Stage): void => {
        const { firing } = get();
        if (firing.kind === 'reading' && firing.log === log) set({ firing: { ...firing, stage } });
      };
      const { told: asked, rules } = get();
      const outcome = await analyst.ask(log, asked, onStage, rules.length > 0 ? { rules } : {});
      const isTold = get().told !== asked;
      finishReading(log, outcome);
      // Something may have been told while the log was being read.
      if (openFiring(get())?.log === log && isTold) await revise();
    };

    /** What was told that still holds when another log is opened. */
    const toldForAnother = (): Options => {
      const { firing, told } = get();
      const isWaiting = firing.kind === 'empty' || firing.kind === 'refused';
      // A schedule that was chosen before there was a log is meant for this one.
      return isWaiting ? retold(told, { reading: undefined }) : toldOfTheKiln(told);
    };

    /** A correction holds for the next file of this shape, too. */
    const keepCorrection = async (firing: OpenFiring): Promise<void> => {
      const rule = firing.rule === null ? ruleToKeep(firing, get().rules) : null;
      if (rule) await get().keepRule(rule);
    };

    /** A change that the open log cannot bear: shown on the desk, else taken back and said. */
    const refuseChange = (now: OpenFiring, refused: Refused): void => {
      const firing = { ...now, isWorking: false };
      if (get().isDesk && refused.reading !== undefined) {
        set({ firing: { ...firing, misread: refused }, announcement: `${refused.message}.` });
        return;
      }
      const text = `That cannot be used with this log: ${refused.message}.`;
      const joined = now.document.joined === undefined ? null : now.joined;
      set({ firing: { ...firing, joined }, told: now.document.options, notice: problem(text) });
    };

    /** Puts the log to the analyst again, as it is told now. */
    const revise = async (): Promise<void> => {
      const before = settledLog(get().firing);
      if (!before) return;
      set({ firing: { ...before, isWorking: true } });
      const asked = get().told;
      const more = askedBeside(before, get().isDesk);
      const outcome = await analyst.ask(before.log, asked, undefined, more);
      const now = settledLog(get().firing);
      if (outcome.kind === 'superseded' || now?.log !== before.log) return;
      const isLast = get().told === asked;
      if (outcome.kind === 'refused') {
        if (!isLast) return;
        if (now.kind === 'open') refuseChange(now, outcome);
        else set({ firing: refusedFiring(now.log, outcome) });
        return;
      }
      const firing = firingFrom(now.log, outcome, !isLast);
      const selected = sameFinding(openFiring(get()), get().selected, outcome);
      if (firing) set({ firing, selected, announcement: verdictText(firing) });
      if (firing && isLast) void keepCorrection(firing);
      void layKeptOn();
    };

    /** A schedule file's schedule; null where it cannot be used, which is then said. */
    const readGiven = (given: OpenedSchedule): Schedule | null => {
      const chosen = scheduleFrom(given);
      if ('schedule' in chosen) {
        set({ scheduleRefused: null });
        void keep(chosen.schedule, 'opened');
        return chosen.schedule;
      }
      set({ scheduleRefused: chosen.refused, notice: problem(refusedText(chosen.refused)) });
      return null;
    };

    return {
      ...typing({ get, set, read, toldForAnother }),
      firing: { kind: 'empty' },
      arriving: null,
      told: {},
      drafts: NO_DRAFTS,
      preferences: begun.preferences,
      kept: begun.schedules,
      fits: null,
      selected: null,
      notice: null,
      isTelling: false,
      isDesk: false,
      rules: begun.rules ?? [],
      dialog: null,
      scheduleRefused: null,
      announcement: '',

      take: async ({ logs, schedule, refused }) => {
        const [log] = logs;
        const problems = refusedFiles(refused);
        set({ notice: problems.length === 0 ? null : problem(problems.join(' ')) });
        if (log) await get().openLog(log, schedule);
        else if (schedule) await get().takeSchedule(schedule);
      },

      openLog: async (log, given = null, known) => {
        const kept = known ?? toldForAnother();
        const chosen = given === null ? null : readGiven(given);
        set({ told: retold(kept, chosen === null ? {} : { schedule: chosen }), isDesk: false });
        await read(logFile(log));
      },

      takeSchedule: async (given) => {
        const schedule = readGiven(given);
        if (schedule === null) return;
        // On an open firing the answer shows it.
        if (!openFiring(get())) set({ notice: withReady(get().notice, schedule) });
        set({ told: retold(get().told, { schedule }) });
        await revise();
      },

      setTold: async (told) => {
        const { schedule: before, reading } = get().told;
        const isReadAnew = told.reading !== reading;
        set({ told });
        const { schedule } = told;
        if (schedule && !isSameSchedule(schedule, before)) {
          const isKept = get().kept.some((one) => isSameSchedule(one, schedule));
          void keep(schedule, isKept ? 'opened' : 'made');
        }
        // A refused log waits for another way of reading it; whoever finds one goes on at the desk.
        if (get().firing.kind === 'refused' && isReadAnew) set({ isDesk: true });
        if (get().firing.kind === 'open' || isReadAnew) await revise();
      },

      join: async (joined) => {
        const now = openFiring(get());
        if (now) set({ firing: { ...now, joined } });
        if (now) await revise();
      },

      tell: (change) => get().setTold(retold(get().told, change)),

      forgetSchedule: async (name) => {
        const kept = await keeping.shelf.forget(name);
        if (kept)
          set({ kept, fits: get().fits?.filter(({ schedule }) => schedule.name !== name) ?? null });
        await layKeptOn();
      },

      setDrafts: (change) => set({ drafts: { ...get().drafts, ...change } }),

      cancelReading: () => {
        const { firing } = get();
        if (firing.kind !== 'reading') return;
        analyst.cancel();
        const told = firing.before.kind === 'open' ? firing.before.document.options : get().told;
        set({ firing: firing.before, told, announcement: 'Reading was stopped.' });
      },

      closeFiring: () => {
        analyst.cancel();
        set({ firing: { kind: 'empty' }, told: toldOfTheKiln(get().told), selected: null });
      },

      select: (selected) => set({ selected }),

      setPreferences: (change) => {
        const changed = { ...get().preferences, ...change };
        if (change.unit) set({ firing: saidIn(get().firing, change.unit) });
        set({ preferences: changed });
        keeping.keepPreferences(changed);
      },

      stepText: (steps) => {
        const now = TEXT_STEPS.findLastIndex((step) => step <= get().preferences.textPercent);
        const textPercent = TEXT_STEPS[now + steps];
        if (textPercent !== undefined) get().setPreferences({ textPercent });
      },

      say: (announcement) => set({ announcement }),
      notify: (notice) => set({ notice }),
      showTelling: (isTelling) => set({ isTelling }),
      showArriving: (arriving) => set({ arriving }),
      keepRule: async (rule) => {
        const rules = await keeping.keepRule?.(rule);
        if (rules) set({ rules });
      },
      forgetRule: async (shape) => {
        const rules = await keeping.forgetRule?.(shape);
        if (rules) set({ rules });
      },
      showDesk: async (isDesk) => {
        set({ isDesk });
        const firing = openFiring(get());
        if (!isDesk && firing?.misread) {
          set({ firing: { ...firing, misread: null }, told: firing.document.options });
        }
        if (isDesk && firing && firing.reading === null) await revise();
      },
      showDialog: (dialog) => set({ dialog }),
    };
  });

/** The other unit: what the one key changes to. */
export const otherUnit = (unit: TemperatureUnit): TemperatureUnit => (unit === 'C' ? 'F' : 'C');
