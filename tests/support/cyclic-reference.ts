/** Cyclic cases alone and together against the independent calculation of reference/cyclic.py. */
import { questionOf } from '../../src/main/handlers/margins.ts';
import { resolveJoint } from '../../src/main/handlers/resolve.ts';
import { damageRow } from '../../src/model/margins/cyclic-damage.ts';
import { overStates } from '../../src/model/margins/over-states.ts';
import type { Project } from '../../src/shared/project.ts';
import { readProject } from '../../src/shared/read-project.ts';
import { readFixture } from './fixtures.ts';

interface Gap {
  readonly alone: Readonly<Record<string, number>>;
  readonly together: number;
}
interface Fixture {
  readonly project: unknown;
  readonly cases: readonly {
    readonly name: string;
    readonly expected: { readonly gaps: Readonly<Record<string, Gap>>; readonly worst: string };
  }[];
}

export interface Compared {
  readonly what: string;
  readonly expected: number;
  readonly computed: number;
}

export interface CyclicReference {
  readonly alone: readonly Compared[];
  readonly together: readonly Compared[];
  /** Gap states named as the worst: the fixture's, and the program's. */
  readonly worst: readonly {
    readonly what: string;
    readonly expected: string;
    readonly computed: string;
  }[];
}

const ALONE = new Set(['cyclic-shear'] as const);

export function cyclicReference(): CyclicReference {
  const { project: document, cases } = readFixture('cyclic-damage.json') as Fixture;
  const read = readProject(document);
  if (!read.ok) throw new Error(`${read.error.field}: ${read.error.message}`);
  const project: Project = read.value;
  const alone: Compared[] = [];
  const together: Compared[] = [];
  const worst: CyclicReference['worst'][number][] = [];
  for (const { name, expected } of cases) {
    const resolved = resolveJoint(
      project,
      project.joints.findIndex(({ id }) => id === name),
    );
    const question = questionOf(resolved, project.settings);
    for (const { caseIndex, gapState, modes } of overStates(question, { only: ALONE })) {
      const { id } = resolved.cases[caseIndex]!.loadCase;
      alone.push({
        what: `${name}, ${id}, ${gapState}`,
        expected: expected.gaps[gapState]!.alone[id]!,
        computed: modes[0]!.reached,
      });
    }
    const { result } = damageRow(question)!;
    together.push({
      what: name,
      expected: expected.gaps[expected.worst]!.together,
      computed: result.reached,
    });
    worst.push({ what: name, expected: expected.worst, computed: result.gapState });
  }
  return { alone, together, worst };
}
