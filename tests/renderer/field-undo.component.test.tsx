/** Ctrl+Z with the focus in a field: the field's own while something is typed, the document's after. */
import { fireEvent, render, screen } from '@solidjs/testing-library';
import { beforeEach, describe, expect, it } from 'vitest';
import { App } from '../../src/renderer/App.tsx';
import { useDialogs } from './support/dialogs.ts';
import { type FakeBridge, makeFakeBridge } from './support/fake-bridge.ts';
import { useBrowser } from './support/page.ts';

useBrowser();
useDialogs();

let bridge: FakeBridge;
beforeEach(async () => {
  bridge = makeFakeBridge();
  render(() => <App bridge={bridge} />);
  fireEvent.click(await screen.findByRole('button', { name: 'Boom tip' }));
  await screen.findByRole('img', { name: /Shear along/ });
});

const field = (name: string): HTMLInputElement => screen.getByRole('textbox', { name });
/** As a browser tells of it. */
function write(input: HTMLInputElement, text: string, inputType = 'insertText'): void {
  fireEvent(input, new InputEvent('beforeinput', { bubbles: true }));
  input.value = text;
  fireEvent(input, new InputEvent('input', { bubbles: true, inputType }));
}
/** True where the window took the key; else the browser does what it does in a field. */
const press = (key: string, more: KeyboardEventInit = {}): boolean =>
  !fireEvent.keyDown(document.activeElement ?? window, { key, ctrlKey: true, ...more });
const key = (name: string): void => void fireEvent.keyDown(document.activeElement!, { key: name });
const goTo = (name: string): void => field(name).focus();
const said = (): string => document.querySelector('.said-line')?.textContent ?? '';

describe('Ctrl+Z in a number field', () => {
  it.each([
    ['Enter', () => key('Enter')],
    ['the way to the next', () => goTo('Gap')],
  ])('takes the change back after %s', (_way, done) => {
    goTo('Overlap');
    write(field('Overlap'), '40');
    // Half typed, the key is the field's.
    expect(press('z')).toBe(false);
    expect(field('Overlap').value).toBe('40');
    done();
    const here = document.activeElement;
    expect(press('z')).toBe(true);
    expect(field('Overlap').value).toBe('30.0');
    expect(said()).toBe('Undone: overlap 30.0 → 40.0 mm, Boom tip');
    expect(document.activeElement).toBe(here);
    expect(press('z', { shiftKey: true })).toBe(true);
    expect(field('Overlap').value).toBe('40.0');
    press('z');
    expect(press('y')).toBe(true);
    expect(field('Overlap').value).toBe('40.0');
  });

  it('goes back through what was done before, field by field', async () => {
    goTo('Overlap');
    write(field('Overlap'), '40');
    key('Enter');
    goTo('Gap');
    write(field('Gap'), '0.3');
    key('Enter');
    press('z');
    expect([field('Gap').value, field('Overlap').value]).toEqual(['0.20', '40.0']);
    press('z');
    expect(field('Overlap').value).toBe('30.0');
    // There is no more, and the browser is kept from looking for some.
    expect(press('z')).toBe(true);
  });

  it('is the field’s for what the browser took back in it, and the document’s for the rest', () => {
    goTo('Gap');
    write(field('Gap'), '0.3');
    goTo('Overlap');
    write(field('Overlap'), '4');
    write(field('Overlap'), '40');
    expect(press('z')).toBe(false);
    write(field('Overlap'), '30.0', 'historyUndo');
    // What the browser can do again is its own; nothing of it is a step of the document.
    expect(press('z', { shiftKey: true })).toBe(false);
    expect(press('z')).toBe(true);
    expect(field('Gap').value).toBe('0.20');
    expect(said()).toMatch(/^Undone: gap 0\.20 → 0\.30/);
    expect(press('y')).toBe(true);
    expect(field('Gap').value).toBe('0.30');
  });

  it('takes text that could not be taken out of its field first', () => {
    goTo('Gap');
    write(field('Gap'), '0.3');
    goTo('Overlap');
    write(field('Overlap'), '30,5');
    goTo('Gap');
    goTo('Overlap');
    expect(field('Overlap').value).toBe('30,5');
    expect(press('z')).toBe(true);
    expect(field('Overlap').value).toBe('30.0');
    expect(field('Gap').value).toBe('0.30');
    expect(press('z')).toBe(true);
    expect(field('Gap').value).toBe('0.20');
  });

  it('is so in the fields of words too, and in a question’s', () => {
    goTo('Overlap');
    write(field('Overlap'), '40');
    goTo('Name');
    expect(press('z')).toBe(true);
    expect(field('Overlap').value).toBe('30.0');
    write(field('Name'), 'Boom');
    expect(press('z')).toBe(false);
  });

  it('is told in the list of keys', () => {
    press('F1', { ctrlKey: false });
    expect(screen.getByText(/Ctrl\+Z first takes back what is being typed there/)).toBeTruthy();
  });
});
