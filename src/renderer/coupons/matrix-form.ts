/** What is chosen for a test matrix (a store writes into it), and the matrix that it makes. */
import { createStore } from 'solid-js/store';
import {
  type Environment,
  type Matrix,
  type PieceChoice,
  sleeveJoints,
  usualEnvironments,
  usualGaps,
} from '../../shared/coupon-plan.ts';
import type { Moisture, Project } from '../../shared/project.ts';
import { standardSpecimens } from '../../shared/standard-specimens.ts';
import { boxValue, countValue } from './NumberBox.tsx';

export interface EnvironmentRow {
  name: string;
  on: boolean;
  temperature: string;
  moisture: Moisture;
}
export interface GapRow {
  name: 'min' | 'nominal' | 'max';
  on: boolean;
  gap: string;
}

export interface MatrixChoice {
  adhesive: string;
  adherend: string;
  standards: string[];
  joints: string[];
  own: string[];
  environments: EnvironmentRow[];
  gaps: GapRow[];
  batches: string;
  each: string;
}

const gapRows = (project: Project, adhesive: string): GapRow[] => {
  const [min, nominal, max] = usualGaps(project, adhesive);
  return [
    { name: 'min', on: false, gap: String(min) },
    { name: 'nominal', on: true, gap: String(nominal) },
    { name: 'max', on: false, gap: String(max) },
  ];
};

/** Three batches of six are the smallest of the usual classes of data, B18. */
export function firstChoice(project: Project): MatrixChoice {
  const [joint] = sleeveJoints(project);
  const adhesive = joint?.adhesive ?? project.adhesives[0]?.id ?? '';
  const metal = project.adherends.find(({ kind }) => kind === 'isotropic');
  return {
    adhesive,
    adherend: (metal ?? project.adherends[0])?.id ?? '',
    standards: [],
    joints: [],
    own: [],
    environments: usualEnvironments(project).map(({ name, temperature, moisture }) => ({
      name,
      on: name === 'room',
      temperature: String(temperature),
      moisture,
    })),
    gaps: gapRows(project, adhesive),
    batches: '3',
    each: '6',
  };
}

export function createMatrixChoice(project: Project) {
  const [choice, set] = createStore<MatrixChoice>(firstChoice(project));
  return {
    choice,
    set,
    /** Another adhesive: the gaps of its joints. */
    adhesive(id: string, now: Project): void {
      set({ adhesive: id, gaps: gapRows(now, id) });
    },
    tick(list: 'standards' | 'joints' | 'own', id: string, on: boolean): void {
      set(list, (old) => (on ? [...old, id] : old.filter((one) => one !== id)));
    },
  };
}

const unique = <T>(list: readonly T[]): T[] => {
  const seen = new Set<string>();
  return list.filter((one) => {
    const text = JSON.stringify(one);
    return seen.has(text) ? false : seen.add(text);
  });
};

/** The matrix; or what is still to be chosen, as a sentence. */
export function matrixOf(choice: MatrixChoice): Matrix | string {
  const pieces: PieceChoice[] = [
    ...standardSpecimens
      .filter(({ id }) => choice.standards.includes(id))
      .map(({ id }) => ({ kind: 'standard', id, adherend: choice.adherend }) as const),
    ...choice.joints.map((joint) => ({ kind: 'sleeve', joint }) as const),
    ...choice.own.map((id) => ({ kind: 'own', id }) as const),
  ];
  const ticked = choice.environments.filter(({ on }) => on);
  const environments = ticked.flatMap(({ temperature, moisture }): Environment[] => {
    const value = boxValue(temperature, 'temperature');
    return value === undefined ? [] : [{ temperature: value, moisture }];
  });
  const gapsOn = choice.gaps.filter(({ on }) => on);
  const gaps = gapsOn.flatMap(({ gap }) => boxValue(gap, 'gap') ?? []);
  const batches = countValue(choice.batches, 'batchCount');
  const each = countValue(choice.each, 'couponCount');
  if (pieces.length === 0) return 'Choose a specimen.';
  if (ticked.length === 0) return 'Choose an environment.';
  if (gapsOn.length === 0) return 'Choose a gap.';
  const isWhole = environments.length === ticked.length && gaps.length === gapsOn.length;
  if (!isWhole || batches === undefined || each === undefined) return 'Mend what is marked.';
  return {
    adhesive: choice.adhesive,
    pieces,
    environments: unique(environments),
    gaps: unique(gaps),
    planned: { batches, each },
  };
}
