/** Whether a stack is symmetric about its middle surface (B = 0) and balanced (A16 = A26 = 0). */
import type { Stack, StackPly } from './stack.ts';

export interface StackTraits {
  readonly symmetric: boolean;
  readonly balanced: boolean;
  /** One plain sentence for each that it is not. */
  readonly reasons: readonly string[];
}

/** Fibres at 90° and −90°, or at 10° and 190°, lie alike. */
function directionOf(angle: number): number {
  const turned = angle % 180;
  if (turned > 90) return turned - 180;
  return turned <= -90 ? turned + 180 : turned + 0;
}

const near = (a: number, b: number, scale: number): boolean => Math.abs(a - b) <= 1e-9 * scale;

const alike = (a: StackPly, b: StackPly): boolean =>
  a.ply === b.ply &&
  near(directionOf(a.angle), directionOf(b.angle), 90) &&
  near(a.thickness, b.thickness, a.thickness);

const degrees = (angle: number): string => `${angle < 0 ? '−' : ''}${Math.abs(angle)}°`;

/** Where the first ply lies and where the last: of a tube's wall, or of a strip. */
export type Faces = readonly [first: string, last: string];
export const TUBE_FACES: Faces = ['inside', 'outside'];
export const STRIP_FACES: Faces = ['lower face', 'upper face'];

function unsymmetric({ plies }: Stack, [first, last]: Faces): string | undefined {
  for (let k = 0; k < Math.floor(plies.length / 2); k++) {
    const inner = plies[k]!;
    const outer = plies[plies.length - 1 - k]!;
    if (alike(inner, outer)) continue;
    const [i, o] = [degrees(inner.angle), degrees(outer.angle)];
    return i === o
      ? `Not symmetric: plies ${k + 1} and ${plies.length - k}, both ${i}, differ in thickness or material.`
      : `Not symmetric: ply ${k + 1} from the ${first} is ${i}, ply ${k + 1} from the ${last} ${o}.`;
  }
  return undefined;
}

function unbalanced({ plies }: Stack): string | undefined {
  const total = plies.reduce((sum, { thickness }) => sum + thickness, 0);
  for (const { ply, angle } of plies) {
    const direction = directionOf(angle);
    if (direction === 0 || direction === 90) continue;
    const sum = (wanted: number): number =>
      plies
        .filter((p) => p.ply === ply && near(directionOf(p.angle), wanted, 90))
        .reduce((all, { thickness }) => all + thickness, 0);
    const [here, there] = [sum(direction), sum(-direction)];
    if (near(here, there, total)) continue;
    const [more, fewer] = here > there ? [direction, -direction] : [-direction, direction];
    return `Not balanced: more at ${degrees(more)} than at ${degrees(fewer)}.`;
  }
  return undefined;
}

export function traitsOf(stack: Stack, faces: Faces = TUBE_FACES): StackTraits {
  const reasons = [unsymmetric(stack, faces), unbalanced(stack)];
  return {
    symmetric: reasons[0] === undefined,
    balanced: reasons[1] === undefined,
    reasons: reasons.filter((reason) => reason !== undefined),
  };
}
