import { randomBytes } from 'node:crypto';
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { REQUESTS, type Answered, type Sent } from '../contract.ts';
import { answerFromPage, SECURITY_HEADERS, type Page } from '../page.ts';
import { admit, type Invited } from './admit.ts';
import { attendance, PATIENCE, type Patience } from './attendance.ts';
import { readJson } from './read-json.ts';

/** The requests that a page in a browser has of its host; the rest the browser does itself. */
export const LOOPBACK_REQUESTS = [
  'open-session',
  'read-file',
  'keep-preferences',
  'keep-schedule',
  'forget-schedule',
  'keep-rule',
  'forget-rule',
] as const;
export type LoopbackRequest = (typeof LOOPBACK_REQUESTS)[number];

export type LoopbackAnswers = {
  readonly [Name in LoopbackRequest]: (sent: Sent<Name>) => Promise<Answered<Name>>;
};

export interface Loopback {
  /** Where the page is, with the token: whoever has it may read what was handed to the page. */
  readonly address: string;
  /** Resolves when the page was closed, or the server was. */
  readonly ended: Promise<void>;
  readonly close: () => void;
}

interface Shop {
  readonly page: Page;
  readonly answers: LoopbackAnswers;
  readonly pages: ReturnType<typeof attendance>;
}

const LOOPBACK = '127.0.0.1';
const TOKEN_BYTES = 32;
/** For the pages to be told before their connections are cut (chosen). */
const LAST_WORDS_MS = 200;
const REASONS = { 400: 'Not understood', 403: 'Refused', 404: 'Not found', 405: 'Refused' };

const turnAway = (response: ServerResponse, status: keyof typeof REASONS): void => {
  const allow = status === 405 ? { allow: 'GET, HEAD, POST' } : {};
  response.writeHead(status, {
    ...SECURITY_HEADERS,
    ...allow,
    'content-type': 'text/plain; charset=utf-8',
    connection: 'close',
  });
  response.end(`${REASONS[status]}.\n`);
};

const isLoopbackRequest = (name: string): name is LoopbackRequest =>
  (LOOPBACK_REQUESTS as readonly string[]).includes(name);

const ask = async <Name extends LoopbackRequest>(
  name: Name,
  request: IncomingMessage,
  response: ServerResponse,
  answers: LoopbackAnswers,
): Promise<void> => {
  const sent = REQUESTS[name].sent.safeParse(await readJson(request));
  if (!sent.success) {
    turnAway(response, 400);
    return;
  }
  const answered: unknown = await answers[name](sent.data as Sent<Name>);
  const hasBytes = (value: unknown): value is { bytes: Uint8Array } =>
    typeof value === 'object' && value !== null && 'bytes' in value;
  const [contentType, body] = hasBytes(answered)
    ? ['application/octet-stream', answered.bytes]
    : ['application/json; charset=utf-8', JSON.stringify(answered)];
  response.writeHead(200, { ...SECURITY_HEADERS, 'content-type': contentType });
  response.end(body);
};

const post = async (
  address: string,
  request: IncomingMessage,
  response: ServerResponse,
  { answers, pages }: Shop,
): Promise<void> => {
  if (address === 'leave') {
    pages.leave();
    response.writeHead(204, SECURITY_HEADERS).end();
    return;
  }
  const name = address.replace(/^ask\//, '');
  if (name === address || !isLoopbackRequest(name)) {
    turnAway(response, 404);
    return;
  }
  return ask(name, request, response, answers);
};

const get = (address: string, response: ServerResponse, { page, pages }: Shop): void => {
  if (address === 'events') {
    response.writeHead(200, { ...SECURITY_HEADERS, 'content-type': 'text/event-stream' });
    pages.arrive(response);
    return;
  }
  const { status, headers, body } = answerFromPage(page, address);
  response.writeHead(status, headers).end(body);
};

const serve = async (
  request: IncomingMessage,
  response: ServerResponse,
  invited: Invited,
  shop: Shop,
): Promise<void> => {
  const admission = admit(request, invited);
  if ('refused' in admission) {
    turnAway(response, admission.refused);
    return;
  }
  const { address } = admission;
  if (request.method === 'POST') return post(address, request, response, shop);
  if (request.method === 'HEAD' && address === 'events') {
    turnAway(response, 404);
    return;
  }
  get(address, response, shop);
};

/**
 * Serves the page to a browser on this machine: on 127.0.0.1 only, on a free port, below an
 * unguessable token. Ends when the page has been closed.
 *
 * @throws Error in the system's words where no port can be had
 */
export const serveLoopback = async (
  page: Page,
  answers: LoopbackAnswers,
  patience: Patience = PATIENCE,
): Promise<Loopback> => {
  const token = randomBytes(TOKEN_BYTES).toString('base64url');
  const invited = { host: '', token };
  const pages = attendance(patience, () => {
    close();
  });
  const shop: Shop = { page, answers, pages };
  const server = createServer((request, response) => {
    serve(request, response, invited, shop).catch(() => {
      if (response.headersSent) response.destroy();
      else turnAway(response, 400);
    });
  });
  const ended = new Promise<void>((resolve) => {
    server.once('close', resolve);
  });
  const close = (): void => {
    pages.dismiss();
    server.close();
    setTimeout(() => {
      server.closeAllConnections();
    }, LAST_WORDS_MS);
  };
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject).listen(0, LOOPBACK, resolve);
  });
  invited.host = `${LOOPBACK}:${(server.address() as AddressInfo).port}`;
  return { address: `http://${invited.host}/${token}/`, ended, close };
};
