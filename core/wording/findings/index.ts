import type { FindingId } from '../../model/finding.ts';
import type { HeatSource } from '../../model/heat-source.ts';
import type { FindingWording } from '../topic.ts';
import { FUEL_WORDINGS } from './fuel.ts';
import { HEAT_WORK_WORDINGS } from './heat-work.ts';
import { KILN_WORDINGS } from './kiln.ts';
import { LOG_WORDINGS } from './log.ts';
import { SCHEDULE_WORDINGS } from './schedule.ts';
import { SENSOR_WORDINGS } from './sensor.ts';
import { WARE_WORDINGS } from './ware.ts';

const GROUPS = {
  'heat-work': HEAT_WORK_WORDINGS,
  schedule: SCHEDULE_WORDINGS,
  kiln: KILN_WORDINGS,
  couple: SENSOR_WORDINGS,
  log: LOG_WORDINGS,
  ware: WARE_WORDINGS,
} as const;

/** What a finding speaks of. */
export type FindingGroup = keyof typeof GROUPS;

/**
 * The sentences of every finding there is, as of an electric kiln: a finding without words does not
 * compile.
 */
export const FINDING_WORDINGS: Readonly<Record<FindingId, FindingWording>> = {
  ...HEAT_WORK_WORDINGS,
  ...SCHEDULE_WORDINGS,
  ...KILN_WORDINGS,
  ...SENSOR_WORDINGS,
  ...LOG_WORDINGS,
  ...WARE_WORDINGS,
};

/** The sentences of a finding, as they are of a kiln with this heat source. */
export const wordingOf = (id: FindingId, heat: HeatSource): FindingWording =>
  heat === 'fuel' ? { ...FINDING_WORDINGS[id], ...FUEL_WORDINGS[id] } : FINDING_WORDINGS[id];

/** Whether a finding speaks of one of these. */
export const speaksOf = (id: FindingId, ...groups: readonly FindingGroup[]): boolean =>
  groups.some((group) => id in GROUPS[group]);
