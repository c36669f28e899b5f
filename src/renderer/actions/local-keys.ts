/** Keys that belong to a part of a page, for the list alone: the parts listen for them themselves. */
export interface LocalKeys {
  readonly where: string;
  readonly keys: readonly string[];
  readonly does: string;
}

export const localKeys: readonly LocalKeys[] = [
  { where: 'Tables of joints', keys: ['Arrows', 'Home', 'End'], does: 'walk from one to another' },
  { where: 'Tables of joints', keys: ['Enter'], does: 'opens the joint, in By case at that state' },
  { where: 'End of the overlap, drawn', keys: ['Arrows', 'Shift+Arrows'], does: 'change it' },
  { where: 'Around the bond', keys: ['Arrows', 'Home'], does: 'move the place; the largest' },
  { where: 'Readings and results', keys: ['Enter', 'Up', 'Down'], does: 'go from field to field' },
  { where: 'Working of a figure', keys: ['Esc'], does: 'closes it' },
];
