import type { LegWords } from '../../core/wording/legs.ts';
import type { RibbonLeg } from './ribbon-legs.ts';
import { placeIn, type View } from './view.ts';

interface RibbonProps {
  readonly legs: readonly RibbonLeg[];
  readonly words: readonly LegWords[];
  readonly view: View;
  readonly left: number;
  readonly width: number;
  readonly typePx: number;
}

const ROW_NAMES = { planned: 'plan', driven: 'kiln' } as const;

/** A number is written where it fits: about so many of its own sizes wide (chosen). */
const LABEL_WIDTH = 1.1;

interface RowProps extends RibbonProps {
  readonly row: RibbonLeg['row'];
}

const Row = ({ row, legs, words, view, left, width, typePx }: RowProps) => (
  <div className="ribbon-row">
    <span className="ribbon-name" style={{ width: left - 6 }}>
      {ROW_NAMES[row]}
    </span>
    <div className="ribbon-track" style={{ left, width }}>
      {legs
        .filter((leg) => leg.row === row)
        .map(({ number, kind, departs, fromSeconds, toSeconds }) => {
          const from = Math.max(-2, placeIn(view, width, fromSeconds));
          const to = Math.min(width + 2, placeIn(view, width, toSeconds));
          if (to <= 0 || from >= width) return null;
          const isRoomy = to - from > typePx * LABEL_WIDTH;
          return (
            <span
              key={number}
              className={`leg leg-${kind} leg-${row}${departs ? ' leg-departs' : ''}`}
              style={{ left: from, width: Math.max(1, to - from) }}
              title={words[number - 1]?.name}
            >
              {isRoomy ? number : ''}
            </span>
          );
        })}
    </div>
  </div>
);

/** The legs along the clock, planned above driven, so that lateness is seen as a sideways shift. */
export const Ribbon = (props: RibbonProps) => {
  const hasPlan = props.legs.some(({ row }) => row === 'planned');
  return (
    <div className="ribbon" aria-hidden="true">
      {hasPlan ? <Row {...props} row="planned" /> : null}
      <Row {...props} row="driven" />
    </div>
  );
};
