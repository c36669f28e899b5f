/** Plies for tests. */
import type { Ply } from '../../src/model/laminate/ply.ts';

/** A carbon/epoxy ply in round figures. */
export const carbon: Ply = {
  axialModulus: 140_000,
  transverseModulus: 9500,
  shearModulus: 5000,
  poisson: 0.3,
  transverseShearModulus: 3300,
  axialExpansion: -0.3e-6,
  transverseExpansion: 30e-6,
  thickness: 0.15,
  tensileStrength: 2000,
  compressiveStrength: 1300,
  transverseTensileStrength: 55,
  transverseCompressiveStrength: 200,
  shearStrength: 85,
  interlaminarTension: 45,
  interlaminarShear: 75,
};

/** A ply of which a source gives the in-plane elastic constants alone; the rest is not used. */
export const elasticPly = (
  constants: Pick<Ply, 'axialModulus' | 'transverseModulus' | 'shearModulus' | 'poisson'> &
    Partial<Ply>,
): Ply => ({
  ...carbon,
  transverseShearModulus: constants.transverseModulus / 2,
  axialExpansion: 0,
  transverseExpansion: 0,
  ...constants,
});

export const isotropicPly = (modulus: number, poisson: number, expansion: number): Ply => ({
  ...carbon,
  axialModulus: modulus,
  transverseModulus: modulus,
  shearModulus: modulus / (2 * (1 + poisson)),
  transverseShearModulus: modulus / (2 * (1 + poisson)),
  poisson,
  axialExpansion: expansion,
  transverseExpansion: expansion,
});

/** Quasi-isotropic and symmetric. */
export const quasi = [0, 45, -45, 90, 90, -45, 45, 0];
