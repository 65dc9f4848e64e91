import { prose } from '../../core/report/clean.ts';
import type { Line } from '../../core/wording/line.ts';

/** A sentence with the numbers that matter set larger. */
export const SaidLine = ({ line }: { readonly line: Line }) => (
  <>
    {line.parts.map(({ text, large }, index) =>
      large ? (
        <span key={index} className="said-large">
          {prose(text)}
        </span>
      ) : (
        prose(text)
      ),
    )}
  </>
);
