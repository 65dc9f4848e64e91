import type { TraceSummary } from '../../core/model/trace.ts';
import type { ShownTrace } from '../../renderer/worker/protocol.ts';

/** A trace of two readings, as the worker sends it, for tests that look at nothing of the curve. */
export const shownTrace = (summary: TraceSummary): ShownTrace => ({
  summary,
  atSeconds: Float64Array.of(0, 60),
  celsius: Float64Array.of(20, 21),
  slopeCPerHour: Float64Array.of(60, 60),
  setpointC: null,
  outputPercent: null,
  zones: [],
  removed: [],
});
