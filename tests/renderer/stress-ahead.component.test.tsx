/** The picture of a joint that changes comes before its margins do: the stresses alone are asked for as well. */
import { fireEvent, render, screen, waitFor } from '@solidjs/testing-library';
import { beforeEach, expect, it } from 'vitest';
import { App } from '../../src/renderer/App.tsx';
import type { Project } from '../../src/shared/project.ts';
import { ok } from '../../src/shared/reply.ts';
import type { JointReport } from '../../src/shared/reports.ts';
import { type FakeBridge, makeFakeBridge } from './support/fake-bridge.ts';
import { useBrowser } from './support/page.ts';
import { makeMargin, makeReport, makeStress } from './support/reports.ts';

useBrowser();

let bridge: FakeBridge;
beforeEach(() => {
  bridge = makeFakeBridge();
});

/** The margins of every joint from now on wait until they are let go. */
function holdMargins(change: (overlap: number) => Partial<JointReport>): () => void {
  let letGo = (): void => undefined;
  const gate = new Promise<void>((go) => {
    letGo = go;
  });
  const late = async (input: { document?: unknown }) => {
    await gate;
    const joint = (input.document as Project).joints[0]!;
    return ok(makeReport(joint, change(joint.overlap)));
  };
  bridge.answer('joint.analyse', late as never);
  return letGo;
}
async function open(): Promise<void> {
  render(() => <App bridge={bridge} />);
  fireEvent.click(await screen.findByRole('button', { name: 'Boom tip' }));
  await shear(30);
}
const shear = (length: number): Promise<HTMLElement> =>
  screen.findByRole('img', { name: new RegExp(`^Shear along ${length}\\.0 mm`) });
const overlap = (value: number): void =>
  void fireEvent.input(screen.getByRole('textbox', { name: 'Overlap' }), {
    target: { value: String(value) },
  });
const margins = (): string =>
  screen.getByRole('list', { name: 'Margins, lowest first' }).textContent ?? '';
const stressesAsked = () => bridge.asked.filter(({ name }) => name === 'joint.stress');

it('is drawn in the state that was drawn, with the margins of before until theirs come', async () => {
  await open();
  const before = margins();
  const letGo = holdMargins((length) => ({
    margins: [makeMargin(7.77)],
    stress: makeStress(length, { theta: 90, gapState: 'min' }),
  }));
  overlap(41);
  await shear(41);
  expect(margins()).toBe(before);
  expect(bridge.last('joint.stress')).toMatchObject({
    document: { joints: [{ overlap: 41 }] },
    focus: { caseId: 'gust', conditionId: null, gapState: 'max', theta: 0 },
  });
  // Long in coming, the margins lose their colours; the picture is of the joint and keeps them.
  const page = document.querySelector('.size-page')!;
  await waitFor(() => expect(page.classList.contains('is-slow')).toBe(true));
  expect(page.classList.contains('is-stress-slow')).toBe(false);
  letGo();
  await waitFor(() => expect(margins()).toContain('7.77'));
  // The next picture is of the state that the margins told.
  overlap(42);
  await shear(42);
  expect(bridge.last('joint.stress').focus).toMatchObject({ theta: 90, gapState: 'min' });
});

it('asks once for each change, and for nothing when the answer comes', async () => {
  await open();
  for (const value of [41, 42, 43]) {
    overlap(value);
    await shear(value);
    await waitFor(() =>
      expect(bridge.last('joint.analyse').document).toMatchObject({ joints: [{ overlap: value }] }),
    );
  }
  await new Promise((done) => setTimeout(done, 50));
  expect(stressesAsked()).toHaveLength(3);
  expect(bridge.count('joint.analyse')).toBe(4);
});

it('leaves what is wrong with a joint to the whole answer', async () => {
  await open();
  bridge.refuse('joint.stress', { message: 'no bore is left' });
  overlap(41);
  await shear(41);
  expect(screen.queryByText(/no bore is left/i)).toBeNull();
});

it('is not asked for ahead where another state was chosen that only the margins can tell', async () => {
  await open();
  const letGo = holdMargins((length) => ({ stress: makeStress(length) }));
  const before = stressesAsked().length;
  fireEvent.change(screen.getByRole('combobox', { name: 'Gap drawn' }), {
    target: { value: 'nominal' },
  });
  overlap(41);
  await new Promise((done) => setTimeout(done, 50));
  expect(stressesAsked()).toHaveLength(before);
  letGo();
  await shear(41);
});
