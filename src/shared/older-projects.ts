/**
 * Project files of older versions, brought step by step to the version that is read now. A file is raised
 * when it is read and nowhere else: whatever a page sends is of the present version. The file on the disk
 * stays as it is until somebody saves it.
 */
import { PROJECT_FORMAT, PROJECT_VERSION } from './project.ts';
import { ok, type Reply, refuse } from './reply.ts';

type Fields = Readonly<Record<string, unknown>>;

export interface Step {
  /** The version that it takes; what it gives is of the next one. */
  readonly from: number;
  /** Gives a new document; the version is set by whoever calls it. */
  raise(document: Fields): Fields;
}

/**
 * One for each version before `PROJECT_VERSION`, the oldest first. There is none yet: version 1 is the first
 * that was given out, and every field that it has gained since may be left out.
 */
export const projectSteps: readonly Step[] = [];

export interface Raised {
  readonly document: unknown;
  readonly olderVersion?: number;
}

const isFields = (value: unknown): value is Fields =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/**
 * The document as one of the present version. One that is no project, or of a version that never was, is
 * handed on as it is: whoever checks it says what is wrong.
 */
export function raiseProject(
  document: unknown,
  steps: readonly Step[] = projectSteps,
  present: number = PROJECT_VERSION,
): Reply<Raised> {
  if (!isFields(document) || document.format !== PROJECT_FORMAT) return ok({ document });
  const { version } = document;
  if (typeof version !== 'number' || !Number.isInteger(version)) return ok({ document });
  if (version > present) {
    return refuse(
      'bad-input',
      'version',
      `This is a project file of version ${version}, from a newer Lapwright; this one reads versions up to ${present}. Open it with the newer one: nothing was changed.`,
    );
  }
  let raised = document;
  for (let now = version; now < present; now += 1) {
    const step = steps.find(({ from }) => from === now);
    if (!step) return ok({ document });
    try {
      raised = { ...step.raise(raised), version: now + 1 };
    } catch {
      return refuse(
        'bad-input',
        'version',
        `This project file is of version ${version}, and something in it is not as that version has it: it could not be brought to version ${now + 1}. Nothing was changed.`,
      );
    }
  }
  return ok(version < present ? { document: raised, olderVersion: version } : { document: raised });
}
