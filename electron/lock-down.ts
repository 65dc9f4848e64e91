import { app, type Session, type WebContents } from 'electron';
import { isOfPage } from './app-page.ts';

/** Chromium's policy under which WebRTC, which knows no `webRequest`, sends nothing by itself. */
const NO_WEBRTC = 'disable_non_proxied_udp';

/** Before the app is ready: every page in the sandbox, and no name is ever looked up. */
export const lockDownProcess = (): void => {
  app.enableSandbox();
  app.commandLine.appendSwitch('host-resolver-rules', 'MAP * ~NOTFOUND');
  app.commandLine.appendSwitch('disable-background-networking');
  app.commandLine.appendSwitch('force-webrtc-ip-handling-policy', NO_WEBRTC);
};

/** No permission, no device, no download, and no request to anything but the page itself. */
export const lockDownSession = (session: Session): void => {
  session.setPermissionRequestHandler((_contents, _permission, answer) => {
    answer(false);
  });
  session.setPermissionCheckHandler(() => false);
  session.setDevicePermissionHandler(() => false);
  session.setDisplayMediaRequestHandler((_request, answer) => {
    answer({});
  });
  session.webRequest.onBeforeRequest(({ url }, answer) => {
    const isTool = !app.isPackaged && url.startsWith('devtools://');
    answer({ cancel: !isOfPage(url) && !isTool });
  });
  session.on('will-download', (event) => {
    event.preventDefault();
  });
  session.setSpellCheckerEnabled(false);
};

/** The window shows its one page and never another, nor opens a second, nor calls past it. */
export const lockDownContents = (contents: WebContents): void => {
  contents.on('will-navigate', (event) => {
    event.preventDefault();
  });
  contents.on('will-frame-navigate', (event) => {
    event.preventDefault();
  });
  contents.on('will-redirect', (event) => {
    event.preventDefault();
  });
  contents.on('will-attach-webview', (event) => {
    event.preventDefault();
  });
  contents.setWebRTCIPHandlingPolicy(NO_WEBRTC);
  contents.setWindowOpenHandler(() => ({ action: 'deny' }));
};
