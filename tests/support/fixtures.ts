/** Reference solutions made by scipy: see reference/README.md. Read once, in the model's own terms. */
import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import type { Channel, LapProblem, Member } from '../../src/model/lap/problem.ts';

const folder = resolve(import.meta.dirname, '../../reference');

export const readFixture = (name: string): unknown =>
  JSON.parse(readFileSync(resolve(folder, name), 'utf8'));

/** A stiffness is a number, or linear from root to mouth. */
interface FixtureMember {
  readonly stiffness: number | { readonly atRoot: number; readonly atMouth: number };
  readonly thermalStrain?: number;
}

interface FixtureBond {
  readonly width: number;
  readonly lever?: number;
  readonly stiffness: number;
  readonly shearYield: number;
  readonly slipAtFailure: number;
}

interface FixtureChannel {
  readonly load: number;
  readonly tube: FixtureMember;
  readonly outers: readonly FixtureMember[];
  readonly levers?: readonly number[];
}

export interface FixtureInputs extends Partial<FixtureChannel> {
  readonly length: number;
  readonly bonds: readonly FixtureBond[];
  readonly channels?: readonly FixtureChannel[];
}

function toMember({ stiffness, thermalStrain = 0 }: FixtureMember): Member {
  if (typeof stiffness === 'number') return { stiffness, thermalStrain };
  const { atRoot, atMouth } = stiffness;
  return {
    stiffness: atRoot,
    taper: { middle: (atRoot + atMouth) / 2, mouth: atMouth },
    thermalStrain,
  };
}

export function toProblem(inputs: FixtureInputs): LapProblem {
  const channels = inputs.channels ?? [inputs as unknown as FixtureChannel];
  return {
    length: inputs.length,
    bonds: inputs.bonds.map(({ width, stiffness, shearYield, slipAtFailure }) => ({
      width,
      stiffness,
      shearYield,
      slipAtFailure,
    })),
    channels: channels.map(
      (channel): Channel => ({
        load: channel.load,
        tube: toMember(channel.tube),
        outers: channel.outers.map(toMember),
        levers: channel.levers ?? inputs.bonds.map((bond) => bond.lever ?? 1),
      }),
    ),
  };
}
