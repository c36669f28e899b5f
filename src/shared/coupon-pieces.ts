/**
 * Test pieces of one's own: made new, copied, told by their sizes; and what a piece may still claim once
 * its sizes are changed. A standard's sizes are that standard's only while they are as it has them.
 */

import type { Lap } from './convert-lap.ts';
import { freeId } from './coupon-plan.ts';
import { plainOf, symbolOf } from './measures.ts';
import type { Adherend } from './project.ts';
import type { Coupons, Specimen, SpecimenShape } from './project-coupons.ts';
import type { Source } from './project-fields.ts';

/** Most pieces that a project file takes. */
export const MOST_PIECES = 100;
const LETTERS = 120;

export const pieceWords: Readonly<Record<Lap, string>> = {
  'flat-single': 'flat single lap',
  'flat-double': 'flat double lap',
  socket: 'tube in a socket',
  spigot: 'tube over a spigot',
  'sleeve-double': 'tube between spigot and socket',
};

export const pieceLaps = Object.keys(pieceWords) as readonly Lap[];

export const pieceLap = (shape: SpecimenShape): Lap =>
  shape.type === 'sleeve-single' ? shape.side : shape.type;

const size = (value: number): string => plainOf('length', value);

const walls = (name: string, { atRoot, atMouth }: { atRoot: number; atMouth: number }): string =>
  atRoot === atMouth ? `${name} ${size(atRoot)}` : `${name} ${size(atRoot)} to ${size(atMouth)}`;

/** `width 25.4, overlap 12.7, strip 1.6, plate 1.6 mm`; a wall that tapers is told from root to mouth. */
export function pieceSizes(shape: SpecimenShape): string {
  const sizes = (): readonly string[] => {
    switch (shape.type) {
      case 'flat-single':
        return [`strip ${size(shape.strip.thickness)}`, walls('plate', shape.plate)];
      case 'flat-double':
        return [
          `strip ${size(shape.strip.thickness)}`,
          walls('upper strap', shape.upperStrap),
          walls('lower strap', shape.lowerStrap),
        ];
      case 'sleeve-single':
        return [walls('sleeve', shape.sleeve)];
      case 'sleeve-double':
        return [walls('socket', shape.socket), walls('spigot', shape.spigot)];
    }
  };
  const head =
    'width' in shape
      ? `width ${size(shape.width)}`
      : `tube ${size(shape.tube.outsideDiameter)} × ${size(shape.tube.wall)}`;
  return `${[head, `overlap ${size(shape.overlap)}`, ...sizes()].join(', ')} ${symbolOf('length')}`;
}

/** Ids of the materials of a piece, each once. */
export const pieceMaterials = (shape: SpecimenShape): readonly string[] => [
  ...new Set(
    Object.values(shape).flatMap((part) =>
      typeof part === 'object' && 'adherend' in part ? [part.adherend] : [],
    ),
  ),
];

export interface PieceUse {
  /** Of sets, and of sets of lives. */
  readonly names: readonly string[];
  /** How many of these have results, and how many results they have together. */
  readonly withResults: number;
  readonly results: number;
}

export function usesOf({ sets, life = [] }: Pick<Coupons, 'sets' | 'life'>, id: string): PieceUse {
  const uses = [...sets, ...life].filter(({ specimen }) => specimen === id);
  const counts = uses.map(({ results }) => results.length);
  return {
    names: uses.map(({ name }) => name),
    withResults: counts.filter((n) => n > 0).length,
    results: counts.reduce((sum, n) => sum + n, 0),
  };
}

const BEGUN = 'Sizes to begin with: put in your own.';
const AS_JOINT = /^As the joint “(.*)” is drawn\.$/;
const COPIED = /^Copied from (.*?)(, whose sizes are from memory: look them up)?\.$/;

const source = (kind: Source['kind'], text: string): Source => ({ kind, text: text.slice(0, 400) });

/** A piece of this kind to begin with: metal where there is some, a tube of what is no metal. */
export function newPiece(
  lap: Lap,
  adherends: readonly Pick<Adherend, 'id' | 'kind'>[],
  others: readonly Specimen[],
): Specimen | null {
  const metal = (adherends.find(({ kind }) => kind === 'isotropic') ?? adherends[0])?.id;
  const tube = (adherends.find(({ kind }) => kind !== 'isotropic') ?? adherends[0])?.id;
  if (metal === undefined || tube === undefined || others.length >= MOST_PIECES) return null;
  const bond = () => ({ gap: 0.2, tolerance: 0 });
  const wall = (thickness: number) => ({
    adherend: metal,
    atRoot: thickness,
    atMouth: thickness,
  });
  const strip = (thickness: number) => ({ adherend: metal, thickness });
  const round = { adherend: tube, outsideDiameter: 30, wall: 1.5 };
  const shapes: Readonly<Record<Lap, () => SpecimenShape>> = {
    'flat-single': () => ({
      type: 'flat-single',
      overlap: 25,
      width: 25,
      strip: strip(3),
      plate: wall(3),
      bond: bond(),
    }),
    'flat-double': () => ({
      type: 'flat-double',
      overlap: 25,
      width: 25,
      strip: strip(4),
      upperStrap: wall(2),
      lowerStrap: wall(2),
      upperBond: bond(),
      lowerBond: bond(),
    }),
    socket: () => ({
      type: 'sleeve-single',
      side: 'socket',
      overlap: 25,
      tube: round,
      sleeve: wall(1.5),
      bond: bond(),
      offset: 0,
    }),
    spigot: () => ({
      type: 'sleeve-single',
      side: 'spigot',
      overlap: 25,
      tube: round,
      sleeve: wall(1.5),
      bond: bond(),
      offset: 0,
    }),
    'sleeve-double': () => ({
      type: 'sleeve-double',
      overlap: 25,
      tube: round,
      spigot: wall(1.5),
      socket: wall(1.5),
      innerBond: bond(),
      outerBond: bond(),
      offset: 0,
    }),
  };
  return {
    id: freeId(
      `own ${lap}`,
      others.map(({ id }) => id),
    ),
    name: freeName(`Own ${pieceWords[lap]}`, others),
    standard: '',
    shape: shapes[lap](),
    source: source('typical', BEGUN),
  };
}

/** `Lap shear 2` where the name is taken. */
function freeName(wish: string, others: readonly Specimen[]): string {
  for (let n = 1; ; n++) {
    const tail = n === 1 ? '' : ` ${n}`;
    const name = wish.slice(0, LETTERS - tail.length) + tail;
    if (!others.some((one) => one.name === name)) return name;
  }
}

/** The same sizes as one's own: it claims no standard, and says what it was copied from. */
export function copyPiece(piece: Specimen, others: readonly Specimen[]): Specimen | null {
  if (others.length >= MOST_PIECES) return null;
  const { name, standard, shape, source: from } = piece;
  const whose = standard === '' ? `“${name}”` : `“${name}”, ${standard}`;
  const doubt = from.kind === 'memory' ? ', whose sizes are from memory: look them up' : '';
  return {
    id: freeId(
      `own ${piece.id}`,
      others.map(({ id }) => id),
    ),
    name: freeName(`${name.slice(0, LETTERS - 12)}, own`, others),
    standard: '',
    shape: JSON.parse(JSON.stringify(shape)) as SpecimenShape,
    source: source(from.kind, `Copied from ${whose}${doubt}.`),
  };
}

/** Without its materials: a standard's sizes are the same in any of them. */
const sizesAlone = (shape: SpecimenShape): string =>
  JSON.stringify(shape, (key, value: unknown) => (key === 'adherend' ? undefined : value));

/**
 * What a piece is once its shape is changed: no longer the standard's, nor as the joint is drawn, where
 * it was. A source in one's own words stays.
 */
export function claimAfter(
  before: Specimen,
  shape: SpecimenShape,
): Pick<Specimen, 'standard' | 'source'> {
  const { standard, source: from } = before;
  const kept = { standard, source: from };
  const [, joint] = AS_JOINT.exec(from.text) ?? [];
  if (joint !== undefined) {
    return JSON.stringify(shape) === JSON.stringify(before.shape)
      ? kept
      : { standard: '', source: changed(`the joint “${joint}”`) };
  }
  if (sizesAlone(shape) === sizesAlone(before.shape)) return kept;
  if (standard !== '') return { standard: '', source: changed(standard) };
  const [, copied] = COPIED.exec(from.text) ?? [];
  if (copied !== undefined) return { standard: '', source: changed(copied) };
  return from.text === BEGUN ? { standard: '', source: source('typical', 'Own sizes.') } : kept;
}

const changed = (from: string): Source =>
  source('typical', `Own sizes, changed from those of ${from}.`);
