import { request, type IncomingHttpHeaders } from 'node:http';
import { connect } from 'node:net';

export interface Visit {
  readonly status: number;
  readonly headers: IncomingHttpHeaders;
  readonly body: Buffer;
}

export interface Asked {
  readonly method?: string;
  readonly headers?: Readonly<Record<string, string>>;
  readonly body?: string | Buffer;
}

/** Sends a request with the path exactly as given: nothing is resolved, decoded or encoded. */
export const visit = (address: string, path: string, asked: Asked = {}): Promise<Visit> =>
  new Promise((resolve, reject) => {
    const { hostname, port } = new URL(address);
    const { method = 'GET', headers = {}, body } = asked;
    const sent = request({ hostname, port, path, method, headers, agent: false }, (response) => {
      const chunks: Buffer[] = [];
      response.on('data', (chunk: Buffer) => chunks.push(chunk));
      response.on('end', () => {
        const { statusCode = 0 } = response;
        resolve({ status: statusCode, headers: response.headers, body: Buffer.concat(chunks) });
      });
    });
    sent.on('error', reject).end(body);
  });

/** Sends bytes that no HTTP client would, and gives the first line of what comes back. */
export const sendRaw = (address: string, bytes: string): Promise<string> =>
  new Promise((resolve, reject) => {
    const { hostname, port } = new URL(address);
    const socket = connect({ host: hostname, port: Number(port) });
    let text = '';
    socket.on('data', (chunk) => (text += chunk.toString('latin1')));
    socket.on('close', () => {
      resolve(text.split('\r\n', 1)[0] ?? '');
    });
    socket.on('error', reject);
    socket.end(bytes, 'latin1');
  });

interface Served {
  readonly address: string;
  readonly token: string;
}

/** The path of an address below the token. */
export const pathOf = ({ token }: Served, below: string): string => `/${token}/${below}`;

/** Asks as the page itself does. */
export const askOf = (
  server: Served,
  name: string,
  sent: unknown,
  headers: Readonly<Record<string, string>> = {},
): Promise<Visit> =>
  visit(server.address, pathOf(server, `ask/${name}`), {
    method: 'POST',
    headers: {
      'content-type': 'application/json',
      origin: new URL(server.address).origin,
      ...headers,
    },
    body: JSON.stringify(sent),
  });
