/** Load cases into the project, changed in kind, and out of it with their loads. */
import { batch } from 'solid-js';
import type { Joint, LoadCase, Project } from '../../shared/project.ts';
import { unlike } from './free-names.ts';
import type { Path, ProjectState } from './project.ts';

export const MOST_CASES = 200;

type Kind = LoadCase['kind'];
type Cyclic = Extract<LoadCase, { kind: 'cyclic' }>;
type Life = Pick<Cyclic, 'cycles' | 'ratio'>;

/** Of a cyclic case that nobody said more of yet. */
const USUAL_CYCLES = 1e6;

/** What a case had as a cyclic one, for when it becomes one again. */
const lives = new WeakMap<ProjectState, Map<string, Life>>();

/** @returns its id; null when there is no place for it */
export function addLoadCase(project: ProjectState): string | null {
  const all = project.document()?.loadCases;
  if (!all || all.length >= MOST_CASES) return null;
  const n = all.length + 1;
  const added = unlike(all, { id: `case-${n}`, name: `Load case ${n}` });
  const loadCase: LoadCase = { ...added, kind: 'limit', temperature: 20, moisture: 'dry' };
  project.edit(['loadCases', all.length], loadCase);
  return added.id;
}

/** A case that is no longer cyclic loses its cycles and their ratio; coming back it has them again. */
export function changeKind(project: ProjectState, k: number, kind: Kind): void {
  const loadCase = project.document()?.loadCases[k];
  if (!loadCase || loadCase.kind === kind) return;
  const { id, name, temperature, moisture, everyCondition } = loadCase;
  const known = lives.get(project) ?? new Map<string, Life>();
  lives.set(project, known);
  const key = `${project.opening()} ${id}`;
  if (loadCase.kind === 'cyclic') {
    const { cycles, ratio } = loadCase;
    known.set(key, ratio === undefined ? { cycles } : { cycles, ratio });
  }
  const kept = {
    id,
    name,
    temperature,
    moisture,
    ...(everyCondition === undefined ? {} : { everyCondition }),
  };
  const next: LoadCase =
    kind === 'cyclic'
      ? { ...kept, kind, ...(known.get(key) ?? { cycles: USUAL_CYCLES }) }
      : { ...kept, kind };
  project.edit(['loadCases', k], next);
}

type Loads = readonly { readonly case: string }[];

/** Lists of loads that hold the case, with where they stand. */
function loadsOf(
  joint: Joint,
  at: Path,
  id: string,
): { readonly path: Path; readonly list: Loads }[] {
  const lists: { path: Path; list: Loads }[] = [{ path: [...at, 'loads'], list: joint.loads }];
  for (const [i, { loads }] of (joint.sizes ?? []).entries()) {
    if (loads) lists.push({ path: [...at, 'sizes', i, 'loads'], list: loads });
  }
  return lists.filter(({ list }) => list.some((load) => load.case === id));
}

const everyLoadsOf = (project: Project, id: string) => [
  ...project.joints.flatMap((joint, i) => loadsOf(joint, ['joints', i], id)),
  ...(project.variants ?? []).flatMap(({ joint }, i) =>
    loadsOf(joint, ['variants', i, 'joint'], id),
  ),
];

/** The case and every load that acts in it. */
export function removeLoadCase(project: ProjectState, id: string): void {
  const document = project.document();
  if (!document) return;
  batch(() => {
    for (const { path, list } of everyLoadsOf(document, id)) {
      project.edit(
        path,
        list.filter((load) => load.case !== id),
      );
    }
    project.edit(
      ['loadCases'],
      document.loadCases.filter((one) => one.id !== id),
    );
  });
}
