/** The figures of metals and of walls of given stiffness as fields; laminates have those of their ply. */
import type { Adherend } from '../../../shared/project.ts';
import type { QuantityName } from '../../../shared/quantities.ts';

type Kind = Exclude<Adherend['kind'], 'laminate'>;
type FigureOf<T> = { [K in keyof T]-?: NonNullable<T[K]> extends number ? K : never }[keyof T];
type FigureIn<K extends Kind> = FigureOf<Extract<Adherend, { kind: K }>> & string;

export interface AdherendField {
  readonly key: string;
  readonly label: string;
  readonly quantity: QuantityName;
  readonly help: string;
  readonly optional?: true;
}

const fieldOf =
  <K extends Kind>() =>
  (key: FigureIn<K>, label: string, quantity: QuantityName, help: string): AdherendField => ({
    key,
    label,
    quantity,
    help,
  });
const ofMetal = fieldOf<'isotropic'>();
const ofWall = fieldOf<'orthotropic'>();

const density: AdherendField = {
  key: 'density',
  label: 'Density',
  quantity: 'density',
  help: 'Mass over volume; not set, masses with it are not known.',
  optional: true,
};

const isotropic: readonly AdherendField[] = [
  ofMetal('modulus', 'E', 'modulus', 'Young’s modulus.'),
  ofMetal('poisson', 'ν', 'poisson', 'Contraction across over extension along.'),
  ofMetal('expansion', 'α', 'expansion', 'Thermal expansion.'),
  ofMetal('yieldStrength', 'Yield', 'strength', 'Stress at which it yields.'),
  ofMetal('ultimateStrength', 'Ultimate', 'strength', 'Stress at which it breaks.'),
  density,
];

/** @param across `around` a tube, `across` a strip */
const orthotropic = (across: string): readonly AdherendField[] => [
  ofWall('axialModulus', 'E1 along', 'modulus', 'Young’s modulus along the joint.'),
  ofWall('hoopModulus', `E2 ${across}`, 'modulus', `Young’s modulus ${across} the joint.`),
  ofWall('shearModulus', 'G12', 'shearModulus', 'Shear modulus in the wall; carries torsion.'),
  ofWall(
    'throughShearModulus',
    'G13 through',
    'shearModulus',
    'Shear modulus through the thickness, along the joint.',
  ),
  ofWall(
    'poisson',
    'ν12',
    'laminatePoisson',
    `Contraction ${across} over extension along; angle-ply laminates can exceed 0.5.`,
  ),
  ofWall('axialExpansion', 'α1 along', 'expansion', 'Thermal expansion along the joint.'),
  ofWall('hoopExpansion', `α2 ${across}`, 'expansion', `Thermal expansion ${across} the joint.`),
  ofWall('tensileStrength', 'Xt tension', 'strength', 'Strength along the joint in tension.'),
  ofWall(
    'compressiveStrength',
    'Xc compression',
    'strength',
    'Strength along the joint in compression, as a positive number.',
  ),
  ofWall('shearStrength', 'S shear', 'strength', 'Shear strength in the wall.'),
  density,
];

export const adherendFields = (kind: Kind, flat: boolean): readonly AdherendField[] =>
  kind === 'isotropic' ? isotropic : orthotropic(flat ? 'across' : 'around');
