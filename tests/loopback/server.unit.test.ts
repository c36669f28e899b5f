import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { Caller } from '../../src/main/jobs/job-line.ts';
import { createHost } from '../../src/main/loopback/server.ts';
import { readPageFiles } from '../../src/main/page-files.ts';
import { ok } from '../../src/shared/reply.ts';
import { type Answer, type Request, send } from './send.ts';

const TOKEN = 'a-token-for-these-tests';
const MAX_BODY = 1000;
const SECRET = 'outside the folder of the page';

const place = mkdtempSync(join(tmpdir(), 'lapwright-test-'));
const page = join(place, 'page');
mkdirSync(join(page, 'assets'), { recursive: true });
writeFileSync(join(place, 'secret.html'), SECRET);
writeFileSync(join(page, 'index.html'), '<h1>The page</h1>');
writeFileSync(join(page, 'assets', 'index-1a2b.js'), 'let x = 1;');
writeFileSync(join(page, 'assets', 'notes.txt'), SECRET);
try {
  symlinkSync(join(place, 'secret.html'), join(page, 'linked.html'));
} catch {
  // Not every user of Windows may make links.
}

interface Asked {
  readonly name: unknown;
  readonly input: unknown;
  readonly caller: Caller | undefined;
}
const asked: Asked[] = [];
const server = createHost({
  ask: async (name, input, caller) => {
    asked.push({ name, input, caller });
    if (name === 'breaks') throw new Error(SECRET);
    if (name === 'never') await new Promise(() => {});
    return ok({ name });
  },
  files: readPageFiles(page),
  token: TOKEN,
  maxBody: MAX_BODY,
});
let port: number;
beforeAll(async () => {
  await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
  port = (server.address() as AddressInfo).port;
});
afterAll(() => {
  server.closeAllConnections();
  server.close();
  rmSync(place, { recursive: true });
});
beforeEach(() => {
  asked.length = 0;
});

const proper = (): Record<string, string> => ({
  origin: `http://127.0.0.1:${port}`,
  authorization: `Bearer ${TOKEN}`,
  'content-type': 'application/json',
});
const ask = (
  change: Record<string, string | undefined> = {},
  more: Request = {},
): Promise<Answer> =>
  send(port, {
    method: 'POST',
    path: '/ask/app.about',
    body: '{}',
    ...more,
    headers: { ...proper(), ...change },
  });

describe('the page', () => {
  it.each([
    ['/', 'text/html; charset=utf-8', '<h1>The page</h1>'],
    ['/?a=b', 'text/html; charset=utf-8', '<h1>The page</h1>'],
    ['/index.html', 'text/html; charset=utf-8', '<h1>The page</h1>'],
    ['/assets/index-1a2b.js', 'text/javascript; charset=utf-8', 'let x = 1;'],
  ])('is given out at %s', async (path, type, body) => {
    const answer = await send(port, { path });
    expect(answer).toMatchObject({ status: 200, body, headers: { 'content-type': type } });
  });

  it('comes with a policy that allows nothing unsafe and nothing foreign', async () => {
    const { headers } = await send(port, {});
    expect(headers).toMatchObject({
      'content-security-policy':
        "default-src 'none'; script-src 'self'; style-src 'self'; font-src 'self'; img-src 'self' data:; connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'",
      'cache-control': 'no-store',
      'x-content-type-options': 'nosniff',
      'referrer-policy': 'no-referrer',
      'cross-origin-opener-policy': 'same-origin',
      'cross-origin-resource-policy': 'same-origin',
    });
    expect(headers['access-control-allow-origin']).toBeUndefined();
  });

  it.each([
    '/../secret.html',
    '/assets/../../secret.html',
    '/..%2fsecret.html',
    '/..%2Fsecret.html',
    '/%2e%2e/secret.html',
    '/%2e%2e%2fsecret.html',
    '/..%5csecret.html',
    '/..\\secret.html',
    '/assets/..%5c..%5csecret.html',
    '//secret.html',
    `/${encodeURIComponent(join(place, 'secret.html'))}`,
    join(place, 'secret.html').replaceAll('\\', '/'),
    '/index.html%00.js',
    '/assets/index-1a2b.js/',
    '/assets/',
    '/assets',
    '/assets/notes.txt',
    '/linked.html',
    '/ask',
    `http://127.0.0.1/index.html`,
    'file:///etc/hostname',
    '*',
  ])('has nothing at %s', async (path) => {
    const answer = await send(port, { path });
    expect(answer.status).toBeGreaterThanOrEqual(400);
    expect(answer.body).not.toContain(SECRET);
  });

  it('is not given out for a path with a NUL in it', async () => {
    expect((await send(port, { path: '/index.html\0' })).status).toBe(400);
  });

  it.each(['POST', 'PUT', 'DELETE', 'OPTIONS', 'TRACE'])('answers no %s', async (method) => {
    expect(await send(port, { method })).toMatchObject({
      status: 405,
      headers: { allow: 'GET, HEAD' },
    });
  });

  it('answers HEAD without a body', async () => {
    expect(await send(port, { method: 'HEAD' })).toMatchObject({ status: 200, body: '' });
  });
});

describe('a request', () => {
  it('is answered when all is as it should be', async () => {
    const answer = await ask({}, { path: '/ask/joint.analyse', body: '{"jointId":"é"}' });
    expect(answer.status).toBe(200);
    expect(answer.headers['cache-control']).toBe('no-store');
    expect(JSON.parse(answer.body)).toEqual({ ok: true, value: { name: 'joint.analyse' } });
    expect(asked).toMatchObject([{ name: 'joint.analyse', input: { jointId: 'é' } }]);
    expect(asked[0]?.caller?.client).toBeUndefined();
  });

  it('may carry the name of the page that sends it', async () => {
    await ask({ 'x-lapwright-page': 'p1' });
    expect(asked[0]?.caller?.client).toBe('p1');
  });

  it('takes its content type in any of its usual forms', async () => {
    expect((await ask({ 'content-type': 'application/json; charset=utf-8' })).status).toBe(200);
    expect((await ask({ 'content-type': 'Application/JSON;charset=UTF-8' })).status).toBe(200);
  });

  const refused: readonly [string, number, Record<string, string | undefined>][] = [
    ['a wrong token', 401, { authorization: 'Bearer wrong' }],
    ['a token that only begins right', 401, { authorization: `Bearer ${TOKEN}x` }],
    ['a token of another kind', 401, { authorization: `Basic ${TOKEN}` }],
    ['an empty token', 401, { authorization: 'Bearer ' }],
    ['no token', 401, { authorization: undefined }],
    ['a foreign name that leads here', 403, { host: 'rebound.test' }],
    ['no host', 400, { host: undefined }],
    ['the origin null', 403, { origin: 'null' }],
    ['a foreign origin', 403, { origin: 'http://elsewhere.test' }],
    ['an origin that only begins right', 403, { origin: 'http://127.0.0.1' }],
    ['no origin', 403, { origin: undefined }],
    ['a form', 415, { 'content-type': 'application/x-www-form-urlencoded' }],
    ['plain text', 415, { 'content-type': 'text/plain' }],
    ['a type that only looks like JSON', 415, { 'content-type': 'application/json-seq' }],
    ['no type', 415, { 'content-type': undefined }],
  ];
  it.each(refused)('is refused with %s', async (_what, status, change) => {
    const answer = await ask(change);
    expect(answer.status).toBe(status);
    expect(asked).toEqual([]);
    if (status !== 400) expect(JSON.parse(answer.body)).toMatchObject({ ok: false });
  });

  it('is refused under another name of this machine, with the right port', async () => {
    const host = `localhost:${port}`;
    expect((await ask({ host, origin: `http://${host}` })).status).toBe(403);
    expect((await send(port, { headers: { host } })).status).toBe(403);
    expect((await ask({ origin: `https://127.0.0.1:${port}` })).status).toBe(403);
    expect(asked).toEqual([]);
  });

  it('is refused under two names, though the first is right', async () => {
    const two = { host: `127.0.0.1:${port}`, Host: 'evil.test' };
    expect((await send(port, { headers: two })).status).toBe(403);
    expect((await ask(two)).status).toBe(403);
    expect(asked).toEqual([]);
  });

  it.each(['GET', 'HEAD', 'PUT', 'OPTIONS'])('is not sent by %s', async (method) => {
    expect(await ask({}, { method })).toMatchObject({ status: 405, headers: { allow: 'POST' } });
    expect(asked).toEqual([]);
  });

  it.each(['', '{', '{"a":}', "{'a':1}", 'undefined', '['.repeat(900)])(
    'is refused when its body is not JSON: %s',
    async (body) => {
      const answer = await ask({}, { body });
      expect(answer.status).toBe(400);
      expect(JSON.parse(answer.body)).toMatchObject({
        ok: false,
        error: { code: 'bad-request', message: 'The request is not JSON.' },
      });
      expect(asked).toEqual([]);
    },
  );

  it.each([
    ['lists', `${'['.repeat(102)}${']'.repeat(102)}`],
    ['a document', `{"document":${'{"a":'.repeat(101)}1${'}'.repeat(101)}}`],
  ])('is refused when it is nested deeper than any project: %s', async (_what, body) => {
    const answer = await ask({}, { body });
    expect([answer.status, JSON.parse(answer.body).error.message]).toEqual([
      400,
      'The request is nested deeper than any project is.',
    ]);
    expect(asked).toEqual([]);
    expect((await ask({}, { body: '[[[[[[[[]]]]]]]]' })).status).toBe(200);
  });

  it('is refused when its body is not UTF-8', async () => {
    expect((await ask({}, { body: Buffer.from([0x22, 0xff, 0xfe, 0x22]) })).status).toBe(400);
  });

  const exactly = (size: number): string => JSON.stringify('x'.repeat(size - 2));
  it('may be as large as allowed', async () => {
    expect((await ask({}, { body: exactly(MAX_BODY) })).status).toBe(200);
  });
  it('is refused one byte later, whether it says so before', async () => {
    const answer = await ask({}, { body: exactly(MAX_BODY + 1) });
    expect(answer.status).toBe(413);
    expect(JSON.parse(answer.body)).toMatchObject({ ok: false });
  });
  it('or not', async () => {
    const body = exactly(MAX_BODY + 1);
    const chunked = `${body.length.toString(16)}\r\n${body}\r\n0\r\n\r\n`;
    const change = { 'content-length': undefined, 'transfer-encoding': 'chunked' };
    expect((await ask(change, { body: chunked })).status).toBe(413);
    expect(asked).toEqual([]);
  });

  it('with too many headers is cut off', async () => {
    expect((await ask({ 'x-long': 'x'.repeat(9000) })).status).toBe(431);
  });

  it.each([
    ['Host', 'elsewhere.test'],
    ['Origin', 'http://elsewhere.test'],
  ])('is refused with a second %s, however many headers are before it', async (name, second) => {
    const fillers = Object.fromEntries(Array.from({ length: 70 }, (_, i) => [`x-${i}`, 'x']));
    expect((await ask(fillers)).status).toBe(200);
    asked.length = 0;
    const answer = await ask({ ...fillers, [name]: second });
    expect([name, answer.status]).toEqual([name, 403]);
  });

  it('that breaks the program gets one plain sentence', async () => {
    const answer = await ask({}, { path: '/ask/breaks' });
    expect(answer.status).toBe(500);
    expect(answer.body).not.toContain(SECRET);
    expect(JSON.parse(answer.body)).toMatchObject({ ok: false, error: { code: 'internal' } });
  });

  it('tells when its sender goes away', async () => {
    const gone = new AbortController();
    const waiting = fetch(`http://127.0.0.1:${port}/ask/never`, {
      method: 'POST',
      headers: proper(),
      body: '{}',
      signal: gone.signal,
    }).catch(() => {});
    await expect.poll(() => asked.length).toBe(1);
    expect(asked[0]?.caller?.signal?.aborted).toBe(false);
    gone.abort();
    await waiting;
    await expect.poll(() => asked[0]?.caller?.signal?.aborted).toBe(true);
  });
});

describe('the host', () => {
  it('does not wait for slow senders', () => {
    // Each is without a limit at 0: as it is, not at most.
    const { headersTimeout, requestTimeout, keepAliveTimeout } = server;
    expect({ headersTimeout, requestTimeout, keepAliveTimeout }).toEqual({
      headersTimeout: 10_000,
      requestTimeout: 60_000,
      keepAliveTimeout: 30_000,
    });
    expect(server).toHaveProperty('connectionsCheckingInterval', 5_000);
    expect(server.maxHeadersCount).toBe(0);
    expect(server.maxConnections).toBe(128);
  });

  it('refuses to start without a page', () => {
    expect(() => readPageFiles(join(page, 'assets'))).toThrow('index.html is missing');
  });
});
