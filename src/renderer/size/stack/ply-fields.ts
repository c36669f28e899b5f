/** The figures of a ply as fields: symbol, what it is, and where it stands. */
import type { Ply } from '../../../shared/project.ts';
import type { QuantityName } from '../../../shared/quantities.ts';

type FigureOf<T> = { [K in keyof T]-?: NonNullable<T[K]> extends number ? K : never }[keyof T];

export interface PlyField {
  readonly key: FigureOf<Ply>;
  readonly label: string;
  readonly quantity: QuantityName;
  readonly help: string;
  readonly optional?: true;
}

const field = (
  key: FigureOf<Ply>,
  label: string,
  quantity: QuantityName,
  help: string,
): PlyField => ({ key, label, quantity, help });

export const plyFields: readonly PlyField[] = [
  field('thickness', 'Thickness', 'plyThickness', 'Of one cured ply.'),
  field('axialModulus', 'E1 along', 'modulus', 'Young’s modulus along the fibres.'),
  field(
    'transverseModulus',
    'E2 across',
    'modulus',
    'Young’s modulus across the fibres; E3 is taken the same.',
  ),
  field(
    'shearModulus',
    'G12',
    'shearModulus',
    'Shear modulus in the plane of the ply; G13 is taken the same.',
  ),
  field('transverseShearModulus', 'G23', 'shearModulus', 'Shear modulus across the fibres.'),
  field('poisson', 'ν12', 'poisson', 'Contraction across over extension along the fibres.'),
  field('axialExpansion', 'α1 along', 'expansion', 'Thermal expansion along the fibres.'),
  field(
    'transverseExpansion',
    'α2 across',
    'expansion',
    'Thermal expansion across the fibres, in the plane and through it.',
  ),
  field('tensileStrength', 'Xt tension', 'strength', 'Strength along the fibres in tension.'),
  field(
    'compressiveStrength',
    'Xc compression',
    'strength',
    'Strength along the fibres in compression, as a positive number.',
  ),
  field(
    'transverseTensileStrength',
    'Yt tension',
    'strength',
    'Strength across the fibres in tension.',
  ),
  field(
    'transverseCompressiveStrength',
    'Yc compression',
    'strength',
    'Strength across the fibres in compression, as a positive number.',
  ),
  field('shearStrength', 'S shear', 'strength', 'Shear strength in the plane of the ply.'),
  field(
    'interlaminarTension',
    'Zt between plies',
    'interlaminarStrength',
    'Tension through the thickness at which plies part.',
  ),
  field(
    'interlaminarShear',
    'S13 between plies',
    'interlaminarStrength',
    'Shear between plies at which they part.',
  ),
  {
    ...field('density', 'Density', 'density', 'Mass over volume; not set, masses are not known.'),
    optional: true,
  },
];
