/**
 * What roles and names are read from, without a style sheet: jsdom matches its whole own sheet against
 * every element that is looked at, which took half the time of these tests. Here is the part of that
 * sheet that hides something; no page of the tests loads another.
 */
import { vi } from 'vitest';

const UNSEEN = new Set([
  'HEAD',
  'META',
  'TITLE',
  'LINK',
  'STYLE',
  'SCRIPT',
  'TEMPLATE',
  'DATALIST',
]);

function isHidden(element: Element): boolean {
  if (element.hasAttribute('hidden') || UNSEEN.has(element.tagName)) return true;
  if (element.tagName === 'DIALOG') return !element.hasAttribute('open');
  const fold = element.parentElement;
  return fold?.tagName === 'DETAILS' && !fold.hasAttribute('open') && element.tagName !== 'SUMMARY';
}

/** Styles set on the element itself count; everything else is as if unset. */
function styleOf(element: Element): CSSStyleDeclaration {
  const own = (element as HTMLElement).style as CSSStyleDeclaration | undefined;
  const read = (name: string): string => {
    if (name === 'display') return isHidden(element) ? 'none' : own?.display || 'block';
    if (name === 'visibility') return own?.visibility || 'visible';
    return own?.getPropertyValue(name) ?? '';
  };
  return new Proxy({} as CSSStyleDeclaration, {
    get: (_none, name) =>
      name === 'getPropertyValue' ? read : typeof name === 'string' ? read(name) : undefined,
  });
}

export const useQuickStyle = (): void => {
  vi.spyOn(window, 'getComputedStyle').mockImplementation((element, pseudo) =>
    pseudo ? styleOf(document.createElement('i')) : styleOf(element),
  );
};
