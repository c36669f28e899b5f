/** Dialogs, which jsdom knows but cannot open. */
import { beforeEach } from 'vitest';

export function useDialogs(): void {
  beforeEach(() => {
    Object.assign(HTMLDialogElement.prototype, {
      showModal(this: HTMLDialogElement) {
        this.open = true;
        this.querySelector<HTMLElement>('input, button')?.focus();
      },
      close(this: HTMLDialogElement) {
        this.open = false;
      },
    });
  });
}
