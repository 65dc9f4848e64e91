import { prose } from '../../core/report/clean.ts';

/** Sentences as a list; nothing for none. */
export const SaidList = ({ said }: { readonly said: readonly string[] }) =>
  said.length === 0 ? null : (
    <ul className="said-list">
      {said.map((text, index) => (
        <li key={index}>{prose(text)}</li>
      ))}
    </ul>
  );
