import type { Evidence, FindingId, Severity } from '../model/finding.ts';
import type { Facts } from './facts.ts';

export type FactName = keyof Facts;

/** What a detector is handed: the facts it needs, never null, and those it wants, as they are. */
export type Given<Needs extends FactName, Wants extends FactName> = {
  readonly [Name in Needs]: NonNullable<Facts[Name]>;
} & { readonly [Name in Exclude<Wants, Needs>]: Facts[Name] };

type Unit = 'C' | 'DeltaC' | 'CPerHour' | 'PerHour' | 'Seconds' | 'Minutes' | 'Cones' | 'Percent';

/**
 * A measured value's name ends in its unit; a plain count is named for what it counts, and
 * `segment` is the index into the schedule's segments; `readAs` and `probably` are those of two couple
 * types in COUPLE_TYPES.
 */
export type FigureName =
  | `${string}${Unit}`
  | 'segment'
  | 'gaps'
  | 'jumps'
  | 'firing'
  | 'firings'
  | 'spikes'
  | 'times'
  | 'readAs'
  | 'probably';
export type Figures = Readonly<Partial<Record<FigureName, number>>>;

/**
 * A finding before the runner has put its detector's id on it. A threshold bears the name of the
 * figure that is held against it.
 */
export interface Draft {
  readonly severity: Severity;
  readonly evidence: readonly Evidence[];
  readonly figures: Figures;
  readonly thresholds: Figures;
  readonly instead: readonly FindingId[];
}

/** Why a detector found nothing, though it looked. */
export type ClearReason =
  'within-limits' | 'cooling-logged' | 'ends-cool' | 'no-glaze' | 'told-by-another';

/** Why a detector could not judge this firing. */
export type NotApplicableReason =
  | 'no-schedule'
  | 'no-alignment'
  | 'no-heat-work'
  | 'fuel-fired'
  | 'never-at-full-power'
  | 'power-not-fitted'
  | 'alignment-uncertain'
  | 'no-target-cone'
  | 'no-cone-reached'
  | 'no-mirrored-cone'
  | 'no-rated-ramp'
  | 'no-hold'
  | 'no-cooling-logged'
  | 'record-ends-hot'
  | 'gap-at-peak'
  | 'readings-too-coarse'
  | 'starts-hot'
  | 'no-second-place'
  | 'not-heated-and-cooled'
  | 'no-witness-cones'
  | 'stretch-not-seen'
  | 'ware-fired-before'
  | 'no-reference'
  | 'reference-unusable'
  | 'cooling-not-comparable';

export type Verdict =
  | { readonly outcome: 'found'; readonly findings: readonly [Draft, ...Draft[]] }
  | { readonly outcome: 'clear'; readonly reason: ClearReason }
  | { readonly outcome: 'not-applicable'; readonly reason: NotApplicableReason };

/**
 * One judgement. `detect` is pure and sees only what `needs` and `wants` name; the runner does not
 * call it while a needed fact is null. Made by {@link defineDetector}, which ties the names to the
 * type of what `detect` receives; that type is forgotten here so that a list can hold them all.
 */
export interface Detector {
  readonly id: FindingId;
  readonly needs: readonly FactName[];
  readonly wants: readonly FactName[];
  readonly detect: (given: never) => Verdict;
}

export interface Definition<Needs extends FactName, Wants extends FactName> {
  readonly id: FindingId;
  readonly needs: readonly Needs[];
  /** Facts that sharpen the judgement and may be null. */
  readonly wants?: readonly Wants[];
  readonly detect: (given: Given<Needs, Wants>) => Verdict;
}

/** A detector whose `detect` is typed by the facts it names. */
export const defineDetector = <Needs extends FactName, Wants extends FactName = never>(
  definition: Definition<Needs, Wants>,
): Detector => ({ wants: [], ...definition });

export const clear = (reason: ClearReason = 'within-limits'): Verdict => ({
  outcome: 'clear',
  reason,
});

export const notApplicable = (reason: NotApplicableReason): Verdict => ({
  outcome: 'not-applicable',
  reason,
});

/** The drafts as a verdict: found if there are any, else clear. */
export const foundAny = (drafts: readonly Draft[]): Verdict => {
  const [first, ...rest] = drafts;
  return first === undefined ? clear() : { outcome: 'found', findings: [first, ...rest] };
};

export const found = (draft: Draft): Verdict => ({ outcome: 'found', findings: [draft] });
