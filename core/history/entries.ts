import type { AnalysisDocument } from '../model/document.ts';
import { relativePowerOf } from '../thermal/relative-power.ts';
import { seconds, type Seconds } from '../units.ts';
import type { FiringEntry, Ranged } from './entry.ts';
import { lastRampShare } from './last-ramp.ts';

/** What an analysis document must hold to become part of a history. */
export type Fired = Pick<
  AnalysisDocument,
  | 'source'
  | 'joined'
  | 'trace'
  | 'curve'
  | 'schedule'
  | 'elements'
  | 'heatWork'
  | 'bands'
  | 'load'
  | 'findings'
>;

interface Power {
  readonly power: Ranged | null;
  readonly reason: string | null;
}

const powerOf = (document: Fired, base: Fired | undefined): Power => {
  const { elements } = document;
  if (elements === null) return { power: null, reason: 'fuel-fired' };
  // Its own reason says more than that there was nothing to hold it against.
  if (base === undefined) return { power: null, reason: elements.fitReason ?? 'no-reference-fit' };
  const { relative, reason } = relativePowerOf(document, base);
  return { power: relative, reason };
};

/**
 * From the beginning of heating to the peak. Where the peak is of the second of two logs, that log's
 * own heating counts: of the hole between them nobody knows whether and how the kiln was heated.
 */
const heatingOf = ({ trace, joined }: Fired): Seconds | null => {
  const isLater = joined !== undefined && trace.peakAtSeconds >= joined.gap.toSeconds;
  const { startSeconds } = isLater ? joined : trace;
  return startSeconds === null ? null : seconds(trace.peakAtSeconds - startSeconds);
};

/** When the peak was on the clock; null after a hole between two logs whose length is only drawn. */
const peakAtOf = ({ trace, joined }: Fired): Seconds | null => {
  const isLater = joined !== undefined && trace.peakAtSeconds >= joined.gap.toSeconds;
  return isLater && !joined.isGapKnown ? null : trace.peakAtSeconds;
};

const entryOf = (document: Fired, base: Fired | undefined): FiringEntry => {
  const { trace, heatWork, load, findings } = document;
  const { power, reason } = powerOf(document, base);
  const share = power === null ? null : lastRampShare(document);
  const error = heatWork?.coupleErrorC ?? null;
  return {
    fileName: document.source.fileName,
    startInstant: trace.startInstant,
    durationSeconds: trace.durationSeconds,
    heatingSeconds: heatingOf(document),
    peakAtSeconds: peakAtOf(document),
    peakC: trace.peakC,
    conePosition: heatWork?.cone.position ?? null,
    power,
    powerReason: reason,
    lastRampPower: power === null || share === null ? null : power.value * share,
    bands: document.bands,
    isGood: load.state === 'as-meant' && findings.every(({ severity }) => severity !== 'act'),
    coupleError: error && { value: error.estimate, low: error.low, high: error.high },
  };
};

/**
 * What a history takes from the documents of one kiln's firings. Power is held against the first
 * firing that tells the kiln's; the history then puts it on the scale of its reference firings.
 */
export const entriesOf = (documents: readonly Fired[]): FiringEntry[] => {
  const base = documents.find(({ elements }) => elements !== null && elements.fit !== null);
  return documents.map((document) => entryOf(document, base));
};
