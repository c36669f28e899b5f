/** The pages that are not needed for the first picture, each with its own piece of the script. */
import { later } from './parts/later.tsx';

export const SizePage = later(async () => (await import('./size/SizePage.tsx')).SizePage);
export const ComparePage = later(
  async () => (await import('./compare/ComparePage.tsx')).ComparePage,
);
export const GapPage = later(async () => (await import('./gap/GapPage.tsx')).GapPage);
export const CouponsPage = later(
  async () => (await import('./coupons/CouponsPage.tsx')).CouponsPage,
);
export const SheetView = later(async () => (await import('./sheet/SheetView.tsx')).SheetView);

/** One after the other, in the order in which they are likely to be wanted. */
export async function fetchPages(): Promise<void> {
  for (const page of [SizePage, ComparePage, GapPage, CouponsPage, SheetView]) await page.fetch();
}
