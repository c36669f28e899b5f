/** The inputs of several joints as rows: one for each field, whatever lap the joints have. */
import { type JointField, jointFields } from '../../shared/joint-fields.ts';
import type { Joint, Project } from '../../shared/project.ts';
import type { QuantityName } from '../../shared/quantities.ts';
import { displayUnit, toDisplay } from '../../shared/units.ts';

export interface InputCell {
  readonly path: JointField['path'];
  readonly value: string | number;
  /** As it is read. */
  readonly text: string;
}

export interface InputRow {
  readonly field: string;
  readonly label: string;
  /** Null where it is a choice among words. */
  readonly quantity: QuantityName | null;
  readonly unit: string;
  readonly differs: boolean;
  /** Null where a joint has no such field. */
  readonly cells: readonly (InputCell | null)[];
}

const quantityOf: Readonly<Record<string, QuantityName>> = {
  overlap: 'overlap',
  width: 'width',
  offset: 'offset',
  outsideDiameter: 'outsideDiameter',
  wall: 'wall',
  thickness: 'wall',
  atRoot: 'wall',
  atMouth: 'wall',
  gap: 'gap',
  tolerance: 'gapTolerance',
  force: 'force',
  moment: 'moment',
  torque: 'torque',
  shear: 'shear',
};

/** Shown whether they differ or not: what a comparison is made with. */
const ALWAYS = /^(lap|overlap)$|\.(atRoot|atMouth|gap)$/;
export const isAlways = ({ field, differs }: InputRow): boolean => differs || ALWAYS.test(field);

const written = ({ value }: JointField, quantity: QuantityName | null): string =>
  typeof value === 'number' && quantity !== null ? toDisplay(quantity, value) : `${value}`;

/** Rows in the order of a double lap: those that a single lap has not stand beside their like. */
export function inputRows(project: Project, joints: readonly Joint[]): InputRow[] {
  const all = joints.map((joint) => jointFields(project, joint));
  const longest = all.reduce((a, b) => (b.length > a.length ? b : a), all[0] ?? []);
  const order = new Map<string, JointField>();
  for (const fields of [longest, ...all]) {
    for (const one of fields) if (!order.has(one.field)) order.set(one.field, one);
  }
  return [...order.values()].map(({ field, label, value }) => {
    const key = field.split('.').at(-1) ?? '';
    const quantity = typeof value === 'number' ? (quantityOf[key] ?? null) : null;
    const cells = all.map((fields): InputCell | null => {
      const one = fields.find((other) => other.field === field);
      return one ? { path: one.path, value: one.value, text: written(one, quantity) } : null;
    });
    return {
      field,
      label,
      quantity,
      unit: quantity === null ? '' : displayUnit(quantity).symbol,
      differs: cells.some((cell) => cell?.value !== cells[0]?.value),
      cells,
    };
  });
}
