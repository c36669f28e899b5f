/** Both ends of the overlap: the lap's own stiffness against what each wall meets there. */
import { type Matrix, solveDense } from '../numerics/dense.ts';
import type { LayeredLap } from './lap.ts';
import { endLack } from './layer-pull.ts';
import type { RunOut } from './run-out.ts';
import type { Shell } from './shell.ts';
import type { EndStiffness } from './stretch.ts';

export type Ends = readonly [root: Matrix, mouth: Matrix];

/** What tells the plain lap from its first harmonic. */
export interface Layout {
  /** Unknowns of a wall: u, w, φ, and v in the first harmonic. */
  readonly each: 3 | 4;
  /** A wall that goes on beyond an end of the overlap. */
  runOut(shell: Shell, pull: number | 'held', side: 'root' | 'mouth'): RunOut;
  /** Whether temperature acts. */
  readonly thermal: boolean;
}

/** Displacements of both ends of the overlap: by a unit load, and by temperature and flow. */
export function endDisplacements(
  lap: LayeredLap,
  k: EndStiffness,
  { each, runOut, thermal }: Layout,
): readonly [unit: Ends, fixed: Ends] {
  const half = each * lap.root.length;
  const size = 2 * half;
  const a = new Float64Array(size * size);
  const b = new Float64Array(size * 2);
  // Overlap's internal force at an end less what the neighbour has there: zero.
  const width = size + 1;
  [k.start, k.end].forEach((rows, end) => {
    for (let i = 0; i < half; i++) {
      const row = end * half + i;
      for (let j = 0; j < size; j++) a[row * size + j] = rows[i * width + j]!;
      b[row * 2 + 1] = -rows[i * width + size]!;
    }
  });
  const shells: readonly (readonly Shell[])[] = [
    lap.sectionAt(0).shells,
    lap.sectionAt(lap.length).shells,
  ];
  [lap.root, lap.mouth].forEach((walls, end) => {
    walls.forEach((wall, i) => {
      const first = end * half + each * i;
      const shell = shells[end]![i]!;
      if (wall.kind === 'clamped') {
        for (let row = first; row < first + each; row++) {
          a.fill(0, row * size, (row + 1) * size);
          a[row * size + row] = 1;
          b.fill(0, row * 2, row * 2 + 2);
        }
        if (thermal) b[(first + 1) * 2 + 1] = wall.growth;
      } else if (wall.kind === 'cut') {
        b[first * 2]! += wall.n;
        b[(first + 1) * 2]! += wall.q;
        b[(first + 2) * 2]! += wall.m - shell.offset * wall.n;
      } else if (wall.kind === 'run-out') {
        const beyond = runOut(shell, wall.pull, end === 0 ? 'root' : 'mouth');
        for (let row = 0; row < each; row++) {
          for (let column = 0; column < each; column++) {
            a[(first + row) * size + first + column]! -= beyond.stiffness[row * each + column]!;
          }
          b[(first + row) * 2]! += beyond.pull[row]!;
          b[(first + row) * 2 + 1]! += beyond.free[row]!;
        }
      }
    });
  });
  // Peel that the layers lack at their free ends, as a force there. Where a wall is clamped its support takes it.
  for (const end of thermal ? [0, 1] : []) {
    const section = lap.sectionAt(end * lap.length);
    const walls = end === 0 ? lap.root : lap.mouth;
    section.bonds.forEach((bond, j) => {
      const force = endLack(section, j, lap.length).force * bond.radius * (end === 0 ? -1 : 1);
      if (walls[j]!.kind !== 'clamped') b[(end * half + each * j + 1) * 2 + 1]! -= force;
      if (walls[j + 1]!.kind !== 'clamped') b[(end * half + each * (j + 1) + 1) * 2 + 1]! += force;
    });
  }
  solveDense(a, b, size, 2);
  const column = (c: number): Ends => [
    Float64Array.from({ length: half }, (_v, i) => b[i * 2 + c]!),
    Float64Array.from({ length: half }, (_v, i) => b[(half + i) * 2 + c]!),
  ];
  return [column(0), column(1)];
}
