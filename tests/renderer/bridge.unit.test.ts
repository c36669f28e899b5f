import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { findBridge, makeLoopbackBridge, takeToken } from '../../src/renderer/bridge.ts';
import type { Bridge } from '../../src/shared/contract.ts';

function makeWindow(hash: string, kept: Record<string, string> = {}) {
  const replaceState = vi.fn();
  return {
    replaceState,
    kept,
    page: {
      location: { hash, pathname: '/', search: '' },
      history: { replaceState },
      sessionStorage: {
        getItem: (key: string) => kept[key] ?? null,
        setItem: (key: string, value: string) => {
          kept[key] = value;
        },
      },
    } as unknown as Window,
  };
}

describe('the token', () => {
  it('is taken from the fragment, kept for the session and wiped from the bar', () => {
    const { page, kept, replaceState } = makeWindow('#token=secret');
    expect(takeToken(page)).toBe('secret');
    expect(kept).toEqual({ 'lapwright-token': 'secret' });
    expect(replaceState).toHaveBeenCalledWith(null, '', '/');
  });

  it('is found again after the page was loaded anew', () => {
    const { page, replaceState } = makeWindow('', { 'lapwright-token': 'kept' });
    expect(takeToken(page)).toBe('kept');
    expect(replaceState).not.toHaveBeenCalled();
  });
});

describe('asking the loopback host', () => {
  const fetched = vi.fn();
  beforeEach(() => {
    fetched.mockReset();
    vi.stubGlobal('fetch', fetched);
  });
  afterEach(() => vi.unstubAllGlobals());
  const answers = (body: unknown, status = 200): void => {
    fetched.mockResolvedValue(new Response(JSON.stringify(body), { status }));
  };

  it('posts JSON with the token and gives back the reply', async () => {
    answers({ ok: true, value: { version: '1' } });
    const reply = await makeLoopbackBridge('secret').ask('app.about', {});
    expect(reply).toEqual({ ok: true, value: { version: '1' } });
    expect(fetched).toHaveBeenCalledWith('/ask/app.about', {
      method: 'POST',
      headers: {
        'content-type': 'application/json',
        authorization: 'Bearer secret',
        'x-lapwright-page': expect.stringMatching(/^[\w-]{1,64}$/),
      },
      body: '{}',
    });
  });

  it('names the page, always the same and unlike any other', async () => {
    const pageOf = (call: number): string =>
      fetched.mock.calls[call]![1].headers['x-lapwright-page'];
    fetched.mockImplementation(async () => new Response('{"ok":true}'));
    const bridge = makeLoopbackBridge('t');
    await bridge.ask('app.about', {});
    await bridge.ask('project.demo', {});
    await makeLoopbackBridge('t').ask('app.about', {});
    expect(pageOf(1)).toBe(pageOf(0));
    expect(pageOf(2)).not.toBe(pageOf(0));
  });

  it('passes a refusal on, whatever its status', async () => {
    const refusal = { ok: false, error: { code: 'bad-input', field: 'joints.0', message: 'No.' } };
    answers(refusal, 422);
    expect(await makeLoopbackBridge('t').ask('project.initial', {})).toEqual(refusal);
  });

  it('tells by its code that nobody answers', async () => {
    fetched.mockRejectedValue(new TypeError('failed to fetch'));
    const reply = await makeLoopbackBridge('t').ask('project.initial', {});
    expect(reply).toMatchObject({
      ok: false,
      error: { code: 'unreachable', message: 'There is no answer.' },
    });
  });

  it.each([401, 403])('says so when the page is not from this run (%d)', async (status) => {
    answers({ ok: false }, status);
    const reply = await makeLoopbackBridge('old').ask('project.initial', {});
    expect(reply).toMatchObject({ ok: false, error: { code: 'unreachable' } });
    expect(!reply.ok && reply.error.message).toContain('not from the Lapwright that runs now');
  });

  it('asks once more where the host gave up before it had read the request', async () => {
    fetched.mockResolvedValueOnce(new Response('', { status: 408 }));
    fetched.mockResolvedValueOnce(new Response('{"ok":true,"value":1}'));
    expect(await makeLoopbackBridge('t').ask('project.demo', {})).toEqual({ ok: true, value: 1 });
    expect(fetched).toHaveBeenCalledTimes(2);
    fetched.mockImplementation(async () => new Response('', { status: 408 }));
    expect((await makeLoopbackBridge('t').ask('project.demo', {})).ok).toBe(false);
    expect(fetched).toHaveBeenCalledTimes(4);
  });

  it('does not take just any JSON for a reply', async () => {
    answers({ hello: 1 });
    const reply = await makeLoopbackBridge('t').ask('project.initial', {});
    expect(reply).toMatchObject({ ok: false, error: { code: 'internal' } });
  });
});

describe("Electron's bridge", () => {
  it('is used when it is there, and never rejects', async () => {
    const ask = vi.fn().mockRejectedValue(new Error('handler broke'));
    const bridge = findBridge({ lapwright: { carrier: 'electron', ask } as Bridge } as Window);
    expect(bridge.carrier).toBe('electron');
    const reply = await bridge.ask('project.demo', {});
    expect(reply).toMatchObject({ ok: false, error: { code: 'internal' } });
    expect(ask).toHaveBeenCalledWith('project.demo', {});
  });
});
