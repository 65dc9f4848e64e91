import { createHash, timingSafeEqual } from 'node:crypto';
import type { IncomingMessage } from 'node:http';

/** The one visitor that the server answers. */
export interface Invited {
  /** `127.0.0.1:PORT`, as the Host header must say, against names that lead here from elsewhere. */
  readonly host: string;
  readonly token: string;
}

/** Where an admitted request leads, below the token; or the status it is turned away with. */
export type Admission = { readonly address: string } | { readonly refused: 403 | 404 | 405 };

const METHODS = ['GET', 'HEAD', 'POST'];

/** Compares in a time that does not depend on how much of the token was right. */
const sameToken = (left: string, right: string): boolean => {
  const digest = (text: string) => createHash('sha256').update(text).digest();
  return timingSafeEqual(digest(left), digest(right));
};

/** A browser says where a request comes from; a page of another origin is turned away. */
const isFromOurPage = ({ headers, method }: IncomingMessage, { host }: Invited): boolean => {
  const { origin } = headers;
  if (origin !== undefined) return origin === `http://${host}`;
  if (method === 'POST') return false;
  const site = headers['sec-fetch-site'];
  const isVisit = headers['sec-fetch-mode'] === 'navigate';
  return site === undefined || site === 'same-origin' || site === 'none' || isVisit;
};

/**
 * Decides whether a request is answered. Nothing is said about why one is not, and all addresses
 * without the token look alike.
 */
export const admit = (request: IncomingMessage, invited: Invited): Admission => {
  const { headers, method = '', url = '' } = request;
  if (!METHODS.includes(method)) return { refused: 405 };
  if (headers.host !== invited.host) return { refused: 403 };
  if (!isFromOurPage(request, invited)) return { refused: 403 };
  const [, token, address] = /^\/([^/?#]*)\/([^?#]*)(?:\?.*)?$/.exec(url) ?? [];
  if (token === undefined || address === undefined) return { refused: 404 };
  return sameToken(token, invited.token) ? { address } : { refused: 404 };
};
