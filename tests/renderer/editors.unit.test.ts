/** What the editors of cases and materials change in the document, and which fields they have. */
import { createRoot } from 'solid-js';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { adherendFields } from '../../src/renderer/size/adherend/adherend-fields.ts';
import {
  type AdhesiveState,
  nextState,
  stateFields,
} from '../../src/renderer/size/adhesive/state-fields.ts';
import { caseLabels } from '../../src/renderer/size/load-cases/case-inputs.ts';
import { plyFields } from '../../src/renderer/size/stack/ply-fields.ts';
import { asCopy, unlike } from '../../src/renderer/state/free-names.ts';
import { addLoadCase, changeKind, removeLoadCase } from '../../src/renderer/state/load-cases.ts';
import { copyMaterial, removeUnused, unusedOf } from '../../src/renderer/state/materials.ts';
import { createProject, type ProjectState } from '../../src/renderer/state/project.ts';
import {
  countedUses,
  isUsed,
  usesOfAdherend,
  usesOfAdhesive,
  usesOfCase,
} from '../../src/renderer/state/uses.ts';
import {
  adherendSchema,
  adhesiveSchema,
  loadCaseSchema,
  type Project,
  plySchema,
} from '../../src/shared/project.ts';
import { readProject } from '../../src/shared/read-project.ts';
import { listed } from '../../src/shared/words.ts';
import { double, makeProject } from './support/project.ts';

type Shape = Readonly<Record<string, z.core.$ZodType>>;
const numbersIn = (shape: Shape): string[] =>
  Object.entries(shape)
    .filter(([, one]) => {
      const inner = one instanceof z.ZodOptional ? one.unwrap() : one;
      return inner instanceof z.ZodNumber;
    })
    .map(([key]) => key)
    .toSorted();
const optionalIn = (shape: Shape): string[] =>
  numbersIn(shape).filter((key) => shape[key] instanceof z.ZodOptional);
type Fields = readonly { readonly key: string; readonly optional?: true }[];
const keysOf = (fields: Fields): string[] => fields.map(({ key }) => key).toSorted();
const optionalOf = (fields: Fields): string[] => keysOf(fields.filter(({ optional }) => optional));

const open = (document: Project): ProjectState => {
  const project = createRoot(createProject);
  project.open({ document, origin: 'test' });
  return project;
};
const sent = (project: ProjectState): Project =>
  JSON.parse(JSON.stringify(project.plain())) as Project;
const isRead = (project: ProjectState): boolean => readProject(sent(project)).ok;

describe('the fields', () => {
  const [isotropic, orthotropic] = adherendSchema.options;
  // Those through the thickness stand in a disclosure of their own.
  const apart = ['throughModulus', 'throughExpansion', 'interlaminarTension', 'interlaminarShear'];
  const state = adhesiveSchema.shape.states.element.shape;

  it.each<[string, Shape, Fields]>([
    ['metal', isotropic.shape, adherendFields('isotropic', false)],
    ['ply', plySchema.shape, plyFields],
  ])('are every number of a %s', (_what, shape, fields) => {
    expect(keysOf(fields)).toEqual(numbersIn(shape));
    expect(optionalOf(fields)).toEqual(optionalIn(shape));
  });

  it.each([true, false])('are every number of a wall of given stiffness', (flat) => {
    const fields = adherendFields('orthotropic', flat);
    const isHere = (key: string): boolean => !apart.includes(key);
    expect(keysOf(fields)).toEqual(numbersIn(orthotropic.shape).filter(isHere));
    expect(optionalOf(fields)).toEqual(optionalIn(orthotropic.shape).filter(isHere));
  });

  it('are every number of a state of an adhesive', () => {
    expect([...keysOf(stateFields), 'temperature'].toSorted()).toEqual(numbersIn(state));
    expect(optionalOf(stateFields)).toEqual(optionalIn(state));
  });

  it('are every number of a load case of any kind', () => {
    const all = loadCaseSchema.options.flatMap(({ shape }) => numbersIn(shape));
    expect(Object.keys(caseLabels).toSorted()).toEqual([...new Set(all)].toSorted());
  });
});

describe('a new state of an adhesive', () => {
  const at = (temperature: number, moisture: 'dry' | 'wet'): AdhesiveState => ({
    temperature,
    moisture,
    modulus: 2000,
    shearModulus: 700,
    shearYield: 30,
    plasticStrain: 0.5,
  });
  it.each([
    ['a step warmer than the last', [at(20, 'dry'), at(60, 'wet')], 70],
    ['past what is taken', [at(70, 'wet'), at(60, 'wet')], 50],
    ['not beside what is of the other moisture', [at(70, 'dry'), at(60, 'wet')], 70],
    ['inside the range', [at(395, 'dry')], 385],
  ])('is %s', (_what, states, temperature) => {
    expect(nextState(states)).toEqual({ ...states.at(-1)!, temperature });
  });
});

describe('a name of its own', () => {
  it('is the first that is free', () => {
    const others = [
      { id: 'paste', name: 'Paste' },
      { id: 'paste-2', name: 'Paste (2)' },
    ];
    expect(unlike(others, others[0]!)).toEqual({ id: 'paste-3', name: 'Paste (3)' });
    expect(asCopy(others, others[0]!)).toEqual({ id: 'paste-copy', name: 'Paste (copy)' });
  });

  it('fits into the file, however long the first', () => {
    let all = [{ id: 'a'.repeat(64), name: 'b'.repeat(120) }];
    for (let n = 0; n < 12; n++) all = [...all, asCopy(all, all[0]!)];
    expect(new Set(all.map(({ id }) => id)).size).toBe(13);
    expect(new Set(all.map(({ name }) => name)).size).toBe(13);
    expect(Math.max(...all.map(({ id }) => id.length))).toBe(64);
    expect(Math.max(...all.map(({ name }) => name.length))).toBe(120);
    expect(all[1]!.name.endsWith(' (copy)')).toBe(true);
  });

  it('is listed as far as one reads', () => {
    expect(listed([])).toBe('');
    expect(listed(['a'])).toBe('a');
    expect(listed(['a', 'b'])).toBe('a and b');
    expect(listed(['a', 'b', 'c', 'd', 'e'])).toBe('a, b, c, d and e');
    expect(listed(['a', 'b', 'c', 'd', 'e', 'f', 'g'])).toBe('a, b, c, d and three more');
  });
});

describe('a load case', () => {
  /** Gust acts on three joints, on a frame size of one of them, and on a variant. */
  const inUse = (): Project => {
    const project = makeProject();
    const { offset: _offset, ...root } = structuredClone(double);
    project.variants = [{ of: 'root', joint: { ...root, offset: 0, id: 'other', name: 'Other' } }];
    const load = { moment: 0, torque: 0, shear: 0 };
    const tip = project.joints[0]!;
    Object.assign(tip, {
      sizes: [
        { id: 'small', name: 'Small' },
        {
          id: 'large',
          name: 'Large',
          loads: [
            { case: 'gust', force: 1, ...load },
            { case: 'rotor', force: 2, ...load },
          ],
        },
      ],
    });
    return project;
  };

  it('is counted where it acts, and removed from there', () => {
    const project = open(inUse());
    expect(isRead(project)).toBe(true);
    expect(countedUses(usesOfCase(project.document()!, 'gust'))).toBe(
      'three joints and one variant',
    );
    // On a frame size alone.
    expect(usesOfCase(project.document()!, 'rotor').joints).toEqual(['Boom tip']);
    removeLoadCase(project, 'gust');
    const now = sent(project);
    expect(isRead(project)).toBe(true);
    expect(now.loadCases.map(({ id }) => id)).toEqual(['landing', 'rotor']);
    expect(now.joints.map(({ loads }) => loads.map((load) => load.case))).toEqual([
      ['landing'],
      [],
      [],
    ]);
    expect(now.joints[0]?.sizes?.map(({ loads }) => loads?.map((load) => load.case))).toEqual([
      undefined,
      ['rotor'],
    ]);
    expect(now.variants?.[0]?.joint.loads).toEqual([]);
  });

  it('is added under an id and a name of its own', () => {
    const project = open(makeProject());
    expect(addLoadCase(project)).toBe('case-4');
    removeLoadCase(project, 'gust');
    expect(addLoadCase(project)).toBe('case-4-2');
    expect(sent(project).loadCases.map(({ name }) => name)).toEqual([
      'Hard landing',
      'Rotor',
      'Load case 4',
      'Load case 4 (2)',
    ]);
    expect(isRead(project)).toBe(true);
  });

  it('keeps what it can when its kind changes, and has its cycles again when it comes back', () => {
    const project = open(makeProject());
    project.edit(['loadCases', 2, 'ratio'], -1);
    project.edit(['loadCases', 2, 'everyCondition'], true);
    changeKind(project, 2, 'limit');
    expect(sent(project).loadCases[2]).toEqual({
      id: 'rotor',
      name: 'Rotor',
      kind: 'limit',
      temperature: 20,
      moisture: 'dry',
      everyCondition: true,
    });
    changeKind(project, 2, 'ultimate');
    changeKind(project, 2, 'cyclic');
    expect(sent(project).loadCases[2]).toMatchObject({ kind: 'cyclic', cycles: 1e7, ratio: -1 });
    // Of one that never was cyclic nothing is known.
    changeKind(project, 0, 'cyclic');
    expect(sent(project).loadCases[0]).toEqual({
      id: 'gust',
      name: 'Gust',
      kind: 'cyclic',
      cycles: 1e6,
      temperature: 20,
      moisture: 'dry',
    });
    expect(isRead(project)).toBe(true);
    // Nor of the case of another project with the same id.
    changeKind(project, 2, 'limit');
    project.open({ document: makeProject(), origin: 'again' });
    project.edit(['loadCases', 2], { ...makeProject().loadCases[0], id: 'rotor' });
    changeKind(project, 2, 'cyclic');
    expect(sent(project).loadCases[2]).toMatchObject({ cycles: 1e6 });
  });
});

describe('a material', () => {
  it('is copied for the one part, without the allowables that coupons gave the first', () => {
    const document = makeProject();
    document.adhesives[0]!.allowables = [
      {
        set: 'laps',
        setName: 'Laps',
        temperature: 20,
        moisture: 'dry',
        gap: 0.2,
        basis: 'B',
        coupons: 18,
        batches: 3,
        method: 'normal',
        value: 30,
        mean: 34,
        ratio: 1.02,
        factor: 0.9,
        taken: '2026-01-31T08:30:00Z',
      },
    ];
    const project = open(document);
    const told: string[] = [];
    copyMaterial(project, 'adhesives', 0, ['joints', 1, 'adhesive'], (id) => told.push(id));
    copyMaterial(project, 'adherends', 1, ['joints', 1, 'spigot', 'adherend'], () => {});
    const now = sent(project);
    expect(isRead(project)).toBe(true);
    expect(told).toEqual(['paste-copy']);
    expect(now.adhesives[1]).toMatchObject({ id: 'paste-copy', name: 'Toughened paste (copy)' });
    expect(now.adhesives[1]?.states).toEqual(now.adhesives[0]?.states);
    expect(now.adhesives[0]).toHaveProperty('allowables');
    expect(now.adhesives[1]).not.toHaveProperty('allowables');
    expect(now.joints.map(({ adhesive }) => adhesive)).toEqual(['paste', 'paste-copy', 'paste']);
    expect(now.joints[1]).toMatchObject({
      spigot: { adherend: 'titanium-copy' },
      socket: { adherend: 'titanium' },
    });
    // What is changed of the copy stays in the copy.
    project.edit(['adhesives', 1, 'states', 0, 'shearYield'], 12);
    expect(sent(project).adhesives[0]?.states[0]?.shearYield).toBe(38);
  });

  it('goes only where no joint, variant or coupon is made of it', () => {
    const document = makeProject();
    const paste = document.adhesives[0]!;
    const titanium = document.adherends[1]!;
    document.adhesives.push(
      { ...structuredClone(paste), id: 'set' },
      { ...structuredClone(paste), id: 'life' },
      { ...structuredClone(paste), id: 'variant' },
      { ...structuredClone(paste), id: 'none' },
    );
    document.adherends.push(
      { ...structuredClone(titanium), id: 'piece' },
      { ...structuredClone(titanium), id: 'none' },
    );
    document.variants = [
      { of: 'root', joint: { ...structuredClone(double), id: 'other', adhesive: 'variant' } },
    ];
    // Only what is looked at here.
    document.coupons = {
      specimens: [{ name: 'Lap', shape: { strip: { adherend: 'piece' } } }],
      sets: [{ name: 'Laps', adhesive: 'set' }],
      life: [{ name: 'Cycles', adhesive: 'life' }],
    } as unknown as NonNullable<Project['coupons']>;
    const project = open(document);
    const now = (): Project => project.document()!;
    expect(usesOfAdhesive(now(), 'set').coupons).toEqual(['Laps']);
    expect(usesOfAdhesive(now(), 'life').coupons).toEqual(['Cycles']);
    expect(usesOfAdherend(now(), 'piece').coupons).toEqual(['Lap']);
    expect(isUsed(usesOfAdherend(now(), 'titanium'))).toBe(true);
    expect(unusedOf(now(), 'adhesives').map(({ id }) => id)).toEqual(['none']);
    expect(unusedOf(now(), 'adherends').map(({ id }) => id)).toEqual(['none']);
    for (const id of ['set', 'life', 'variant', 'paste', 'none']) {
      removeUnused(project, 'adhesives', id);
    }
    for (const id of ['piece', 'titanium', 'carbon', 'none']) {
      removeUnused(project, 'adherends', id);
    }
    expect(sent(project).adhesives.map(({ id }) => id)).toEqual([
      'paste',
      'set',
      'life',
      'variant',
    ]);
    expect(sent(project).adherends.map(({ id }) => id)).toEqual(['carbon', 'titanium', 'piece']);
  });
});
