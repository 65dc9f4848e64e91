import { useEffect, useRef, useState, type KeyboardEvent, type ReactNode } from 'react';
import type { OpenFiring } from '../state/firing.ts';
import { attachGestures, type Drawn } from './gestures.ts';
import { curveKey } from './keys.ts';
import { useReadout } from './readout-margin.tsx';
import type { Layout } from './use-painting.ts';
import { useView, useViewStore } from './use-view.ts';
import { placeIn } from './view.ts';

interface SurfaceProps {
  readonly firing: OpenFiring;
  readonly layout: Layout;
  /** The pictures: they are not drawn again when only the crosshair moves. */
  readonly children: ReactNode;
}

const Crosshair = ({ at, layout }: { readonly at: number; readonly layout: Layout }) => {
  const view = useView((state) => state.view);
  const { left, width } = layout;
  const place = placeIn(view, width, at);
  if (place < 0 || place > width) return null;
  return <span className="crosshair" style={{ left: left + place }} />;
};

/** What is pointed at and moved: a slider whose value is the readout under the crosshair. */
export const Surface = ({ firing, layout, children }: SurfaceProps) => {
  const store = useViewStore();
  const { whole } = useView((state) => state.limits);
  const readout = useReadout(firing);
  const surface = useRef<HTMLDivElement>(null);
  const [drawn, setDrawn] = useState<Drawn | null>(null);
  const { left, width } = layout;

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

  return (
    <div
      ref={surface}
      className="curve-surface"
      id="crosshair"
      role="slider"
      tabIndex={0}
      aria-label="Crosshair on the curve"
      aria-describedby="curve-description"
      aria-valuemin={Math.round(whole.from)}
      aria-valuemax={Math.round(whole.to)}
      aria-valuenow={Math.round(readout.at)}
      aria-valuetext={readout.line}
      onKeyDown={onKeyDown}
    >
      {/* Under the pictures, which are clear: no name or time is ever crossed out by it. */}
      <Crosshair at={readout.at} layout={layout} />
      {children}
      {drawn === null ? null : (
        <span
          className="drawn-out"
          style={{ left: left + drawn.from, width: drawn.to - drawn.from }}
        />
      )}
    </div>
  );
};
