/**
 * Every input of a joint as one list of labelled fields, named alike whatever lap it has: the sleeve of a
 * single lap is the socket (or the spigot) that a double lap has too. For putting joints side by side.
 */
import { lapOf } from './convert-lap.ts';
import type { Joint, Project } from './project.ts';
import { lapWords } from './words.ts';

export interface JointField {
  /** The same for all laps: `socket.atRoot`, `outerBond.gap`, `loads.gust.force`. */
  readonly field: string;
  /** Where it stands in this joint: `['sleeve', 'atRoot']`. */
  readonly path: readonly (string | number)[];
  readonly label: string;
  readonly unit: string;
  readonly value: string | number;
}

/** The names that a single lap's parts have in a double lap. */
export function doubleNames(joint: Joint): Readonly<Record<string, string>> {
  if (joint.type === 'sleeve-single') {
    return joint.side === 'socket'
      ? { sleeve: 'socket', bond: 'outerBond' }
      : { sleeve: 'spigot', bond: 'innerBond' };
  }
  return joint.type === 'flat-single' ? { plate: 'lowerStrap', bond: 'lowerBond' } : {};
}

export const partWords: Readonly<Record<string, string>> = {
  tube: 'tube',
  strip: 'strip',
  spigot: 'spigot',
  socket: 'socket',
  lowerStrap: 'lower strap',
  upperStrap: 'upper strap',
  innerBond: 'inner bond',
  outerBond: 'outer bond',
  lowerBond: 'lower bond',
  upperBond: 'upper bond',
};

const fieldWords: Readonly<Record<string, readonly [label: string, unit: string]>> = {
  overlap: ['overlap', 'mm'],
  width: ['width', 'mm'],
  offset: ['offset', 'mm'],
  adherend: ['material', ''],
  adhesive: ['adhesive', ''],
  outsideDiameter: ['outside diameter', 'mm'],
  wall: ['wall', 'mm'],
  thickness: ['thickness', 'mm'],
  atRoot: ['wall at the root', 'mm'],
  atMouth: ['wall at the mouth', 'mm'],
  gap: ['gap', 'mm'],
  tolerance: ['gap tolerance', 'mm'],
  force: ['axial force', 'N'],
  moment: ['bending moment', 'N·mm'],
  torque: ['torque', 'N·mm'],
  shear: ['transverse shear', 'N'],
};

/** Parts first, in the order of the joint's own fields; loads last. */
export function jointFields(project: Project, joint: Joint): JointField[] {
  const fields: JointField[] = [
    { field: 'lap', path: [], label: 'lap', unit: '', value: lapWords[lapOf(joint)] },
  ];
  const nameOf = (key: string, value: string): string => {
    const list = key === 'adhesive' ? project.adhesives : project.adherends;
    return list.find(({ id }) => id === value)?.name ?? value;
  };
  const add = (
    key: string,
    value: unknown,
    field: string,
    words: string,
    path: readonly (string | number)[],
  ): void => {
    const known = fieldWords[key];
    if (!known || (typeof value !== 'number' && typeof value !== 'string')) return;
    const [label, unit] = known;
    fields.push({
      field,
      path,
      label: words === '' ? label : `${words}, ${label}`,
      unit,
      value: typeof value === 'string' ? nameOf(key, value) : value,
    });
  };
  const other = doubleNames(joint);
  for (const [key, value] of Object.entries(joint)) {
    const part = other[key] ?? key;
    if (!(part in partWords)) add(key, value, key, '', [key]);
    else {
      for (const [inner, own] of Object.entries(value as object)) {
        add(inner, own, `${part}.${inner}`, partWords[part]!, [key, inner]);
      }
    }
  }
  for (const [i, { case: caseId, ...load }] of joint.loads.entries()) {
    const name = project.loadCases.find(({ id }) => id === caseId)?.name ?? caseId;
    for (const [key, value] of Object.entries(load)) {
      add(key, value, `loads.${caseId}.${key}`, name, ['loads', i, key]);
    }
  }
  return fields;
}

/** One field that is not the same in every joint. */
export interface FieldDifference {
  readonly field: string;
  readonly label: string;
  readonly unit: string;
  /** One for each joint; null where it has no such field. */
  readonly values: readonly (string | number | null)[];
}

/** Fields that differ, in the order in which the joints have them. */
export function differences(project: Project, joints: readonly Joint[]): FieldDifference[] {
  const all = joints.map((joint) => jointFields(project, joint));
  const order = new Map<string, JointField>();
  for (const fields of all) {
    for (const one of fields) if (!order.has(one.field)) order.set(one.field, one);
  }
  return [...order.values()].flatMap(({ field, label, unit }) => {
    const values = all.map((fields) => fields.find((one) => one.field === field)?.value ?? null);
    return values.every((value) => value === values[0]) ? [] : [{ field, label, unit, values }];
  });
}
