/** What becomes of a window whose page died; the window is a stand-in. */
import { EventEmitter } from 'node:events';
import { setImmediate as turn } from 'node:timers/promises';
import type { BrowserWindow, Dialog, MessageBoxOptions } from 'electron';
import { expect, it } from 'vitest';
import { reviveGonePage, SOON } from '../../src/main/shell/page-gone.ts';

const LOAD = 0;
const CLOSE = 1;

function windowWithPage() {
  const questions: MessageBoxOptions[] = [];
  const seen = { loads: 0, gone: 0, destroyed: false, answer: LOAD, time: 0, questions };
  const contents = Object.assign(new EventEmitter(), { reload: () => void seen.loads++ });
  const window = {
    webContents: contents,
    isDestroyed: () => seen.destroyed,
    destroy: () => {
      seen.destroyed = true;
    },
  } as unknown as BrowserWindow;
  const dialog = {
    async showMessageBox(_window: unknown, question: MessageBoxOptions) {
      questions.push(question);
      return { response: seen.answer, checkboxChecked: false };
    },
  } as unknown as Pick<Dialog, 'showMessageBox'>;
  reviveGonePage(window, dialog, { gone: () => void seen.gone++, ran: () => seen.time });
  return {
    seen,
    async dies(reason = 'crashed') {
      contents.emit('render-process-gone', {}, { reason, exitCode: 1 });
      await turn();
      await turn();
    },
  };
}

it.each(['crashed', 'oom', 'killed', 'abnormal-exit'])(
  'is loaded anew where its page was %s, without a question',
  async (reason) => {
    const { seen, dies } = windowWithPage();
    await dies(reason);
    expect(seen).toMatchObject({ loads: 1, gone: 1, questions: [], destroyed: false });
  },
);

it('asks where its page dies again soon, each time, and loads it only when told to', async () => {
  const { seen, dies } = windowWithPage();
  await dies();
  for (const time of [1, 2]) {
    seen.time += SOON - 1;
    await dies();
    expect(seen.questions).toHaveLength(time);
    expect(seen).toMatchObject({ loads: 1 + time, gone: 1 + time });
  }
  expect(seen.questions[0]).toMatchObject({ buttons: ['Load it anew', 'Close this window'] });
  seen.answer = CLOSE;
  await dies();
  expect(seen).toMatchObject({ loads: 3, destroyed: true });
});

it('is loaded anew without a question again once its page has lived', async () => {
  const { seen, dies } = windowWithPage();
  await dies();
  seen.time += SOON;
  await dies();
  expect(seen).toMatchObject({ loads: 2, questions: [] });
});

it('is left alone where its page ended as it should, or it is closed itself', async () => {
  const { seen, dies } = windowWithPage();
  await dies('clean-exit');
  expect(seen).toMatchObject({ loads: 0, gone: 0 });
  seen.destroyed = true;
  await dies();
  expect(seen).toMatchObject({ loads: 0, questions: [] });
});
