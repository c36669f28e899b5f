/**
 * Sentences with figures in them. A sentence is whole as it stands, in mm, MPa and °C; beside it is kept which of its
 * pieces are figures and of what, so that whoever shows it may write them in other units. Nothing is converted here.
 */
export interface SaidFigure {
  /** As it stands in the sentence, with its unit, or without it where the unit follows later. */
  readonly as: string;
  /** `small` is a length that is read in smaller units: a gap, a ply. */
  readonly measure:
    | 'length'
    | 'small'
    | 'stress'
    | 'modulus'
    | 'expansion'
    | 'temperature'
    | 'mass';
  readonly value: number;
}

export interface Said {
  readonly message: string;
  /** In the order in which they stand in it; left out where there are none. */
  readonly figures?: readonly SaidFigure[];
}

const minus = (text: string): string => text.replace('-', '−');

/** @param digits significant ones; all that the value has when left out */
export const millimetres = (
  value: number,
  digits?: number,
  measure: 'length' | 'small' = 'length',
): SaidFigure => ({
  as: minus(`${digits === undefined ? value : Number(value.toPrecision(digits))} mm`),
  measure,
  value,
});
export const smallMillimetres = (value: number, digits?: number): SaidFigure =>
  millimetres(value, digits, 'small');
export const degreesCelsius = (value: number, digits?: number): SaidFigure => ({
  as: minus(`${digits === undefined ? value : Number(value.toPrecision(digits))} °C`),
  measure: 'temperature',
  value,
});
/** Without its unit: `0.05 and 0.5 mm`. */
export const bare = (figure: SaidFigure): SaidFigure => ({
  ...figure,
  as: figure.as.slice(0, figure.as.lastIndexOf(' ')),
});

type Piece = string | number | SaidFigure | Said;

const textOf = (piece: Piece): string => {
  if (typeof piece !== 'object') return String(piece);
  return 'as' in piece ? piece.as : piece.message;
};
const figuresOf = (piece: Piece): readonly SaidFigure[] => {
  if (typeof piece !== 'object') return [];
  return 'as' in piece ? [piece] : (piece.figures ?? []);
};

/** A sentence out of pieces, some of which are figures or sentences themselves. */
export function say(words: TemplateStringsArray, ...pieces: readonly Piece[]): Said {
  const message = words
    .map((text, i) => `${i === 0 ? '' : textOf(pieces[i - 1]!)}${text}`)
    .join('');
  const figures = pieces.flatMap(figuresOf);
  return figures.length === 0 ? { message } : { message, figures };
}

/** Several, one behind the other. */
export const saidTogether = (parts: readonly (SaidFigure | Said)[], between: string): Said =>
  parts.reduce<Said>(
    (before, part, i) => (i === 0 ? say`${part}` : say`${before}${between}${part}`),
    { message: '' },
  );
