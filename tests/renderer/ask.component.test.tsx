/** Questions: each verb acts once the question is closed, Escape changes nothing, a name is there to be typed over. */
import { fireEvent, render, screen } from '@solidjs/testing-library';
import { expect, it, vi } from 'vitest';
import { AskFirst } from '../../src/renderer/parts/AskFirst.tsx';
import { AskVerbs } from '../../src/renderer/parts/AskVerbs.tsx';
import { NameDialog } from '../../src/renderer/project-file/NameDialog.tsx';
import { useDialogs } from './support/dialogs.ts';

useDialogs();

const pressEscape = (): boolean =>
  fireEvent(screen.getByRole('dialog'), new Event('cancel', { cancelable: true }));
const click = (name: string): void => void fireEvent.click(screen.getByRole('button', { name }));

it('a question with verbs does the last of them on Escape, and is closed before it acts', () => {
  const [first, last] = [vi.fn(), vi.fn()];
  const seen: boolean[] = [];
  render(() => (
    <AskVerbs
      title="In the way"
      text="What then?"
      verbs={[
        { text: 'Replace it', act: first },
        { text: 'Stay', act: last },
      ]}
    />
  ));
  const dialog = screen.getByRole<HTMLDialogElement>('dialog', { name: 'In the way' });
  first.mockImplementation(() => seen.push(dialog.open));
  expect(pressEscape()).toBe(false);
  expect([first, last].map((act) => act.mock.calls.length)).toEqual([0, 1]);
  dialog.open = true;
  click('Replace it');
  expect(seen).toEqual([false]);
});

it('before something goes, keeping it leads and is what Escape does', () => {
  const [keep, remove] = [vi.fn(), vi.fn()];
  render(() => (
    <AskFirst
      title="It goes"
      text="With all of it."
      keep="Keep it"
      remove="Remove it"
      onKeep={keep}
      onRemove={remove}
    />
  ));
  const [leads] = screen.getAllByRole('button');
  expect(leads?.textContent).toBe('Keep it');
  pressEscape();
  expect([keep, remove].map((act) => act.mock.calls.length)).toEqual([1, 0]);
});

it('a name is selected, to be typed over, and an empty one is none', () => {
  const named = vi.fn();
  render(() => <NameDialog title="Rename" name="Boom tip" onName={named} />);
  const field = screen.getByRole<HTMLInputElement>('textbox', { name: 'Name' });
  expect(document.activeElement).toBe(field);
  expect([field.selectionStart, field.selectionEnd]).toEqual([0, 'Boom tip'.length]);
  fireEvent.input(field, { target: { value: '  ' } });
  fireEvent.submit(field.form!);
  expect(named).not.toHaveBeenCalled();
  fireEvent.input(field, { target: { value: ' Boom end ' } });
  fireEvent.submit(field.form!);
  expect(named).toHaveBeenCalledExactlyOnceWith('Boom end');
});
