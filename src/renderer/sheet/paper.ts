/** The paper that sheets are laid out for; remembered on this machine only. */
import { type Accessor, createEffect, onCleanup } from 'solid-js';

export type Paper = 'A4' | 'Letter';
export const papers: readonly Paper[] = ['A4', 'Letter'];

const KEY = 'lapwright-paper';
const isPaper = (value: unknown): value is Paper => papers.some((one) => one === value);

/** Where Letter is what lies in the printer. */
const LETTER = /-(US|CA|MX|PH|CL|CO|VE)$/i;

/** Storage can be forbidden; the page then simply does not remember. */
export function rememberedPaper(): Paper {
  try {
    const value = localStorage.getItem(KEY);
    if (isPaper(value)) return value;
  } catch {
    // Not remembered, then.
  }
  return LETTER.test(navigator.language) ? 'Letter' : 'A4';
}

export function rememberPaper(paper: Paper): void {
  try {
    localStorage.setItem(KEY, paper);
  } catch {
    // Not remembered, then.
  }
}

/** The printer's paper as long as the sheet is shown, its margins those of the pages themselves. */
export function createPrinterPaper(paper: Accessor<Paper>): void {
  // Where a style sheet cannot be made by hand, as in a test without a screen, nothing is printed either.
  if (typeof CSSStyleSheet.prototype.replaceSync !== 'function') return;
  const sheet = new CSSStyleSheet();
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
  createEffect(() => sheet.replaceSync(`@page { size: ${paper()}; margin: 0 }`));
  onCleanup(() => {
    document.adoptedStyleSheets = document.adoptedStyleSheets.filter((one) => one !== sheet);
  });
}
