import type { Cone } from '../../core/model/cone.ts';
import type { AnalysisDocument, HeatWork } from '../../core/model/document.ts';
import type { ObservedCone } from '../../core/model/options.ts';
import { bendDegrees } from '../../core/report/chart/bend.ts';
import type { HeatWorkWords } from '../../core/wording/heat-work.ts';
import { coneName } from '../../core/wording/speech.ts';

/** A cone of the pack as it is drawn: bent as predicted, with what was seen. */
export interface PackCone {
  readonly cone: Cone;
  readonly name: string;
  readonly roleWord: string;
  readonly stands: string;
  readonly predictedDegrees: number;
  readonly seen: readonly ObservedCone[];
}

/** A seen cone beside what the log predicts of it. */
export interface SeenCone {
  readonly name: string;
  readonly place: string;
  readonly seenDegrees: number;
  /** Null where the reckoning has nothing on this cone. */
  readonly predictedDegrees: number | null;
}

const predicted = ({ byCone }: HeatWork, cone: Cone): number | null => {
  const got = byCone.find((entry) => entry.cone === cone);
  return got ? bendDegrees(got.dose, got.marginC) : null;
};

/** The three cones of the pack; none where nothing can be said of them. */
export const packCones = (
  { heatWork, options }: Pick<AnalysisDocument, 'heatWork' | 'options'>,
  words: HeatWorkWords | null,
): PackCone[] => {
  if (heatWork === null || words === null) return [];
  return words.pack.flatMap(({ cone, name, roleWord, stands }): PackCone[] => {
    const predictedDegrees = predicted(heatWork, cone);
    if (predictedDegrees === null) return [];
    const seen = options.observedCones?.filter((one) => one.cone === cone) ?? [];
    return [{ cone, name, roleWord, stands, predictedDegrees, seen }];
  });
};

/** Every cone that was seen, whether it stands in the pack or not. */
export const seenCones = ({
  heatWork,
  options,
}: Pick<AnalysisDocument, 'heatWork' | 'options'>): SeenCone[] =>
  (options.observedCones ?? []).map(({ cone, place, bendDegrees: seenDegrees }) => ({
    name: coneName(cone),
    place,
    seenDegrees,
    predictedDegrees: heatWork && predicted(heatWork, cone),
  }));
