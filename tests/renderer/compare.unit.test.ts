import { describe, expect, it } from 'vitest';
import {
  comparePlot,
  compareSentence,
  compareTables,
} from '../../src/renderer/charts/compare-data.ts';
import { inputRows, isAlways } from '../../src/renderer/compare/input-rows.ts';
import { resultGroups } from '../../src/renderer/compare/result-groups.ts';
import { bestOf, type Result, type ResultRow } from '../../src/renderer/compare/result-row.ts';
import { excerptOf, sharedCases, variantsOf } from '../../src/renderer/state/compared.ts';
import { createProject, type ProjectState } from '../../src/renderer/state/project.ts';
import {
  addCopy,
  addVariant,
  deleteVariant,
  unlikeOthers,
} from '../../src/renderer/state/variants.ts';
import { withLap } from '../../src/shared/lap-variant.ts';
import type { Joint } from '../../src/shared/project.ts';
import { readProject } from '../../src/shared/read-project.ts';
import type { CompareColumn } from '../../src/shared/reports-compare.ts';
import { makeColumn } from './support/compare.ts';
import { double, lug, makeProject, socket } from './support/project.ts';
import { makeStress } from './support/reports.ts';

const long: Joint = { ...socket, id: 'tip-long', name: 'Boom tip, long', overlap: 60 };
const asDouble: Joint = {
  ...withLap(socket, 'double'),
  id: 'tip-double',
  name: 'Boom tip, double',
};
const withVariants = () =>
  makeProject({
    variants: [
      { of: 'root', joint: { ...double, id: 'root-2', name: 'Root 2' } },
      { of: 'tip', joint: long },
      { of: 'tip', joint: asDouble },
    ],
  });

const opened = (document = withVariants()): ProjectState => {
  const project = createProject();
  project.open({ document, origin: 'test' });
  return project;
};

describe('the part of the project that a comparison needs', () => {
  it('has the columns and the joints that its variants are of, and nothing that could be refused besides', () => {
    const project = withVariants();
    const broken = { ...project, joints: [...project.joints] };
    broken.joints[2] = { ...lug, overlap: 9999 };
    const { document, inWhole } = excerptOf(broken, [
      { kind: 'joint', id: 'root' },
      { kind: 'variant', id: 'tip-double' },
    ]);
    expect(document.joints.map(({ id }) => id)).toEqual(['tip', 'root']);
    expect(document.variants?.map(({ joint }) => joint.id)).toEqual(['tip-double']);
    expect(readProject(document).ok).toBe(true);
    expect(inWhole('variants.0.joint.overlap')).toBe('variants.2.joint.overlap');
    expect(inWhole('joints.1')).toBe('joints.1');
    expect(inWhole('adherends.0.modulus')).toBe('adherends.0.modulus');
    expect(inWhole('joints.7.overlap')).toBe('joints.7.overlap');
  });

  it('knows the variants of a joint, and the cases that all columns carry', () => {
    const project = withVariants();
    expect(variantsOf(project, 'tip').map(({ id }) => id)).toEqual(['tip-long', 'tip-double']);
    const cases = (...ids: string[]) =>
      sharedCases(
        project,
        ids.map((id) => ({ kind: 'joint', id })),
      ).map(({ id }) => id);
    expect(cases('tip')).toEqual(['gust', 'landing']);
    expect(cases('tip', 'lug')).toEqual(['gust']);
  });
});

describe('variants in the project', () => {
  it('get an id and a name that nothing else has, however often', () => {
    const project = opened();
    const ids = [1, 2, 3].map(() => addVariant(project, { of: 'tip', joint: long }));
    expect(ids).toEqual(['tip-long-2', 'tip-long-3', 'tip-long-4']);
    const names = project.plain()!.variants!.map(({ joint }) => joint.name);
    expect(names.slice(-3)).toEqual([1, 2, 3].map((n) => `Boom tip, long (${n + 1})`));
    expect(readProject(project.plain()).ok).toBe(true);
  });

  it('keep to the length that the file takes', () => {
    const joint = { ...socket, id: 'x'.repeat(64), name: 'y'.repeat(120) };
    const made = unlikeOthers(makeProject({ joints: [joint] }), joint);
    expect(made.id).toBe(`${'x'.repeat(62)}-2`);
    expect(made.name).toBe(`${'y'.repeat(116)} (2)`);
  });

  it('can be copies, which vary what a variant varies, and share nothing with it', () => {
    const project = opened();
    const id = addCopy(project, project.plain()!.variants![1]!.joint)!;
    const copy = project.plain()!.variants!.at(-1)!;
    expect(copy.of).toBe('tip');
    expect(copy.joint).toMatchObject({ id, name: 'Boom tip, long, changed by hand', overlap: 60 });
    project.edit(['variants', 3, 'joint', 'overlap'], 61);
    expect(project.plain()!.variants![1]!.joint.overlap).toBe(60);
    expect(readProject(project.plain()).ok).toBe(true);
  });

  it('leave no empty list behind in a file that had none', () => {
    const project = opened();
    for (const id of ['root-2', 'tip-long', 'tip-double']) deleteVariant(project, id);
    expect(JSON.parse(JSON.stringify(project.plain()))).toEqual(makeProject());
  });
});

describe('the inputs side by side', () => {
  const rows = () => inputRows(makeProject(), [socket, long, asDouble]);
  const row = (field: string) => rows().find((one) => one.field === field)!;

  it('stand in one row for one and the same thing, whatever the lap calls it', () => {
    expect(row('socket.atRoot').cells.map((cell) => cell?.path)).toEqual([
      ['sleeve', 'atRoot'],
      ['sleeve', 'atRoot'],
      ['socket', 'atRoot'],
    ]);
    expect(row('spigot.atRoot').cells.map((cell) => cell?.text ?? null)).toEqual([
      null,
      null,
      '1.2',
    ]);
  });

  it('are marked where they differ, and shown then or when a comparison is made with them', () => {
    expect(row('overlap')).toMatchObject({ differs: true, unit: 'mm' });
    expect(row('socket.atRoot').differs).toBe(false);
    expect(isAlways(row('socket.atRoot'))).toBe(true);
    expect(isAlways(row('tube.outsideDiameter'))).toBe(false);
  });

  it('are written in the units of the screen', () => {
    expect(row('loads.gust.force')).toMatchObject({ unit: 'kN', quantity: 'force' });
    expect(row('loads.gust.force').cells[0]?.text).toBe('16.0');
    expect(row('adhesive').cells[0]?.text).toBe('Toughened paste');
  });
});

describe('the results side by side', () => {
  const results = (...columns: (CompareColumn | null)[]): Result[] =>
    columns.map((column, i) => ({ joint: [socket, asDouble, long][i]!, column }));
  const row = (list: Result[], label: string): ResultRow =>
    resultGroups(list)
      .flatMap(({ rows }) => rows)
      .find((one) => one.label === label)!;
  const texts = (list: Result[], label: string) =>
    row(list, label).cells.map((cell) => cell?.text ?? null);
  const both = results(makeColumn(socket), makeColumn(asDouble));

  it('say which is the best, by the row’s own measure', () => {
    expect(texts(both, 'bond fails in shear at')).toEqual(['× 1.20', '× 2.40']);
    expect([...bestOf(row(both, 'bond fails in shear at'))]).toEqual([1]);
    expect([...bestOf(row(both, 'added by the joint'))]).toEqual([0]);
    expect([...bestOf(row(both, 'peak shear'))]).toEqual([1]);
    expect([...bestOf(row(both, 'bending'))]).toEqual([1]);
  });

  it('name no best where all are written alike, where one is known, or where neither end is better', () => {
    expect(bestOf(row(both, 'axial')).size).toBe(0);
    expect(bestOf(row(both, 'tube in the overlap')).size).toBe(0);
    const alone = results(makeColumn(socket), null);
    expect(bestOf(row(alone, 'bond fails in shear at')).size).toBe(0);
  });

  it('share the name where two are the best alike', () => {
    const three = results(makeColumn(socket), makeColumn(asDouble), makeColumn(asDouble));
    expect([...bestOf(row(three, 'bond fails in shear at'))]).toEqual([1, 2]);
  });

  it('put the sleeve of a single lap beside the wall of a double lap that it is', () => {
    expect(texts(both, 'socket, yield')).toEqual(['+2.20', '+3.40']);
    expect(texts(both, 'outer bond')).toEqual(['16.0 · 100 %', '8.00 · 50 %']);
    expect(texts(both, 'inner bond')).toEqual([null, '8.00 · 50 %']);
  });

  it('compare no stresses that are not at the same loads', () => {
    const stress = makeStress(30, { carried: false, capacity: 0.86 });
    const list = results(makeColumn(socket, { stress }), makeColumn(asDouble));
    expect(row(list, 'peak shear').cells[0]?.more).toBe('at × 0.86, the most it carries');
    expect(bestOf(row(list, 'peak shear')).size).toBe(0);
    expect(texts(list, 'largest shear strain')).toEqual([null, '2.00']);
  });

  it('call no factor the best that is on other loads', () => {
    const heavier = { ...asDouble, loads: [{ ...socket.loads[0]!, force: 20_000 }] };
    const list = [
      { joint: socket, column: makeColumn(socket) },
      { joint: heavier, column: makeColumn(heavier) },
    ];
    expect(bestOf(row(list, 'bond fails in shear at')).size).toBe(0);
    expect(bestOf(row(list, 'peak peel')).size).toBe(0);
    expect([...bestOf(row(list, 'lowest margin'))]).toEqual([1]);
    const { note } = resultGroups(list).find(({ title }) => title === 'Strength of the bond')!;
    expect(note).toMatch(/own loads, which differ: no ratio of strength/);
  });

  it('say which densities are missing, and leave out the rows that would be empty', () => {
    const { mass } = makeColumn(socket);
    const unknown = {
      ...mass!,
      added: null,
      tube: { ...mass!.tube, mass: null },
      walls: [{ part: 'sleeve', volume: 1, mass: null }],
      bonds: [{ part: 'bond', volume: 1, mass: null }],
      without: ['Printed titanium'],
    };
    const list = results(makeColumn(socket, { mass: unknown }), null);
    const group = resultGroups(list).find(({ title }) => title === 'Mass')!;
    expect(group.note).toBe('not known without the density of “Printed titanium”');
    expect(group.rows).toEqual([]);
  });

  it('leave a refused column empty', () => {
    const refused = { code: 'bad-input', field: '', message: 'no' } as const;
    const list = results(makeColumn(socket), makeColumn(asDouble, { refused, margins: [] }));
    expect(texts(list, 'height of print')).toEqual(['30.0', null]);
  });
});

describe('the curves over one another', () => {
  const all = [
    { letter: 'A', name: 'Short', stress: makeColumn(socket).stress! },
    { letter: 'B', name: 'Double', stress: makeColumn(asDouble).stress! },
    { letter: 'C', name: 'Long', stress: makeColumn(long).stress! },
  ];

  it('are told apart by letter and dash, the second bond by its weight', () => {
    const { curves } = comparePlot(all, 'shear', 'root');
    expect(curves.map(({ name }) => name)).toEqual(['A', 'B inner', 'B outer', 'C']);
    expect(new Set([curves[0]!, curves[2]!, curves[3]!].map(({ dash }) => `${dash}`)).size).toBe(3);
    expect(curves[1]!.dash).toEqual(curves[2]!.dash);
    expect(curves[1]!.width).toBeLessThan(curves[2]!.width);
    expect(curves.map(({ peak }) => peak?.text)).toEqual(['A 22.0', null, 'B both 22.0', 'C 22.0']);
  });

  it('stand on one root, or with their mouths in one place', () => {
    const root = comparePlot(all, 'shear', 'root');
    expect(root.span).toEqual({ low: 0, high: 60 });
    expect(root.curves.map(({ x }) => [x[0], x.at(-1)])).toEqual([
      [0, 30],
      [0, 30],
      [0, 30],
      [0, 60],
    ]);
    const mouth = comparePlot(all, 'peel', 'mouth');
    expect(mouth.span).toEqual({ low: -60, high: 0 });
    expect(mouth.curves.map(({ x }) => x.at(-1))).toEqual([0, 0, 0, 0]);
    expect(mouth.curves.map(({ peak }) => peak?.x)).toEqual([0, 0, 0, 0]);
    expect(mouth.curves.map(({ values }) => values)).toEqual(
      comparePlot(all, 'peel', 'root').curves.map(({ values }) => values),
    );
  });

  it('have each yield once, with the letters of those that it is of', () => {
    expect(comparePlot(all, 'shear', 'root').levels).toEqual([{ value: 38, text: 'yield 38.0' }]);
    const { stress } = all[2]!;
    const other = { ...stress, bonds: stress.bonds.map((bond) => ({ ...bond, shearYield: 20 })) };
    const mixed = [all[0]!, all[1]!, { ...all[2]!, stress: other }];
    expect(comparePlot(mixed, 'shear', 'root').levels).toEqual([
      { value: 38, text: 'yield 38.0, A B' },
      { value: 20, text: 'yield 20.0, C' },
    ]);
    expect(comparePlot(mixed, 'shear', 'root').range.high).toBeGreaterThan(38);
  });

  it('are told in words, and in figures over the length of each', () => {
    expect(compareSentence(all, 'shear', 'Gust')).toMatch(
      /^Shear along the bonds over one another, Gust\. A, Short: bond peaks at 22\.0 MPa at the mouth, over 30\.0 mm; B, Double: inner bond peaks/,
    );
    const tables = compareTables(all, 'mouth');
    expect(tables[2]!.head).toEqual(['from the mouth, mm', 'shear, MPa', 'peel, MPa']);
    expect(tables[2]!.rows.map(([x]) => x)).toEqual(
      [...tables[2]!.rows.map(([x]) => x)].sort((a, b) => Number(b) - Number(a)),
    );
    expect(tables[2]!.rows[0]![0]).toBe('60.00');
    expect(tables[1]!.head).toHaveLength(5);
  });
});
