import type { Page } from 'playwright-core';

/** Waits for the table of joints to be whole: rows come as joints are judged, this line with the last of them. */
export const checked = (page: Page): Promise<void> =>
  page.getByText('Low is below').first().waitFor({ timeout: 60_000 });
