/** What the tests of files do to a project by its menu. */
import type { Page } from 'playwright-core';

/** Only ends what hangs. */
export const patient = { timeout: 60_000 };

export const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name });

/** A change that nothing has to be calculated for. */
export async function rename(page: Page, to: string): Promise<void> {
  await button(page, /^File$/).click();
  await page.getByRole('menuitem', { name: /^Rename the project/ }).click();
  await page.getByRole('textbox', { name: 'Name' }).fill(to);
  await page.keyboard.press('Enter');
  await page.getByText('changes not saved').waitFor(patient);
}
