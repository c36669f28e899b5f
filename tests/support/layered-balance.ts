/** What should cancel in every wall of a layered lap, by quadrature of what the model reports. */
import type { FlowZone } from '../../src/model/layered/lap.ts';
import { arc, type Built, gaussPoints, type Lap } from './layered-laps.ts';

interface Layer {
  /** Half of the force in the layer that is kept from shrinking, per arc of its own. */
  readonly halfPull: number;
  /** Peel that it lacks at a free end, its length, and its sum from one end. */
  readonly lack: number;
  readonly fade: number;
  readonly lackForce: number;
}

/** The layer's pull of docs/method.md, from the joint's inputs. */
function layerOf({ adhesive, deltaT }: Lap, { lap, assembly }: Built, j: number): Layer {
  const { modulus, shearModulus, expansion } = adhesive;
  const nu = modulus / (2 * shearModulus) - 1;
  const { shells } = lap.sectionAt(0);
  const free = (expansion ?? 0) * deltaT;
  const along = (shells[j]!.freeAxial + shells[j + 1]!.freeAxial) / 2 - free;
  const around = (shells[j]!.freeHoop + shells[j + 1]!.freeHoop) / 2 - free;
  const s = (modulus / (1 - nu * nu)) * (along + nu * around);
  const { gap } = assembly.bonds[j]!;
  const lack = (nu / (1 - nu)) * s;
  const fade = gap / 2;
  return {
    halfPull: (arc(assembly, j) * gap * s) / 2,
    lack,
    fade,
    lackForce: lack * fade * -Math.expm1(-lap.length / fade),
  };
}

export interface Balance {
  readonly what: string;
  readonly miss: number;
  /** Sum of the sizes of what should cancel. */
  readonly size: number;
}

export function balances(
  given: Lap,
  built: Built,
  load: number,
  zones: readonly FlowZone[],
): Balance[] {
  const { lap, assembly, signs, tubeLayer } = built;
  const { length } = lap;
  const solution = built.solution(zones);
  const smallest = 0.1 * Math.min(...assembly.bonds.map(({ gap }) => gap), length / 20);
  const { x, weight } = gaussPoints([0, ...zones.map(({ to }) => to)], smallest);
  const points = solution.along(x, load, 1);
  const sides = [0, length].map((at) => ({
    point: solution.at(at, load, 1),
    section: lap.sectionAt(at),
  }));
  const layers = assembly.bonds.map((_bond, j) => layerOf(given, built, j));
  const thermal = given.deltaT === 0 ? 0 : 1;
  const found: Balance[] = [];
  const pull = load / (assembly.flat ? 1 : 2 * Math.PI);
  const tubeOf = { root: 0, mouth: pull };

  // The bonds together carry the load.
  let carried = 0;
  let carriedSize = Math.abs(pull);
  const shearSums = assembly.bonds.map((_bond, j) => {
    let sum = 0;
    let size = 0;
    points.forEach(({ stresses }, k) => {
      sum += weight[k]! * stresses.shear[j]!;
      size += weight[k]! * Math.abs(stresses.shear[j]!);
    });
    carried += signs[j]! * arc(assembly, j) * sum;
    carriedSize += arc(assembly, j) * size;
    return { sum: arc(assembly, j) * sum, size: arc(assembly, j) * size };
  });
  found.push({ what: 'bonds and load', miss: carried - pull, size: carriedSize });

  for (let i = 0; i <= assembly.bonds.length; i++) {
    // Bonds on this wall, with the sense in which they act on it: inside ones +, outside ones −.
    const touching = [
      { j: i - 1, sense: 1 },
      { j: i, sense: -1 },
    ].filter(({ j }) => j >= 0 && j < assembly.bonds.length);
    const total = (end: 0 | 1) => {
      const { point, section } = sides[end]!;
      const { radius, thickness } = section.shells[i]!;
      const { axial, moment } = point.forces[i]!;
      let n = radius * axial;
      let m = radius * moment;
      for (const { j, sense } of touching) {
        n += thermal * layers[j]!.halfPull;
        // The pull acts at the face: inward of the middle for a bond inside, where sense is +.
        m += (sense * thermal * layers[j]!.halfPull * thickness) / 2;
      }
      return { n, m, thickness, size: Math.abs(radius * axial) };
    };
    const [root, mouth] = [total(0), total(1)];
    let shear = 0;
    let gross = root.size + mouth.size;
    for (const { j, sense } of touching) {
      shear += sense * shearSums[j]!.sum;
      gross += shearSums[j]!.size;
    }
    found.push({ what: `wall ${i}, along`, miss: mouth.n - root.n - shear, size: gross });
    // Ends that the joint gives: the tube's at the root, all others' at the mouth, and the tube's pull.
    const isTube = i === tubeLayer;
    if (isTube) {
      found.push({ what: 'tube at the root', miss: root.n - tubeOf.root, size: gross });
      found.push({ what: 'tube at the mouth', miss: mouth.n - tubeOf.mouth, size: gross });
      found.push({ what: 'tube turned at the root', miss: root.m, size: gross * root.thickness });
    } else {
      found.push({ what: `wall ${i} at the mouth`, miss: mouth.n, size: gross });
      found.push({
        what: `wall ${i} turned at the mouth`,
        miss: mouth.m,
        size: gross * mouth.thickness,
      });
    }

    // From its free end the wall's moment at the other follows by balance of a straight line on its face.
    const free = isTube ? 0 : 1;
    const away = free === 0 ? length : 0;
    const way = free === 0 ? 1 : -1;
    // Line of reference: the bonded face of an outer wall, which stays straight; the tube's middle.
    const lineOf = (thickness: number): number =>
      touching.length === 2 || isTube ? 0 : (touching[0]!.sense * -thickness) / 2;
    let q = 0;
    let sum = 0;
    let size = 0;
    for (const { j, sense } of touching) {
      const { lackForce } = layers[j]!;
      // The lack of peel stands at the end as a force.
      const force = thermal * sense * arc(assembly, j) * lackForce;
      q += free === 0 ? -force : force;
    }
    points.forEach(({ stresses, forces }, k) => {
      const at = x[k]!;
      const hoop = forces[i]!.hoop;
      let across = hoop;
      let turn = 0;
      let acrossSize = Math.abs(hoop);
      for (const { j, sense } of touching) {
        const { lack, fade } = layers[j]!;
        const lacking = Math.exp(-at / fade) + Math.exp((at - length) / fade);
        const peel = stresses.peel[j]! + thermal * lack * lacking;
        across += sense * arc(assembly, j) * peel;
        acrossSize += arc(assembly, j) * Math.abs(peel);
        const half = isTube
          ? (root.thickness + assembly.bonds[j]!.gap) / 2
          : assembly.bonds[j]!.gap / 2;
        turn += arc(assembly, j) * half * stresses.shear[j]!;
      }
      const reach = Math.abs(away - at);
      sum += weight[k]! * (way * turn - reach * across);
      size += weight[k]! * (Math.abs(turn) + reach * acrossSize);
    });
    const [start, end] = free === 0 ? [root, mouth] : [mouth, root];
    const about = ({ m, n, thickness }: typeof root): number => m + lineOf(thickness) * n;
    const expected = about(start) - way * q * length + sum;
    found.push({
      what: `wall ${i}, moment from its free end`,
      miss: about(end) - expected,
      size: size + Math.abs(q * length) + Math.abs(end.m),
    });
  }
  return found;
}
