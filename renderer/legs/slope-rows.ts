import type { AnalysisDocument } from '../../core/model/document.ts';
import type { TemperatureUnit } from '../../core/units.ts';
import { traceLegName } from '../../core/wording/legs.ts';
import { duration, speechIn } from '../../core/wording/speech.ts';
import { sentence } from '../../core/wording/topic.ts';
import type { Words } from '../../core/wording/wording.ts';
import type { SlopeRow } from './slopes-table.tsx';

/** The bands that matter to the ware, one way: up through the firing or down after it. */
export const bandRows = (
  { bands }: Pick<AnalysisDocument, 'bands'>,
  words: Pick<Words, 'bands'>,
  direction: 'heating' | 'cooling',
): SlopeRow[] =>
  bands.flatMap((band, index) => {
    const said = words.bands[index];
    if (!said || band.direction !== direction) return [];
    return [{ name: said.name, cells: [said.stretch, said.lasted, said.mean, said.fastest] }];
  });

/** The legs that the curve itself shows, with the slope of each. */
export const traceLegRows = (
  { trace }: Pick<AnalysisDocument, 'trace'>,
  unit: TemperatureUnit,
): SlopeRow[] => {
  const say = speechIn(unit);
  return trace.legs.map((leg) => ({
    name: sentence(traceLegName(leg, say)),
    cells: [
      `${say.temperature(leg.startC)} to ${say.temperature(leg.endC)}`,
      duration(leg.endSeconds - leg.startSeconds),
      leg.kind === 'hold' ? '–' : say.rate(leg.rateCPerHour),
    ],
  }));
};
