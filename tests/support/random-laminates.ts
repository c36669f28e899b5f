/** Plies, stacks and strains drawn at random. */
import fc from 'fast-check';
import type { Ply } from '../../src/model/laminate/ply.ts';
import { carbon } from './plies.ts';

export const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const ply = fc.record({
  axialModulus: number(30_000, 400_000),
  transverseModulus: number(4000, 20_000),
  shearModulus: number(2000, 9000),
  poisson: number(0.05, 0.4),
  axialExpansion: number(-1e-6, 1e-5),
  transverseExpansion: number(1e-5, 5e-5),
});
export const plies = ply.map(
  (drawn): Ply => ({ ...carbon, ...drawn, transverseShearModulus: drawn.transverseModulus / 2.7 }),
);
export const angles = fc.array(number(-90, 90), { minLength: 1, maxLength: 9 });
/** In thousandths of the size: zeros, but no strain so small that its own rounding counts. */
export const triple = (size: number) => {
  const one = fc.integer({ min: -1000, max: 1000 }).map((share) => (share * size) / 1000);
  return fc.tuple(one, one, one);
};
