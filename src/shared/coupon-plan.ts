/** The test matrix: from specimens, environments, gaps and numbers to the sets of a project. */
import { ratioText } from './life-words.ts';
import type { Joint, Moisture, Project } from './project.ts';
import type { CouponSet, Coupons, LifeSet, Specimen } from './project-coupons.ts';
import { inSi } from './shown-units.ts';
import { sleeveSpecimen, standardSpecimen, standardSpecimens } from './standard-specimens.ts';
import { toDisplay } from './units.ts';
import { environment } from './words.ts';

export interface Environment {
  readonly temperature: number;
  readonly moisture: Moisture;
}

/** A test piece that may or may not be in the project yet. */
export type PieceChoice =
  | { readonly kind: 'standard'; readonly id: string; readonly adherend: string }
  | { readonly kind: 'sleeve'; readonly joint: string }
  | { readonly kind: 'own'; readonly id: string };

export interface Matrix {
  readonly adhesive: string;
  readonly pieces: readonly PieceChoice[];
  readonly environments: readonly Environment[];
  readonly gaps: readonly number[];
  readonly planned: { readonly batches: number; readonly each: number };
}

export interface PlannedSets {
  /** The specimens and sets of the project with the new ones behind them. */
  readonly coupons: Coupons;
  readonly added: readonly CouponSet[];
  /** Cells of the matrix that the project has already. */
  readonly already: number;
}

const MOST_SETS = 400;
const noCoupons: Coupons = { specimens: [], sets: [] };
const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

/** An id of this beginning that is not taken. */
export function freeId(wish: string, taken: readonly string[]): string {
  const plain =
    wish
      .toLowerCase()
      .normalize('NFKD')
      .replace(/[^a-z0-9]+/g, '-')
      .replace(/^-+|-+$/g, '')
      .slice(0, 56)
      .replace(/-+$/, '') || 'set';
  for (let n = 1; ; n++) {
    const id = n === 1 ? plain : `${plain}-${n}`;
    if (!taken.includes(id)) return id;
  }
}

const ofSleeve = ({ type }: Joint): boolean => type === 'sleeve-single' || type === 'sleeve-double';
/** Joints of which a piece of tube in its sleeve can be made. */
export const sleeveJoints = ({ joints }: Project): readonly Joint[] => joints.filter(ofSleeve);

/** The specimen as the catalog or the joint has it; null where there is none such. */
function specimenOf(project: Project, choice: PieceChoice): Specimen | null {
  if (choice.kind === 'own') {
    return project.coupons?.specimens.find(({ id }) => id === choice.id) ?? null;
  }
  if (choice.kind === 'sleeve') {
    const joint = sleeveJoints(project).find(({ id }) => id === choice.joint);
    return joint ? sleeveSpecimen(joint, `tube-${joint.id}`) : null;
  }
  const standard = standardSpecimens.find(({ id }) => id === choice.id);
  const known = project.adherends.some(({ id }) => id === choice.adherend);
  return standard && known ? standardSpecimen(standard, choice.adherend) : null;
}

/** `, of Carbon strip` where a specimen of the same name is there in another material or size. */
function told(specimen: Specimen, project: Project, others: readonly Specimen[]): Specimen {
  const strip = 'strip' in specimen.shape ? specimen.shape.strip.adherend : null;
  const material = project.adherends.find(({ id }) => id === strip)?.name;
  const taken = others.map(({ id }) => id);
  const id = freeId(specimen.id, taken);
  const isNameTaken = others.some(({ name }) => name === specimen.name);
  const name =
    isNameTaken && material ? `${specimen.name}, of ${material}`.slice(0, 120) : specimen.name;
  return { ...specimen, id, name };
}

const LETTERS = 120;

/** `Lap shear, thin metal, 23 °C dry, gap 0.2`; under cycles with their ratio. */
export function couponSetName(
  specimen: Pick<Specimen, 'name'>,
  { temperature, moisture }: Environment,
  gap: number,
  ratio?: number,
): string {
  const cyclic = ratio === undefined ? '' : `, R ${ratioText(ratio)}`;
  const tail = `, ${inSi(() => environment(temperature, moisture))}, gap ${gap}${cyclic}`;
  return `${specimen.name.slice(0, LETTERS - tail.length)}${tail}`;
}

/** One set; its id is unlike any other of the project. */
export function makeCouponSet(
  sets: readonly CouponSet[],
  specimen: Specimen,
  set: Pick<CouponSet, 'adhesive' | 'temperature' | 'moisture' | 'gap' | 'planned'>,
): CouponSet {
  const { adhesive, temperature, moisture, gap, planned } = set;
  const sign = temperature < 0 ? 'm' : '';
  const wish = `${specimen.id} ${sign}${Math.abs(temperature)}${moisture} ${inSi(() => toDisplay('gap', gap))}`;
  return {
    id: freeId(
      wish,
      sets.map(({ id }) => id),
    ),
    name: couponSetName(specimen, { temperature, moisture }, gap),
    specimen: specimen.id,
    adhesive,
    temperature,
    moisture,
    gap,
    ...(planned ? { planned: { ...planned } } : {}),
    results: [],
  };
}

/** Most sets of lives of a project. */
export const MOST_LIVES = 100;

/** One set of coupons under cycles; its id is unlike any other of the project. */
export function makeLifeSet(
  sets: readonly LifeSet[],
  specimen: Pick<Specimen, 'id' | 'name'>,
  {
    adhesive,
    temperature,
    moisture,
    gap,
    ratio,
  }: Omit<LifeSet, 'id' | 'name' | 'specimen' | 'results'>,
): LifeSet {
  const plain = (value: number): string => `${value < 0 ? 'm' : ''}${Math.abs(value)}`;
  const wish = `${specimen.id} life ${plain(temperature)}${moisture} r${plain(ratio)}`;
  return {
    id: freeId(
      wish,
      sets.map(({ id }) => id),
    ),
    name: couponSetName(specimen, { temperature, moisture }, gap, ratio),
    specimen: specimen.id,
    adhesive,
    temperature,
    moisture,
    gap,
    ratio,
    results: [],
  };
}

const cellOf = ({ specimen, adhesive, temperature, moisture, gap }: CouponSet): unknown => [
  specimen,
  adhesive,
  temperature,
  moisture,
  gap,
];

/** Every cell of the matrix as a set, but those that are there already. */
export function planCoupons(project: Project, matrix: Matrix): PlannedSets {
  const { specimens: oldSpecimens, sets: oldSets, ...rest } = project.coupons ?? noCoupons;
  const specimens = [...oldSpecimens];
  const sets = [...oldSets];
  let already = 0;
  for (const choice of matrix.pieces) {
    const wanted = specimenOf(project, choice);
    if (!wanted) continue;
    // One of the project is that one, even where another has the same sizes.
    let specimen = specimens.find((one) =>
      choice.kind === 'own'
        ? one.id === wanted.id
        : one.standard === wanted.standard && same(one.shape, wanted.shape),
    );
    if (!specimen) {
      specimen = told(wanted, project, specimens);
      specimens.push(specimen);
    }
    for (const env of matrix.environments) {
      for (const gap of matrix.gaps) {
        const { adhesive, planned } = matrix;
        const set = makeCouponSet(sets, specimen, { adhesive, ...env, gap, planned });
        if (sets.some((one) => same(cellOf(one), cellOf(set)))) already += 1;
        else if (sets.length < MOST_SETS) sets.push(set);
      }
    }
  }
  const added = sets.slice(oldSets.length);
  return { coupons: { ...rest, specimens, sets }, added, already };
}

export interface NamedEnvironment extends Environment {
  readonly name: 'room' | 'cold' | 'hot' | 'wet';
}

/** Room, and the coldest, hottest and wet surroundings in which the joints are judged. */
export function usualEnvironments({
  loadCases,
  conditions = [],
}: Project): readonly NamedEnvironment[] {
  const all: readonly Environment[] = [...loadCases, ...conditions];
  const temperatures = all.map(({ temperature }) => temperature);
  const wet = all.flatMap(({ temperature, moisture }) => (moisture === 'wet' ? [temperature] : []));
  const hottest = Math.max(...temperatures, 60);
  return [
    { name: 'room', temperature: 23, moisture: 'dry' },
    { name: 'cold', temperature: Math.min(...temperatures, 0), moisture: 'dry' },
    { name: 'hot', temperature: hottest, moisture: 'dry' },
    { name: 'wet', temperature: wet.length > 0 ? Math.max(...wet) : hottest, moisture: 'wet' },
  ];
}

const tidyGap = (gap: number): number => Number(Math.min(5, Math.max(0.01, gap)).toFixed(3));

/** Thinnest, nominal and thickest gap among the joints with this adhesive; 0.1, 0.2, 0.3 without any. */
export function usualGaps(
  { joints }: Project,
  adhesive: string,
): readonly [number, number, number] {
  const bonds = joints
    .filter((joint) => joint.adhesive === adhesive)
    .flatMap((joint) =>
      Object.values(joint).filter(
        (part): part is { gap: number; tolerance: number } =>
          typeof part === 'object' && part !== null && 'gap' in part && 'tolerance' in part,
      ),
    );
  const [first] = bonds;
  if (!first) return [0.1, 0.2, 0.3];
  return [
    tidyGap(Math.min(...bonds.map(({ gap, tolerance }) => gap - tolerance))),
    first.gap,
    tidyGap(Math.max(...bonds.map(({ gap, tolerance }) => gap + tolerance))),
  ];
}
