/**
 * What stands in for Electron around the preload script, as text to be run in the page before
 * anything of its own. `__send` is the binding to the main process; `__deliver` takes its events.
 */
export const preloadWorld = (preload: string): string => `(() => {
  if (window !== window.top) return;
  const send = window.__send;
  const encoded = (value) => JSON.stringify(structuredClone(value) ?? null, (key, part) =>
    part instanceof Uint8Array
      ? { $bytes: btoa(Array.from(part, (byte) => String.fromCharCode(byte)).join('')) }
      : part);
  const decoded = (text) => JSON.parse(text, (key, part) =>
    part && part.$bytes !== undefined
      ? Uint8Array.from(atob(part.$bytes), (letter) => letter.charCodeAt(0))
      : part);
  const listeners = new Map();
  const of = (channel) => {
    if (!listeners.has(channel)) listeners.set(channel, new Set());
    return listeners.get(channel);
  };
  const ipcRenderer = {
    invoke: async (channel, value) => {
      const { told, error } = JSON.parse(await send(channel, encoded(value)));
      if (error !== undefined) throw new Error(error);
      return decoded(told);
    },
    on: (channel, listener) => void of(channel).add(listener),
    off: (channel, listener) => void of(channel).delete(listener),
  };
  const crossing = (value) => {
    if (typeof value === 'function') return (...sent) => crossing(value(...sent.map(crossing)));
    if (value instanceof Promise) return value.then(crossing);
    if (Array.isArray(value)) return value.map(crossing);
    if (value === null || typeof value !== 'object') return value;
    if (Object.getPrototypeOf(value) !== Object.prototype) return structuredClone(value);
    return Object.freeze(
      Object.fromEntries(Object.entries(value).map(([name, part]) => [name, crossing(part)])));
  };
  const contextBridge = {
    exposeInMainWorld: (name, api) =>
      Object.defineProperty(window, name, { value: crossing(api), enumerable: true }),
  };
  Object.defineProperty(window, '__deliver', {
    value: (channel, text) => of(channel).forEach((listener) => listener({}, decoded(text))),
  });
  const require = (name) => {
    if (name !== 'electron') throw new Error('module not found: ' + name);
    return { contextBridge, ipcRenderer };
  };
  (function (require, module, exports, process, Buffer) {
${preload}
  })(require, { exports: {} }, {});
})();`;
