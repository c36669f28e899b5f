/** The views of the Size page by their names, the stress first. */
import { views } from '../size/views.ts';

export const sizeViews: readonly { readonly id: string; readonly title: string }[] = [
  { id: 'stress', title: 'Stress' },
  ...views,
];
