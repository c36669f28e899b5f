/** Metals and walls of given stiffness on the page: every figure, name, source, copies. */
import { fireEvent, screen, within } from '@solidjs/testing-library';
import { describe, expect, it } from 'vitest';
import { readProject } from '../../src/shared/read-project.ts';
import { field, renderInputs, type } from './support/inputs.tsx';
import { makeLaminateProject } from './support/laminate.ts';
import { useBrowser } from './support/page.ts';
import { makeProject } from './support/project.ts';

useBrowser();

const group = (name: string) => within(screen.getByRole('region', { name }));
function toggle(part: string, title: string, open = true): void {
  const details = group(part).getByText(title, { selector: 'summary' }).closest('details')!;
  details.open = open;
  fireEvent(details, new Event('toggle'));
}
const chooseSource = (name: string, kind: string): void => {
  fireEvent.change(screen.getByRole('combobox', { name }), { target: { value: kind } });
};
const press = (part: string, name: string): void => {
  fireEvent.click(group(part).getByRole('button', { name }));
};

describe('a metal', () => {
  it('has every figure as a field, name and source', () => {
    const { sent } = renderInputs(makeProject(), 'tip');
    expect(screen.queryByRole('textbox', { name: 'Sleeve, E' })).toBeNull();
    toggle('Sleeve', 'Material properties');
    expect(field('Sleeve, Density').placeholder).toBe('not set');
    for (const [label, text] of [
      ['E', '110.5'],
      ['ν', '0.31'],
      ['α', '8.9'],
      ['Yield', '800'],
      ['Ultimate', '880'],
      ['Density', '4430'],
    ]) {
      expect(field(`Sleeve, ${label}`).title.length).toBeGreaterThan(10);
      type(`Sleeve, ${label}`, text!);
    }
    type('Sleeve material, name', 'Titanium, our print');
    chooseSource('Sleeve material, kind of source', 'published');
    expect(sent().adherends[1]).toEqual({
      id: 'titanium',
      kind: 'isotropic',
      name: 'Titanium, our print',
      modulus: 110_500,
      poisson: 0.31,
      expansion: 8.9e-6,
      yieldStrength: 800,
      ultimateStrength: 880,
      density: 4430,
      source: { kind: 'published', text: 'coupons' },
    });
    expect(readProject(sent()).ok).toBe(true);
    type('Sleeve, Density', '');
    expect(sent().adherends[1]).not.toHaveProperty('density');
  });

  it('of two parts is one: each field keeps its own text', () => {
    const { sent, issues, project } = renderInputs(makeProject(), 'root');
    toggle('Spigot', 'Material properties');
    toggle('Socket', 'Material properties');
    type('Spigot, E', '105');
    expect(field('Socket, E').value).toBe('105');
    type('Spigot, E', 'x');
    expect(field('Spigot, E').getAttribute('aria-invalid')).toBe('true');
    expect(field('Socket, E').getAttribute('aria-invalid')).toBeNull();
    // The other one goes, the text that is no number stays told.
    toggle('Socket', 'Material properties', false);
    expect(project.refused.all()).toHaveLength(1);
    expect(field('Spigot, E').getAttribute('aria-invalid')).toBe('true');
    issues.setRefusal({ code: 'bad-input', field: 'adherends.1.poisson', message: 'too high' });
    expect(field('Spigot, ν').getAttribute('aria-invalid')).toBe('true');
    type('Spigot, E', '105');
    expect(sent().adherends[1]).toMatchObject({ modulus: 105_000 });
  });

  it('is copied for the one part that it was copied at', () => {
    const { sent } = renderInputs(makeProject(), 'root');
    toggle('Spigot', 'Material properties');
    press('Spigot', 'Copy this material');
    expect(document.activeElement).toBe(field('Spigot material, name'));
    expect(sent().joints[1]).toMatchObject({
      spigot: { adherend: 'titanium-copy' },
      socket: { adherend: 'titanium' },
    });
    type('Spigot, Yield', '700');
    expect(sent().adherends.map((one) => 'yieldStrength' in one && one.yieldStrength)).toEqual([
      false,
      830,
      700,
    ]);
    // Back to the first: the copy is used by nothing, and can go.
    fireEvent.change(screen.getByRole('combobox', { name: 'Spigot material' }), {
      target: { value: 'titanium' },
    });
    toggle('Spigot', 'Material properties');
    press('Spigot', 'Remove Printed titanium (copy)');
    expect(sent().adherends).toHaveLength(3);
    const dialog = within(screen.getByRole('dialog', { hidden: true }));
    fireEvent.click(dialog.getByRole('button', { name: 'Remove it', hidden: true }));
    expect(sent().adherends).toEqual(makeProject().adherends);
  });
});

describe('a wall of given stiffness', () => {
  it('has every figure as a field, along and around', () => {
    const { sent } = renderInputs(makeProject(), 'tip');
    toggle('Tube', 'Material properties');
    for (const [label, text] of [
      ['E1 along', '72'],
      ['E2 around', '31'],
      ['G12', '8.5'],
      ['G13 through', '4.1'],
      ['ν12', '0.32'],
      ['α1 along', '0.9'],
      ['α2 around', '7'],
      ['Xt tension', '610'],
      ['Xc compression', '455'],
      ['S shear', '82'],
      ['Density', '1550'],
    ]) {
      expect(field(`Tube, ${label}`).title.length).toBeGreaterThan(10);
      type(`Tube, ${label}`, text!);
    }
    expect(sent().adherends[0]).toMatchObject({
      axialModulus: 72_000,
      hoopModulus: 31_000,
      shearModulus: 8500,
      throughShearModulus: 4100,
      poisson: 0.32,
      axialExpansion: 0.9e-6,
      hoopExpansion: 7e-6,
      tensileStrength: 610,
      compressiveStrength: 455,
      shearStrength: 82,
      density: 1550,
    });
    expect(readProject(sent()).ok).toBe(true);
  });

  it('of a strip runs across it', () => {
    renderInputs(makeProject(), 'lug');
    toggle('Strip', 'Material properties');
    expect(field('Strip, E2 across').value).toBe('30');
  });

  it('opens where the core refuses something in it, and says it at the field', () => {
    const { issues } = renderInputs(makeProject(), 'tip');
    issues.setRefusal({ code: 'bad-input', field: 'adherends.0.poisson', message: 'too high' });
    const said = group('Tube').getByText('Too high.');
    expect(said.closest('summary')).toBeNull();
    expect(field('Tube, ν12').getAttribute('aria-describedby')).toContain(said.id);
  });
});

describe('a laminate', () => {
  it('is copied too', () => {
    const { sent } = renderInputs(makeLaminateProject(), 'tip');
    toggle('Tube', 'Laminate: name and source');
    press('Tube', 'Copy this laminate');
    expect(sent().joints[0]).toMatchObject({ tube: { adherend: 'plies-copy' } });
    expect(sent().joints[1]).toMatchObject({ tube: { adherend: 'plies' } });
    expect(document.activeElement).toBe(field('Tube laminate, name'));
    type('Tube stack', '[0_2/90]s');
    expect(sent().adherends.map((one) => 'stack' in one && one.stack)).toEqual([
      false,
      false,
      '[0/±45/90]s',
      '[0_2/90]s',
    ]);
  });
});
