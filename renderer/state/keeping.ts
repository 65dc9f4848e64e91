import type { KeptRules, Preferences } from '../host/interface.ts';
import type { Shelf } from './shelf.ts';

/** What outlives the session. */
export interface Keeping {
  readonly keepPreferences: (preferences: Preferences) => void;
  readonly shelf: Shelf;
  /** Null where the host is gone. */
  readonly keepRule?: (rule: KeptRules[number]) => Promise<KeptRules | null>;
  readonly forgetRule?: (shape: string) => Promise<KeptRules | null>;
}
