import type { IncomingMessage } from 'node:http';

/** Far above any request of the page: they hold tickets and settings, never files (chosen). */
const MAX_REQUEST_BYTES = 64 * 1024;

/**
 * Reads a request's JSON, no further than the limit.
 *
 * @throws Error where it is not JSON, does not say so, or is too long
 */
export const readJson = async (request: IncomingMessage): Promise<unknown> => {
  if (request.headers['content-type'] !== 'application/json') throw new Error('not JSON');
  const chunks: Buffer[] = [];
  let length = 0;
  for await (const chunk of request as AsyncIterable<Buffer>) {
    length += chunk.length;
    if (length > MAX_REQUEST_BYTES) throw new Error('too long');
    chunks.push(chunk);
  }
  return JSON.parse(Buffer.concat(chunks).toString('utf8'));
};
