import { fireEvent, render, screen, waitFor, within } from '@solidjs/testing-library';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { App } from '../../src/renderer/App.tsx';
import { cautions } from '../../src/shared/cautions.ts';
import { planCoupons } from '../../src/shared/coupon-plan.ts';
import type { Project } from '../../src/shared/project.ts';
import type { CouponResult, Coupons } from '../../src/shared/project-coupons.ts';
import { ok, refuse } from '../../src/shared/reply.ts';
import { smallLapNote } from '../../src/shared/standard-specimens.ts';
import { EIGHTEEN, ETW2 } from '../support/coupons-published.ts';
import { makeCouponsReport } from './support/coupons.ts';
import { type FakeBridge, makeFakeBridge } from './support/fake-bridge.ts';
import { useBrowser } from './support/page.ts';
import { makeProject } from './support/project.ts';

useBrowser();

/** Published strengths as loads: only their scatter is meant. */
const loads = (values: readonly number[], batch: string): CouponResult[] =>
  values.map((value, i) => ({ coupon: String(i + 1), batch, load: Math.round(30 * value) }));
const eighteen = ['A', 'B', 'C'].flatMap((batch, i) =>
  loads(EIGHTEEN.slice(6 * i, 6 * i + 6), batch),
);

/** Lap shear of titanium at room temperature, with these results; one more environment for each list. */
function projectWith(...results: readonly CouponResult[][]): Project {
  const project = makeProject();
  const environments = results.map((_, i) => ({
    temperature: [23, -20, 60][i]!,
    moisture: 'dry' as const,
  }));
  const { coupons } = planCoupons(project, {
    adhesive: 'paste',
    pieces: [{ kind: 'standard', id: 'd1002', adherend: 'titanium' }],
    environments,
    gaps: [0.2],
    planned: { batches: 3, each: 6 },
  });
  coupons.sets.forEach((set, i) => {
    set.results = results[i]!;
  });
  return makeProject({ coupons });
}

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
}
const view = (name: string): void => {
  fireEvent.click(
    within(screen.getByRole('navigation', { name: 'Views of the coupons' })).getByRole('button', {
      name,
    }),
  );
};
const coupons = (): Coupons => (bridge.last('project.coupons').document as Project).coupons!;
/** As the core was last told of the first set it was asked about. */
const results = (): readonly CouponResult[] => coupons().sets[0]!.results;
const cell = (row: string, column: string): HTMLInputElement =>
  screen.getByLabelText(`${row}: ${column}`);
const type = (input: HTMLInputElement, text: string): void => {
  fireEvent.input(input, { target: { value: text } });
};
const paste = (input: HTMLInputElement, text: string): void => {
  fireEvent.paste(input, { clipboardData: { getData: () => text } });
};
const click = (name: string | RegExp): void => {
  fireEvent.click(screen.getByRole('button', { name, hidden: true }));
};
const tick = (name: string | RegExp): void => {
  fireEvent.click(screen.getByRole('checkbox', { name }));
};
const page = (): string => document.querySelector('.coupon-page')!.textContent!;
const names = (): string[] =>
  [...document.querySelectorAll<HTMLInputElement>('.coupon-sets th input')].map(
    ({ value }) => value,
  );
function readFile(text: string): void {
  const input = screen.getByLabelText('File of coupon results');
  const file = new File([text], 'results.csv', { type: 'text/csv' });
  Object.assign(file, { text: () => Promise.resolve(text) });
  Object.defineProperty(input, 'files', { value: [file], configurable: true });
  fireEvent.change(input);
}

describe('a plan', () => {
  it('is a matrix, and each of its cells a set', async () => {
    await open();
    expect(page()).toContain('Choose a specimen.');
    tick(/^ASTM D1002/);
    tick(/^Tube in sleeve as Boom tip/);
    tick('cold');
    tick('max');
    expect(page()).toContain('2 specimens × 2 environments × 2 gaps: 8 sets; 144 coupons.');
    click('Make 8 sets');
    expect(names()).toHaveLength(8);
    expect(names()[0]).toBe('Lap shear, thin metal, 23 °C dry, gap 0.2');
    expect(screen.getByText('changes not saved')).toBeTruthy();
    await waitFor(() => expect(page()).toContain('4.00 kN'));
    const [row] = document.querySelectorAll('.coupon-sets tbody tr');
    expect([...row!.querySelectorAll('td')].map((one) => one.textContent)).toEqual([
      '23 °C dry',
      '0.2',
      '3 × 6',
      '320.0 mm²',
      '4.00 kN',
      'adhesive, peel',
      '8.00 kN',
      '0 of 18',
      '',
    ]);
  });

  it('follows the name of a joint that is taken back', async () => {
    await open();
    fireEvent.keyDown(window, { key: '2', ctrlKey: true });
    fireEvent.input(await screen.findByRole('textbox', { name: 'Name' }), {
      target: { value: 'Mast foot' },
    });
    fireEvent.keyDown(window, { key: '5', ctrlKey: true });
    await screen.findByRole('heading', { name: 'Coupons' });
    expect(page()).toContain('as Mast foot');
    fireEvent.keyDown(window, { key: 'z', ctrlKey: true });
    await waitFor(() => expect(page()).not.toContain('as Mast foot'));
  });

  it('marks numbers that are none and does not make them', async () => {
    await open();
    tick(/^ASTM D1002/);
    type(screen.getByLabelText('Temperature, room, °C'), '23,5');
    expect(page()).toContain('“23,5” is ambiguous: write 23.5.');
    expect(page()).toContain('Mend what is marked.');
    type(screen.getByLabelText('Temperature, room, °C'), '23.5');
    type(screen.getByLabelText('Batches'), '2.5');
    expect(page()).toContain('A whole number is needed here.');
    expect(screen.getByRole<HTMLButtonElement>('button', { name: /^Make/ }).disabled).toBe(true);
  });

  it('asks the core about sets without joints, and only about those that have changed', async () => {
    await open(projectWith([], []));
    await waitFor(() => expect(page()).not.toBe(''));
    await waitFor(() => expect(document.querySelectorAll('.coupon-sets .is-old')).toHaveLength(0));
    await waitFor(() => expect(bridge.count('project.coupons')).toBe(2));
    const asked = bridge.asked.filter(({ name }) => name === 'project.coupons');
    const sent = asked.map(({ input }) => input.document as Project);
    expect(sent.map(({ joints }) => joints)).toEqual([[], []]);
    expect(sent.map((one) => one.coupons!.sets.map(({ temperature }) => temperature))).toEqual([
      [23],
      [-20],
    ]);
    const input = screen.getByLabelText(/^Name of set .*−20/);
    fireEvent.change(input, { target: { value: 'Cold' } });
    await waitFor(() => expect(bridge.count('project.coupons')).toBe(3));
    expect(coupons().sets.map(({ name }) => name)).toEqual(['Cold']);
  });

  it('lets sets be added one by one and renamed, and removes empty ones', async () => {
    await open(projectWith([]));
    const details = screen.getByText('One more set').closest('details')!;
    details.open = true;
    fireEvent(details, new Event('toggle'));
    type(screen.getByLabelText('Gap, mm'), '0.4');
    click('Add set');
    expect(names()).toEqual([
      'Lap shear, thin metal, 23 °C dry, gap 0.2',
      'Lap shear, thin metal, 23 °C dry, gap 0.4',
    ]);
    click(/^Remove set .* gap 0.2$/);
    expect(names()).toEqual(['Lap shear, thin metal, 23 °C dry, gap 0.4']);
    click(/^Remove set/);
    expect(screen.getByText('What do the strengths rest on?')).toBeTruthy();
  });

  it('asks before results go with a set', async () => {
    await open(projectWith(eighteen));
    click(/^Remove set/);
    click('Keep the set');
    expect(names()).toHaveLength(1);
    click(/^Remove set/);
    click('Remove it with 18 results');
    expect(names()).toHaveLength(0);
  });

  it('is printed with what is expected, blanks, the cautions and why small laps are no allowables', async () => {
    await open(projectWith([], []));
    await waitFor(() => expect(page()).toContain('8.00 kN'));
    const print = vi.fn();
    vi.stubGlobal('print', print);
    click('Print test sheet');
    expect(print).toHaveBeenCalledOnce();
    const sheet = document.querySelector('.test-sheet')!;
    expect(sheet.querySelectorAll('section')).toHaveLength(2);
    expect(sheet.querySelectorAll('.sheet-box')).toHaveLength(36);
    for (const text of [...cautions, smallLapNote, '4.00 kN', '8.00 kN', 'Model 7', 'batch']) {
      expect(sheet.textContent).toContain(text);
    }
  });
});

describe('results', () => {
  it('are typed: numbers and batches go on by themselves', async () => {
    await open(projectWith([]));
    view('Results');
    type(cell('row 1', 'load, N'), '4100');
    type(cell('coupon 1', 'batch'), 'A');
    type(cell('row 2', 'load, N'), '4200');
    type(cell('coupon 2', 'gap as measured, mm'), '0.23');
    await waitFor(() =>
      expect(results()).toEqual([
        { coupon: '1', batch: 'A', load: 4100 },
        { coupon: '2', batch: 'A', load: 4200, gap: 0.23 },
      ]),
    );
    await waitFor(() => expect(page()).toContain('13.1'));
  });

  it('keep what was there while a row is no result, and say what is wrong', async () => {
    await open(projectWith([{ coupon: '1', batch: 'A', load: 4100 }]));
    view('Results');
    type(cell('coupon 1', 'cohesive, per cent'), '70');
    expect(page()).toContain(
      'coupon 1: cohesive: The failure modes make 70 %, not 100 %. What was there before is kept.',
    );
    expect(cell('coupon 1', 'cohesive, per cent').getAttribute('aria-invalid')).toBe('true');
    type(cell('coupon 1', 'thin layer, per cent'), '30');
    await waitFor(() => expect(results()[0]!.modes).toEqual({ cohesive: 70, thinLayer: 30 }));
    type(cell('coupon 1', 'load, N'), '');
    expect(page()).toContain('load: A number is needed here. What was there before is kept.');
    // What is unfinished is there again after a look at another page.
    view('Plan');
    view('Results');
    expect(cell('coupon 1', 'load, N').value).toBe('');
    expect(page()).toContain('1 result of 18 planned');
  });

  it('have a number that is planned, which may change; day and note stand beside it', async () => {
    await open(projectWith(eighteen));
    view('Results');
    type(screen.getByLabelText('Coupons planned of each batch'), '7');
    expect(page()).toContain('18 results of 21 planned');
    type(screen.getByLabelText('Batches planned'), '0');
    expect(page()).toContain('It lies between 1 and 50.');
    expect(page()).toContain('18 results of 21 planned');
    fireEvent.change(screen.getByLabelText('Tested on'), { target: { value: '2026-03-01' } });
    fireEvent.change(screen.getByLabelText('Note'), { target: { value: 'cleaned anew' } });
    type(screen.getByLabelText('Batches planned'), '4');
    await waitFor(() => expect(coupons().sets[0]!.planned).toEqual({ batches: 4, each: 7 }));
    expect(coupons().sets[0]!.tested).toBe('2026-03-01');
    expect(coupons().sets[0]!.note).toBe('cleaned anew');
    expect(results()).toEqual(eighteen);
  });

  it('are walked by Enter and arrows', async () => {
    await open(projectWith(eighteen.slice(0, 2)));
    view('Results');
    const inputs = [...document.querySelectorAll<HTMLInputElement>('.coupon-results tbody input')];
    const [first, second] = inputs.filter((one) =>
      one.getAttribute('aria-label')!.endsWith('load, N'),
    );
    first!.focus();
    fireEvent.keyDown(first!, { key: 'Enter' });
    expect(document.activeElement).toBe(second);
    fireEvent.keyDown(second!, { key: 'ArrowDown' });
    expect(document.activeElement).toBe(cell('row 3', 'load, N'));
    fireEvent.keyDown(document.activeElement!, { key: 'Enter', shiftKey: true });
    fireEvent.keyDown(document.activeElement!, { key: 'ArrowUp' });
    expect(document.activeElement).toBe(first);
  });

  it('come back after a slip', async () => {
    await open(projectWith(eighteen.slice(0, 2)));
    view('Results');
    click('Remove coupon 1');
    expect(page()).toContain('1 result of 18 planned');
    click('Put it back');
    expect(page()).toContain('2 results of 18 planned');
    await waitFor(() => expect(results().map(({ coupon }) => coupon)).toEqual(['2', '1']));
  });

  it('are pasted by commas under our own head, and never under names that are not known', async () => {
    await open(projectWith([]));
    view('Results');
    paste(cell('row 1', 'coupon'), 'Nr\tkN\n1\t12.5\n2\t13\n');
    expect(page()).toContain(
      'There is no column “Nr” or “kN”: the columns are coupon, batch, load_n',
    );
    expect(page()).toContain('the load is load_n, in N');
    paste(cell('row 1', 'load, N'), 'load_kN\n12.5\n13\n');
    expect(page()).toContain('There is no column “load_kN”');
    paste(cell('row 1', 'coupon'), '1,A,12500,100');
    expect(page()).toContain('Line 1: A comma in it may part two cells');
    expect(page()).toContain('Nothing was taken in.');
    expect(cell('row 1', 'coupon').value).toBe('');
    paste(cell('row 1', 'coupon'), 'coupon,batch,load_n,cohesive_pct\n1,A,12500,100\n');
    await waitFor(() =>
      expect(results()).toEqual([
        { coupon: '1', batch: 'A', load: 12500, modes: { cohesive: 100 } },
      ]),
    );
  });

  it('are pasted, and write over nothing unasked', async () => {
    await open(projectWith([{ coupon: '1', batch: 'A', load: 4100 }]));
    view('Results');
    paste(cell('row 2', 'coupon'), '2\tA\t4200\n3\tA\t4300\n');
    await waitFor(() => expect(results().map(({ load }) => load)).toEqual([4100, 4200, 4300]));
    paste(cell('coupon 1', 'load, N'), '5000\n4200\n5200\n');
    expect(page()).toContain('What you paste would write over 2 cells.');
    expect(document.activeElement?.textContent).toBe('Write over those 2');
    click('Paste nothing');
    paste(cell('coupon 1', 'load, N'), '5000\n5100\n');
    click('Put it below the last row');
    await waitFor(() =>
      expect(results().map(({ load }) => load)).toEqual([4100, 4200, 4300, 5000, 5100]),
    );
    paste(cell('coupon 1', 'load, N'), '6000\n6100\n');
    click('Write over those 2');
    await waitFor(() =>
      expect(results().map(({ load }) => load)).toEqual([6000, 6100, 4300, 5000, 5100]),
    );
  });

  it('are read from a file: all of it or nothing', async () => {
    await open(projectWith([{ coupon: '1', batch: 'A', load: 4100 }]));
    view('Results');
    readFile('coupon,load_n,adhesion_pct\n2,4200,\n3,x,\n4,4000,40\n');
    expect(await screen.findByText(/^Line 3: Load_n: “x” is not a number/)).toBeTruthy();
    expect(screen.getByText(/^Line 4: .* make 40 %, not 100 %/)).toBeTruthy();
    expect(page()).toContain('1 result of 18 planned');
    readFile('coupon,batch,load_n\n1,A,4100\n2,A,4200\n');
    await screen.findByText(/1 result taken in. 1 result stood here already./);
    readFile('coupon,batch,load_n\n1,A,4999\n3,A,4300\n');
    await screen.findByText('1 coupon is here already with other figures: 1.');
    click('Leave what is here, take in 1 other');
    await waitFor(() => expect(results().map(({ load }) => load)).toEqual([4100, 4200, 4300]));
    readFile('coupon,batch,load_n\n1,A,4999\n4,A,4400\n');
    await screen.findByText(/is here already with other figures/);
    click('Replace it');
    await waitFor(() =>
      expect(results().map(({ load }) => load)).toEqual([4999, 4200, 4300, 4400]),
    );
  });

  it('are kept apart with a cause, and those off a surface say so', async () => {
    const off = { coupon: '9', batch: 'C', load: 3000, modes: { adhesion: 100 } };
    await open(projectWith([...eighteen, off]));
    view('Results');
    await waitFor(() =>
      expect(cell('coupon 9', 'kept apart because').placeholder).toBe('came off a surface'),
    );
    expect(page()).toContain('18 results count; one came off a surface.');
    type(cell('coupon 9', 'kept apart because'), 'slipped in the grip');
    await waitFor(() => expect(results().at(-1)!.apart).toBe('slipped in the grip'));
    await waitFor(() => expect(page()).toContain('18 results count; one kept apart by hand.'));
  });
});

describe('statistics', () => {
  it('tell the way and every value, the chosen one marked', async () => {
    await open(projectWith(eighteen));
    view('Statistics');
    await screen.findByText(/^B value .* MPa, A value .* MPa \(Weibull\), of load over area\.$/);
    const asked = [...document.querySelectorAll('.coupon-decisions b')].map(
      (one) => one.textContent,
    );
    expect(asked).toEqual([
      'Results that lie apart, batch A',
      'Results that lie apart, batch B',
      'Results that lie apart, batch C',
      'Are the batches alike?',
      'Results that lie apart, all together',
      'Do the batches scatter alike?',
      'Does a Weibull distribution fit?',
    ]);
    // The printed critical value of 18 results is 2.652.
    expect(page()).toContain('critical 2.652, at 5 % · holds');
    const rows = [...document.querySelectorAll('.coupon-figures .is-chosen')];
    expect(rows.map((row) => row.querySelector('th')!.textContent)).toEqual(['Weibull']);
    expect(page()).toContain('takes 29 results');
    expect(page()).toContain('takes 299 results');
    expect(page()).toContain('3 batches and 18 results: met');
    expect(page()).toContain('5 batches and 55 results: short by 2 batches and 37 results');
    expect(page()).not.toMatch(/mean allowable|typical allowable/);
  });

  it('draw the plot, with its sentence and its figures', async () => {
    await open(projectWith(eighteen));
    view('Statistics');
    const plot = await screen.findByRole('img', { name: /^Probability plot on Weibull axes/ });
    expect(plot.getAttribute('aria-label')).toMatch(
      /18 results from 12\.1 MPa at 3\.8 % to 14\.3 MPa at 96\.2 %\. The fitted line goes from/,
    );
    const details = plot.closest('section')!.querySelector('details')!;
    details.open = true;
    fireEvent(details, new Event('toggle'));
    expect(details.querySelectorAll('tbody tr')).toHaveLength(18);
  });

  it('say what number would do where there is no value', async () => {
    await open(projectWith([{ coupon: '1', batch: 'A', load: 4100 }]));
    view('Statistics');
    await screen.findByText('No A or B value from 1 result: see what each method takes.');
    expect(page()).toContain('takes 2 results');
    expect(page()).toContain('There is no fitted line');
  });

  it('say so where there are no results, and where none counts', async () => {
    await open(projectWith([], [{ coupon: '1', batch: 'A', load: 4100, apart: 'cracked before' }]));
    view('Statistics');
    await screen.findByText(/There are no results of this set yet/);
    fireEvent.change(screen.getByLabelText('Set'), { target: { value: 'd1002-m20dry-0-20' } });
    await screen.findByText('No result counts: 0 results count; one kept apart by hand.');
  });
});

describe('measured over predicted', () => {
  it('is said of what counts, with its interval', async () => {
    const off = { coupon: '9', batch: 'C', load: 400, modes: { adhesion: 100 } };
    await open(projectWith([...eighteen, off]));
    view('Measured over predicted');
    await screen.findByText(
      /^Coupons of this set broke at 1\.06 of the predicted load on average \(18 results, 95 % interval of the mean 1\.04 to 1\.09\)\. They held more/,
    );
    expect(page()).toContain('multiply the strengths that set the mode');
    expect(page()).toContain('Nothing is changed by itself');
    const plot = screen.getByRole('img', { name: /^Measured over predicted load of 19 coupons/ });
    expect(plot.getAttribute('aria-label')).toContain(
      '1 of them is kept apart and drawn as a cross',
    );
    fireEvent.click(screen.getByRole('radio', { name: 'temperature' }));
    expect(screen.getByRole('img', { name: /against temperature/ })).toBeTruthy();
  });

  it('is asked of all sets of the adhesive together', async () => {
    await open(projectWith(eighteen, loads(ETW2.flat(), 'A')));
    view('Measured over predicted');
    await screen.findByText(/^Coupons of this set broke/);
    fireEvent.click(screen.getByRole('radio', { name: 'all sets of the adhesive' }));
    await screen.findByText(/^Coupons with Toughened paste broke at .* \(38 results/);
    expect(coupons().sets).toHaveLength(2);
  });
});

describe('what goes wrong', () => {
  it('is told in the row and on the views of the set', async () => {
    bridge = makeFakeBridge(projectWith(eighteen));
    bridge.answer('project.coupons', () =>
      refuse('bad-input', 'adhesives.0.states.0.shearYield', 'the shear yield is missing'),
    );
    render(() => <App bridge={bridge} />);
    await screen.findByRole('heading', { name: 'Test frame' });
    fireEvent.keyDown(window, { key: '5', ctrlKey: true });
    await screen.findByText('The shear yield is missing.');
    view('Statistics');
    expect(screen.getByRole('alert').textContent).toBe('The shear yield is missing.');
  });

  it('is no end of the others: only the set at fault is refused', async () => {
    bridge = makeFakeBridge(projectWith([], [], []));
    bridge.answer('project.coupons', (input) => {
      const { coupons: asked } = input.document as Project;
      const at = asked!.sets.findIndex(({ temperature }) => temperature === 60);
      return at < 0
        ? ok(makeCouponsReport(input.document as Project))
        : refuse('bad-input', `coupons.sets.${at}.gap`, 'the gap is too thick');
    });
    render(() => <App bridge={bridge} />);
    await screen.findByRole('heading', { name: 'Test frame' });
    fireEvent.keyDown(window, { key: '5', ctrlKey: true });
    await screen.findByText('The gap is too thick.');
    await waitFor(() => expect(page().match(/adhesive, peel/g)!.length).toBeGreaterThan(3));
  });

  it('says why a coupon cannot be predicted', async () => {
    const why = 'No mode of the model ends this coupon.';
    bridge = makeFakeBridge(projectWith([]));
    bridge.answer('project.coupons', (input) =>
      ok(
        makeCouponsReport(input.document as Project, {
          predicted: { load: null, mode: '', bond: null, modes: [], why },
          grip: null,
        }),
      ),
    );
    render(() => <App bridge={bridge} />);
    await screen.findByRole('heading', { name: 'Test frame' });
    fireEvent.keyDown(window, { key: '5', ctrlKey: true });
    expect(await screen.findByText(why)).toBeTruthy();
  });

  it('can be stopped, and goes on', async () => {
    bridge = makeFakeBridge(projectWith([], []));
    let isStopped = false;
    const answer = (input: { document: unknown }) =>
      ok(makeCouponsReport(input.document as Project));
    bridge.answer('project.coupons', (input) =>
      isStopped ? refuse('stopped', '', 'stopped') : answer(input),
    );
    bridge.answer('job.stop', () => {
      isStopped = true;
      return ok({ stopped: true });
    });
    render(() => <App bridge={bridge} />);
    await screen.findByRole('heading', { name: 'Test frame' });
    bridge.hold();
    fireEvent.keyDown(window, { key: '5', ctrlKey: true });
    fireEvent.click(await screen.findByRole('button', { name: 'Stop: Coupons' }));
    isStopped = true;
    await bridge.release();
    await screen.findByText(/^Stopped; 2 sets are not worked out\./);
    isStopped = false;
    click('Go on');
    await waitFor(() => expect(page().match(/8\.00 kN/g)).not.toBeNull());
    expect(page()).not.toContain('Stopped');
  });

  it('is put away with the project: rows that were typed are not those of the next one', async () => {
    await open(projectWith([]));
    view('Results');
    type(cell('row 1', 'load, N'), 'four');
    const other = JSON.stringify(projectWith(eighteen.slice(0, 1)));
    const input = screen.getByLabelText('Open a project file');
    const file = Object.assign(new File([other], 'b.json'), {
      arrayBuffer: async () => new TextEncoder().encode(other).buffer,
    });
    Object.defineProperty(input, 'files', { value: [file], configurable: true });
    fireEvent.change(input);
    await screen.findByRole('heading', { name: 'Test frame' });
    fireEvent.keyDown(window, { key: '5', ctrlKey: true });
    view('Results');
    expect(cell('coupon 1', 'load, N').value).toBe('4123');
    expect(page()).not.toContain('four');
  });

  it('says that it is at work', async () => {
    await open(projectWith(eighteen));
    bridge.hold();
    view('Statistics');
    expect(screen.getByText('Being worked out …')).toBeTruthy();
    await waitFor(() => expect(bridge.count('project.coupons')).toBe(1));
    await bridge.release();
    await screen.findByText(/^B value/);
  });
});
