import { fireEvent, render, screen, waitFor, within } from '@solidjs/testing-library';
import { beforeEach, describe, expect, it } from 'vitest';
import { App } from '../../src/renderer/App.tsx';
import { glossary } from '../../src/shared/bench-words.ts';
import { cautions } from '../../src/shared/cautions.ts';
import type { GapCheck, Joint, MeasuredSurface, Project } from '../../src/shared/project.ts';
import { ok } from '../../src/shared/reply.ts';
import { partsOf } from '../support/parts.ts';
import { type FakeBridge, makeFakeBridge } from './support/fake-bridge.ts';
import { makeGapVerdict } from './support/gap.ts';
import { useBrowser } from './support/page.ts';
import { makeProject, socket } from './support/project.ts';

useBrowser();

let bridge: FakeBridge;
beforeEach(() => {
  bridge = makeFakeBridge();
});

async function openGap(): Promise<void> {
  render(() => <App bridge={bridge} />);
  await screen.findByRole('heading', { name: 'Test frame' });
  fireEvent.keyDown(window, { key: '4', ctrlKey: true });
  await screen.findByRole('heading', { name: 'Gap check Boom tip' });
}
async function start(): Promise<void> {
  await openGap();
  fireEvent.click(screen.getByRole('button', { name: 'Start measuring' }));
}
const cell = (surface: string, station: number, clocking: number): HTMLInputElement =>
  screen.getByLabelText(`${surface}, ${station} mm from the mouth, ${clocking}°`);
const type = (input: HTMLInputElement, text: string): void => {
  fireEvent.input(input, { target: { value: text } });
};
const kept = () => bridge.last('bench.keep') as { project: string; check: GapCheck };
const readings = (surface: MeasuredSurface['surface']): readonly (number | null)[] =>
  kept()
    .check.surfaces.find((one) => one.surface === surface)!
    .diameters.flat();
const word = (): string => document.querySelector('.gap-word')!.textContent!.trim();
const notes = (): string =>
  [...document.querySelectorAll('.gap-notes p')].map((one) => one.textContent).join('|');
const open = (title: string): void => {
  const details = screen.getByText(title).closest('details')!;
  details.open = true;
  fireEvent(details, new Event('toggle'));
};
/** Every reading by the drawing. */
function typeAll(): void {
  for (const { surface, stations, clockings, diameters } of partsOf(socket as Joint)) {
    const name = { 'tube-outside': 'tube, outside', 'socket-inside': 'socket, inside' }[
      surface as string
    ]!;
    stations.forEach((x, i) => {
      clockings.forEach((angle, j) => {
        type(cell(name, x, angle), String(diameters[i]![j]));
      });
    });
  }
}

describe('readings', () => {
  it('are kept on disk as they are typed, in a record of the document', async () => {
    await start();
    type(cell('tube, outside', 3, 60), '32.01');
    await waitFor(() => expect(readings('tube-outside')[1]).toBe(32.01));
    expect(kept().project).toBe('Test frame');
    fireEvent.input(screen.getByLabelText('Tube no.'), { target: { value: 'T-7' } });
    await waitFor(() => expect(kept().check.tubeSerial).toBe('T-7'));
    expect(screen.getByText('changes not saved')).toBeTruthy();
    expect(await screen.findByText(/^kept /)).toBeTruthy();
  });

  it('say when they cannot be kept', async () => {
    bridge.refuse('bench.keep', {
      message: 'The measurements could not be kept: the disk is full.',
    });
    await start();
    expect(await screen.findByText(/the disk is full/)).toBeTruthy();
  });

  it('follow one another by Enter, and rows by arrows', async () => {
    await start();
    const first = cell('tube, outside', 3, 0);
    first.focus();
    fireEvent.keyDown(first, { key: 'Enter' });
    expect(document.activeElement).toBe(cell('tube, outside', 3, 60));
    fireEvent.keyDown(document.activeElement!, { key: 'ArrowDown' });
    expect(document.activeElement).toBe(cell('tube, outside', 15, 60));
    fireEvent.keyDown(document.activeElement!, { key: 'ArrowUp' });
    fireEvent.keyDown(document.activeElement!, { key: 'Enter', shiftKey: true });
    expect(document.activeElement).toBe(first);
    const last = cell('tube, outside', 27, 120);
    last.focus();
    fireEvent.keyDown(last, { key: 'Enter' });
    expect(document.activeElement).toBe(cell('socket, inside', 3, 0));
  });

  it('stay as they are typed while they are no number yet', async () => {
    await start();
    const input = cell('tube, outside', 3, 0);
    type(input, '32.01');
    await waitFor(() => expect(readings('tube-outside')[0]).toBe(32.01));
    for (const text of ['32,', '32,6', '32,604', '32.01x']) {
      type(input, text);
      expect(cell('tube, outside', 3, 0).value).toBe(text);
      expect(input.getAttribute('aria-invalid')).toBe('true');
    }
    // Not even a change of page takes it away.
    fireEvent.keyDown(window, { key: '1', ctrlKey: true });
    await screen.findByRole('table');
    fireEvent.keyDown(window, { key: '4', ctrlKey: true });
    await waitFor(() => expect(cell('tube, outside', 3, 0).value).toBe('32.01x'));
    type(cell('tube, outside', 3, 0), '32.604');
    await waitFor(() => expect(readings('tube-outside')[0]).toBe(32.604));
    expect(cell('tube, outside', 3, 0).value).toBe('32.604');
  });

  it('are pasted as a block, all of it or nothing, and never over what was read', async () => {
    await start();
    const paste = (text: string, at: readonly [number, number] = [3, 60]): void => {
      const clipboardData = { getData: () => text };
      fireEvent.paste(cell('tube, outside', ...at), { clipboardData });
    };
    paste('32,01\t32,02\n32,03\t\n');
    const taken = [null, 32.01, 32.02, null, 32.03, null, null, null, null];
    await waitFor(() => expect(readings('tube-outside')).toEqual(taken));
    expect(notes()).toBe('');
    paste('\t\n\t\n');
    paste('32.04\t32.05\t32.06');
    expect(notes()).toContain('has 1 rows and 3 columns; from here there is room for 3 and 2');
    paste('0°\t60°\n32.04\t32.05');
    expect(notes()).toContain('Nothing was taken: in row 1, column 1');
    expect(readings('tube-outside')).toEqual(taken);
  });

  it('that look wrong are said as typed; the guess is taken, or the reading confirmed', async () => {
    await start();
    const input = cell('tube, outside', 3, 0);
    type(input, '1.26');
    expect(notes()).toContain('1.26 looks like inches: 32.004 mm?');
    expect(input.getAttribute('aria-invalid')).toBe('true');
    fireEvent.click(screen.getByRole('button', { name: 'Take 32.004' }));
    await waitFor(() => expect(readings('tube-outside')[0]).toBe(32.004));
    expect(notes()).toBe('');
    type(input, '33.5');
    expect(notes()).toContain('is far from the drawing');
    fireEvent.click(screen.getByRole('button', { name: 'It is right' }));
    await waitFor(() => expect(kept().check.surfaces[0]!.confirmed).toEqual([[0, 0]]));
    expect(notes()).toBe('');
  });
});

describe('a reading', () => {
  it('that nobody can have read is said and not taken', async () => {
    await start();
    type(cell('tube, outside', 3, 0), '-40');
    expect(notes()).toContain('It lies between 0.001 and 1000000.');
    await waitFor(() => expect(readings('tube-outside')[0]).toBeNull());
  });

  it('typed anew is no longer confirmed', async () => {
    await start();
    type(cell('tube, outside', 3, 0), '1.26');
    fireEvent.click(screen.getByRole('button', { name: 'It is right' }));
    await waitFor(() => expect(kept().check.surfaces[0]!.confirmed).toEqual([[0, 0]]));
    type(cell('tube, outside', 3, 0), '16');
    expect(notes()).toContain('16 looks like a radius');
    await waitFor(() => expect(kept().check.surfaces[0]!.confirmed).toEqual([]));
  });
});

describe('a file of readings', () => {
  const HEAD = 'surface,station_mm,clocking_deg,diameter_mm\n';
  const choose = (text: string): void => {
    const file = new File([text], 'parts.csv', { type: 'text/csv' });
    // jsdom has no text() of a file.
    Object.defineProperty(file, 'text', { value: () => Promise.resolve(text) });
    fireEvent.change(screen.getByLabelText('File of measured diameters'), {
      target: { files: [file] },
    });
  };
  const shown = () => screen.getAllByRole('region', { name: /^Diameters of/ }).length;

  it('fills what is not read yet, and starts a new check before it writes over anything', async () => {
    await start();
    choose(`${HEAD}tube-outside,4,0,32.01\n`);
    await waitFor(() => expect(readings('tube-outside')).toEqual([32.01]));
    const first = kept().check.id;
    expect(shown()).toBe(2);
    choose(`${HEAD}socket-inside,4,0,32.4\n`);
    await waitFor(() => expect(readings('socket-inside')).toEqual([32.4]));
    expect(kept().check.id).toBe(first);
    expect(readings('tube-outside')).toEqual([32.01]);
    choose(`${HEAD}tube-outside,5,0,32.02\n`);
    await waitFor(() => expect(readings('tube-outside')).toEqual([32.02]));
    expect(kept().check.id).not.toBe(first);
    expect(readings('socket-inside')[0]).toBeNull();
    expect(shown()).toBe(2);
    const checks = screen.getByLabelText<HTMLSelectElement>('Checks of this joint');
    expect(checks.options.length).toBe(2);
  });
});

describe('places', () => {
  const change = (label: string, value: string): void => {
    fireEvent.change(screen.getByLabelText(label), { target: { value } });
  };
  it('are said where they were in truth, and must rise', async () => {
    await start();
    // Until asked for they are no fields: Tab goes from reading to reading.
    expect(screen.queryByLabelText('Clocking 2 of tube, outside, degrees')).toBeNull();
    fireEvent.click(screen.getByRole('button', { name: 'Change stations and clockings' }));
    change('Clocking 2 of tube, outside, degrees', '125');
    await waitFor(() => expect(kept().check.surfaces[0]!.clockings).toEqual([0, 125, 120]));
    expect(notes()).toContain('The clockings must rise: 125° stands before 120°.');
    change('Clocking 2 of tube, outside, degrees', '6o');
    const clocking = screen.getByLabelText('Clocking 2 of tube, outside, degrees');
    expect(clocking.getAttribute('aria-invalid')).toBe('true');
    expect(screen.getByRole('alert').textContent).toMatch(/^“6o” is not a number/);
    change('Clocking 2 of tube, outside, degrees', '270');
    expect(screen.getByRole('alert').textContent).toBe('It lies between 0 and 179.999.');
    expect(kept().check.surfaces[0]!.clockings).toEqual([0, 125, 120]);
    change('Clocking 2 of tube, outside, degrees', '60');
    expect(screen.queryByRole('alert')).toBeNull();
    expect(clocking.getAttribute('aria-invalid')).toBeNull();
    change('Station 3 of socket, inside, mm from the mouth', '31');
    await waitFor(() => expect(kept().check.surfaces[1]!.stations).toEqual([3, 15, 31]));
    expect(notes()).toContain('The station 31 mm is not within the joint');
  });
});

describe('the verdict', () => {
  it('counts what is missing, then says what the core says', async () => {
    await start();
    await waitFor(() =>
      expect(screen.getByText('18 readings are still to be taken.')).toBeTruthy(),
    );
    expect(bridge.count('joint.gap-verdict')).toBe(0);
    typeAll();
    await waitFor(() => expect(word()).toBe('Accept'), { timeout: 3000 });
    expect(screen.getAllByText('All is inside.').length).toBeGreaterThan(0);
    expect(screen.getByText(/Limits: 0.12 mm \(spacers\) to 0.5 mm \(coupons\)/)).toBeTruthy();
  });

  it('is not shown for readings that have changed since', async () => {
    await start();
    typeAll();
    await waitFor(() => expect(word()).toBe('Accept'), { timeout: 3000 });
    type(cell('tube, outside', 3, 0), '32.02');
    expect(word()).toBe('Not yet known');
    expect(screen.queryByText('All is inside.')).toBeNull();
    expect(
      screen.getByRole<HTMLButtonElement>('button', { name: 'Record this check' }).disabled,
    ).toBe(true);
  });

  it('gives way to what the core refuses', async () => {
    bridge.refuse('joint.gap', { message: 'thin the wall' });
    await start();
    expect((await screen.findByRole('alert')).textContent).toBe('Thin the wall.');
  });

  it('is recorded as it was said, and then stands', async () => {
    bridge.answer('joint.gap-verdict', ({ document, measured }) =>
      ok(
        makeGapVerdict((document as Project).joints[0]!, measured, {
          state: 'hold',
          reasons: [{ code: 'margin', state: 'hold', bond: null, message: 'Too weak.' }],
        }),
      ),
    );
    await start();
    typeAll();
    await waitFor(() => expect(word()).toBe('Hold for engineering'), { timeout: 3000 });
    fireEvent.click(screen.getByRole('button', { name: 'Record this check' }));
    await waitFor(() => expect(kept().check.recorded).toBe('2026-03-01T10:00:00.000Z'));
    expect(kept().check.result).toMatchObject({
      verdict: 'hold',
      reason: 'Too weak.',
      bonds: [{ bond: 'bond', min: { value: 0.12, uncertainty: 0 }, from: 0.12, to: 0.5 }],
      targetMargin: 0.25,
      modelVersion: '2',
    });
    const input = cell('tube, outside', 3, 0);
    expect(input.readOnly).toBe(true);
    type(input, '30');
    expect(readings('tube-outside')[0]).toBe(32);
    // Bonding and cure go on after the verdict.
    for (const title of ['Steps', 'Cure log']) open(title);
    fireEvent.click(screen.getByLabelText(/^Degrease tube and sleeve/));
    await waitFor(() => expect(kept().check.done[0]?.step).toMatch(/^Degrease/));
    type(screen.getByLabelText('Temperature of the cure, °C'), '60');
    fireEvent.click(screen.getByRole('button', { name: 'Log' }));
    await waitFor(() => expect(kept().check.cure[0]).toMatchObject({ temperature: 60 }));
    expect(kept().check.result).toMatchObject({
      verdict: 'hold',
      mix: { mass: 1.24, resin: 0.83, hardener: 0.41 },
    });
    expect(document.querySelector('.card-cure')!.textContent).toContain('60 °C');
    type(screen.getByLabelText('Temperature of the cure, °C'), '-400');
    expect(screen.getByRole('alert').textContent).toBe('It lies between -200 and 400.');
    expect(screen.getByRole('button', { name: 'Log' })).toHaveProperty('disabled', true);
    // What it was made of is written down: the card does not follow the project from here on.
    expect(kept().check.result!.made).toMatchObject({
      lap: 'socket',
      overlap: 30,
      adhesive: 'Toughened paste',
      remarks: ['The range is typical, not from your coupons.'],
    });
    fireEvent.click(screen.getByRole('button', { name: 'Measure again' }));
    await waitFor(() => expect(kept().check.recorded).toBeUndefined());
    expect(readings('tube-outside')[0]).toBe(32);
    expect(kept().check.result).toBeUndefined();
  });
});

describe('a joint that was changed', () => {
  const recorded = (lap: string, overlap: number): GapCheck => {
    const result: GapCheck['result'] = {
      verdict: 'accept',
      reason: 'All is inside.',
      bonds: [],
      margin: 0.4,
      targetMargin: 0.25,
      modelVersion: '2',
      made: {
        lap,
        overlap,
        adhesive: 'Old paste',
        spacer: { form: 'beads', size: 0.15 },
        cure: '9 h at 70 °C',
        steps: ['Old step'],
        remarks: ['Old remark.'],
        guarded: 0.3,
      },
    };
    return {
      id: 'old',
      joint: 'tip',
      started: '2026-03-01T08:00:00Z',
      recorded: '2026-03-01T08:10:00Z',
      by: '',
      tubeSerial: '',
      sleeveSerial: '',
      surfaces: partsOf(socket as Joint),
      done: [],
      cure: [],
      result,
    };
  };

  it('after the verdict is said on page and card', async () => {
    bridge = makeFakeBridge(makeProject({ gapChecks: [recorded('sleeve-double', 24)] }));
    await openGap();
    fireEvent.change(screen.getByLabelText('Checks of this joint'), { target: { value: 'old' } });
    const text = 'this verdict is of a double lap, overlap 24 mm. Measure again.';
    expect(document.querySelector('.gap-verdict')!.textContent).toContain(text);
    const card = document.querySelector('.bench-card')!.textContent!;
    for (const part of [text, 'Out of date', 'Do not bond these parts.', 'Old remark.']) {
      expect(card).toContain(part);
    }
    for (const part of ['Old step', '9 h at 70 °C', 'resin', 'Not recorded']) {
      expect(card).not.toContain(part);
    }
  });

  it('not at all leaves the card as it was recorded, whatever the bench is today', async () => {
    bridge = makeFakeBridge(makeProject({ gapChecks: [recorded('socket', 30)] }));
    await openGap();
    fireEvent.change(screen.getByLabelText('Checks of this joint'), { target: { value: 'old' } });
    expect(document.querySelector('.gap-verdict')!.textContent).not.toContain('changed since');
    const card = document.querySelector('.bench-card')!.textContent!;
    for (const part of [
      'Old paste',
      'beads of 0.15 mm',
      'Old step',
      'Old remark.',
      '9 h at 70 °C',
    ]) {
      expect(card).toContain(part);
    }
    expect(card).not.toContain('Water-break test: the film');
  });

  it('while it is measured goes on with what still fits', async () => {
    await start();
    type(cell('tube, outside', 3, 0), '32.01');
    type(cell('tube, outside', 27, 0), '32.02');
    await waitFor(() => expect(readings('tube-outside')[6]).toBe(32.02));
    const first = kept().check.id;
    fireEvent.keyDown(window, { key: '2', ctrlKey: true });
    const overlap = await screen.findByRole('textbox', { name: 'Overlap' });
    fireEvent.input(overlap, { target: { value: '20' } });
    fireEvent.keyDown(window, { key: '4', ctrlKey: true });
    fireEvent.click(await screen.findByRole('button', { name: 'Go on with what still fits' }));
    await waitFor(() => expect(kept().check.id).not.toBe(first));
    expect(kept().check.surfaces[0]!.stations).toEqual([3, 15]);
    expect(readings('tube-outside')).toEqual([32.01, null, null, null, null, null]);
    expect(screen.queryByRole('button', { name: 'Go on with what still fits' })).toBeNull();
  });
});

describe('an instrument', () => {
  it('is the one that was read with, whatever the project says of it later', async () => {
    const surfaces = partsOf(socket as Joint, undefined, {
      name: 'Caliper',
      error: 0.02,
      repeatability: 0.01,
    });
    const check: GapCheck = {
      id: 'now',
      joint: 'tip',
      started: '2026-03-01T08:00:00Z',
      by: '',
      tubeSerial: '',
      sleeveSerial: '',
      surfaces,
      done: [],
      cure: [],
    };
    const changed = [{ id: 'c', name: 'Caliper', error: 0.2, repeatability: 0.01 }];
    bridge = makeFakeBridge(makeProject({ gapChecks: [check], instruments: changed }));
    await openGap();
    const select = screen.getByLabelText<HTMLSelectElement>('Instrument for tube, outside');
    expect(select.value).toBe('Caliper, ±0.02 mm, scatter 0.01');
    expect([...select.options].map(({ value }) => value)).toEqual([
      'Caliper, ±0.02 mm, scatter 0.01',
      'Caliper, ±0.2 mm, scatter 0.01',
    ]);
    fireEvent.change(select, { target: { value: 'Caliper, ±0.2 mm, scatter 0.01' } });
    await waitFor(() => expect(kept().check.surfaces[0]!.instrument.error).toBe(0.2));
  });
});

describe('what was kept', () => {
  const check: GapCheck = {
    id: 'lost',
    joint: 'tip',
    started: '2026-03-01T08:00:00Z',
    by: '',
    tubeSerial: 'T-9',
    sleeveSerial: '',
    surfaces: partsOf(socket as Joint),
    done: [],
    cure: [],
  };
  it('is offered, taken in or put away', async () => {
    bridge.answer('bench.kept', ({ project }) =>
      ok({ checks: [{ project, at: check.started, check }] }),
    );
    await openGap();
    const offer = await screen.findByText(/are not in this file/);
    expect(offer.textContent).toContain('T-9');
    fireEvent.click(screen.getByRole('button', { name: 'Take them in' }));
    expect(cell('tube, outside', 3, 0).value).toBe('32');
    expect(screen.queryByText(/are not in this file/)).toBeNull();
  });

  it('is not offered where the file has it', async () => {
    bridge = makeFakeBridge(makeProject({ gapChecks: [check] }));
    bridge.answer('bench.kept', ({ project }) =>
      ok({ checks: [{ project, at: check.started, check }] }),
    );
    await openGap();
    expect(cell('tube, outside', 3, 0).value).toBe('32');
    await waitFor(() => expect(bridge.count('bench.kept')).toBe(1));
    expect(screen.queryByText(/are not in this file/)).toBeNull();
  });
});

describe('the bench', () => {
  it('has its steps ticked with their time, and a log of the cure', async () => {
    await start();
    for (const title of ['Steps', 'Cure log']) open(title);
    fireEvent.click(screen.getByLabelText(/^Degrease tube and sleeve/));
    await waitFor(() => expect(kept().check.done[0]?.step).toMatch(/^Degrease/));
    fireEvent.input(screen.getByLabelText('Temperature of the cure, °C'), {
      target: { value: '23' },
    });
    fireEvent.click(screen.getByRole('button', { name: 'Log' }));
    await waitFor(() => expect(kept().check.cure[0]).toMatchObject({ temperature: 23, note: '' }));
  });

  it('has a card with verdict, figures, steps, cautions and the words on it', async () => {
    await start();
    typeAll();
    await waitFor(() => expect(word()).toBe('Accept'), { timeout: 3000 });
    const card = within(document.querySelector<HTMLElement>('.bench-card')!);
    expect(card.getByText('Accept')).toBeTruthy();
    const text = document.querySelector('.bench-card')!.textContent!;
    for (const part of [
      '0.12',
      '0.28',
      '0.83 g resin + 0.41 g hardener',
      'Technician',
      'Engineer',
    ]) {
      expect(text).toContain(part);
    }
    for (const { word: one, means } of glossary) expect(text).toContain(`${one}: ${means}`);
    for (const caution of cautions) expect(text).toContain(caution);
    expect(text).toContain('Water-break test');
    expect(text).toContain('The range is typical, not from your coupons.');
  });

  it('says why a flat joint is not measured so', async () => {
    await openGap();
    fireEvent.change(screen.getByLabelText('Joint'), { target: { value: 'lug' } });
    expect(await screen.findByText(/A flat joint has no diameters to measure/)).toBeTruthy();
    expect(screen.queryByRole('button', { name: 'Start measuring' })).toBeNull();
    expect((bridge.last('joint.gap') as { jointId: string }).jointId).toBe('tip');
  });
});

describe('what the engineer sets', () => {
  it('is the spacer, the jig, and limits taken from the ranges that were found', async () => {
    bridge.answer('joint.gap-limits', () =>
      ok({
        jointId: 'tip',
        targetMargin: 0.25,
        modelVersion: '2',
        bonds: [
          {
            bond: 'bond',
            drawn: 0.2,
            curve: [
              { gap: 0.1, margin: 0.1, mode: 'peel' },
              { gap: 0.2, margin: 0.4, mode: 'peel' },
            ],
            model: { from: 0.15, to: 0.6 },
            open: { from: false, to: true },
            coupons: { from: 0.1, to: 0.5, source: { kind: 'typical', text: '' } },
            narrower: { from: 0.15, to: 0.5 },
            set: null,
            flags: [],
          },
        ],
      }),
    );
    await start();
    open('Set by the engineer');
    fireEvent.click(screen.getByRole('button', { name: 'Find the range of gaps' }));
    fireEvent.click(await screen.findByRole('button', { name: 'Take the narrower as the limits' }));
    const bench = () => (bridge.last('joint.gap').document as Project).joints[0]!.bench;
    await waitFor(() => expect(bench()?.limits).toEqual({ bond: { from: 0.15, to: 0.5 } }));
    fireEvent.change(screen.getByLabelText('Spacer'), { target: { value: 'beads' } });
    await waitFor(() => expect(bench()?.spacer).toEqual({ form: 'beads', size: 0.1 }));
    fireEvent.input(screen.getByLabelText('Jig lets the tube off centre by'), {
      target: { value: '0.05' },
    });
    await waitFor(() => expect(bench()?.jigOffset).toBe(0.05));
    const stations = screen.getByLabelText('Stations, mm from the mouth');
    fireEvent.input(stations, { target: { value: '5, 3' } });
    expect(screen.getByText('They must rise: 5 stands before 3.')).toBeTruthy();
    fireEvent.input(stations, { target: { value: '5 25' } });
    await waitFor(() => expect(bench()?.stations).toEqual([5, 25]));
    fireEvent.click(screen.getByRole('button', { name: 'Add an instrument' }));
    fireEvent.input(screen.getByLabelText('±'), { target: { value: '0.005' } });
    const document = () => bridge.last('joint.gap').document as Project;
    fireEvent.click(screen.getByRole('button', { name: 'New check' }));
    await waitFor(() => expect(document().instruments?.[0]?.error).toBe(0.005));
    expect(kept().check.surfaces[0]).toMatchObject({
      stations: [5, 25],
      instrument: { name: 'Instrument 1', error: 0.005 },
    });
  });
});

describe('the limits of a bond', () => {
  it('are stored when both ends rise, and what is typed stays', async () => {
    await start();
    open('Set by the engineer');
    const limits = () => (bridge.last('joint.gap').document as Project).joints[0]!.bench?.limits;
    const [from, to] = [screen.getByLabelText('from'), screen.getByLabelText('to')];
    for (const text of ['0.3', '0.37', '0.375']) {
      type(to as HTMLInputElement, text);
      expect(to.isConnected).toBe(true);
      expect(to).toHaveProperty('value', text);
    }
    expect(screen.getByRole('alert').textContent).toBe('Give both ends: not stored yet.');
    expect(limits()).toBeUndefined();
    type(from as HTMLInputElement, '0.5');
    expect(screen.getByRole('alert').textContent).toBe('0.5 to 0.375 mm do not rise: not stored.');
    type(to as HTMLInputElement, '0.8');
    await waitFor(() => expect(limits()).toEqual({ bond: { from: 0.5, to: 0.8 } }));
    type(to as HTMLInputElement, '');
    expect(from).toHaveProperty('value', '0.5');
    expect(limits()).toEqual({ bond: { from: 0.5, to: 0.8 } });
    type(from as HTMLInputElement, '');
    await waitFor(() => expect(limits()).toBeUndefined());
  });

  it('are of one joint', async () => {
    await start();
    open('Set by the engineer');
    type(screen.getByLabelText<HTMLInputElement>('Waste factor'), '2');
    fireEvent.change(screen.getByLabelText('Joint'), { target: { value: 'root' } });
    open('Set by the engineer');
    expect(screen.getByLabelText('Waste factor')).toHaveProperty('value', '');
  });
});

describe('the steps of the bonding', () => {
  it('are stored as far as the card takes them, and what it does not take is said', async () => {
    await start();
    open('Set by the engineer');
    const field = screen.getByLabelText(/^Steps of the bonding/);
    const set = (lines: readonly string[]): void => {
      fireEvent.input(field, { target: { value: lines.join('\n') } });
      fireEvent.change(field, { target: { value: lines.join('\n') } });
    };
    const bench = () => (bridge.last('joint.gap').document as Project).joints[0]!.bench;
    set(['Degrease', '', ' Bond ']);
    await waitFor(() => expect(bench()?.checklist).toEqual(['Degrease', 'Bond']));
    set(Array.from({ length: 25 }, (_, i) => `Step ${i}`));
    expect(screen.getByRole('alert').textContent).toContain(
      'These are 25 steps: the card takes 16.',
    );
    set(['Degrease', 'x'.repeat(101)]);
    expect(screen.getByRole('alert').textContent).toContain('Step 2 has 101 letters');
    set(['Degrease', 'Degrease']);
    expect(screen.getByRole('alert').textContent).toContain('Step 2 stands twice');
    expect(bench()?.checklist).toEqual(['Degrease', 'Bond']);
    set([]);
    await waitFor(() => expect(bench()?.checklist).toBeUndefined());
    expect(screen.queryByRole('alert')).toBeNull();
  });
});
