import { EventEmitter } from 'node:events';
import { readFileSync } from 'node:fs';
import type { BrowserContext, Frame, Page, Request, Route } from 'playwright-core';
import { COMPLAIN_OF_WEBRTC, complaintsOf } from '../../browser/complaints.ts';
import { played, real } from './address.ts';
import { app } from './app.ts';
import { control } from './control.ts';
import { invoked } from './ipc-main.ts';
import { preloadWorld } from './preload-world.ts';
import { session } from './session.ts';
import { encoded } from './structured.ts';

interface Options {
  readonly width: number;
  readonly height: number;
  readonly x?: number;
  readonly y?: number;
  readonly webPreferences: { readonly preload: string };
}

type Opened = (details: { url: string }) => { action: 'allow' | 'deny' };

/** An event that can be prevented. */
const preventable = <More extends object>(more: More) => {
  const event = {
    ...more,
    isPrevented: false,
    preventDefault: () => {
      event.isPrevented = true;
    },
  };
  return event;
};

class WebContents extends EventEmitter {
  page: Page | undefined;
  openHandler: Opened = () => ({ action: 'allow' });
  /** The address that the program itself loads: no navigation of the page's. */
  own: string | undefined;

  /** Electron's default lets WebRTC send from every interface. */
  webRTCPolicy = 'default';

  setWebRTCIPHandlingPolicy = (policy: string): void => {
    this.webRTCPolicy = policy;
  };
  setWindowOpenHandler = (handler: Opened): void => {
    this.openHandler = handler;
  };
  send = (channel: string, told: unknown): void => {
    const text = encoded(told);
    const delivered = this.page?.evaluate(
      ([name, value]) =>
        (Reflect.get(window, '__deliver') as (...sent: unknown[]) => void)(name, value),
      [channel, text] as const,
    );
    // As in Electron, what is sent to a page that is going is lost without a word.
    delivered?.catch(() => undefined);
  };
  getURL = (): string => real(this.page?.url() ?? '');

  /** Whether the program forbids the page, or a frame in it, to go there. */
  forbids = (url: string, frame: Frame): boolean => {
    if (played(this.own ?? '') === url) return false;
    const event = preventable({ url: real(url), isMainFrame: frame.parentFrame() === null });
    this.emit('will-frame-navigate', event);
    if (event.isMainFrame) this.emit('will-navigate', event, event.url);
    return event.isPrevented;
  };
}

export class BrowserWindow extends EventEmitter {
  static readonly all = new Set<BrowserWindow>();
  static getAllWindows = (): BrowserWindow[] => [...BrowserWindow.all];

  readonly webContents = new WebContents();
  readonly options: Options;
  /** Requests that the program let out to the network, which it must not. */
  readonly letOut: string[] = [];
  readonly refused: string[] = [];
  /** What the page has complained of since it was opened. */
  complaints: readonly string[] = [];
  /** Downloads that the page began, and whether the program prevented each. */
  readonly downloads: { readonly isPrevented: boolean }[] = [];
  private context: BrowserContext | undefined;
  private bounds;
  private states = { visible: false, maximized: false, minimized: false, focused: 0 };
  private isDestroyed_ = false;

  constructor(options: Options) {
    super();
    this.options = options;
    const { width, height, x = 80, y = 60 } = options;
    this.bounds = { x, y, width, height };
    BrowserWindow.all.add(this);
    app.emit('web-contents-created', {}, this.webContents);
  }

  loadURL = async (url: string): Promise<void> => {
    const { webContents, bounds } = this;
    this.context = await control().browser.newContext({
      viewport: { width: bounds.width, height: bounds.height },
      ...control().context,
    });
    await this.context.addInitScript({ content: COMPLAIN_OF_WEBRTC });
    await this.context.addInitScript({
      content: preloadWorld(readFileSync(this.options.webPreferences.preload, 'utf8')),
    });
    await this.context.exposeBinding('__send', ({ frame }, channel: string, text: string) =>
      invoked(channel, text, webContents, frame),
    );
    await this.context.route('**/*', this.serve);
    const page = await this.context.newPage();
    webContents.page = page;
    this.complaints = complaintsOf(page);
    webContents.own = url;
    this.context.on('page', (opened) => {
      const { action } = webContents.openHandler({ url: real(opened.url()) });
      if (action === 'deny') void opened.close();
    });
    page.on('download', (download) => {
      const event = preventable({});
      session.defaultSession.emit('will-download', event);
      this.downloads.push({ isPrevented: event.isPrevented });
      if (event.isPrevented) void download.cancel();
    });
    page.on('close', () => {
      this.goneFromScreen();
    });
    await page.goto(played(url));
    this.emit('ready-to-show');
  };

  private serve = async (route: Route, request: Request): Promise<void> => {
    const isPage = request.isNavigationRequest();
    if (isPage && this.webContents.forbids(request.url(), request.frame())) {
      this.refused.push(request.url());
      // An answer without content leaves the page where it is.
      await route.fulfill({ status: 204 });
      return;
    }
    const how = await session.defaultSession.serve(route, request);
    if (how === 'let-out') this.letOut.push(request.url());
    if (how === 'refused') this.refused.push(request.url());
  };

  private goneFromScreen = (): void => {
    if (this.isDestroyed_) return;
    this.isDestroyed_ = true;
    this.emit('close', preventable({}));
    BrowserWindow.all.delete(this);
    this.emit('closed');
    if (BrowserWindow.all.size === 0) app.emit('window-all-closed');
  };

  close = (): void => {
    this.goneFromScreen();
    void this.context?.close();
  };
  /** Closes the window and waits until the browser has. */
  end = async (): Promise<void> => {
    this.goneFromScreen();
    await this.context?.close();
  };
  destroy = (): void => {
    this.close();
  };
  reload = (): void => {
    void this.webContents.page?.reload();
  };
  getNormalBounds = () => this.bounds;
  setBounds = (bounds: Partial<typeof this.bounds>): void => {
    this.bounds = { ...this.bounds, ...bounds };
  };
  show = (): void => {
    this.states.visible = true;
  };
  isVisible = (): boolean => this.states.visible;
  maximize = (): void => {
    this.states.maximized = true;
  };
  isMaximized = (): boolean => this.states.maximized;
  minimize = (): void => {
    this.states.minimized = true;
  };
  isMinimized = (): boolean => this.states.minimized;
  restore = (): void => {
    this.states.minimized = false;
  };
  focus = (): void => {
    this.states.focused += 1;
  };
  get timesFocused(): number {
    return this.states.focused;
  }
}
