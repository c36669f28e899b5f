/** Springs as tables: words, units and the sign convention, and the same as CSV for a frame model. */
import { writeCsv } from './csv.ts';
import { figureText, plainText } from './measures.ts';
import type { Spring, SpringKind, SpringState, SpringsReport } from './reports-springs.ts';
import { environment } from './words.ts';

export const springWords: Readonly<Record<SpringKind, string>> = {
  axial: 'axial',
  bending: 'bending',
  torsion: 'torsion',
};

export const springUnits: Readonly<
  Record<SpringKind, { readonly stiffness: string; readonly tube: string; readonly name: string }>
> = {
  axial: { stiffness: 'N/mm', tube: 'N', name: 'EA' },
  bending: { stiffness: 'N·mm/rad', tube: 'N·mm²', name: 'EI' },
  torsion: { stiffness: 'N·mm/rad', tube: 'N·mm²', name: 'GJ' },
};

/** What the figures are measured between, and which way is positive. */
export function conventionWords({
  flat,
  overlap,
}: Pick<SpringsReport, 'flat' | 'overlap'>): readonly string[] {
  const part = flat ? 'strip' : 'tube';
  const bending = flat
    ? 'Bending is in the plane of the strip.'
    : 'Bending is the same about every diameter.';
  return [
    `x runs along the ${part}, out of the ${flat ? 'lap' : 'sleeve'}: 0 at the root, where the metal is solid, ${lengthOf(overlap)} at the mouth. A positive load on the ${part} at the mouth, seen along x, moves it in its own direction against the metal at the root: force along x (tension), moment and rotation by the right hand.`,
    `Between the ${part}’s end at the mouth and the metal, carried rigidly from the root to the mouth: the stiffness. Where the frame runs the ${part} on to the root instead, the spring there is the one at the root; where none is given, the joint is stiffer than the bare ${part} of that length. Or run the ${part} past the mouth by the length given and hold it rigidly there.`,
    `${bending} The three do not act on one another. Across, the bond is taken as rigid and the walls shear side by side; the sideways step that bending makes over the overlap, about half of it times the rotation, is left out.`,
    'Elastic, small movements, nominal gap. A bond that has yielded is softer.',
  ];
}

/** Four significant figures in plain digits or a power of ten. */
export function stiffnessFigure(value: number): string {
  const text = value.toPrecision(4);
  return value >= 1e4 ? Number(text).toExponential(3).replace('e+', 'e') : text;
}

/** One row for each state and spring; plain points and digits, so that any program reads it. */
export function springsCsv({ jointId, states }: SpringsReport): string {
  const head = [
    'joint',
    'temperature_C',
    'moisture',
    'cases',
    'spring',
    'stiffness',
    'stiffness_unit',
    'at_root',
    'tube_length_mm',
    'tube_stiffness',
    'tube_stiffness_unit',
  ];
  const rows = states.flatMap((state) => [
    ...state.springs.map((spring) => [...stateCells(jointId, state), ...springCells(spring)]),
    [...stateCells(jointId, state), 'across', digits(state.shear), 'N/mm', '', '', '', ''],
  ]);
  return writeCsv([head, ...rows]);
}

const digits = (value: number): string => String(Number(value.toPrecision(8)));

const stateCells = (jointId: string, { temperature, moisture, names }: SpringState): string[] => [
  jointId,
  String(temperature),
  moisture,
  names.join('; '),
];

/** ASCII units: a spreadsheet guesses the encoding of a file, and guesses wrong. */
const ascii = (unit: string): string => unit.replaceAll('·', '*').replace('²', '^2');

const springCells = ({ kind, stiffness, tube, atRoot, tubeLength }: Spring): string[] => [
  springWords[kind],
  digits(stiffness),
  ascii(springUnits[kind].stiffness),
  atRoot === null ? '' : digits(atRoot),
  digits(tubeLength),
  digits(tube),
  ascii(springUnits[kind].tube),
];

/** With the figures that a drawing has. */
const lengthOf = (value: number): string => plainText('length', Number(value.toPrecision(6)));

/** Empty where every property is the user's own. */
export const typicalWords = ({ typical }: Pick<SpringsReport, 'typical'>): string =>
  typical ? 'Typical properties stand behind these figures: replace them by your own.' : '';

export const stateWords = ({ temperature, moisture }: SpringState): string =>
  environment(temperature, moisture);

/** What the joint weighs and takes to print, in a sentence or two. */
export function makingWords({ mass, print }: Pick<SpringsReport, 'mass' | 'print'>): string {
  const volume = `${figureText('volume', mass.adhesiveVolume)} of adhesive`;
  const weight =
    mass.added === null
      ? `What it adds in mass is not known: ${mass.without.map((name) => `“${name}”`).join(', ')} ${mass.without.length === 1 ? 'has' : 'have'} no density.`
      : `It adds ${figureText('mass', mass.added)} over the overlap, walls and adhesive.`;
  return `${weight} It takes ${volume} and ${print.layers} printed layers of ${plainText('small', print.layerThickness)} (${lengthOf(print.height)}).`;
}
