import type { IpcMainInvokeEvent } from 'electron';
import { describe, expect, it } from 'vitest';
import type { AskFor } from '../../src/main/jobs/ask-with-jobs.ts';
import { askOfSender } from '../../src/main/shell/answer-asks.ts';
import { ok } from '../../src/shared/reply.ts';

const ask: AskFor = async () => ok('answered');
const windows = new Map([[7, ask]]);

const main = { url: 'app://lapwright/' };
const event = (change: object, sender: object = {}): IpcMainInvokeEvent =>
  ({
    sender: { id: 7, mainFrame: main, ...sender },
    senderFrame: main,
    ...change,
  }) as unknown as IpcMainInvokeEvent;

describe('who may ask', () => {
  it('is the top frame of a known window that shows the page', () => {
    expect(askOfSender(event({}), windows)).toBe(ask);
  });

  it('is no sub-frame, whatever its address', () => {
    expect(askOfSender(event({ senderFrame: { url: main.url } }), windows)).toBeNull();
  });

  it('is no frame that is gone', () => {
    expect(askOfSender(event({ senderFrame: null }), windows)).toBeNull();
    expect(askOfSender(event({ senderFrame: null }, { mainFrame: null }), windows)).toBeNull();
  });

  it('is no window that is not known', () => {
    expect(askOfSender(event({}, { id: 8 }), windows)).toBeNull();
  });

  it.each(['https://elsewhere.test/', 'app://elsewhere/', 'about:blank', 'file:///page.html', ''])(
    'is no page at %s',
    (url) => {
      const frame = { url };
      expect(askOfSender(event({ senderFrame: frame }, { mainFrame: frame }), windows)).toBeNull();
    },
  );
});
