/** Units on the screen: chosen by name or in their sheet, followed everywhere, and never in the document. */
import { fireEvent, render, screen, waitFor, within } from '@solidjs/testing-library';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { App } from '../../src/renderer/App.tsx';
import { kindNames, presets, unitKinds } from '../../src/shared/display-units.ts';
import { lengthText } from '../../src/shared/measures.ts';
import type { Project } from '../../src/shared/project.ts';
import { useDialogs } from './support/dialogs.ts';
import { type FakeBridge, makeFakeBridge } from './support/fake-bridge.ts';
import { useBrowser } from './support/page.ts';

useBrowser();
useDialogs();

let bridge: FakeBridge;
beforeEach(() => {
  bridge = makeFakeBridge();
  vi.spyOn(HTMLElement.prototype, 'getClientRects').mockReturnValue([{}] as never);
});
const open = async (): Promise<void> => {
  render(() => <App bridge={bridge} />);
  await screen.findByRole('heading', { name: 'Test frame' });
};
const size = async (joint = 'Boom tip'): Promise<void> => {
  await open();
  fireEvent.click(await screen.findByRole('button', { name: joint }));
  await screen.findByRole('img', { name: /Shear along/ });
};
const field = (name: string): HTMLInputElement => screen.getByRole('textbox', { name });
const bar = (): HTMLElement => screen.getByRole('button', { name: /^Units:/ });
function find(typed: string): void {
  fireEvent.keyDown(document.activeElement ?? window, { key: 'k', ctrlKey: true });
  const text = screen.getByRole('combobox', { name: /^Action, joint/ });
  fireEvent.input(text, { target: { value: typed } });
  fireEvent.keyDown(text, { key: 'Enter' });
}
const US = (): void => find('Units: US');
const sent = (): Project => bridge.last('joint.analyse').document as Project;
const unitBeside = (name: string): string =>
  (field(name).getAttribute('aria-describedby') ?? '')
    .split(' ')
    .map((id) => document.getElementById(id)?.textContent ?? '')
    .join('');

describe('units on the screen', () => {
  it('are switched by name; the page follows, the document does not', async () => {
    await size();
    const before = JSON.stringify(sent());
    const asked = bridge.asked.length;
    expect(unitBeside('Overlap')).toBe('mm');
    const said = () => screen.getByRole('img', { name: /Shear along/ }).getAttribute('aria-label');
    expect(said()).toContain('MPa');
    US();
    expect(bar().textContent).toBe('Units: US');
    expect([field('Overlap').value, unitBeside('Overlap')]).toEqual(['1.1811', 'in']);
    expect([field('Gap').value, unitBeside('Gap')]).toEqual(['7.874', 'mil']);
    expect(unitBeside('Gust, axial force')).toBe('lbf');
    expect(unitBeside('Gust, bending moment')).toBe('lbf·in');
    expect(said()).toContain('ksi');
    expect(said()).not.toMatch(/MPa|mm/);
    // Nothing was asked, nothing is to be saved or taken back.
    expect(bridge.asked.length).toBe(asked);
    expect(screen.queryByText('changes not saved')).toBeNull();
    expect(
      screen
        .getByRole<HTMLButtonElement>('button', { name: /^Undo/ })
        .getAttribute('aria-disabled'),
    ).toBe('true');
    find('Units: SI');
    expect(field('Overlap').value).toBe('30.0');
    fireEvent.input(field('Overlap'), { target: { value: '30' } });
    expect(JSON.stringify(sent())).toBe(before);
  });

  it('show every digit to whoever types, and store nothing for it', async () => {
    await size();
    US();
    const asked = bridge.asked.length;
    fireEvent.focus(field('Overlap'));
    const whole = field('Overlap').value;
    expect(whole).toBe('1.1811023622047244');
    fireEvent.input(field('Overlap'), { target: { value: `${whole}0` } });
    fireEvent.input(field('Overlap'), { target: { value: whole } });
    fireEvent.blur(field('Overlap'));
    expect(field('Overlap').value).toBe('1.1811');
    expect(bridge.asked.length).toBe(asked);
    expect(screen.queryByText('changes not saved')).toBeNull();
  });

  it('take a bare number in their own, an expression in any, and tell ranges in their own', async () => {
    await size();
    US();
    const type = (text: string): void => {
      fireEvent.input(field('Overlap'), { target: { value: text } });
    };
    type('1');
    expect(sent().joints[0]?.overlap).toBe(25.4);
    type('31 mm');
    await waitFor(() => expect(sent().joints[0]?.overlap).toBe(31));
    expect(screen.getByText('= 1.2205 in (31.0 mm)')).toBeTruthy();
    type('25');
    expect(screen.getByText('It lies between 0.039371 and 19.685 in.')).toBeTruthy();
    type('1,500');
    expect(screen.getByText(/write 1\.500 or 1500/)).toBeTruthy();
    fireEvent.keyDown(field('Overlap'), { key: 'Escape' });
    type('1.5');
    await waitFor(() => expect(sent().joints[0]?.overlap).toBe(38.1));
    const undo = screen.getByRole('button', { name: /^Undo/ });
    expect(undo.getAttribute('aria-label')).toContain('1.1811 → 1.5 in');
  });

  it('are kept on this machine, one by one, and none of them in SI is lost', async () => {
    await open();
    fireEvent.click(bar());
    const sheet = screen.getByRole('dialog', { name: 'Units' });
    for (const kind of kindNames) {
      const name = `Unit of ${unitKinds[kind].title.toLowerCase()}`;
      const list = within(sheet).getByRole<HTMLSelectElement>('combobox', { name });
      expect([...list.options].map(({ value }) => value)).toEqual([...unitKinds[kind].units]);
    }
    fireEvent.click(within(sheet).getByRole('radio', { name: 'US' }));
    fireEvent.change(within(sheet).getByRole('combobox', { name: 'Unit of stresses, strengths' }), {
      target: { value: 'psi' },
    });
    fireEvent.click(within(sheet).getByRole('button', { name: 'Close' }));
    expect(screen.queryByRole('dialog', { name: 'Units' })).toBeNull();
    expect(bar().textContent).toBe('Units: own');
    const kept = JSON.parse(localStorage.getItem('lapwright-units') ?? 'null');
    expect(kept).toEqual({ ...presets.US, stress: 'psi' });
    expect(lengthText(25.4)).toBe('1.000 in');
  });

  it('are remembered, and leave with the page', async () => {
    localStorage.setItem('lapwright-units', JSON.stringify({ ...presets.US, length: 'parsec' }));
    const page = render(() => <App bridge={bridge} />);
    await screen.findByRole('heading', { name: 'Test frame' });
    expect(bar().textContent).toBe('Units: own');
    expect(await screen.findByRole('columnheader', { name: /Overlap, mm/ })).toBeTruthy();
    find('Lengths in in');
    expect(screen.getByRole('columnheader', { name: /Overlap, in/ })).toBeTruthy();
    expect(bar().textContent).toBe('Units: US');
    page.unmount();
    expect(lengthText(25.4)).toBe('25.4 mm');
  });
});

describe('settings of the project', () => {
  it('have fields on the Joints page, undone in good words', async () => {
    await open();
    const summary = await screen.findByText('Project settings', { selector: 'summary' });
    const details = summary.closest('details')!;
    details.open = true;
    fireEvent(details, new Event('toggle'));
    expect(field('Target margin').value).toBe('0.25');
    fireEvent.input(field('Target margin'), { target: { value: '0.3' } });
    await waitFor(() =>
      expect((bridge.last('project.check').document as Project).settings.targetMargin).toBe(0.3),
    );
    const undo = (): string => {
      const button = screen.getByRole('button', { name: /^Undo/ });
      return `${button.getAttribute('aria-label')} ${button.title}`;
    };
    expect(undo()).toContain('target margin 0.25 → 0.3');
    const shear = screen.getByRole<HTMLSelectElement>('combobox', { name: 'Shear of the walls' });
    expect(shear.selectedOptions[0]?.textContent).toBe('included');
    fireEvent.change(shear, { target: { value: 'no' } });
    await waitFor(() =>
      expect((bridge.last('project.check').document as Project).settings.adherendShear).toBe(false),
    );
    expect(shear.selectedOptions[0]?.textContent).toBe('left out');
    expect(undo()).toContain('shear of the walls included yes → no');
    fireEvent.click(screen.getByRole('button', { name: /^Undo/ }));
    expect(shear.selectedOptions[0]?.textContent).toBe('included');
    await waitFor(() => expect(undo()).toContain('target margin'));
    fireEvent.click(screen.getByRole('button', { name: 'Set sizing steps' }));
    expect(undo()).toContain('sizing steps');
    fireEvent.input(field('Sizing step of the overlap'), { target: { value: '0.5' } });
    expect(undo()).toContain('sizing step of the overlap 1 → 0.5 mm');
    US();
    expect(unitBeside('Sizing step of the overlap')).toBe('in');
    expect(unitBeside('Sizing step of gaps')).toBe('mil');
    fireEvent.click(screen.getByRole('button', { name: 'Usual sizing steps instead' }));
    expect(screen.queryByRole('textbox', { name: 'Sizing step of the overlap' })).toBeNull();
    fireEvent.input(field('Target margin'), { target: { value: '21' } });
    expect(screen.getByText('It lies between −0.5 and 20.')).toBeTruthy();
  });
});

describe('a refusal about a field that is not seen', () => {
  it.each([
    ['Thermal and fracture', 'adhesives.0.expansion', 'Adhesive expansion'],
    ['Mix and cure', 'adhesives.0.density', 'Adhesive density'],
  ])('opens %s, and stands at the field', async (title, place, name) => {
    await size();
    const details = screen.getByText(title, { selector: 'summary' }).closest('details')!;
    expect(details.open).toBe(false);
    bridge.refuse('joint.analyse', { field: place, message: 'not so' });
    fireEvent.input(field('Overlap'), { target: { value: '31' } });
    const said = await screen.findByText('Not so.');
    await waitFor(() => expect(details.open).toBe(true));
    expect(field(name).getAttribute('aria-describedby')).toContain(said.id);
    expect(screen.queryAllByRole('alert')).toEqual([]);
    // Closed on purpose it stays closed.
    details.open = false;
    fireEvent(details, new Event('toggle'));
    fireEvent.input(field('Overlap'), { target: { value: '32' } });
    await waitFor(() => expect(sent().joints[0]?.overlap).toBe(32));
    expect(details.open).toBe(false);
  });
});
