import {
  useCallback,
  useEffect,
  useLayoutEffect,
  useMemo,
  useRef,
  useState,
  type KeyboardEvent,
} from 'react';
import { DARK, LIGHT } from '../../core/report/html/palette.ts';
import type { OpenFiring } from '../state/firing.ts';
import { attachGestures, type Drawn } from './gestures.ts';
import { curveKey } from './keys.ts';
import { LanePicture } from './lanes.tsx';
import { Letters } from './letters.tsx';
import { letterMarks, type LetterMark } from './marks.ts';
import type { Painting } from './paint.ts';
import type { Plot } from './plots.ts';
import { useReadout } from './readout-margin.tsx';
import { Ribbon } from './ribbon.tsx';
import { ribbonLegs } from './ribbon-legs.ts';
import { pictureOf, sceneOf, type Scene } from './scene.ts';
import { TimeAxis } from './time-axis.tsx';
import { timeTicksIn } from './time-ticks.ts';
import { useSurfaceSize, type SurfaceSize } from './use-size.ts';
import { useView, useViewStore } from './use-view.ts';
import { placeIn, type View } from './view.ts';
import './curve.css';

interface CurveProps {
  readonly firing: OpenFiring;
  readonly theme: 'light' | 'dark';
  readonly textPercent: number;
  readonly selected: number | null;
  readonly onSelect: (index: number | null) => void;
}

/** Room for the scale on the left, in sizes of its type, and on the right in pixels (chosen). */
const LEFT_TYPES = 3.8;
const RIGHT_PX = 10;
const LANE_TYPES = 4.6;
/** A label on the clock needs about so many sizes of its type (chosen). */
const TICK_TYPES = 5.5;
const FACE = "'Source Sans 3 Variable', system-ui, sans-serif";

const useScene = ({ document, trace, words }: OpenFiring): Scene =>
  useMemo(() => sceneOf(document, trace, words), [document, trace, words]);

/** Follows the firing: another log begins with the whole of it, another plan keeps the view. */
const useFollowing = (firing: OpenFiring, { whole }: Scene): void => {
  const store = useViewStore();
  const { log, document } = firing;
  const { medianIntervalSeconds, peakAtSeconds } = document.trace;
  const lastLog = useRef<unknown>(null);
  const { from, to } = whole;
  useLayoutEffect(() => {
    const { reset, resize } = store.getState();
    if (lastLog.current === log) resize({ from, to }, medianIntervalSeconds);
    else reset({ from, to }, medianIntervalSeconds, peakAtSeconds);
    lastLog.current = log;
  }, [store, log, from, to, medianIntervalSeconds, peakAtSeconds]);
};

/** Canvas text is drawn once; when the face has come in it must be drawn again. */
const useFaceReady = (): boolean => {
  const [isReady, setReady] = useState(false);
  useEffect(() => {
    let isHere = true;
    void document.fonts.load(`16px ${FACE}`).then(() => isHere && setReady(true));
    return () => {
      isHere = false;
    };
  }, []);
  return isReady;
};

interface Layout {
  readonly left: number;
  readonly width: number;
  readonly size: SurfaceSize;
}

const layoutOf = (size: SurfaceSize): Layout => {
  const left = Math.round(size.typePx * LEFT_TYPES);
  return { left, width: Math.max(10, size.width - left - RIGHT_PX), size };
};

const usePainting = (
  scene: Scene,
  view: View,
  { size, width }: Layout,
  { theme, selected, firing }: CurveProps,
): Painting => {
  const isFaceReady = useFaceReady();
  const { startInstant } = firing.document.trace;
  const picture = useMemo(() => pictureOf(scene, view), [scene, view]);
  return useMemo(() => {
    const most = Math.max(2, Math.floor(width / (size.typePx * TICK_TYPES)));
    const finding = selected === null ? undefined : firing.document.findings[selected];
    return {
      ...{ scene, picture },
      palette: theme === 'dark' ? DARK : LIGHT,
      ticks: timeTicksIn(view, most, startInstant),
      typePx: size.typePx,
      face: isFaceReady ? FACE : 'system-ui, sans-serif',
      chosen: finding?.evidence ?? [],
    };
  }, [scene, picture, view, width, size, theme, selected, firing, startInstant, isFaceReady]);
};

const Plots = (props: CurveProps & { readonly scene: Scene; readonly size: SurfaceSize }) => {
  const { firing, scene, size, selected, onSelect } = props;
  const view = useView((state) => state.view);
  const store = useViewStore();
  const layout = useMemo(() => layoutOf(size), [size]);
  const painting = usePainting(scene, view, layout, props);
  const { left, width } = layout;
  const [marks, setMarks] = useState<readonly LetterMark[]>([]);
  const [drawn, setDrawn] = useState<Drawn | null>(null);
  const surface = useRef<HTMLDivElement>(null);
  const readout = useReadout(firing);
  const laneHeight = Math.round(size.typePx * LANE_TYPES);
  const { unit } = firing.words;
  const hasPlan = firing.document.alignment !== null;
  const legs = useMemo(() => ribbonLegs(firing.document), [firing.document]);
  const measures = (height: number) => ({ width: size.width, height, left, right: RIGHT_PX });

  const placeLetters = useCallback(
    (plot: Plot) => {
      const area = { width, top: 6, bottom: size.curveHeight - 4, heightOf: plot.heightOf };
      const next = letterMarks(scene, view, area, size.typePx * 0.85);
      setMarks((last) => (JSON.stringify(last) === JSON.stringify(next) ? last : next));
    },
    [scene, view, width, size],
  );

  useEffect(() => {
    if (!surface.current) return;
    return attachGestures(surface.current, store, () => ({ left, width }), setDrawn);
  }, [store, left, width]);

  const onKeyDown = (event: KeyboardEvent): void => {
    const key = event.ctrlKey || event.metaKey || event.altKey ? null : curveKey(event.key);
    if (!key) return;
    event.preventDefault();
    event.stopPropagation();
    key.act(store.getState(), event);
  };

  const crosshair = placeIn(view, width, readout.at);
  return (
    <div className="curve-stack">
      <div
        ref={surface}
        className="curve-surface"
        id="crosshair"
        role="slider"
        tabIndex={0}
        aria-label="Crosshair on the curve"
        aria-describedby="curve-description"
        aria-valuemin={Math.round(scene.whole.from)}
        aria-valuemax={Math.round(scene.whole.to)}
        aria-valuenow={Math.round(readout.at)}
        aria-valuetext={readout.line}
        onKeyDown={onKeyDown}
      >
        <LanePicture
          lane="curve"
          name={`°${unit}`}
          painting={painting}
          measures={measures(size.curveHeight)}
          onPlot={placeLetters}
        />
        {hasPlan ? (
          <LanePicture
            lane="difference"
            name={`kiln minus plan, °${unit}`}
            painting={painting}
            measures={measures(laneHeight)}
          />
        ) : null}
        <LanePicture
          lane="slope"
          name={`slope, °${unit}/h`}
          painting={painting}
          measures={measures(laneHeight)}
        />
        <Ribbon
          {...{ legs, view, left, width }}
          words={firing.words.legs.rows}
          typePx={size.typePx}
        />
        <TimeAxis {...{ view, left, width }} ticks={painting.ticks} />
        {crosshair >= 0 && crosshair <= width ? (
          <span className="crosshair" style={{ left: left + crosshair }} />
        ) : null}
        {drawn === null ? null : (
          <span
            className="drawn-out"
            style={{ left: left + drawn.from, width: drawn.to - drawn.from }}
          />
        )}
      </div>
      <Letters {...{ marks, left, selected, onSelect }} findings={firing.words.findings} />
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
