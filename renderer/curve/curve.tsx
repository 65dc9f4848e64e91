import { useCallback, useMemo, useRef, useState } from 'react';
import type { OpenFiring } from '../state/firing.ts';
import { LanePicture } from './lanes.tsx';
import { Letters } from './letters.tsx';
import { letterMarks, type LetterMark } from './marks.ts';
import type { Plot } from './plots.ts';
import { Ribbon } from './ribbon.tsx';
import { ribbonLegs } from './ribbon-legs.ts';
import type { Scene } from './scene.ts';
import { Surface } from './surface.tsx';
import { TimeAxis } from './time-axis.tsx';
import { layoutOf, RIGHT_PX, useFollowing, usePainting, useScene } from './use-painting.ts';
import { useSurfaceSize, type SurfaceSize } from './use-size.ts';
import { useView } from './use-view.ts';
import './curve.css';

interface CurveProps {
  readonly firing: OpenFiring;
  readonly theme: 'light' | 'dark';
  readonly textPercent: number;
  readonly selected: number | null;
  readonly onSelect: (index: number | null) => void;
}

/** A lane's height and a letter's radius, in sizes of the small type (chosen). */
const LANE_TYPES = 4.6;
const LETTER_TYPES = 0.85;
/** Room that the letters leave at the plot's upper and lower edge, in pixels (chosen). */
const EDGE_PX = 6;

/** The letters in view, placed anew whenever the curve has been drawn. */
const useLetters = (scene: Scene, size: SurfaceSize, width: number) => {
  const view = useView((state) => state.view);
  const [marks, setMarks] = useState<readonly LetterMark[]>([]);
  const place = useCallback(
    ({ heightOf }: Plot) => {
      const area = { width, top: EDGE_PX, bottom: size.curveHeight - EDGE_PX, heightOf };
      const next = letterMarks(scene, view, area, size.typePx * LETTER_TYPES);
      setMarks((last) => (JSON.stringify(last) === JSON.stringify(next) ? last : next));
    },
    [scene, view, width, size],
  );
  return { marks, place };
};

const Plots = (props: CurveProps & { readonly scene: Scene; readonly size: SurfaceSize }) => {
  const { firing, scene, size, selected, onSelect } = props;
  const { document, words } = firing;
  const { unit } = words;
  const view = useView((state) => state.view);
  const layout = useMemo(() => layoutOf(size), [size]);
  const { left, width } = layout;
  const painting = usePainting(scene, view, layout, props);
  const { marks, place } = useLetters(scene, size, width);
  const legs = useMemo(() => ribbonLegs(document), [document]);
  const measures = (height: number) => ({ width: size.width, height, left, right: RIGHT_PX });
  const lane = { painting, measures: measures(Math.round(size.typePx * LANE_TYPES)) };
  return (
    <div className="curve-stack">
      <Surface firing={firing} layout={layout}>
        <LanePicture
          lane="curve"
          name={`°${unit}`}
          painting={painting}
          measures={measures(size.curveHeight)}
          onPlot={place}
        />
        {document.alignment === null ? null : (
          <LanePicture {...lane} lane="difference" name={`kiln minus plan, °${unit}`} />
        )}
        <LanePicture {...lane} lane="slope" name={`slope, °${unit}/h`} />
        <Ribbon {...{ legs, view, left, width }} words={words.legs.rows} typePx={size.typePx} />
        <TimeAxis {...{ view, left, width }} ticks={painting.ticks} />
      </Surface>
      <Letters {...{ marks, left, selected, onSelect }} findings={words.findings} />
    </div>
  );
};

/** What the curve shows, for someone who cannot see it. */
const description = ({ words }: OpenFiring): string =>
  [
    ...words.legs.rows.map(({ number, name, verdict }) => `Leg ${number}, ${name}: ${verdict}.`),
    ...words.findings.map(({ letter, title }) => `${letter}: ${title.text}`),
  ].join(' ');

/** Planned over actual with its lanes, its ribbon and its letters, all on one clock. */
export const Curve = (props: CurveProps) => {
  const { firing, textPercent } = props;
  const scene = useScene(firing);
  useFollowing(firing, scene);
  const frame = useRef<HTMLDivElement>(null);
  const size = useSurfaceSize(frame, textPercent);
  return (
    <div ref={frame} className="curve-frame">
      <p id="curve-description" className="unseen">
        {description(firing)}
      </p>
      {size === null ? null : <Plots {...props} scene={scene} size={size} />}
    </div>
  );
};
