/**
 * Joints and projects that somebody begins with: sizes that fit into one another and can be worked out, of
 * the materials that the project has.
 */
import { type Lap, lapOf } from './convert-lap.ts';
import {
  type Adherend,
  type Joint,
  PROJECT_FORMAT,
  PROJECT_VERSION,
  type Project,
} from './project.ts';
import { adherendReferences } from './project-rules.ts';

export const UNTITLED = 'Untitled frame';

/** In the order in which they are offered. */
export const laps: readonly Lap[] = [
  'socket',
  'spigot',
  'sleeve-double',
  'flat-single',
  'flat-double',
];

/** What a new joint of each kind is, in a few words. */
export const newJointWords: Readonly<Record<Lap, string>> = {
  socket: 'Single lap: tube in a socket',
  spigot: 'Single lap: tube over a spigot',
  'sleeve-double': 'Double lap: tube between spigot and socket',
  'flat-single': 'Single lap: strip on a plate',
  'flat-double': 'Double lap: strip between two straps',
};

/** Materials that joints are made of. */
export type Materials = Pick<Project, 'adherends' | 'adhesives'> & Partial<Pick<Project, 'plies'>>;

/** Whether there is all that a joint is made of. */
export const canMakeJoint = ({ adherends, adhesives }: Materials): boolean =>
  adherends.length > 0 && adhesives.length > 0;

const isMetal = ({ kind }: Adherend): boolean => kind === 'isotropic';

/** A laminate has the thickness of its plies, a tube's properties any: each first where it fits. */
function composite(adherends: readonly Adherend[], kind: Adherend['kind']): string {
  const found =
    adherends.find((one) => one.kind === kind) ??
    adherends.find((one) => !isMetal(one)) ??
    adherends[0]!;
  return found.id;
}

/** What a joint of the project's own has already is taken rather than what stands first in its lists. */
function usual(project: Pick<Project, 'joints'> & Materials, lap: Lap): Joint | undefined {
  const flat = lap.startsWith('flat');
  return (
    project.joints.findLast((joint) => lapOf(joint) === lap) ??
    project.joints.findLast((joint) => joint.type.startsWith('flat') === flat)
  );
}

export interface Begun {
  readonly id: string;
  readonly name: string;
}

/** A joint with no load on it yet. Throws where the project has no material to make it of. */
export function newJoint(
  project: Pick<Project, 'joints'> & Materials,
  lap: Lap,
  { id, name }: Begun,
): Joint {
  const { adherends, adhesives } = project;
  if (!canMakeJoint(project)) throw new RangeError('a joint needs an adherend and an adhesive');
  const like = usual(project, lap);
  const [innerOf, outerOf] = like ? adherendReferences(like).map(([, material]) => material) : [];
  const adhesive = like?.adhesive ?? adhesives[0]!.id;
  const metal = outerOf ?? adherends.find(isMetal)?.id ?? adherends[0]!.id;
  const common = { id, name, adhesive };
  const bond = { gap: 0.2, tolerance: 0.05 };
  const wall = { adherend: metal, atRoot: 1.2, atMouth: 1.2 };
  const tube = {
    adherend: innerOf ?? composite(adherends, 'orthotropic'),
    outsideDiameter: 32,
    wall: 1.6,
  };
  const strip = { adherend: innerOf ?? composite(adherends, 'laminate'), thickness: 3 };
  switch (lap) {
    case 'socket':
    case 'spigot':
      return {
        ...common,
        type: 'sleeve-single',
        side: lap,
        overlap: 30,
        tube,
        sleeve: wall,
        bond,
        offset: 0.03,
        loads: [],
      };
    case 'sleeve-double':
      return {
        ...common,
        type: 'sleeve-double',
        overlap: 30,
        tube,
        spigot: { ...wall },
        socket: { ...wall },
        innerBond: { ...bond },
        outerBond: { ...bond },
        offset: 0.03,
        loads: [],
      };
    case 'flat-single':
      return {
        ...common,
        type: 'flat-single',
        overlap: 30,
        width: 25,
        strip,
        plate: wall,
        bond,
        loads: [],
      };
    case 'flat-double':
      return {
        ...common,
        type: 'flat-double',
        overlap: 30,
        width: 25,
        strip,
        lowerStrap: { ...wall },
        upperStrap: { ...wall },
        lowerBond: { ...bond },
        upperBond: { ...bond },
        loads: [],
      };
  }
}

/**
 * A project to begin with.
 * @param from whose materials, factors and instruments it takes: those of the demonstration are typical ones
 * @param lap of its first joint; none when null
 */
export function newProject(from: Project, name: string, lap: Lap | null): Project {
  const { settings, plies, adherends, adhesives, instruments } = from;
  const begun: Project = structuredClone({
    format: PROJECT_FORMAT,
    version: PROJECT_VERSION,
    name,
    settings,
    ...(plies ? { plies } : {}),
    adherends,
    // What coupons allow is of the project that they were tested for.
    adhesives: adhesives.map(({ allowables: _allowables, ...adhesive }) => adhesive),
    loadCases: [
      { id: 'case-1', name: 'Load case 1', kind: 'limit', temperature: 20, moisture: 'dry' },
    ],
    joints: [],
    ...(instruments ? { instruments } : {}),
  });
  return lap === null
    ? begun
    : { ...begun, joints: [newJoint(begun, lap, { id: 'joint-1', name: 'Joint 1' })] };
}
