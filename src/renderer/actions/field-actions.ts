/** Jumps to a field of the joint that is looked at, and to settings of the project that have one. */
import { groupsOf, loadInputs, type Row } from '../size/form-model.ts';
import type { Action, Reach } from './action.ts';
import { type Place, reveal } from './reveal.ts';

/** What the field of a row is called when it is read out; null where a row has no single one. */
function nameOf(row: Row): string | null {
  if (row.kind === 'toleranced') return row.nominal.name;
  return 'name' in row ? row.name : null;
}

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
    ...(name === 'Overlap' ? { likely: true as const } : {}),
  });
  const caseName = (id: string): string =>
    project.document()?.loadCases.find((one) => one.id === id)?.name ?? id;
  const names = [
    ...groupsOf(now.type, index()).flatMap(({ rows }) => rows.map(nameOf)),
    ...now.loads.flatMap((load, k) =>
      loadInputs(now.type, index(), k, caseName(load.case)).map(nameOf),
    ),
  ];
  const jumps: Jump[] = [
    ...names.flatMap((name) => (name === null ? [] : [inForm(name)])),
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
  return jumps.map(({ id, title, place, also, about, likely, before }) => ({
    id,
    title: () => title,
    group: 'setting',
    also: `go to field setting ${also ?? ''}`,
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
