/** A straight map from a range of values to a range of lengths, either of which may run backwards. */
export type Scale = (value: number) => number;

/** The scale that takes `from` to `start` and `to` to `end`; all on `start` where the range is empty. */
export const linearScale = (from: number, to: number, start: number, end: number): Scale => {
  const factor = to === from ? 0 : (end - start) / (to - from);
  return (value) => start + (value - from) * factor;
};

/** An area of a drawing, in its own units; y runs downwards. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

export const rightOf = ({ left, width }: Box): number => left + width;
export const bottomOf = ({ top, height }: Box): number => top + height;
