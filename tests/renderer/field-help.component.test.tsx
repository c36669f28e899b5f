/** Help at the fields: every one of the form has it, it comes on asking, and a remark stays quiet. */
import { fireEvent, render, screen, waitFor } from '@solidjs/testing-library';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import demo from '../../src/main/demo/curlew.lapwright.json' with { type: 'json' };
import { App } from '../../src/renderer/App.tsx';
import { helpAt } from '../../src/renderer/help/known-fields.ts';
import { convertLap } from '../../src/shared/convert-lap.ts';
import type { Project } from '../../src/shared/project.ts';
import { useDialogs } from './support/dialogs.ts';
import { makeFakeBridge } from './support/fake-bridge.ts';
import { field, renderInputs, type } from './support/inputs.tsx';
import { useBrowser } from './support/page.ts';
import { lug, makeProject, socket } from './support/project.ts';

useBrowser();
useDialogs();

/** Opens what is folded, and what is folded within. jsdom opens it but does not tell. */
function openAll(): void {
  for (let round = 0; round < 4; round++) {
    for (const details of document.querySelectorAll('details:not([open])')) {
      (details as HTMLDetailsElement).open = true;
      fireEvent(details, new Event('toggle'));
    }
  }
}
const nameOf = (one: Element): string =>
  one.getAttribute('aria-label') ?? (one as HTMLInputElement).labels?.[0]?.textContent ?? '?';

describe('the form of a joint', () => {
  const curlew = demo as unknown as Project;
  const more = [convertLap(socket, 'spigot'), convertLap(lug, 'flat-double'), lug].map(
    (joint, i) => ({ ...makeProject(), joints: [{ ...joint, id: `one-${i}` }] }),
  );
  it.each([
    ...curlew.joints.map(({ id }) => [id, curlew] as const),
    ...more.map((project) => [project.joints[0]!.id, project] as const),
  ])('has help at every field: %s', (id, project) => {
    renderInputs(JSON.parse(JSON.stringify(project)) as Project, id);
    openAll();
    const fields = [...document.querySelectorAll('.inputs :is(input, select, textarea)')];
    expect(fields.length).toBeGreaterThan(15);
    expect(fields.filter((one) => helpAt(one) === null).map(nameOf)).toEqual([]);
    for (const one of fields) {
      const { what, whereFrom, usual } = helpAt(one)!;
      for (const words of [what, whereFrom, usual]) expect(words.length).toBeGreaterThan(3);
    }
  });

  it('has a hundred of them in the demonstration, with nothing unusual', () => {
    renderInputs(JSON.parse(JSON.stringify(curlew)) as Project, 'boom-root');
    openAll();
    expect(document.querySelectorAll('.inputs :is(input, select)').length).toBeGreaterThan(80);
    expect([...document.querySelectorAll('.unusual')].map((one) => one.textContent)).toEqual([]);
  });
});

describe('the remark on a value', () => {
  it('waits for a pause, is told with the field, and goes when the value is usual', async () => {
    renderInputs(makeProject(), 'tip');
    type('Gap', '0.45');
    expect(document.querySelector('.unusual')).toBeNull();
    const remark = await screen.findByText('unusual: usually 0.1 to 0.3 mm');
    expect(field('Gap').getAttribute('aria-describedby')?.split(' ')).toContain(remark.id);
    expect(field('Gap').getAttribute('aria-invalid')).toBeNull();
    type('Gap', '0.2');
    await waitFor(() => expect(document.querySelector('.unusual')).toBeNull());
  });

  it('is not made while a value is refused', async () => {
    renderInputs(makeProject(), 'tip');
    type('Gap', '0.45');
    await screen.findByText('unusual: usually 0.1 to 0.3 mm');
    type('Gap', '0,2');
    expect(screen.queryByText(/^unusual/)).toBeNull();
  });
});

describe('the note of a field', () => {
  beforeEach(async () => {
    vi.spyOn(HTMLElement.prototype, 'getClientRects').mockReturnValue([{}] as never);
    render(() => <App bridge={makeFakeBridge()} />);
    fireEvent.click(await screen.findByRole('button', { name: 'Boom tip' }));
    await screen.findByRole('heading', { name: 'Size Boom tip' });
  });
  const note = (): Element | null => document.querySelector('.field-note');
  const press = (key: string): void => {
    fireEvent.keyDown(document.activeElement!, { key });
  };

  it('comes by F2, says what, where from and what is usual, and goes by F2', () => {
    field('Overlap').focus();
    expect(note()).toBeNull();
    press('F2');
    expect(note()?.textContent).toContain('Overlap');
    expect(note()?.textContent).toContain('Bonded length');
    expect(note()?.textContent).toContain('Usually 10 to 60 mm. Taken from 1 to 500 mm.');
    expect(field('Overlap').getAttribute('aria-describedby')?.split(' ')).toContain(note()!.id);
    expect(note()?.closest('[role="status"]')).toBeTruthy();
    press('F2');
    expect(note()).toBeNull();
    expect(field('Overlap').getAttribute('aria-describedby')).not.toContain('undefined');
  });

  it('goes by Escape, which leaves what is typed alone', () => {
    const overlap = field('Overlap');
    overlap.focus();
    fireEvent.input(overlap, { target: { value: '3+' } });
    press('F2');
    press('Escape');
    expect(note()).toBeNull();
    expect(overlap.value).toBe('3+');
  });

  it('goes with the focus, and is there for choices too', async () => {
    field('Overlap').focus();
    press('F2');
    screen.getByRole('combobox', { name: 'Lap' }).focus();
    await waitFor(() => expect(note()).toBeNull());
    press('F2');
    expect(note()?.textContent).toContain('Where the metal is');
  });

  it('comes by the mark beside the field, which is no stop of the tab key', async () => {
    field('Overlap').focus();
    const mark = await screen.findByRole('button', { name: 'What Overlap is' });
    expect(mark.tabIndex).toBe(-1);
    fireEvent.click(mark);
    expect(note()?.textContent).toContain('Bonded length');
  });

  it('keeps the mark at a field that a line above moves down', async () => {
    const seen: (() => void)[] = [];
    vi.stubGlobal(
      'ResizeObserver',
      class {
        constructor(moved: () => void) {
          seen.push(moved);
        }
        observe(): void {}
        disconnect(): void {}
      },
    );
    const overlap = field('Overlap');
    const column = overlap.closest('.column, main')!;
    vi.spyOn(column, 'getBoundingClientRect').mockReturnValue(new DOMRect(0, 0, 300, 600));
    let top = 100;
    vi.spyOn(overlap, 'getBoundingClientRect').mockImplementation(
      () => new DOMRect(200, top, 60, 20),
    );
    overlap.focus();
    const mark = await screen.findByRole('button', { name: 'What Overlap is' });
    expect(mark.style.top).toBe('110px');
    top = 150;
    for (const moved of seen) moved();
    expect(mark.style.top).toBe('160px');
  });
});
