/** Jumps to a field of the joint that is looked at, and to settings of the project that have one. */
import { groupsOf, loadInputs, type Row } from '../size/form-model.ts';
import type { Action, Reach } from './action.ts';
import { type Place, reveal } from './reveal.ts';

/** What the fields of a row are called when they are read out. */
function namesOf(row: Row): string[] {
  if (row.kind === 'toleranced') return [row.nominal.name, row.tolerance.name];
  return 'name' in row ? [row.name] : [];
}

/** Materials are found by what is set in them too, behind their button. */
const also = (name: string): { readonly also?: string } =>
  name.endsWith(' material')
    ? { also: 'adherend metal laminate plies stack modulus Poisson ratio yield expansion density' }
    : {};

/** The adhesive's folds, each found by what is set in it. */
const adhesiveFolds = [
  {
    inside: 'Stiffness and strength',
    also: 'state shear modulus yield plastic strain peel temperature dry wet moisture',
  },
  { inside: 'Thermal and fracture', also: 'stress-free expansion density energy toughness' },
  { inside: 'Cycles', also: 'S-N line fatigue life endurance' },
  { inside: 'Mix and cure', also: 'resin hardener pot life time hours temperature' },
  { inside: 'Knockdowns', also: 'environment ageing scatter gap strength factors' },
] as const;

interface Jump {
  readonly id: string;
  readonly title: string;
  readonly place: Place;
  readonly also?: string;
  readonly about?: string;
  readonly likely?: true;
  readonly before?: () => void;
}

export function fieldActions({ joint, index, project, sizing, openJoint }: Reach): Action[] {
  const now = joint();
  if (!now) return [];
  const inForm = (name: string): Jump => ({
    id: `field ${name}`,
    title: name,
    place: { name, within: '.inputs' },
    ...also(name),
    ...(name === 'Overlap' ? { likely: true as const } : {}),
  });
  const caseName = (id: string): string =>
    project.document()?.loadCases.find((one) => one.id === id)?.name ?? id;
  const names = [
    ...groupsOf(now.type, index()).flatMap(({ rows }) => rows.flatMap(namesOf)),
    ...now.loads.flatMap((load, k) =>
      loadInputs(now.type, index(), k, caseName(load.case)).flatMap(namesOf),
    ),
  ];
  const jumps: Jump[] = [
    ...names.map(inForm),
    ...adhesiveFolds.map(
      ({ inside, also: words }): Jump => ({
        id: `fold ${inside}`,
        title: `Adhesive: ${inside[0]!.toLowerCase()}${inside.slice(1)}`,
        also: words,
        place: { within: '.inputs', inside },
      }),
    ),
    {
      id: 'field Fitting factor',
      title: 'Fitting factor',
      also: 'knockdowns settings factors',
      about: 'of the project',
      likely: true,
      place: { name: 'Fitting factor', within: '.inputs', inside: 'Knockdowns' },
    },
    {
      id: 'field Target',
      title: 'Target margin to find a size for',
      also: 'settings',
      about: 'in Find',
      place: { name: 'Target', within: '.is-view' },
      before: () => sizing.setView('find'),
    },
  ];
  return jumps.map(({ id, title, place, also: words, about, likely, before }) => ({
    id,
    title: () => title,
    group: 'setting',
    also: `go to field setting ${words ?? ''}`,
    about: about ?? `of ${now.name}`,
    ...(likely ? { likely: ['size'] as const } : {}),
    available: () => true,
    run: () => {
      before?.();
      openJoint(now.id);
      reveal(place);
    },
  }));
}
