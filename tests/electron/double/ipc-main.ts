import type { Frame } from 'playwright-core';
import { real } from './address.ts';
import { decoded, encoded } from './structured.ts';

type Handler = (event: unknown, ...sent: unknown[]) => unknown;

const handlers = new Map<string, Handler>();

interface FrameSeen {
  readonly url: string;
  readonly parent: FrameSeen | null;
}

/** A frame as the main process sees it. */
export const frameSeen = (frame: Frame): FrameSeen => {
  const parent = frame.parentFrame();
  return { url: real(frame.url()), parent: parent === null ? null : frameSeen(parent) };
};

export const ipcMain = {
  handle: (channel: string, handler: Handler): void => {
    if (handlers.has(channel)) {
      throw new Error(`Attempted to register a second handler for '${channel}'`);
    }
    handlers.set(channel, handler);
  },
};

/** Hands a message of a page to the main process, as encoded text, and its answer back. */
export const invoked = async (
  channel: string,
  text: string,
  sender: unknown,
  frame: Frame,
): Promise<string> => {
  const wrong = (why: string) =>
    JSON.stringify({ error: `Error invoking remote method '${channel}': ${why}` });
  const handler = handlers.get(channel);
  if (handler === undefined) return wrong(`Error: No handler registered for '${channel}'`);
  try {
    const event = { sender, senderFrame: frameSeen(frame) };
    return JSON.stringify({ told: encoded(await handler(event, decoded(text))) });
  } catch (cause) {
    return wrong(String(cause));
  }
};
