/**
 * The page's policy reaches every way to another machine but WebRTC, for which browsers have no word
 * in it yet (Content Security Policy Level 3 has: `webrtc 'block'`). It is taken away before anything
 * else runs, with what is like it; nothing here would ever use it.
 */
for (const name of ['RTCPeerConnection', 'webkitRTCPeerConnection', 'WebTransport']) {
  Reflect.deleteProperty(globalThis, name);
}
