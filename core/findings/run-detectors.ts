import type { Check, Evidence, Finding, FindingId, Severity } from '../model/finding.ts';
import { canHave, heatSourceOf, type HeatSource } from '../model/heat-source.ts';
import { seconds, type Seconds } from '../units.ts';
import { DETECTORS } from './detector-list.ts';
import type { Detector, Draft, FactName, NotApplicableReason, Verdict } from './detector.ts';
import type { Facts } from './facts.ts';

const URGENCY: Record<Severity, number> = { act: 0, watch: 1, note: 2 };

/** The facts that can be missing, each with the reason given when a detector needs it. */
const REASON_MISSING: Partial<Record<FactName, NotApplicableReason>> = {
  schedule: 'no-schedule',
  alignment: 'no-alignment',
  heatWork: 'no-heat-work',
  elements: 'fuel-fired',
};

const onlyNamed = (facts: Facts, names: readonly FactName[]): Partial<Facts> =>
  Object.fromEntries(names.map((name) => [name, facts[name]]));

const judge = (facts: Facts, { needs, wants, detect }: Detector): Verdict => {
  const missing = needs.find((name) => facts[name] === null);
  if (missing !== undefined) {
    const reason = REASON_MISSING[missing];
    if (reason === undefined) throw new Error(`no reason is kept for a missing ${missing}`);
    return { outcome: 'not-applicable', reason };
  }
  // defineDetector tied the names to the type of what this detector receives.
  return detect(onlyNamed(facts, [...needs, ...wants]) as never);
};

const clamped = (moment: number, endSeconds: Seconds): Seconds =>
  seconds(Math.min(Math.max(moment, 0), endSeconds));

/** Evidence must lie on the record, or the screen has nowhere to mark it. */
const onRecord = ({ fromSeconds, toSeconds, ...rest }: Evidence, endSeconds: Seconds): Evidence => {
  const from = clamped(fromSeconds, endSeconds);
  return {
    fromSeconds: from,
    toSeconds: seconds(Math.max(from, clamped(toSeconds, endSeconds))),
    ...rest,
  };
};

const finite = (values: Draft['figures']): Record<string, number> => {
  for (const [name, value] of Object.entries(values)) {
    if (!Number.isFinite(value)) throw new Error(`${name} is ${value}`);
  }
  return { ...values } as Record<string, number>;
};

/** A kiln that burns fuel has nothing electric to explain what is found. */
const stamped = (id: FindingId, draft: Draft, heat: HeatSource, endSeconds: Seconds): Finding => ({
  id,
  severity: draft.severity,
  evidence: draft.evidence.map((evidence) => onRecord(evidence, endSeconds)),
  figures: finite(draft.figures),
  thresholds: finite(draft.thresholds),
  instead: draft.instead.filter((other) => canHave(heat, other)),
});

const firstSeconds = ({ evidence }: Finding): number =>
  Math.min(...evidence.map(({ fromSeconds }) => fromSeconds));

/** The order in which findings are told. */
export const byUrgencyThenTime = (a: Finding, b: Finding): number =>
  URGENCY[a.severity] - URGENCY[b.severity] || firstSeconds(a) - firstSeconds(b);

/**
 * Asks every detector. Each gets one check, found or not, because silence is no clean bill of
 * health; a detector that throws is `failed` and takes nothing else down with it. Findings come
 * the most urgent first, then in order of time.
 *
 * @param onFailure is told of a throw, for tests and logs; the document holds no internal texts
 */
export const runDetectors = (
  facts: Facts,
  detectors: readonly Detector[] = DETECTORS,
  onFailure?: (id: FindingId, cause: unknown) => void,
): { findings: Finding[]; checks: Check[] } => {
  const findings: Finding[] = [];
  const heat = heatSourceOf(facts.options);
  const check = (detector: Detector): Check => {
    const { id } = detector;
    try {
      const verdict = judge(facts, detector);
      if (verdict.outcome !== 'found') return { id, ...verdict };
      const endSeconds = facts.trace.durationSeconds;
      findings.push(...verdict.findings.map((draft) => stamped(id, draft, heat, endSeconds)));
      return { id, outcome: 'found', reason: 'measured' };
    } catch (cause) {
      onFailure?.(id, cause);
      return { id, outcome: 'failed', reason: 'detector-failed' };
    }
  };
  const checks = detectors.map(check);
  return { findings: findings.sort(byUrgencyThenTime), checks };
};
