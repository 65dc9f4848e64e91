import { contextBridge, ipcRenderer } from 'electron';
import {
  BRIDGE,
  EVENT_NAMES,
  REQUEST_NAMES,
  type Bridge,
  type EventName,
  type RequestName,
} from './host/message-names.ts';

/**
 * All that the page has of the machine: one function for each message of the contract. Nothing is
 * parsed here, since both ends do; nothing else of Electron is passed on.
 */
const ask = (name: RequestName) => (sent: unknown) => ipcRenderer.invoke(name, sent);

const on = (name: EventName) => (listener: (told: unknown) => void) => {
  const pass = (_event: unknown, told: unknown) => {
    listener(told);
  };
  ipcRenderer.on(name, pass);
  return () => {
    ipcRenderer.off(name, pass);
  };
};

const bridge: Bridge = {
  ask: Object.fromEntries(REQUEST_NAMES.map((name) => [name, ask(name)])) as Bridge['ask'],
  on: Object.fromEntries(EVENT_NAMES.map((name) => [name, on(name)])) as Bridge['on'],
};

contextBridge.exposeInMainWorld(BRIDGE, bridge);
