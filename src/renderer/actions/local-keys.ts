/** Keys that belong to a part of a page, for the list alone: the parts listen for them themselves. */
export interface LocalKeys {
  readonly does: string;
  readonly keys: readonly string[];
}

export const localKeys: readonly LocalKeys[] = [
  { does: 'Walk through a table of joints', keys: ['Arrows', 'Home', 'End'] },
  { does: 'Open the joint there', keys: ['Enter'] },
  { does: 'Rename the joint there, or remove it', keys: ['F2', 'Del'] },
  { does: 'Go to the folder above, in the dialog of folders', keys: ['Backspace', 'Alt+Up'] },
  { does: 'Change the overlap at its end in the drawing', keys: ['Arrows', 'Shift+Arrows'] },
  { does: 'Move the place that is read around the bond', keys: ['Arrows'] },
  { does: 'Go to the largest stress there', keys: ['Home'] },
  { does: 'Go on in readings and results', keys: ['Enter', 'Arrows'] },
  { does: 'Close the working of a figure', keys: ['Esc'] },
  { does: 'Close the sheet before it is printed', keys: ['Esc'] },
];
