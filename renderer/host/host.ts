import { BRIDGE, type Bridge } from '../../electron/host/message-names.ts';
import { browserHost } from './browser-host.ts';
import { desktopHost } from './desktop-host.ts';
import type { Host } from './interface.ts';

export { HostGone } from './host-gone.ts';
export type * from './interface.ts';

/** Connects to the host that serves this page: the preload's bridge, or the loopback server. */
export const connectHost = (): Promise<Host> => {
  const { [BRIDGE]: bridge } = window as { readonly [BRIDGE]?: Bridge };
  return Promise.resolve(bridge === undefined ? browserHost() : desktopHost(bridge));
};
