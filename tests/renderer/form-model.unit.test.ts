import { describe, expect, it } from 'vitest';
import {
  groupsOf,
  loadInputs,
  noLoad,
  pieceGroups,
  type Row,
} from '../../src/renderer/size/form-model.ts';
import { valueAt } from '../../src/renderer/state/project.ts';
import { convertLap } from '../../src/shared/convert-lap.ts';
import { type Joint, jointSchema } from '../../src/shared/project.ts';
import { double, lug, socket } from './support/project.ts';

const flatDouble = convertLap(lug, 'flat-double');
const joints: Joint[] = [socket, convertLap(socket, 'spigot'), double, lug, flatDouble];

const pathsOf = (row: Row): string[] => {
  switch (row.kind) {
    case 'lap':
    case 'edge-moment':
      return [];
    case 'toleranced':
      return [row.nominal.path.join('.'), row.tolerance.path.join('.')];
    default:
      return [row.path.join('.')];
  }
};
const namesOf = (row: Row): string[] => {
  switch (row.kind) {
    case 'lap':
      return ['Lap'];
    case 'edge-moment':
      return ['Edge moment'];
    case 'toleranced':
      return [row.nominal.name, row.tolerance.name];
    default:
      return [row.name];
  }
};
const rowsOf = (joint: Joint): Row[] => [
  ...groupsOf(joint.type, 0).flatMap(({ rows }) => rows),
  ...joint.loads.flatMap((load, i) => loadInputs(joint.type, 0, i, load.case)),
];

/** Every value of a joint, by its place in the document. */
function leaves(value: unknown, path: string): string[] {
  if (typeof value !== 'object' || value === null) return [path];
  return Object.entries(value).flatMap(([key, inner]) => leaves(inner, `${path}.${key}`));
}

describe('the form', () => {
  it.each(joints)('has a field for every input of a joint: $type', (joint) => {
    // The id stays, type and side are the lap, the case of a load heads its fields, the name has its own row.
    const elsewhere = /\.(id|type|side|case|name)$/;
    const inputs = leaves(joint, 'joints.0').filter((path) => !elsewhere.test(path));
    expect(rowsOf(joint).flatMap(pathsOf).toSorted()).toEqual(inputs.toSorted());
  });

  it.each(joints)('gives every field a name of its own: $type', (joint) => {
    const names = rowsOf(joint).flatMap(namesOf);
    expect(new Set(names).size).toBe(names.length);
    expect(names).toContain('Lap');
    expect(names).toContain('Overlap');
  });

  it.each(joints)('points at what the document holds: $type', (joint) => {
    for (const path of rowsOf(joint).flatMap(pathsOf)) {
      expect(valueAt({ joints: [joint] }, path.split('.'))).toBeDefined();
    }
  });

  it('asks of flat single laps, and of them alone, how their ends bend', () => {
    const asked = joints.filter((joint) =>
      rowsOf(joint).some(({ kind }) => kind === 'edge-moment'),
    );
    expect(asked.map(({ type }) => type)).toEqual(['flat-single']);
  });

  it('knows the thickness of every wall', () => {
    for (const joint of joints) {
      for (const row of rowsOf(joint)) {
        if (row.kind !== 'adherend') continue;
        expect(row.thickness.length).toBeGreaterThan(0);
        for (const path of row.thickness) {
          expect(valueAt({ joints: [joint] }, path)).toBeTypeOf('number');
        }
      }
    }
  });

  it('adds a load of the kind that the joint takes', () => {
    for (const joint of joints) {
      const loads = [...joint.loads, noLoad(joint, 'rotor')];
      expect(jointSchema.safeParse({ ...joint, loads }).success).toBe(true);
    }
  });
});

describe('the form of a test piece', () => {
  const shape = ['coupons', 'specimens', 3, 'shape'];
  it.each(joints)(
    'has every size and material, and nothing that each set gives: $type',
    (joint) => {
      const { id: _i, name: _n, adhesive: _a, loads: _l, ...sizes } = joint;
      const given = /\.(type|side|gap|tolerance|offset)$/;
      const inputs = leaves(sizes, shape.join('.')).filter((path) => !given.test(path));
      const rows = pieceGroups(joint.type, shape).flatMap((group) => group.rows);
      expect(rows.flatMap(pathsOf).toSorted()).toEqual(inputs.toSorted());
    },
  );
});
