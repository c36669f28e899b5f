/** What axe finds on a page: WCAG 2.2 A and AA. */
import axe from 'axe-core';
import type { Page } from 'playwright-core';

export async function violations(page: Page): Promise<string[]> {
  // The page's policy forbids added scripts; the debugger's own evaluation is not one.
  await page.evaluate(axe.source);
  return page.evaluate(async () => {
    const tester = (globalThis as unknown as { axe: typeof axe }).axe;
    const results = await tester.run(document, {
      runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'],
    });
    return results.violations.map(
      ({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join('; ')}`,
    );
  });
}
