/** The pages, in the order of the bar. */
export type WorkspaceName = 'joints' | 'size' | 'compare' | 'gap' | 'coupons';

export const workspaces: readonly { readonly id: WorkspaceName; readonly title: string }[] = [
  { id: 'joints', title: 'Joints' },
  { id: 'size', title: 'Size' },
  { id: 'compare', title: 'Compare' },
  { id: 'gap', title: 'Gap check' },
  { id: 'coupons', title: 'Coupons' },
];
