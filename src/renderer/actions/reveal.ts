/** Brings a field into view and puts the focus into it, opening what it is folded into. */

export interface Place {
  /** What the field is called when it is read out; left out, the fold itself is gone to. */
  readonly name?: string;
  /** Selector of the part of the page that it stands in. */
  readonly within: string;
  /** Title of the fold that it is in. */
  readonly inside?: string;
}

/** Frames to wait for what is built once it is opened. */
const PATIENCE = 60;

/** Counts the wishes: only the last one moves the focus. */
let turn = 0;

const textOf = (element: Element | null): string => element?.textContent?.trim() ?? '';

/** @returns what one presses to fold it up again */
function openFold(part: Element, title: string): HTMLElement | undefined {
  const fold = [...part.querySelectorAll('details')].find((one) =>
    textOf(one.querySelector('summary')).startsWith(title),
  );
  if (fold) fold.open = true;
  return fold?.querySelector('summary') ?? undefined;
}

function fieldOf(part: Element, name: string): HTMLElement | undefined {
  const fields = [...part.querySelectorAll<HTMLInputElement | HTMLSelectElement>('input, select')];
  return fields.find(
    (one) =>
      one.getAttribute('aria-label') === name ||
      [...(one.labels ?? [])].some((label) => textOf(label) === name),
  );
}

export function reveal({ name, within, inside }: Place): void {
  turn += 1;
  const mine = turn;
  let left = PATIENCE;
  const look = (): void => {
    if (mine !== turn) return;
    const part = document.querySelector(within);
    const fold = part && inside !== undefined ? openFold(part, inside) : undefined;
    const field = part && name !== undefined ? fieldOf(part, name) : fold;
    left -= 1;
    if (!field) {
      if (left > 0) requestAnimationFrame(look);
      return;
    }
    field.focus();
    field.scrollIntoView?.({ block: 'center' });
    if (field instanceof HTMLInputElement) field.select();
  };
  look();
}
