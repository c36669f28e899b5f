/** What differs between the frame sizes of a joint, as data: the columns of the table. */
import { isFlat } from '../../../shared/convert-lap.ts';
import { plainOf } from '../../../shared/measures.ts';
import type { Joint } from '../../../shared/project.ts';
import type { QuantityName } from '../../../shared/quantities.ts';

export interface SizeColumn {
  readonly key: string;
  readonly title: string;
  readonly quantity: QuantityName;
  /** What stands for an empty field: the joint's own. */
  readonly own: (joint: Joint) => string;
}

const shownLength = (value: number | undefined): string =>
  value === undefined ? '' : plainOf('length', value);

const factors: readonly SizeColumn[] = [
  { key: 'wallFactor', title: 'Walls ×', quantity: 'wallFactor', own: () => '1' },
  { key: 'loadFactor', title: 'Loads ×', quantity: 'loadFactor', own: () => '1' },
];

const tube = (joint: Joint) => ('tube' in joint ? joint.tube : null);
const strip = (joint: Joint) => ('strip' in joint ? joint : null);

const sleeve: readonly SizeColumn[] = [
  {
    key: 'outsideDiameter',
    title: 'Diameter',
    quantity: 'outsideDiameter',
    own: (joint) => shownLength(tube(joint)?.outsideDiameter),
  },
  {
    key: 'tubeWall',
    title: 'Tube wall',
    quantity: 'wall',
    own: (joint) => shownLength(tube(joint)?.wall),
  },
  ...factors,
];

const flat: readonly SizeColumn[] = [
  {
    key: 'width',
    title: 'Width',
    quantity: 'width',
    own: (joint) => shownLength(strip(joint)?.width),
  },
  {
    key: 'thickness',
    title: 'Strip',
    quantity: 'wall',
    own: (joint) => shownLength(strip(joint)?.strip.thickness),
  },
  ...factors,
];

export const columnsOf = (joint: Joint): readonly SizeColumn[] => (isFlat(joint) ? flat : sleeve);

/** A size that is not there yet: an id and a name that no other has, and nothing that differs. */
export function newSize(sizes: readonly { readonly id: string; readonly name: string }[]): {
  id: string;
  name: string;
} {
  let number = sizes.length + 1;
  const taken = (n: number): boolean =>
    sizes.some(({ id, name }) => id === `size-${n}` || name === `Size ${n}`);
  while (taken(number)) number++;
  return { id: `size-${number}`, name: `Size ${number}` };
}
