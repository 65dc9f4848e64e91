import type { Page } from 'playwright-core';

/** What a page complains of from now on: errors and warnings of its console, its policy, its scripts. */
export const complaintsOf = (page: Page): string[] => {
  const complaints: string[] = [];
  page.on('console', (message) => {
    if (['error', 'warning'].includes(message.type())) complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  return complaints;
};

/** Run in a page before anything of its own: lets it complain of WebRTC, which no request shows. */
export const COMPLAIN_OF_WEBRTC = `(() => {
  if (!('RTCPeerConnection' in window)) return;
  const Watched = class extends RTCPeerConnection {
    constructor(...told) {
      console.error('a connection by WebRTC was tried');
      super(...told);
    }
  };
  Object.assign(window, { RTCPeerConnection: Watched, webkitRTCPeerConnection: Watched });
})();`;
