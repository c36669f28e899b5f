/** The colours of the style sheet as a canvas needs them: resolved, for the theme of the moment. */
const names = [
  'paper',
  'sheet',
  'ink',
  'soft',
  'rule',
  'line',
  'shear',
  'shear-second',
  'peel',
  'fails',
  'zone',
  'band',
] as const;

export type Ink = Readonly<Record<(typeof names)[number], string>>;

export const FONT = "'Source Sans 3 Variable', 'Source Sans 3', system-ui, sans-serif";

/** A custom property is read back as it was written; asking an element for its colour resolves it. */
export function readInk(element: HTMLElement): Ink {
  const probe = document.createElement('span');
  probe.hidden = true;
  // Where the system forces its colours, a text's would be told: all of them the same.
  probe.style.setProperty('forced-color-adjust', 'none');
  element.append(probe);
  const style = getComputedStyle(probe);
  const ink = Object.fromEntries(
    names.map((name) => {
      probe.style.color = `var(--${name})`;
      return [name, style.color];
    }),
  ) as Ink;
  probe.remove();
  return ink;
}

/** The same by name, for drawings in lines: resolved where they stand, paper's own theme included. */
export const varInk = Object.fromEntries(names.map((name) => [name, `var(--${name})`])) as Ink;

/**
 * With the page in the colours of paper for as long as it takes; no frame is painted meanwhile. A colour
 * scheme set on a part of the page would not do: as built, its colours are chosen at the root.
 */
export function onPaper<Result>(work: () => Result): Result {
  const { dataset } = document.documentElement;
  const before = dataset.theme;
  dataset.theme = 'paper';
  try {
    return work();
  } finally {
    if (before === undefined) delete dataset.theme;
    else dataset.theme = before;
  }
}
