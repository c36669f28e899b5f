/** Bond strength against overlap, and the plateau, against reference/joints_sweep.py. */
import { describe, it } from 'vitest';
import { resolveJoint } from '../../src/main/handlers/resolve.ts';
import { bondStrengthAt, findPlateau } from '../../src/model/sweep/overlap-sweep.ts';
import { readProject } from '../../src/shared/read-project.ts';
import { expectClose } from '../support/close.ts';
import { readFixture } from '../support/fixtures.ts';

interface Fixture {
  readonly cases: readonly {
    readonly name: string;
    readonly inputs: { readonly joint: string; readonly adherendShear: boolean };
    readonly expected: {
      readonly points: readonly { readonly overlap: number; readonly bond: number }[];
      readonly plateau: number;
      readonly plateauStrength: number;
    };
  }[];
}

const read = readProject(readFixture('joints-project.json'));
if (!read.ok) throw new Error(`${read.error.field}: ${read.error.message}`);
const project = read.value;

describe('overlap', () => {
  it.each((readFixture('overlap-sweeps.json') as Fixture).cases)(
    '$name',
    ({ inputs, expected }) => {
      const index = project.joints.findIndex(({ id }) => id === inputs.joint);
      const { input, adhesive, cases } = resolveJoint(project, index);
      const question = {
        joint: input,
        adhesive,
        cases: cases.map((one) => one.input),
        settings: { ...project.settings, adherendShear: inputs.adherendShear },
      };
      for (const { overlap, bond } of expected.points) {
        const { ratio } = bondStrengthAt(question, overlap);
        expectClose(ratio, bond, { relative: 2e-4 }, `strength at ${overlap} mm`, inputs);
      }
      const { overlap, strength } = findPlateau(question);
      expectClose(strength.ratio, expected.plateauStrength, { relative: 2e-4 }, 'plateau', inputs);
      // Where the curve is nearly flat a small miss in strength is a large one in overlap.
      expectClose(overlap!, expected.plateau, { relative: 5e-3 }, 'overlap of the plateau', inputs);
    },
  );
});
