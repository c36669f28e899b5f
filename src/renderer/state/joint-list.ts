/** Joints into the project, copied, and out of it with what is of them alone. */
import { batch } from 'solid-js';
import { unwrap } from 'solid-js/store';
import type { Lap } from '../../shared/convert-lap.ts';
import { canMakeJoint, type Materials, newJoint } from '../../shared/new-joint.ts';
import type { Joint, Project } from '../../shared/project.ts';
import { asCopy, unlike } from './free-names.ts';
import type { ProjectState } from './project.ts';

export const MOST_JOINTS = 2000;

interface Named {
  readonly id: string;
  readonly name: string;
}

/** Joints and variants share their ids; and no new joint comes into the records of one that is gone. */
const others = ({ joints, variants = [], gapChecks = [] }: Project): readonly Named[] => [
  ...joints,
  ...variants.map(({ joint }) => joint),
  ...gapChecks.map(({ joint }) => ({ id: joint, name: '' })),
];

/** Puts in what a joint cannot be made without, where the project has none. */
function putMaterials(project: ProjectState, document: Project, typical: Materials): Project {
  const lacks = {
    adherends: document.adherends.length === 0,
    adhesives: document.adhesives.length === 0,
    plies: document.adherends.length === 0 && !document.plies?.length,
  };
  const put = {
    ...(lacks.plies && typical.plies ? { plies: typical.plies } : {}),
    ...(lacks.adherends ? { adherends: typical.adherends } : {}),
    ...(lacks.adhesives ? { adhesives: typical.adhesives } : {}),
  };
  for (const [list, materials] of Object.entries(put)) {
    project.edit([list], structuredClone(materials));
  }
  return { ...document, ...put };
}

/**
 * @param typical materials for a project that has none
 * @returns its id; null when there is no place for it
 */
export function addJoint(project: ProjectState, lap: Lap, typical?: Materials): string | null {
  const document = project.plain();
  if (!document || document.joints.length >= MOST_JOINTS) return null;
  const { joints } = document;
  if (!canMakeJoint(document) && !(typical && canMakeJoint(typical))) return null;
  return batch(() => {
    const n = joints.length + 1;
    const begun = unlike(others(document), { id: `joint-${n}`, name: `Joint ${n}` });
    const whole =
      typical && !canMakeJoint(document) ? putMaterials(project, document, typical) : document;
    const made = structuredClone(newJoint(whole, lap, begun));
    project.edit(['joints', joints.length], made);
    return made.id;
  });
}

/** Behind the one that it is of. What is measured of a joint stays with it. */
export function copyJoint(project: ProjectState, id: string): string | null {
  const document = project.plain();
  const at = document?.joints.findIndex((joint) => joint.id === id) ?? -1;
  if (!document || at < 0 || document.joints.length >= MOST_JOINTS) return null;
  const plain = JSON.parse(JSON.stringify(unwrap(document.joints[at]!))) as Joint;
  const made: Joint = { ...plain, ...asCopy(others(document), { id: plain.id, name: plain.name }) };
  project.edit(['joints'], document.joints.toSpliced(at + 1, 0, made));
  return made.id;
}

export interface GoesWith {
  readonly variants: number;
  /** Checks of measured parts, which stay: they are records. */
  readonly checks: number;
}

export function goesWith({ variants = [], gapChecks = [] }: Project, id: string): GoesWith {
  return {
    variants: variants.filter(({ of }) => of === id).length,
    checks: gapChecks.filter(({ joint }) => joint === id).length,
  };
}

/** The joint with its variants. */
export function removeJoint(project: ProjectState, id: string): void {
  const document = project.plain();
  if (!document) return;
  batch(() => {
    project.edit(
      ['joints'],
      document.joints.filter((joint) => joint.id !== id),
    );
    const left = document.variants?.filter(({ of }) => of !== id);
    if (left && left.length < document.variants!.length) {
      // An empty list would stay in a file that never had one.
      project.edit(['variants'], left.length === 0 ? undefined : left);
    }
  });
}
