import { EventEmitter } from 'node:events';
import { control } from './control.ts';

/** What Electron does when the last window has gone and nobody listens. */
class App extends EventEmitter {
  name = 'Electron';
  isPackaged = false;
  private ready = false;
  private readonly waiting: (() => void)[] = [];
  readonly commandLine = {
    appendSwitch: (name: string, value = ''): void => {
      if (this.ready) throw new Error('a switch after ready has no effect');
      control().switches.push(`${name}=${value}`);
    },
  };

  setName = (name: string): void => {
    this.name = name;
  };
  getPath = (): string => control().userData;
  enableSandbox = (): void => {
    if (this.ready) throw new Error('app.enableSandbox() can only be called before app is ready');
    control().isSandboxed = true;
  };
  requestSingleInstanceLock = (data: unknown): boolean => {
    control().lockData = structuredClone(data);
    return control().isFirst;
  };
  addRecentDocument = (path: string): void => {
    control().recent.push(path);
  };
  isReady = (): boolean => this.ready;
  whenReady = (): Promise<void> =>
    new Promise((resolve) => {
      if (this.ready) resolve();
      else this.waiting.push(resolve);
    });
  /** The system has started the program: the main script has been loaded. */
  becomeReady = (): void => {
    this.ready = true;
    this.emit('ready');
    for (const resolve of this.waiting) resolve();
  };
  quit = (): void => {
    control().hasQuit = true;
    this.emit('will-quit');
  };
  exit = (code: number): void => {
    control().exitCode = code;
  };
}

export const app = new App();

export const protocol = {
  registerSchemesAsPrivileged: (): void => {
    if (app.isReady()) throw new Error('schemes must be registered before the app is ready');
  },
};
