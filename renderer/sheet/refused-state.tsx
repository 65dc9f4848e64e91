import { useEffect, useState } from 'react';
import { useActions } from '../app/use-actions.ts';
import { RefusedDesk } from '../desk/firing-desk.tsx';
import { useApp, useAppStore } from '../state/use-app.ts';
import type { RefusedFiring } from '../state/firing.ts';
import { lineOfFile } from './line-of-file.ts';
import { REFUSAL_ADVICE } from './refusal-advice.ts';

const useLineToBlame = ({ log, line }: RefusedFiring): string | null => {
  const [text, setText] = useState<string | null>(null);
  useEffect(() => {
    let isHere = true;
    setText(null);
    const { content } = log;
    if (line === null || content === null || !('blob' in content)) return undefined;
    lineOfFile(content.blob, line).then(
      (found) => isHere && setText(found),
      () => undefined,
    );
    return () => {
      isHere = false;
    };
  }, [log, line]);
  return text;
};

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** A log that could not be used: which line, why, and what to try. */
export const RefusedState = ({ firing }: { readonly firing: RefusedFiring }) => {
  const actions = useActions();
  const isTyped = useApp((state) => state.typed.log === firing.log);
  const { closeFiring } = useAppStore().getState();
  const text = useLineToBlame(firing);
  const { log, code, message, line, reading } = firing;
  return (
    <>
      <div className="state" role="alert">
        <h1>{log.fileName} could not be read</h1>
        <p>
          {line === null ? '' : `Line ${line}: `}
          {line === null ? capital(message) : message}.
        </p>
        {text === null ? null : <pre className="line-to-blame">{text}</pre>}
        <h2>What to try</h2>
        <ul>
          {REFUSAL_ADVICE[code].map((advice) => (
            <li key={advice}>{advice}</li>
          ))}
        </ul>
        <p className="buttons">
          <button type="button" className="button button-main" onClick={actions.openLogs}>
            Open another log…
          </button>
          {isTyped ? (
            <button type="button" className="button" onClick={actions.typeIn}>
              Put the readings right
            </button>
          ) : null}
          <button type="button" className="button" onClick={closeFiring}>
            Back to the start
          </button>
        </p>
      </div>
      {reading === undefined || reading.lines.length === 0 ? null : <RefusedDesk firing={firing} />}
    </>
  );
};
