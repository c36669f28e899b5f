/** What axe finds on a page: WCAG 2.2 A and AA. */
import axe from 'axe-core';
import type { Page } from 'playwright-core';

/** @param rules these alone, where a page was looked at whole before */
export async function violations(page: Page, rules?: readonly string[]): Promise<string[]> {
  // The page's policy forbids added scripts; the debugger's own evaluation is not one.
  const isThere = await page.evaluate(() => 'axe' in globalThis);
  if (!isThere) await page.evaluate(axe.source);
  return page.evaluate(async (only) => {
    const tester = (globalThis as unknown as { axe: typeof axe }).axe;
    const results = await tester.run(document, {
      runOnly: only
        ? { type: 'rule', values: [...only] }
        : ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'],
      // Left out by axe unless it is asked for.
      ...(only ? {} : { rules: { 'target-size': { enabled: true } } }),
    });
    return results.violations.map(
      ({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join('; ')}`,
    );
  }, rules);
}
