import type { FileToSave } from '../host/host.ts';
import { settledLog } from '../state/firings.ts';
import { openFiring, type AppStore } from '../state/store.ts';
import { typedLog, typedName, type TypedDraft } from './typed-draft.ts';

/** What was typed in as a text file that can be opened again. */
export const typedFile = (draft: TypedDraft, now: Date): FileToSave => {
  const name = draft.name ?? typedName(now);
  return {
    fileName: /\.txt$/i.test(name) ? name : `${name}.txt`,
    kind: 'text/plain',
    text: typedLog(draft).text,
  };
};

/**
 * Makes the readings of the open log the draft, where they were typed in and it is not theirs. A draft
 * that was not opened yet stays: it is nowhere else.
 */
export const takeUpTyped = async (store: AppStore): Promise<void> => {
  const { firing, typed, setTyped } = store.getState();
  const log = settledLog(firing)?.log ?? null;
  const source = openFiring({ firing })?.document.source;
  const isUnopened = typed.log === null && typed.text.trim() !== '';
  if (log === null || log === typed.log || isUnopened) return;
  if (source?.format !== 'typed-in') return;
  const { content, fileName: name } = log;
  if (content === null || !('blob' in content)) return;
  const text = new TextDecoder(source.encoding).decode(await content.blob.arrayBuffer());
  setTyped({ text, unit: null, name, log });
};
