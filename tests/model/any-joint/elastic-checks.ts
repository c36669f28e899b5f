/** Balance, reversal and limits of the elastic shear of any lap. */
import { elasticState } from '../../../src/model/joint/lap-state.ts';
import { localProblem } from '../../../src/model/joint/local-problem.ts';
import type { Loads } from '../../../src/model/joint/types.ts';
import { isTapered, type LapProblem, thermalMismatch } from '../../../src/model/lap/problem.ts';
import type { JointState } from '../../../src/model/margins/state.ts';
import { solveElastic } from '../../../src/model/shear-lag/solve-elastic.ts';
import { integrateFromEnds } from '../../support/integrate.ts';
import type { Note } from './try-joint.ts';

const ALLOWED = 1e-6;

/** What the bonds transfer is what the outer walls carry at the root, and together the load. */
export function balance(problem: LapProblem, note: Note): string | null {
  const { length, bonds } = problem;
  for (const [q, channel] of problem.channels.entries()) {
    if (isTapered(channel)) continue;
    const { mechanical, thermal, omegaMax } = solveElastic(channel, bonds, length);
    for (const [name, part] of [
      ['mechanical', mechanical],
      ['thermal', thermal],
    ] as const) {
      let carried = 0;
      let size = name === 'mechanical' ? Math.abs(channel.load) : 0;
      const misses: number[] = [];
      for (const j of bonds.keys()) {
        const transfer = channel.levers[j]! * bonds[j]!.width;
        let turnover = 0;
        const moved = integrateFromEnds(
          (x) => {
            const shear = part.shear(j, x);
            turnover = Math.max(turnover, Math.abs(shear));
            return transfer * shear;
          },
          length,
          omegaMax,
        );
        const force = part.outerForce(j, 0);
        carried += force;
        // Shear that is there and cancels; it lives within a decay of an end.
        size = Math.max(
          size,
          Math.abs(force),
          transfer * turnover * Math.min(length, 1 / omegaMax),
        );
        misses.push(moved - force, part.outerForce(j, length));
      }
      misses.push(carried - (name === 'mechanical' ? channel.load : 0));
      for (const miss of misses) {
        if (size === 0 && miss === 0) continue;
        if (!(Math.abs(miss) <= ALLOWED * size)) return `${name} ${q}: off by ${miss} of ${size}`;
        note('balance', Math.abs(miss) / size);
      }
    }
  }
  return null;
}

const turned = ({ force, moment, torque, shear }: Loads): Loads => ({
  force: -force,
  moment: -moment,
  torque: -torque,
  shear: -shear,
});

/** Loads and temperature turned round turn the shear round, each of them alone as well. */
export function reversal(joint: JointState, theta: number): string | null {
  const { assembly, bonds, loadCase, deltaT } = joint;
  const none: Loads = { force: 0, moment: 0, torque: 0, shear: 0 };
  const back = turned(loadCase.loads);
  const pairs = [
    [loadCase.loads, deltaT, back, -deltaT],
    [none, deltaT, none, -deltaT],
  ] as const;
  for (const [loads, change, otherLoads, otherChange] of pairs) {
    const one = localProblem(assembly, bonds, loads, theta, change);
    const other = localProblem(assembly, bonds, otherLoads, theta, otherChange);
    const [a, b] = [elasticState(one, 1), elasticState(other, 1)];
    for (const q of one.channels.keys()) {
      for (const j of bonds.keys()) {
        for (const share of [0, 0.4, 1]) {
          const x = share * one.length;
          const [there, here] = [a.shear(q, j, x), b.shear(q, j, x)];
          if (!Number.isFinite(there)) return `shear ${there} at ${x}`;
          if (!(Math.abs(there + here) <= 1e-12 * Math.abs(there))) {
            return `shear ${there} turned round is ${here}`;
          }
        }
      }
    }
  }
  return null;
}

/** A double lap without one of its bonds is a single lap; of two alike bonds, one of twice the width. */
export function limits(problem: LapProblem, note: Note): string | null {
  const { length, bonds } = problem;
  if (bonds.length !== 2) return null;
  for (const channel of problem.channels) {
    if (isTapered(channel) || channel.load === 0) continue;
    const law = bonds[0]!;
    const soft = { ...bonds[1]!, stiffness: 1e-18 * law.stiffness };
    const alone = { ...channel, outers: [channel.outers[0]!], levers: [channel.levers[0]!] };
    const pairs = [
      [solveElastic(channel, [law, soft], length), solveElastic(alone, [law], length), 'alone'],
      [
        solveElastic(
          {
            ...channel,
            outers: [channel.outers[0]!, channel.outers[0]!],
            levers: [channel.levers[0]!, channel.levers[0]!],
          },
          [law, law],
          length,
        ),
        solveElastic(
          {
            ...alone,
            outers: [{ ...channel.outers[0]!, stiffness: 2 * channel.outers[0]!.stiffness }],
          },
          [{ ...law, width: 2 * law.width }],
          length,
        ),
        'alike',
      ],
    ] as const;
    // The shear that the larger mismatch would bring to a stiff bond; both walls meet at the root.
    const mismatch = Math.max(...[0, 1].map((j) => Math.abs(thermalMismatch(channel, j))));
    const free = law.stiffness * mismatch * Math.min(length, 1 / pairs[1][1].omegaMax);
    for (const [double, single, what] of pairs) {
      for (const part of ['mechanical', 'thermal'] as const) {
        const at = (share: number): readonly [number, number] => [
          double[part].shear(0, share * length),
          single[part].shear(0, share * length),
        ];
        const size = Math.max(
          ...[0, 1].map((share) => Math.abs(at(share)[1])),
          part === 'thermal' ? free : 0,
        );
        for (const share of [0, 0.3, 1]) {
          const [two, one] = at(share);
          const off = size === 0 ? Math.abs(two) : Math.abs(two - one) / size;
          if (!(off <= 1e-6)) return `${what}, ${part} at ${share}: ${two} for ${one} (${size})`;
          note(`double lap, ${what}`, off);
        }
      }
    }
  }
  return null;
}
