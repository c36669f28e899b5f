/** Lives on the Coupons page: sets, results, what they come to, and the S-N line that a person may take. */
import { fireEvent, render, screen, waitFor, within } from '@solidjs/testing-library';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { App } from '../../src/renderer/App.tsx';
import { lifeSheet } from '../../src/shared/life-text.ts';
import type { Project } from '../../src/shared/project.ts';
import type { LifeResult, LifeSet } from '../../src/shared/project-coupons.ts';
import { readProject } from '../../src/shared/read-project.ts';
import { ok } from '../../src/shared/reply.ts';
import type { LifeFit } from '../../src/shared/reports-coupons.ts';
import { makeCouponsReport } from './support/coupons.ts';
import { type FakeBridge, makeFakeBridge } from './support/fake-bridge.ts';
import { someLives, withLives } from './support/lives.ts';
import { useBrowser } from './support/page.ts';
import { makeProject } from './support/project.ts';

useBrowser();

let bridge: FakeBridge;
beforeEach(() => {
  bridge = makeFakeBridge();
});
async function open(project?: Project): Promise<void> {
  if (project) bridge = makeFakeBridge(project);
  render(() => <App bridge={bridge} />);
  await screen.findByRole('heading', { name: 'Test frame' });
  fireEvent.keyDown(window, { key: '5', ctrlKey: true });
  await screen.findByRole('heading', { name: 'Coupons' });
  view('Lives');
}
const view = (name: string): void => {
  fireEvent.click(
    within(screen.getByRole('navigation', { name: 'Views of the coupons' })).getByRole('button', {
      name,
    }),
  );
};
const asked = (): Project => bridge.last('project.coupons').document as Project;
const lives = (): LifeSet => asked().coupons!.life![0]!;
const results = (): readonly LifeResult[] => lives().results;
const page = (): string => document.querySelector('.coupon-page')!.textContent!;
const line = (): string =>
  screen.getByRole('region', { name: 'S-N line of the adhesive' }).textContent!;
const cell = (row: string, column: string): HTMLInputElement =>
  screen.getByLabelText(`${row}: ${column}`);
const type = (input: HTMLElement, text: string): void => {
  fireEvent.input(input, { target: { value: text } });
};
const paste = (input: HTMLElement, text: string): void => {
  fireEvent.paste(input, { clipboardData: { getData: () => text } });
};
const click = (name: string | RegExp): void => {
  fireEvent.click(screen.getByRole('button', { name, hidden: true }));
};
function readFile(text: string): void {
  const input = screen.getByLabelText('File of lives');
  const file = new File([text], 'lives.csv', { type: 'text/csv' });
  Object.assign(file, { text: () => Promise.resolve(text) });
  Object.defineProperty(input, 'files', { value: [file], configurable: true });
  fireEvent.change(input);
}
/** The core's answer with another fit. */
function withFit(change: (fit: LifeFit) => Partial<LifeFit>): void {
  bridge.answer('project.coupons', ({ document }) => {
    const report = makeCouponsReport(document as Project);
    return ok({
      ...report,
      life: report.life.map((one) => ({
        ...one,
        fit: one.fit && { ...one.fit, ...change(one.fit) },
      })),
    });
  });
}
const take = () =>
  screen.findByRole<HTMLButtonElement>('button', {
    name: 'Take the bound as the adhesive’s S-N line',
  });

describe('sets of lives', () => {
  it('need a specimen: what to do without one is said', async () => {
    await open();
    expect(page()).toContain('this project has none yet');
    click('Go to the plan');
    expect(screen.getByText('What do the strengths rest on?')).toBeTruthy();
  });

  it('are added of a specimen, without a static set', async () => {
    const { coupons } = withLives([]);
    const { life: _life, ...rest } = coupons!;
    await open(makeProject({ coupons: rest }));
    type(screen.getByLabelText('Load ratio, lowest over highest load'), '1');
    expect(page()).toContain('It lies between −1 and 0.95.');
    expect(
      screen.getByRole<HTMLButtonElement>('button', { name: 'Add set of lives' }).disabled,
    ).toBe(true);
    type(screen.getByLabelText('Load ratio, lowest over highest load'), '-1');
    type(screen.getByLabelText('Temperature, °C'), '60');
    click('Add set of lives');
    await waitFor(() => expect(lives()).toBeTruthy());
    expect(lives()).toEqual({
      id: 'd3528-life-60dry-rm1',
      name: 'Double lap shear, 60 °C dry, gap 0.2, R −1',
      specimen: 'd3528',
      adhesive: 'paste',
      temperature: 60,
      moisture: 'dry',
      gap: 0.2,
      ratio: -1,
      results: [],
    });
    expect(asked().joints).toEqual([]);
    expect(readProject(asked()).ok).toBe(true);
    await waitFor(() => expect(page()).toContain('No S-N line. There are no results yet.'));
    // Another one is likely to be like it, and is looked at once it is there.
    const details = screen.getByText('One more set of lives').closest('details')!;
    details.open = true;
    fireEvent(details, new Event('toggle'));
    type(screen.getByLabelText('Gap, mm'), '0.4');
    click('Add set of lives');
    await waitFor(() => expect(lives().id).toBe('d3528-life-60dry-rm1-2'));
    expect(page()).toContain('60 °C dry · gap 0.4 mm · R −1');
  });

  it('are chosen, renamed, dated and noted', async () => {
    const { coupons, ...rest } = withLives(someLives(), []);
    const [first, second] = coupons!.life!;
    await open(
      makeProject({
        ...rest,
        coupons: { ...coupons!, life: [first!, { ...second!, id: 'other', name: 'Reversed' }] },
      }),
    );
    expect(page()).toContain('ASTM D3528 · 60 °C dry · gap 0.2 mm · R 0.1');
    fireEvent.change(screen.getByLabelText('Set of lives'), { target: { value: 'other' } });
    expect(page()).toContain('R −1');
    expect(page()).toContain('No results');
    fireEvent.change(screen.getByLabelText('Name'), { target: { value: ' Back and forth ' } });
    fireEvent.change(screen.getByLabelText('Tested on'), { target: { value: '2026-03-01' } });
    fireEvent.change(screen.getByLabelText('Note'), { target: { value: 'on the small machine' } });
    await waitFor(() => expect(lives().name).toBe('Back and forth'));
    expect(lives()).toMatchObject({
      id: 'other',
      tested: '2026-03-01',
      note: 'on the small machine',
    });
  });

  it('go at once when they are empty, and are asked about when they hold results', async () => {
    await open(withLives(someLives()));
    click('Remove set …');
    click('Keep the set');
    expect(page()).toContain('9 failures, 3 run-outs');
    click('Remove set …');
    click('Remove it with 12 results');
    expect(page()).toContain('How long do they last?');
    click('Add set of lives');
    click('Remove set …');
    expect(page()).toContain('How long do they last?');
    expect(screen.getByRole('button', { name: 'Add set of lives' })).toBeTruthy();
  });

  it('are asked for by themselves, and only where something has changed', async () => {
    await open(withLives(someLives(), someLives()));
    // First the one on the page, then the other.
    await waitFor(() => expect(bridge.count('project.coupons')).toBe(2));
    const before = bridge.count('project.coupons');
    fireEvent.change(screen.getByLabelText('Note'), { target: { value: 'a note' } });
    view('Plan');
    view('Lives');
    await new Promise((done) => setTimeout(done, 600));
    expect(bridge.count('project.coupons')).toBe(before);
    type(cell('coupon 1', 'cycles'), '6000');
    await waitFor(() => expect(bridge.count('project.coupons')).toBe(before + 1));
    expect(asked().coupons!.sets).toEqual([]);
    expect(asked().coupons!.life).toHaveLength(1);
  });
});

describe('lives', () => {
  it('are typed, and keep what was there while a cell is wrong', async () => {
    await open(withLives([]));
    type(cell('row 1', 'peak load, N'), '4000');
    expect(page()).toContain('coupon 1: cycles: A number is needed here. Not counted yet.');
    type(cell('coupon 1', 'cycles'), '3347');
    expect(cell('coupon 1', 'ran out, yes or no').value).toBe('no');
    type(cell('coupon 1', 'batch'), 'A');
    type(cell('row 2', 'peak load, N'), '2000');
    type(cell('coupon 2', 'cycles'), '1e6');
    type(cell('coupon 2', 'ran out, yes or no'), 'yes');
    await waitFor(() =>
      expect(results()).toEqual([
        { coupon: '1', batch: 'A', peak: 4000, cycles: 3347, runOut: false },
        { coupon: '2', batch: 'A', peak: 2000, cycles: 1e6, runOut: true },
      ]),
    );
    await waitFor(() => expect(page()).toContain('1 failure, 1 run-out'));
    type(cell('coupon 2', 'ran out, yes or no'), 'perhaps');
    expect(page()).toContain(
      'coupon 2: ran out: “perhaps” is neither yes nor no. What was there before is kept.',
    );
    expect(cell('coupon 2', 'ran out, yes or no').getAttribute('aria-invalid')).toBe('true');
    view('Plan');
    view('Lives');
    expect(cell('coupon 2', 'ran out, yes or no').value).toBe('perhaps');
    expect(page()).toContain('1 failure, 1 run-out');
  });

  it('are pasted as a block, and write over nothing unasked', async () => {
    await open(withLives([]));
    paste(cell('row 1', 'coupon'), '1\tA\t4000\t3347\tno\n2\tA\t2000\t1000000\tyes\n');
    await waitFor(() => expect(results()).toHaveLength(2));
    paste(cell('coupon 1', 'cycles'), '3347\n900000\n');
    expect(page()).toContain('What you paste would write over 1 cell.');
    click('Paste nothing');
    paste(cell('coupon 1', 'cycles'), '3347\n900000\n');
    click('Write over it');
    await waitFor(() => expect(results().map(({ cycles }) => cycles)).toEqual([3347, 900_000]));
    expect(results()[1]!.runOut).toBe(true);
    click('Remove coupon 1');
    await waitFor(() => expect(results()).toHaveLength(1));
    click('Put it back');
    await waitFor(() => expect(results()).toHaveLength(2));
  });

  it('are read from a file, all of it or nothing', async () => {
    await open(withLives([{ coupon: '1', batch: '', peak: 4000, cycles: 3347, runOut: false }]));
    readFile('coupon,peak_n,cycles,run_out\n2,2000,1e6,yes\n3,2000,many,no\n');
    expect(await screen.findByText(/^Line 3: Cycles: “many” is not a number/)).toBeTruthy();
    expect(page()).toContain('Nothing was taken in.');
    readFile('coupon,peak_n,cycles,run_out\n1,4000,3347,yes\n2,2000,1e6,yes\n');
    await screen.findByText('1 coupon is here already with other figures: 1.');
    click('Leave what is here, take in 1 other');
    await waitFor(() => expect(results().map(({ runOut }) => runOut)).toEqual([false, true]));
  });

  it('are written as a file, and an empty one can be had', async () => {
    const blobs: Blob[] = [];
    vi.stubGlobal(
      'URL',
      Object.assign(URL, {
        createObjectURL: (blob: Blob) => {
          blobs.push(blob);
          return 'blob:lives';
        },
        revokeObjectURL: () => {},
      }),
    );
    const names: string[] = [];
    vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(function (
      this: HTMLAnchorElement,
    ) {
      names.push(this.download);
    });
    /** jsdom's Blob tells its text to a FileReader alone. */
    const textOf = (blob: Blob): Promise<string> =>
      new Promise((done) => {
        const reader = new FileReader();
        reader.onload = () => done(String(reader.result));
        reader.readAsText(blob);
      });
    await open(withLives(someLives()));
    click('Results as CSV');
    click('Empty CSV to fill in');
    const texts = await Promise.all(blobs.map(textOf));
    expect(names).toEqual([
      'lives-d3528-life-60dry-r0-1.csv',
      'to-fill-in-lives-d3528-life-60dry-r0-1.csv',
    ]);
    expect(lifeSheet.readCsv(texts[0]!)).toEqual({ ok: true, results: someLives() });
    expect(texts[1]).toMatch(/^coupon,batch,peak_n,cycles,run_out,note\r\n1,1,,,,\r\n/);
  });
});

describe('what comes of lives', () => {
  it('is a plot with its sentence and figures, and how the line was fitted', async () => {
    await open(withLives());
    await screen.findByText(/^At \S+ cycles the line below the 90 % bound has a peak shear of/);
    expect(screen.getByRole('img').getAttribute('aria-label')).toMatch(
      /^S-N plot of 9 failures, 3 run-outs: peak shear over yield .* The median goes from/,
    );
    fireEvent(
      Object.assign(document.querySelector('details.figures')!, { open: true }),
      new Event('toggle'),
    );
    const tables = [...document.querySelectorAll('.figures-sheet table')];
    expect(tables.map((table) => table.querySelectorAll('tbody tr').length)).toEqual([12, 9]);
    expect(page()).toContain('most likely line, a run-out counted as a life beyond its end');
    expect(page()).toMatch(/scatter of log N \(std\. dev\.\)0\.\d+/);
    expect(page()).toContain('With run-outs the bound is an approximation.');
    expect(page()).toContain('An approximation made for metals');
    expect(
      cell('coupon 1', 'cycles').closest('tr')!.querySelector('td.number')!.textContent,
    ).toMatch(/^0\.\d\d\d$/);
  });

  it('is told with its doubt where the failures are few', async () => {
    await open(withLives(someLives().slice(0, 4)));
    await waitFor(() =>
      expect(page()).toContain('From 4 failures: the bound is wide and a fifth can move it far.'),
    );
  });

  it('is not carried over to other ratios where lives rise with stress', async () => {
    const lives = someLives();
    const cycles = lives.map((one) => one.cycles).reverse();
    await open(withLives(lives.map((one, i) => ({ ...one, cycles: cycles[i]! }))));
    await waitFor(() => expect(page()).toContain('scatter of log N'));
    expect(page()).not.toContain('Other load ratios');
  });

  it('is why there is no line, and nothing to take', async () => {
    await open(withLives(someLives().slice(0, 2)));
    await screen.findByText(/^No S-N line\. A life line takes 3 failures or more; there are 2\./);
    expect(line()).toContain('Nothing can be taken from this set. A life line takes 3 failures');
    expect(line()).toContain('None stands there');
    expect(screen.queryByRole('button', { name: /^Take the bound/ })).toBeNull();
  });
});

describe('the S-N line of the adhesive', () => {
  /** As it stands in the document that a change of the lives sends. */
  const fatigue = async () => {
    const before = bridge.count('project.coupons');
    type(cell('coupon 1', 'note'), `looked at ${before}`);
    await waitFor(() => expect(bridge.count('project.coupons')).toBeGreaterThan(before));
    return asked().adhesives[0]!.fatigue;
  };

  it('is taken by a person alone, after what stood there was shown, and can be put back', async () => {
    const base = withLives();
    const old = {
      coefficient: 1.5,
      exponent: 0.12,
      source: { kind: 'published' as const, text: 'A paper' },
    };
    await open(makeProject({ ...base, adhesives: [{ ...base.adhesives[0]!, fatigue: old }] }));
    const button = await take();
    expect(line()).toContain(
      'Stands there now: share = 1.5·n^−0.12, load ratio not known. Source, published: A paper.',
    );
    expect(line()).toMatch(/From these coupons: share = \S+·n\^−\S+, load ratio 0\.1, below/);
    expect(line()).toContain(
      'A share of the adhesive’s yield as its own rows have it at 60 °C dry',
    );
    expect(line()).toContain('Tested were shares of');
    expect(line()).not.toContain('changed since');
    expect(await fatigue()).toEqual(old);
    await waitFor(() => expect(button.disabled).toBe(false));
    fireEvent.click(await take());
    expect(line()).toContain('This line is taken from these coupons as they are.');
    expect(screen.queryByRole('button', { name: /^Take the bound/ })).toBeNull();
    const stored = (await fatigue())!;
    expect(stored).toMatchObject({
      ratio: 0.1,
      source: {
        kind: 'tested',
        text: expect.stringMatching(
          /^Coupons under cycles, set d3528-life-60dry-r0-1: 9 failures, 3 run-outs, 60 °C dry, gap 0\.2 mm, load ratio 0\.1;/,
        ),
      },
    });
    expect(stored.coefficient).toBeGreaterThan(0);
    expect(readProject(asked()).ok).toBe(true);
    expect(line()).toContain('Before it stood share = 1.5·n^−0.12');
    click('Put that back');
    expect(await fatigue()).toEqual(old);
    expect(line()).toContain('A paper');
  });

  it('asks nothing anew, for no figure of a coupon hangs on it', async () => {
    await open(withLives());
    const button = await take();
    const before = bridge.count('project.coupons');
    fireEvent.click(button);
    await new Promise((done) => setTimeout(done, 600));
    expect(bridge.count('project.coupons')).toBe(before);
    expect(document.querySelectorAll('.is-old')).toHaveLength(0);
  });

  it('says when its coupons have changed since', async () => {
    await open(withLives());
    fireEvent.click(await take());
    expect(line()).not.toContain('changed since');
    type(cell('coupon 1', 'cycles'), '2500');
    await waitFor(() => expect(line()).toContain('have changed since it was taken: take it again'));
    fireEvent.click(await take());
    expect(line()).toContain('This line is taken from these coupons as they are.');
  });

  it('is not taken while the coupons are worked out anew', async () => {
    await open(withLives());
    const button = await take();
    bridge.hold();
    type(cell('coupon 1', 'cycles'), '2500');
    await waitFor(() => expect(button.disabled).toBe(true));
    await bridge.release();
    await waitFor(async () => expect((await take()).disabled).toBe(false));
  });

  it('is refused where no project would take it', async () => {
    bridge = makeFakeBridge(withLives());
    withFit((fit) => ({ bound: { ...fit.bound!, coefficient: 15.8 } }));
    await open();
    await screen.findByText(/its coefficient must lie between 0\.01 and 10 in a project/);
    expect(screen.queryByRole('button', { name: /^Take the bound/ })).toBeNull();
  });

  it('names the cases that ask for more than was tested', async () => {
    const base = withLives();
    const [joint, ...others] = base.joints;
    const shaken = {
      ...joint!,
      loads: [{ ...joint!.loads[0]!, case: 'rotor' }],
    } as typeof joint & object;
    await open(makeProject({ ...base, joints: [shaken, ...others] }));
    await take();
    expect(line()).toContain('Rotor asks for 1e7 cycles: outside of what was tested.');
  });
});
