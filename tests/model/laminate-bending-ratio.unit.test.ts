/**
 * What an unsymmetric wall bends by when its middle surface is free to stretch: D* = D − B·A⁻¹·B, in
 * closed forms of classical lamination theory for regular antisymmetric laminates (R. M. Jones, Mechanics
 * of Composite Materials, on cross-ply and angle-ply laminates; from memory, worked out again here).
 */
import { describe, expect, it } from 'vitest';
import { laminateMaterial } from '../../src/model/laminate/material.ts';
import type { Ply } from '../../src/model/laminate/ply.ts';
import { plateProperties, shellOf } from '../../src/model/layered/shell.ts';
import { expectClose } from '../support/close.ts';
import { carbon } from '../support/plies.ts';

const EXACT = { relative: 1e-12 };

/** Q of a ply by its textbook definition. */
function planeStress({ axialModulus, transverseModulus, shearModulus, poisson }: Ply) {
  const restraint = 1 - (poisson ** 2 * transverseModulus) / axialModulus;
  const q11 = axialModulus / restraint;
  const q22 = transverseModulus / restraint;
  return { q11, q22, q12: poisson * q22, q66: shearModulus };
}

const repeated = (angles: readonly number[], times: number): number[] =>
  Array.from({ length: times }, () => angles).flat();

const other: Ply = {
  ...carbon,
  axialModulus: 45_000,
  transverseModulus: 12_000,
  shearModulus: 4500,
  poisson: 0.28,
  transverseShearModulus: 4200,
};

/** A wall of 0° and 90° plies of one thickness, in integrals over z: B is diagonal, nothing shears. */
function crossPly(ply: Ply, angles: readonly number[], wall: number) {
  const { q11, q22, q12 } = planeStress(ply);
  const height = wall / angles.length;
  let [a11, a22, b11, b22, d11] = [0, 0, 0, 0, 0];
  angles.forEach((angle, k) => {
    const [low, high] = [k * height - wall / 2, (k + 1) * height - wall / 2];
    const [along, around] = angle === 0 ? [q11, q22] : [q22, q11];
    a11 += along * (high - low);
    a22 += around * (high - low);
    b11 += (along * (high ** 2 - low ** 2)) / 2;
    b22 += (around * (high ** 2 - low ** 2)) / 2;
    d11 += (along * (high ** 3 - low ** 3)) / 3;
  });
  return { a11, a22, a12: q12 * wall, b11, b22, d11 };
}

describe.each([
  ['carbon', carbon],
  ['a softer ply', other],
])('bending of an unsymmetric wall of %s', (_name, ply) => {
  const { q11, q22, q12, q66 } = planeStress(ply);
  const wall = 1.6;

  it('of [0/90] is 1 − ¾(Q11 − Q22)²/((Q11 + Q22)² − 4·Q12²) of a homogeneous one', () => {
    // A11 = A22 = ΣQ·t/2, A12 = Q12·t, B11 = −B22 = ∓ΔQ·t²/8, D11 = ΣQ·t³/24: with D11 itself it would be 1.
    const ratio = 1 - (0.75 * (q11 - q22) ** 2) / ((q11 + q22) ** 2 - 4 * q12 ** 2);
    for (const angles of [
      [0, 90],
      [90, 0],
    ]) {
      const made = laminateMaterial(ply, angles, wall);
      expectClose(made.bendingRatio, ratio, EXACT, 'ratio', angles);
      const d11 = ((q11 + q22) * wall ** 3) / 24;
      expectClose(made.bendingStiffness, d11, EXACT, 'D11', angles);
      expectClose(made.reducedBendingStiffness, d11 * ratio, EXACT, 'D*11', angles);
    }
    expect(ratio).toBeLessThan(0.8);
  });

  it('of n times [0/90] is lower by 1/n² of that: B falls as 1/n, D11 does not', () => {
    const lack = (0.75 * (q11 - q22) ** 2) / ((q11 + q22) ** 2 - 4 * q12 ** 2);
    for (const n of [1, 2, 3, 5, 8]) {
      const made = laminateMaterial(ply, repeated([0, 90], n), wall);
      expectClose(made.bendingRatio, 1 - lack / n ** 2, EXACT, 'ratio', n);
    }
  });

  it('of [45/−45] is 1 − ¾·Q̄16²/(Q̄11·Q̄66): here it is twist that is set free', () => {
    // B16 = B26 = ∓Q̄16·t²/4, A66 = Q̄66·t, A16 = A26 = 0.
    const along = (q11 + q22 + 2 * q12 + 4 * q66) / 4;
    const coupled = (q11 - q22) / 4;
    const sheared = (q11 + q22 - 2 * q12) / 4;
    const made = laminateMaterial(ply, [45, -45], wall);
    const ratio = 1 - (0.75 * coupled ** 2) / (along * sheared);
    expectClose(made.bendingRatio, ratio, EXACT, 'ratio');
    expect(ratio).toBeLessThan(0.95);
  });

  it('of any 0° and 90° plies is 12·(D11 − B11²·A22/(A11·A22 − A12²))/(A11·t²)', () => {
    for (const angles of [
      [0, 0, 90],
      [0, 90, 90, 90],
      [90, 0, 0, 0, 90, 90],
      [0, 90, 0],
    ]) {
      const { a11, a22, a12, b11, b22, d11 } = crossPly(ply, angles, wall);
      const reduced = d11 - (b11 ** 2 * a22) / (a11 * a22 - a12 ** 2);
      const made = laminateMaterial(ply, angles, wall);
      expectClose(made.reducedBendingStiffness, reduced, EXACT, 'D*11', angles);
      // (1 − νxθ·νθx)/Ex = t/A11, since nothing shears.
      const ratio = (12 * reduced) / (a11 * wall ** 2);
      expectClose(made.bendingRatio, ratio, EXACT, 'ratio', angles);
      expect(Math.abs(b11 + b22)).toBeLessThan(1e-9 * a11 * wall);
    }
  });

  it('is what the wall of a joint bends by', () => {
    const made = laminateMaterial(ply, [0, 90], wall);
    const size = { radius: 15, thickness: wall, flat: false };
    const shell = shellOf(plateProperties({ kind: 'laminate', ...made }), size, 'outer', 0);
    const { a11, a22, a12, b11, d11 } = crossPly(ply, [0, 90], wall);
    const reduced = d11 - (b11 ** 2 * a22) / (a11 * a22 - a12 ** 2);
    expectClose(shell.bending, reduced, EXACT, 'D of the wall');
  });
});
