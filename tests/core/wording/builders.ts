import type { AnalysisDocument } from '../../../core/model/document.ts';
import { FINDING_IDS, type Finding, type FindingId } from '../../../core/model/finding.ts';
import { seconds } from '../../../core/units.ts';
import type { Topic } from '../../../core/wording/topic.ts';
import { speechIn } from '../../../core/wording/speech.ts';
import { exampleDocument } from '../../fixtures/documents/load.ts';

/** A finding as a detector would draft it. */
export const finding = (id: FindingId, figures: Finding['figures'] = {}): Finding => ({
  id,
  severity: 'watch',
  evidence: [{ fromSeconds: seconds(9 * 3600), toSeconds: seconds(10 * 3600) }],
  figures,
  thresholds: {},
  instead: [],
});

/** A finding on the troubled firing, with what its sentences draw on. */
export const topic = (
  id: FindingId,
  figures: Finding['figures'] = {},
  unit: 'C' | 'F' = 'C',
): Topic => ({
  finding: finding(id, figures),
  document: exampleDocument('troubled-firing'),
  say: speechIn(unit),
});

/** The troubled firing with every finding there is, each naming every other as an alternative. */
export const everyFinding = (figures: Finding['figures'] = {}): AnalysisDocument => ({
  ...exampleDocument('troubled-firing'),
  findings: FINDING_IDS.map((id) => ({
    ...finding(id, figures),
    instead: FINDING_IDS.filter((other) => other !== id),
  })),
});

/** Every string anywhere inside a value. */
export const stringsIn = (value: unknown): string[] => {
  if (typeof value === 'string') return [value];
  if (typeof value !== 'object' || value === null) return [];
  return Object.values(value).flatMap(stringsIn);
};
