/**
 * A long column of paper laid on pages: whole blocks where they go, tables row by row with their head on
 * each page, no heading at the foot without what it is the heading of. Everything is measured first, then
 * moved: what the pages hold are the very elements of the column.
 */
export interface PaperPage {
  readonly nodes: readonly Node[];
  /** What the page is about, for its head: `data-part` of its first block, or of the last one before. */
  readonly part: string;
}

interface Block {
  readonly element: HTMLElement;
  readonly top: number;
  readonly bottom: number;
  /** Of a table that may be split: its head and its rows, or groups of rows that stay together. */
  readonly table: { readonly head: number; readonly rows: readonly Row[] } | null;
  readonly isHeading: boolean;
  readonly startsPage: boolean;
  /** What it was taken out of, where that was too tall for a page. */
  readonly shell: HTMLElement | null;
}

interface Row {
  readonly element: HTMLElement;
  readonly top: number;
  readonly bottom: number;
}

/** Rows that stand under a head at the least, before a table goes on overleaf. */
const LEAST_ROWS = 2;

const isTable = (element: Element): element is HTMLTableElement => element.localName === 'table';

/** Groups where a table has several, else single rows. */
function rowsOf(table: HTMLTableElement): HTMLElement[] {
  const bodies = [...table.tBodies];
  return bodies.length > 1 ? bodies : bodies.flatMap((body) => [...body.rows]);
}

function measured({ element, shell }: Pick<Block, 'element' | 'shell'>): Block {
  const { top, bottom } = element.getBoundingClientRect();
  const rows = isTable(element)
    ? rowsOf(element).map((row) => {
        const rect = row.getBoundingClientRect();
        return { element: row, top: rect.top, bottom: rect.bottom };
      })
    : [];
  const first = rows[0];
  return {
    element,
    top,
    bottom,
    table: first ? { head: first.top - top, rows } : null,
    isHeading: /^h[1-6]$/.test(element.localName) || element.hasAttribute('data-heading'),
    startsPage: element.hasAttribute('data-page'),
    shell,
  };
}

/** Taller than any page it is laid out by its parts, each page with a shell of its own around them. */
function opened(element: HTMLElement, height: number): Pick<Block, 'element' | 'shell'>[] {
  const { top, bottom } = element.getBoundingClientRect();
  const isTall = bottom - top > height && element.children.length > 1 && !isTable(element);
  if (!isTall) return [{ element, shell: null }];
  return ([...element.children] as HTMLElement[]).map((child) => ({
    element: child,
    shell: element,
  }));
}

/** A part of a table: its own shell, caption, columns and head. */
function partOf(table: HTMLTableElement): HTMLTableElement {
  const part = table.cloneNode(false) as HTMLTableElement;
  for (const child of table.children) {
    if (child.localName === 'tbody') continue;
    part.append(child.cloneNode(true));
  }
  return part;
}

function put(part: HTMLTableElement, row: HTMLElement): void {
  if (row.localName === 'tbody') {
    part.append(row);
    return;
  }
  const body = part.tBodies[0] ?? part.createTBody();
  body.append(row);
}

/** Where the least that must stand with this block ends. */
function leastBottom(blocks: readonly Block[], from: number): number {
  for (let i = from; i < blocks.length; i++) {
    const block = blocks[i]!;
    if (i > from && block.startsPage) return blocks[i - 1]!.bottom;
    if (block.isHeading && i + 1 < blocks.length) continue;
    const rows = block.table?.rows ?? [];
    return rows.length > LEAST_ROWS + 1 ? rows[LEAST_ROWS - 1]!.bottom : block.bottom;
  }
  return blocks.at(-1)?.bottom ?? 0;
}

/**
 * @param column laid out as wide as the pages' body
 * @param height of that body
 */
export function paginate(column: HTMLElement, height: number): PaperPage[] {
  const blocks = ([...column.children] as HTMLElement[])
    .flatMap((element) => opened(element, height))
    .map(measured);
  const pages: { nodes: Node[]; part: string }[] = [];
  let nodes: Node[] = [];
  let part = '';
  /** Where, in the column, the page begins that is being filled. */
  let origin = 0;
  let partOfPage = '';
  const turn = (to: number): void => {
    if (nodes.length > 0) pages.push({ nodes, part: partOfPage });
    nodes = [];
    partOfPage = part;
    origin = to;
  };
  /** The shell on this page that further parts of the same tall block go into. */
  let held: { of: HTMLElement; shell: HTMLElement } | null = null;
  const lay = (node: HTMLElement, of: HTMLElement | null): void => {
    if (of === null) {
      nodes.push(node);
      return;
    }
    if (held?.of !== of || !nodes.includes(held.shell)) {
      held = { of, shell: of.cloneNode(false) as HTMLElement };
      nodes.push(held.shell);
    }
    held.shell.append(node);
  };
  const fits = (bottom: number): boolean => bottom - origin <= height;

  blocks.forEach((block, i) => {
    const said = block.element.getAttribute('data-part');
    if (said !== null) part = said;
    if (nodes.length === 0) turn(block.top);
    else if (block.startsPage || !fits(leastBottom(blocks, i))) turn(block.top);
    if (!block.table || fits(block.bottom)) {
      lay(block.element, block.shell);
      return;
    }
    const { rows, head } = block.table;
    let shell = partOf(block.element as HTMLTableElement);
    lay(shell, block.shell);
    rows.forEach((row, at) => {
      const isFirst = shell.tBodies.length === 0;
      // The last row does not go overleaf alone.
      const isLastButOne = at === rows.length - 2 && !fits(rows[at + 1]!.bottom);
      if (!isFirst && (!fits(row.bottom) || (isLastButOne && shell.rows.length > LEAST_ROWS))) {
        turn(row.top - head);
        shell = partOf(block.element as HTMLTableElement);
        lay(shell, block.shell);
      }
      put(shell, row.element);
    });
  });
  turn(0);
  return pages;
}
