import { EventEmitter } from 'node:events';
import type { Request as BrowserRequest, Route } from 'playwright-core';
import { real } from './address.ts';

type ProtocolHandler = (request: Request) => Response | Promise<Response>;
type BeforeRequest = (details: { url: string }, answer: (how: { cancel: boolean }) => void) => void;
type PermissionRequest = (
  contents: unknown,
  permission: string,
  answer: (granted: boolean) => void,
) => void;

/** The one session: who serves the page, what is let through, what is permitted. */
class Session extends EventEmitter {
  private readonly schemes = new Map<string, ProtocolHandler>();
  private beforeRequest: BeforeRequest | undefined;
  private permissionRequest: PermissionRequest | undefined;
  private permissionCheck: ((contents: unknown, permission: string) => boolean) | undefined;
  private deviceCheck: (() => boolean) | undefined;
  hasDisplayMediaHandler = false;
  isSpellChecked = true;

  readonly protocol = {
    handle: (scheme: string, handler: ProtocolHandler): void => {
      this.schemes.set(scheme, handler);
    },
  };
  readonly webRequest = {
    onBeforeRequest: (listener: BeforeRequest): void => {
      this.beforeRequest = listener;
    },
  };
  setPermissionRequestHandler = (handler: PermissionRequest): void => {
    this.permissionRequest = handler;
  };
  setPermissionCheckHandler = (handler: (contents: unknown, permission: string) => boolean) => {
    this.permissionCheck = handler;
  };
  setDevicePermissionHandler = (handler: () => boolean): void => {
    this.deviceCheck = handler;
  };
  setDisplayMediaRequestHandler = (): void => {
    this.hasDisplayMediaHandler = true;
  };
  setSpellCheckerEnabled = (isEnabled: boolean): void => {
    this.isSpellChecked = isEnabled;
  };

  /** How the program answers to a permission, asked both ways; without a handler Electron grants it. */
  permits = (permission: string): { request: boolean; check: boolean; device: boolean } => {
    let request = true;
    this.permissionRequest?.(null, permission, (granted) => (request = granted));
    return {
      request,
      check: this.permissionCheck?.(null, permission) ?? true,
      device: this.deviceCheck?.() ?? true,
    };
  };

  private isCancelled = (url: string): boolean => {
    let cancelled = false;
    this.beforeRequest?.({ url }, ({ cancel }) => (cancelled = cancel));
    return cancelled;
  };

  /** Serves one request of the browser as the program would; anything it lets out is refused. */
  serve = async (
    route: Route,
    request: BrowserRequest,
  ): Promise<'served' | 'refused' | 'let-out'> => {
    const url = real(request.url());
    if (this.isCancelled(url)) {
      await route.abort('blockedbyclient');
      return 'refused';
    }
    const handler = this.schemes.get(new URL(url).protocol.replace(':', ''));
    if (handler === undefined) {
      await route.abort('internetdisconnected');
      return 'let-out';
    }
    const answer = await handler(new Request(url, { method: request.method() }));
    await route.fulfill({
      status: answer.status,
      headers: Object.fromEntries(answer.headers),
      body: Buffer.from(await answer.arrayBuffer()),
    });
    return 'served';
  };
}

const defaultSession = new Session();

export const session = { defaultSession };
