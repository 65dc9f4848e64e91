import type { Options } from '../../core/model/options.ts';
import { NOTHING_TYPED, typedLog, typedName, type TypedDraft } from '../typed/typed-draft.ts';
import type { LogFile } from '../worker/protocol.ts';
import type { Firing } from './firing.ts';
import { logFile, settledLog } from './firings.ts';
import { retold } from './told.ts';

/** The part of the window's state that has readings typed in. */
export interface TypingState {
  /** The readings that are being typed in, or were. */
  readonly typed: TypedDraft;
  readonly setTyped: (change: Partial<TypedDraft>) => void;
  /** Opens what was typed in; put right, it stays the same firing, with all that was told of it. */
  readonly openTyped: (now: Date) => Promise<void>;
}

interface Beside {
  readonly firing: Firing;
  readonly told: Options;
  readonly isDesk: boolean;
}

interface Store {
  readonly get: () => TypingState & Beside;
  readonly set: (change: Partial<TypingState & Beside & { readonly dialog: null }>) => void;
  readonly read: (log: LogFile) => Promise<void>;
  /** What was told that still holds when another log is opened. */
  readonly toldForAnother: () => Options;
}

/** Readings typed in, as a part of the store. */
export const typing = ({ get, set, read, toldForAnother }: Store): TypingState => ({
  typed: NOTHING_TYPED,
  setTyped: (change) => set({ typed: { ...get().typed, ...change } }),
  openTyped: async (now) => {
    const { typed, told, firing, isDesk } = get();
    const { text, decisions } = typedLog(typed);
    const name = typed.name ?? typedName(now);
    const log = logFile({ fileName: name, bytes: new TextEncoder().encode(text) });
    const isSame = typed.log !== null && settledLog(firing)?.log === typed.log;
    const kept = isSame ? told : toldForAnother();
    const reading = { ...kept.reading, ...decisions };
    set({
      typed: { ...typed, name, log },
      told: retold(kept, Object.keys(reading).length > 0 ? { reading } : {}),
      isDesk: isSame && isDesk,
      dialog: null,
    });
    await read(log);
  },
});
