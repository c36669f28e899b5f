/** From the ids of the project file to the plain numbers that the model takes. */
import type {
  AdhesiveInput,
  CaseInput,
  JointInput,
  Material,
  WallInput,
} from '../../model/joint/types.ts';
import { laminateMaterial } from '../../model/laminate/material.ts';
import type {
  Adherend,
  Adhesive,
  Allowable,
  Condition,
  Joint,
  LoadCase,
  Project,
  Source,
  Wall,
} from '../../shared/project.ts';
import { adherendReferences } from '../../shared/project-rules.ts';
import { readStack } from '../../shared/stack-notation.ts';
import { surroundingsOf } from '../../shared/surroundings.ts';

/** A load case in one of the surroundings that it is judged in. */
export interface ResolvedCase {
  readonly loadCase: LoadCase;
  /** Null for the case's own surroundings. */
  readonly condition: Condition | null;
  readonly input: CaseInput;
}

export interface ResolvedAdhesive {
  readonly adhesive: AdhesiveInput;
  /** What own coupons allow, in the order of the adhesive's `tested`. */
  readonly allowables: readonly Allowable[];
  /** What the adhesive's own rows rest on. */
  readonly source: Source;
  /** What else of it margins hang on, where it is given. */
  readonly sources: { readonly fatigue: Source | undefined; readonly fracture: Source | undefined };
}

export interface ResolvedJoint extends ResolvedAdhesive {
  readonly index: number;
  readonly joint: Joint;
  readonly input: JointInput;
  /** Each load case in its own surroundings, then in those of the project that it is judged in too. */
  readonly cases: readonly ResolvedCase[];
  /** Parts and `adhesive` whose properties are typical or from memory. */
  readonly typical: ReadonlySet<string>;
}

const isTypical = (item: Adherend | Adhesive): boolean =>
  item.source.kind === 'typical' || item.source.kind === 'memory';

/** Names that the model gives to the walls, in the order of `adherendReferences`. */
const partNames: Readonly<Record<Joint['type'], readonly string[]>> = {
  'sleeve-single': ['tube', 'sleeve'],
  'sleeve-double': ['tube', 'spigot', 'socket'],
  'flat-single': ['strip', 'plate'],
  'flat-double': ['strip', 'lower strap', 'upper strap'],
};

/** The project must have passed `readProject`: every reference exists. */
export function resolveJoint(project: Project, index: number): ResolvedJoint {
  const joint = project.joints[index]!;
  const adherend = (id: string): Adherend => project.adherends.find((a) => a.id === id)!;
  const material: MaterialOf = (id, thickness) => materialOf(project, adherend(id), thickness);
  const wall = ({ adherend: id, atRoot, atMouth }: Wall): WallInput => ({
    material: material(id, (atRoot + atMouth) / 2),
    atRoot,
    atMouth,
  });
  const adhesive = project.adhesives.find(({ id }) => id === joint.adhesive)!;
  const typical = new Set<string>();
  adherendReferences(joint).forEach(([, id], i) => {
    if (isTypical(adherend(id))) typical.add(partNames[joint.type][i]!);
  });
  if (isTypical(adhesive)) typical.add('adhesive');

  const cases = joint.loads.flatMap((load): ResolvedCase[] => {
    const loadCase = project.loadCases.find(({ id }) => id === load.case)!;
    const { force } = load;
    const { moment, torque, shear } = 'moment' in load ? load : { moment: 0, torque: 0, shear: 0 };
    const loads = { force, moment, torque, shear };
    return surroundingsOf(project, loadCase).map((condition) => {
      const { temperature, moisture } = condition ?? loadCase;
      const input = { loads, kind: loadCase.kind, temperature, moisture };
      return {
        loadCase,
        condition,
        input: loadCase.kind === 'cyclic' ? { ...input, ...cyclesOf(loadCase) } : input,
      };
    });
  });
  return {
    index,
    joint,
    input: jointInput(joint, material, wall),
    ...resolveAdhesive(adhesive),
    cases,
    typical,
  };
}

/** In whatever surroundings it is judged, a cyclic case is the same cycles. */
const cyclesOf = ({ id, cycles, ratio }: Extract<LoadCase, { kind: 'cyclic' }>) => ({
  cycles,
  occasion: id,
  ...(ratio === undefined ? {} : { ratio }),
});

export const resolveAdhesive = (adhesive: Adhesive): ResolvedAdhesive => ({
  adhesive: withAllowables(adhesive),
  allowables: adhesive.allowables ?? [],
  source: adhesive.source,
  sources: { fatigue: adhesive.fatigue?.source, fracture: adhesive.fracture?.source },
});

const untouched = { environment: 1, ageing: 1, scatter: 1, gap: [] } as const;

function withAllowables(adhesive: Adhesive): AdhesiveInput {
  const { allowables = [], knockdowns } = adhesive;
  if (allowables.length === 0) return adhesive;
  const general = knockdowns ?? untouched;
  const tested = allowables.map(({ temperature, moisture, gap, factor, basis }) => ({
    temperature,
    moisture,
    gap,
    // A mean says where the middle is; how far single joints lie below it is still the general knockdown's.
    factor: basis === 'mean' ? factor * general.scatter : factor,
  }));
  return { ...adhesive, knockdowns: { ...general, tested } };
}

type MaterialOf = (id: string, thickness: number) => Material;

/** A laminate's properties follow from its plies, scaled to the wall they make. */
export function materialOf(project: Project, adherend: Adherend, thickness: number): Material {
  if (adherend.kind !== 'laminate') return adherend;
  const ply = project.plies!.find(({ id }) => id === adherend.ply)!;
  const stack = readStack(adherend.stack);
  if (!stack.ok) throw new RangeError(stack.message);
  return { kind: 'laminate', ...laminateMaterial(ply, stack.angles, thickness) };
}

function jointInput(
  joint: Joint,
  material: MaterialOf,
  wall: (wall: Wall) => WallInput,
): JointInput {
  const { overlap } = joint;
  switch (joint.type) {
    case 'sleeve-single': {
      const { type, side, tube, sleeve, bond, offset } = joint;
      const tubeInput = { ...tube, material: material(tube.adherend, tube.wall) };
      return { type, side, overlap, tube: tubeInput, sleeve: wall(sleeve), bond, offset };
    }
    case 'sleeve-double': {
      const { type, tube, spigot, socket, innerBond, outerBond, offset } = joint;
      return {
        type,
        overlap,
        tube: { ...tube, material: material(tube.adherend, tube.wall) },
        spigot: wall(spigot),
        socket: wall(socket),
        innerBond,
        outerBond,
        offset,
      };
    }
    case 'flat-single': {
      const { type, width, strip, plate, bond } = joint;
      const stripInput = { ...strip, material: material(strip.adherend, strip.thickness) };
      return { type, overlap, width, strip: stripInput, plate: wall(plate), bond };
    }
    case 'flat-double': {
      const { type, width, strip, lowerStrap, upperStrap, lowerBond, upperBond } = joint;
      return {
        type,
        overlap,
        width,
        strip: { ...strip, material: material(strip.adherend, strip.thickness) },
        lowerStrap: wall(lowerStrap),
        upperStrap: wall(upperStrap),
        lowerBond,
        upperBond,
      };
    }
  }
}

/**
 * A joint that need not stand in the project, resolved as if it did.
 * @param index the place in the project that refusals about it name
 */
export const resolveAlone = (project: Project, joint: Joint, index = 0): ResolvedJoint => ({
  ...resolveJoint({ ...project, joints: [joint] }, 0),
  index,
});
