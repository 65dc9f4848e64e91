import type { FindingId } from './finding.ts';
import type { Options } from './options.ts';

/** What a kiln is heated by. One whose heat source was not told is spoken of as electric. */
export type HeatSource = NonNullable<NonNullable<Options['kiln']>['heat']>;

/** The kiln's heat source as it was told, or electric. */
export const heatSourceOf = ({ kiln }: Options): HeatSource => kiln?.heat ?? 'electric';

/**
 * What only an electric kiln can have: its heating wire, what switches it, its supply. Full power is
 * a fixed amount there; what a burner gives turns on pressure, air and damper.
 */
const ELECTRIC_ONLY: ReadonlySet<FindingId> = new Set<FindingId>([
  'elements-weak',
  'element-lost',
  'power-stuck-on',
  'power-interrupted',
  'ceiling-near',
  'supply-varies',
]);

/** Whether a kiln of this heat source can have what a finding speaks of. */
export const canHave = (heat: HeatSource, id: FindingId): boolean =>
  heat === 'electric' || !ELECTRIC_ONLY.has(id);
