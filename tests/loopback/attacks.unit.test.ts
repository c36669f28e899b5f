/**
 * What others on this machine, and pages of other sites, can send to the loopback host. Each attack is sent over a
 * socket as it would come; after each the page is still answered.
 */
import { once } from 'node:events';
import type { Server } from 'node:http';
import { type AddressInfo, connect, type Socket } from 'node:net';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { createHost, MOST_CONNECTIONS } from '../../src/main/loopback/server.ts';
import { ok } from '../../src/shared/reply.ts';
import { send } from './send.ts';

const TOKEN = 'a-token-for-these-tests';
const PAGE = '<h1>The page</h1>';
const connections = 10_000;

let server: Server;
let port: number;
let asked = 0;

/** So short that a test can wait for them; a flood keeps this process busy for longer. */
const SHORT = { headers: 300, request: 600, read: 400, look: 50 };

async function start(times?: typeof SHORT): Promise<void> {
  asked = 0;
  const html = { type: 'text/html; charset=utf-8', body: Buffer.from(PAGE) };
  server = createHost({
    ask: async () => {
      asked += 1;
      return ok('answered');
    },
    files: new Map([['/', html]]),
    token: TOKEN,
    maxBody: 1000,
    ...(times === undefined ? {} : { times }),
  });
  await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
  port = (server.address() as AddressInfo).port;
}
beforeEach(() => start());
function stop(): void {
  server.closeAllConnections();
  server.close();
}
afterEach(stop);
const restart = async (times: typeof SHORT): Promise<void> => {
  stop();
  await start(times);
};

const proper = (): Record<string, string> => ({
  origin: `http://127.0.0.1:${port}`,
  authorization: `Bearer ${TOKEN}`,
  'content-type': 'application/json',
});
const isAnswered = async (): Promise<void> => {
  expect(await send(port, {})).toMatchObject({ status: 200, body: PAGE });
  const answer = await send(port, {
    method: 'POST',
    path: '/ask/app.about',
    headers: proper(),
    body: '{}',
  });
  expect(answer.status).toBe(200);
};

const open = async (): Promise<Socket> => {
  const socket = connect(port, '127.0.0.1');
  socket.on('error', () => undefined);
  await once(socket, 'connect');
  return socket;
};
const said = (socket: Socket): (() => string) => {
  let text = '';
  socket.on('data', (part) => {
    text += part;
  });
  return () => text;
};
const held = (): Promise<number> =>
  new Promise((resolve) => server.getConnections((_error, count) => resolve(count)));

/** As a browser sends it for a page of another site. */
const post = (headers: Record<string, string | undefined>, body = '{}') =>
  send(port, { method: 'POST', path: '/ask/file.save', headers, body });

describe('a page of another site', () => {
  it('that leads its own name here (DNS rebinding) is given no page and no answer', async () => {
    const host = `rebound.test:${port}`;
    const foreign = { ...proper(), host, origin: `http://${host}` };
    for (const answer of [await send(port, { headers: { host } }), await post(foreign)]) {
      expect(answer.status).toBe(403);
      expect(answer.body).not.toContain(PAGE);
    }
    expect(asked).toBe(0);
    await isAnswered();
  });

  it.each([
    ['a form', { 'content-type': 'application/x-www-form-urlencoded' }],
    ['a form with files', { 'content-type': 'multipart/form-data; boundary=x' }],
    ['plain text', { 'content-type': 'text/plain' }],
    ['a beacon', { 'content-type': 'text/plain;charset=UTF-8' }],
    ['JSON without asking first', { 'content-type': 'application/json' }],
    ['JSON with the right token', { ...proper(), origin: 'http://elsewhere.test' }],
    ['the origin of a sandboxed frame', { ...proper(), origin: 'null' }],
    ['no origin', { ...proper(), origin: undefined }],
  ])('cannot post %s', async (_what, headers) => {
    const answer = await post({
      origin: 'http://elsewhere.test',
      'sec-fetch-site': 'cross-site',
      ...headers,
    });
    expect(answer.status).toBe(403);
    expect(asked).toBe(0);
  });

  it('is not told that it may ask', async () => {
    const answer = await send(port, {
      method: 'OPTIONS',
      path: '/ask/app.about',
      headers: {
        origin: 'http://elsewhere.test',
        'access-control-request-method': 'POST',
        'access-control-request-headers': 'authorization,content-type',
        'access-control-request-private-network': 'true',
      },
    });
    expect(answer.status).toBe(405);
    expect(Object.keys(answer.headers).filter((name) => name.startsWith('access-'))).toEqual([]);
  });
});

describe('a slow sender', () => {
  beforeEach(() => restart(SHORT));

  /** Sends one letter after the other until the host has had enough. */
  async function drip(start: string): Promise<string> {
    const socket = await open();
    const text = said(socket);
    socket.write(start);
    const drops = setInterval(() => socket.write('x'), 20);
    await once(socket, 'close');
    clearInterval(drops);
    return text();
  }

  it('of headers is cut off, while others are answered', async () => {
    const slow = drip('GET / HTTP/1.1\r\nhost: ');
    await isAnswered();
    expect(await slow).toContain('408');
    await isAnswered();
  });

  it('of a body is cut off', async () => {
    const head = Object.entries({
      ...proper(),
      host: `127.0.0.1:${port}`,
      'content-length': '900',
    });
    const lines = head.map(([name, value]) => `${name}: ${value}\r\n`).join('');
    const slow = drip(`POST /ask/app.about HTTP/1.1\r\n${lines}\r\n`);
    await isAnswered();
    expect(await slow).toContain('408');
    await isAnswered();
    expect(asked).toBe(2);
  });

  it('that connects and says nothing is cut off', async () => {
    const socket = await open();
    said(socket);
    await once(socket, 'close');
    await isAnswered();
  });
});

describe('a silent reader', () => {
  it('is cut off, and a new connection is answered', async () => {
    await restart({ ...SHORT, headers: 60_000, request: 60_000 });
    const get = `GET / HTTP/1.1\r\nhost: 127.0.0.1:${port}\r\n\r\n`;
    // As many as may be, so that nobody else is let in.
    server.maxConnections = 8;
    const sockets = await Promise.all(Array.from({ length: 8 }, open));
    await vi.waitFor(async () => expect(await held()).toBe(8));
    for (const socket of sockets) {
      socket.pause();
      socket.write(get.repeat(20_000));
    }
    await vi.waitFor(async () => expect(await held()).toBe(0), { timeout: 15_000 });
    await isAnswered();
    for (const socket of sockets) socket.destroy();
  }, 60_000);

  it.each([
    ['a post without a token', 'POST /ask/app.about', { authorization: '' }],
    ['a post with a wrong token', 'POST /ask/app.about', { authorization: 'Bearer guessed' }],
    ['a post of a foreign page', 'POST /ask/app.about', { origin: 'http://elsewhere.test' }],
    ['a post to the page', 'POST /', {}],
    ['a question by another method', 'GET /ask/app.about', {}],
    ['another name', 'GET /', { host: 'elsewhere.test' }],
  ])('keeps no connection with %s', async (_what, line, change) => {
    const headers = { host: `127.0.0.1:${port}`, ...proper(), 'content-length': '2', ...change };
    const socket = await open();
    const text = said(socket);
    const lines = Object.entries(headers).map(([name, value]) => `${name}: ${value}\r\n`);
    const over = once(socket, 'close');
    socket.write(`${line} HTTP/1.1\r\n${lines.join('')}\r\n{}`);
    await over;
    expect(text()).toMatch(/^HTTP\/1\.1 40[135] /);
    expect(text().toLowerCase()).toContain('connection: close');
    expect(asked).toBe(0);
  });
});

describe('a flood', () => {
  it.each([
    ['one long header', [`x: ${'x'.repeat(9000)}`]],
    ['thousands of headers', Array.from({ length: 5000 }, (_, i) => `x-${i}: ${i}`)],
    ['headers with no end', Array.from({ length: 200_000 }, () => 'a: b')],
  ])('of %s is cut off', async (_what, lines) => {
    const socket = await open();
    const text = said(socket);
    socket.write(`GET / HTTP/1.1\r\nhost: 127.0.0.1:${port}\r\n${lines.join('\r\n')}`);
    await once(socket, 'close');
    expect(text()).toMatch(/^HTTP\/1\.1 431/);
    expect(text()).not.toContain(PAGE);
    await isAnswered();
  });

  it('of a body larger than it says, or than it may be, is refused', async () => {
    const big = 'x'.repeat(200_000);
    const sizes = [
      { 'content-length': String(big.length) },
      { 'content-length': undefined, 'transfer-encoding': 'chunked' },
    ];
    for (const size of sizes) {
      const chunk = `${big.length.toString(16)}\r\n${big}\r\n0\r\n\r\n`;
      const body = 'transfer-encoding' in size ? chunk : big;
      expect((await post({ ...proper(), ...size }, body)).status).toBe(413);
    }
    // Two lengths in one request: what one reader takes for its end another takes for the next request.
    const both = { ...proper(), 'content-length': '2', 'transfer-encoding': 'chunked' };
    expect((await post(both, '0\r\n\r\n')).status).toBe(400);
    expect(asked).toBe(0);
    await isAnswered();
  });

  it('of requests down one connection does not keep others from being answered', async () => {
    const socket = await open();
    const text = said(socket);
    socket.write(`GET / HTTP/1.1\r\nhost: 127.0.0.1:${port}\r\n\r\n`.repeat(2000));
    await isAnswered();
    await vi.waitFor(() => expect(text().split(PAGE).length).toBeGreaterThan(1));
    socket.destroy();
    await isAnswered();
  });

  it(`of ${connections} connections holds no more than ${MOST_CONNECTIONS}, and the page is answered after it`, async () => {
    const batch = 250;
    let opened = 0;
    let closed = 0;
    while (opened < connections) {
      const sockets = Array.from({ length: batch }, () => {
        const socket = connect(port, '127.0.0.1');
        socket.on('error', () => undefined);
        socket.on('close', () => {
          closed += 1;
        });
        socket.write('GET / HT');
        return socket;
      });
      opened += batch;
      // All but as many as may be are closed as they come.
      const over = opened - MOST_CONNECTIONS;
      await vi.waitFor(() => expect(closed).toBe(over), { timeout: 30_000 });
      expect(await held()).toBe(MOST_CONNECTIONS);
      for (const socket of sockets) socket.destroy();
      await vi.waitFor(async () => expect(await held()).toBe(0), { timeout: 30_000 });
      await vi.waitFor(() => expect(closed).toBe(opened), { timeout: 30_000 });
    }
    await isAnswered();
  });

  it('that holds every connection is over once it is too slow', async () => {
    await restart(SHORT);
    const sockets = await Promise.all(Array.from({ length: MOST_CONNECTIONS }, open));
    await vi.waitFor(isAnswered, { timeout: 30_000 });
    for (const socket of sockets) socket.destroy();
  });
});
