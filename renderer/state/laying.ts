import type { KeptSchedules } from '../host/interface.ts';
import type { Analyst } from '../worker/analyst.ts';
import type { ScheduleFit } from '../worker/fitting.ts';
import type { ShownTrace } from '../worker/protocol.ts';
import type { Firing, OpenFiring } from './firing.ts';

interface Holder {
  readonly get: () => { readonly kept: KeptSchedules; readonly firing: Firing };
  readonly set: (change: { readonly fits: readonly ScheduleFit[] | null }) => void;
}

/** Tells, where there is no schedule, which of those kept lie best on the log. */
export const createLaying = (analyst: Analyst, { get, set }: Holder): (() => Promise<void>) => {
  /** The trace and the schedules that were laid on it last, or are being laid. */
  let laid: { readonly trace: ShownTrace; readonly kept: KeptSchedules } | null = null;

  const lay = async ({ trace, log }: OpenFiring, kept: KeptSchedules): Promise<void> => {
    if (laid?.trace === trace && laid.kept === kept) return;
    const laying = { trace, kept };
    if (laid?.trace !== trace) set({ fits: null });
    laid = laying;
    const fits = await analyst.fit(log, kept);
    if (laid !== laying) return;
    if (fits) set({ fits });
    else laid = null;
  };

  return async () => {
    const { kept, firing } = get();
    if (firing.kind === 'open' && firing.document.schedule === null && kept.length > 0) {
      await lay(firing, kept);
      return;
    }
    laid = null;
    set({ fits: null });
  };
};
