/** The loopback host: gives out the page and carries its requests to the core. */
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import { MAX_BODY } from '../../shared/contract.ts';
import { type Reply, refuse } from '../../shared/reply.ts';
import type { AskFor } from '../jobs/ask-with-jobs.ts';
import type { PageFiles } from '../page-files.ts';
import { POLICY_HEADERS } from '../policy.ts';
import { readJson } from './body.ts';
import { checkAsk, checkHost, type Refusal } from './guards.ts';

export interface HostOptions {
  readonly ask: AskFor;
  readonly files: PageFiles;
  readonly token: string;
  readonly maxBody?: number;
  readonly times?: Times;
}

/** Milliseconds. */
interface Times {
  /** What a client has for its headers, from the moment it connects, and for the whole of a request. */
  readonly headers: number;
  readonly request: number;
  /** What a client has to take an answer, from the moment it is given. */
  readonly read: number;
  /** Between two looks at who is too slow to send. */
  readonly look: number;
}

/** A page on the same machine needs a fraction of it. */
const TIMES: Times = { headers: 10_000, request: 60_000, read: 12_000, look: 5_000 };
/** At once; those beyond are closed as they come. A browser opens six. */
export const MOST_CONNECTIONS = 128;
const ASK = '/ask/';
/** A page may name itself, so that its newer sweep replaces its older one and nobody else's. */
const PAGE_HEADER = 'x-lapwright-page';

/** An answer, and how long its reader has for it. */
interface Out {
  readonly response: ServerResponse;
  readonly limit: number;
}

/** Whoever asks and does not read holds its connection no longer than that. */
function cutOffUnread({ response, limit }: Out): void {
  const start = ({ socket } = response): void => {
    const timer = setTimeout(() => socket?.destroy(), limit);
    for (const over of ['finish', 'close']) response.once(over, () => clearTimeout(timer));
  };
  // Behind another answer on the same connection it has no socket yet, and nobody could read it.
  if (response.socket) start();
  else response.once('socket', () => start());
}

function send(
  out: Out,
  status: number,
  type: string,
  body: string | Buffer,
  more: Readonly<Record<string, string>> = {},
): void {
  const { response } = out;
  if (response.destroyed || response.headersSent) return;
  cutOffUnread(out);
  response.writeHead(status, {
    ...POLICY_HEADERS,
    ...more,
    'content-type': type,
    'content-length': Buffer.byteLength(body),
  });
  response.end(response.req.method === 'HEAD' ? undefined : body);
}

const sendReply = (out: Out, status: number, reply: Reply<unknown>): void =>
  send(out, status, 'application/json; charset=utf-8', JSON.stringify(reply));

/** Whoever cannot be the page keeps no connection; the page may read why while its body is still on its way. */
const CLOSE = { connection: 'close' };
const STRANGERS = [401, 403, 405];

function sendRefusal(out: Out, { status, code, message }: Refusal): void {
  const more = {
    ...(STRANGERS.includes(status) ? CLOSE : {}),
    ...(status === 405 ? { allow: 'POST' } : {}),
  };
  const body = JSON.stringify(refuse(code, '', message));
  send(out, status, 'application/json; charset=utf-8', body, more);
}

function sendFile(request: IncomingMessage, out: Out, files: PageFiles): void {
  const plain = 'text/plain; charset=utf-8';
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    send(out, 405, plain, 'Only GET.\n', { allow: 'GET, HEAD', ...CLOSE });
    return;
  }
  const file = files.get(pathOf(request));
  if (file) send(out, 200, file.type, file.body);
  else send(out, 404, plain, 'There is no such file.\n');
}

const pathOf = ({ url = '' }: IncomingMessage): string => url.split('?', 1)[0] ?? '';

export function createHost(options: HostOptions): Server {
  const { ask, files, token, maxBody = MAX_BODY, times = TIMES } = options;

  const answer = async (request: IncomingMessage, out: Out): Promise<void> => {
    const { response } = out;
    const authority = `127.0.0.1:${request.socket.localPort}`;
    const stranger = checkHost(request.headersDistinct.host, authority);
    if (stranger) return sendRefusal(out, stranger);
    const path = pathOf(request);
    if (!path.startsWith(ASK)) return sendFile(request, out, files);

    const refusal = checkAsk(request.method, request.headers, { authority, token, maxBody });
    if (refusal) return sendRefusal(out, refusal);
    const body = await readJson(request, maxBody);
    if (body === null) return;
    if ('refusal' in body) return sendRefusal(out, body.refusal);

    const gone = new AbortController();
    response.on('close', () => {
      if (!response.writableFinished) gone.abort();
    });
    const page = request.headers[PAGE_HEADER];
    const reply = await ask(path.slice(ASK.length), body.value, {
      client: typeof page === 'string' ? page.slice(0, 64) : undefined,
      signal: gone.signal,
    });
    sendReply(out, 200, reply);
  };

  const server = createServer(
    {
      maxHeaderSize: 8 * 1024,
      headersTimeout: times.headers,
      requestTimeout: times.request,
      connectionsCheckingInterval: times.look,
      keepAliveTimeout: 30_000,
    },
    (request, response) => {
      const out: Out = { response, limit: times.read };
      answer(request, out).catch(() =>
        sendReply(out, 500, refuse('internal', '', 'Something in Lapwright itself went wrong.')),
      );
    },
  );
  // Without end, for those beyond would not be seen, a second Host among them: their 8 kB bound them.
  server.maxHeadersCount = 0;
  server.maxConnections = MOST_CONNECTIONS;
  return server;
}
