/**
 * The units that a person may read in, by kind of quantity, and which of them a preset takes. Each is
 * made of the exact named units, so that no factor is written twice.
 */
import { exact, iceInKelvin, namedUnits } from './named-units.ts';
import { type QuantityName, quantities, type Unit } from './quantities.ts';
import {
  add,
  divided,
  negated,
  power,
  type Rational,
  rational,
  times,
  toNumber,
} from './rational.ts';

/** Kinds of quantity that have a unit of their own on the screen. */
export const unitKinds = {
  length: { title: 'Lengths', units: ['mm', 'in'] },
  small: { title: 'Gaps, plies, tolerances', units: ['mm', 'µm', 'in', 'mil'] },
  force: { title: 'Forces', units: ['kN', 'N', 'lbf'] },
  moment: { title: 'Moments, torque', units: ['N·m', 'N·mm', 'lbf·in', 'lbf·ft'] },
  stress: { title: 'Stresses, strengths', units: ['MPa', 'psi', 'ksi'] },
  adhesiveModulus: { title: 'Moduli of adhesives', units: ['MPa', 'GPa', 'psi', 'ksi'] },
  modulus: { title: 'Moduli of adherends', units: ['GPa', 'MPa', 'ksi', 'Msi'] },
  stiffness: { title: 'Stiffness', units: ['kN/mm', 'N/mm', 'lbf/in'] },
  fractureEnergy: { title: 'Fracture energies', units: ['N/mm', 'J/m²', 'lbf/in'] },
  temperature: { title: 'Temperatures', units: ['°C', '°F'] },
  expansion: { title: 'Thermal expansion', units: ['µm/m/K', 'µin/in/°F'] },
  density: { title: 'Densities', units: ['kg/m³', 'g/cm³', 'lb/in³'] },
  mass: { title: 'Masses', units: ['g', 'kg', 'oz', 'lb'] },
  volume: { title: 'Volumes', units: ['ml', 'in³', 'fl oz'] },
} as const satisfies Record<string, { title: string; units: readonly string[] }>;

export type UnitKind = keyof typeof unitKinds;
export type UnitsOf<K extends UnitKind> = (typeof unitKinds)[K]['units'][number];
export type UnitChoice = { readonly [K in UnitKind]: UnitsOf<K> };

export const kindNames = Object.keys(unitKinds) as UnitKind[];

export const presets = {
  SI: {
    length: 'mm',
    small: 'mm',
    force: 'kN',
    moment: 'N·m',
    stress: 'MPa',
    adhesiveModulus: 'MPa',
    modulus: 'GPa',
    stiffness: 'kN/mm',
    fractureEnergy: 'N/mm',
    temperature: '°C',
    expansion: 'µm/m/K',
    density: 'kg/m³',
    mass: 'g',
    volume: 'ml',
  },
  US: {
    length: 'in',
    small: 'mil',
    force: 'lbf',
    moment: 'lbf·in',
    stress: 'ksi',
    adhesiveModulus: 'ksi',
    modulus: 'Msi',
    stiffness: 'lbf/in',
    fractureEnergy: 'lbf/in',
    temperature: '°F',
    expansion: 'µin/in/°F',
    density: 'lb/in³',
    mass: 'lb',
    volume: 'in³',
  },
} as const satisfies Record<string, UnitChoice>;

export type PresetName = keyof typeof presets;
export const presetNames = Object.keys(presets) as PresetName[];

export const presetOf = (choice: UnitChoice): PresetName | null =>
  presetNames.find((name) => kindNames.every((kind) => presets[name][kind] === choice[kind])) ??
  null;

export interface DisplayUnit {
  /** Empty for a pure number. */
  readonly symbol: string;
  /** One of it, in what is stored. */
  readonly size: Rational;
  /** Places by which the decimal point moves left on the way out, where its size is a power of ten. */
  readonly shift: number | null;
  /** What is stored where it reads zero; left out where that is zero too. */
  readonly zero?: Rational;
  /** Both as doubles, for figures that are only read. */
  readonly scale: number;
  readonly origin: number;
}

const of = (name: string): Rational => namedUnits.get(name)!.factor;
const micro = exact('1e-6');
const thousand = exact('1e3');
const { factor: fahrenheit, zero: zeroOfFahrenheit } = namedUnits.get('degF')!;
const ounce = divided(of('lb'), exact('16'));
const cubicInch = power(of('in'), 3);

/** In N, mm, °C; masses in g, densities in kg/m³, as they are stored or reported. */
const sizes: Readonly<Record<UnitsOf<UnitKind>, Rational>> = {
  mm: of('mm'),
  µm: of('um'),
  in: of('in'),
  mil: of('mil'),
  N: of('N'),
  kN: of('kN'),
  lbf: of('lbf'),
  MPa: of('MPa'),
  GPa: of('GPa'),
  psi: of('psi'),
  ksi: of('ksi'),
  Msi: of('Msi'),
  N·mm: of('N'),
  N·m: of('Nm'),
  lbf·in: times(of('lbf'), of('in')),
  lbf·ft: times(of('lbf'), of('ft')),
  'N/mm': of('N'),
  'kN/mm': of('kN'),
  'J/m²': divided(of('J'), power(of('m'), 2)),
  'lbf/in': divided(of('lbf'), of('in')),
  '°C': rational(1n),
  '°F': fahrenheit,
  'µm/m/K': micro,
  'µin/in/°F': divided(micro, fahrenheit),
  'kg/m³': rational(1n),
  'g/cm³': thousand,
  'lb/in³': times(divided(of('lb'), cubicInch), exact('1e9')),
  g: divided(of('g'), of('g')),
  kg: divided(of('kg'), of('g')),
  oz: divided(ounce, of('g')),
  lb: divided(of('lb'), of('g')),
  ml: power(of('cm'), 3),
  'in³': cubicInch,
  // A gallon is 231 cubic inches and 128 fluid ounces.
  'fl oz': times(cubicInch, rational(231n, 128n)),
};

/** Of a power of ten, the exponent; else null. */
function powerOfTen({ over, under }: Rational): number | null {
  for (let exponent = -12; exponent <= 12; exponent += 1) {
    const size = 10n ** BigInt(Math.abs(exponent));
    if (exponent >= 0 ? over === under * size : under === over * size) return exponent;
  }
  return null;
}

const made = (symbol: string, size: Rational, zero?: Rational): DisplayUnit => ({
  symbol,
  size,
  shift: zero === undefined ? powerOfTen(size) : null,
  ...(zero === undefined ? {} : { zero }),
  scale: toNumber(size),
  origin: zero === undefined ? 0 : toNumber(zero),
});

const bySymbol = new Map<string, DisplayUnit>(
  Object.entries(sizes).map(([symbol, size]) => [symbol, made(symbol, size)]),
);
const onScale = made('°F', fahrenheit, add(zeroOfFahrenheit!, negated(iceInKelvin)));

/** As it is stored, for what has no choice. */
const fixed: Readonly<Partial<Record<Unit, DisplayUnit>>> = {
  '1': made('', rational(1n)),
  cycles: made('cycles', rational(1n)),
  '°': made('°', rational(1n)),
  min: made('min', rational(1n)),
  h: made('h', rational(1n)),
};

const byUnit: Readonly<Partial<Record<Unit, UnitKind>>> = {
  mm: 'length',
  MPa: 'stress',
  N: 'force',
  'N/mm': 'fractureEnergy',
  N·mm: 'moment',
  '°C': 'temperature',
  '1/K': 'expansion',
  'kg/m³': 'density',
};

const byName: Readonly<Partial<Record<QuantityName, UnitKind>>> = {
  // Adherend moduli are quoted in GPa; those of adhesives, a hundred times smaller, in MPa.
  modulus: 'modulus',
  shearModulus: 'modulus',
  adhesiveModulus: 'adhesiveModulus',
  adhesiveShearModulus: 'adhesiveModulus',
  gap: 'small',
  gapTolerance: 'small',
  gapStep: 'small',
  offset: 'small',
  plyThickness: 'small',
  layerThickness: 'small',
  spacerSize: 'small',
  instrumentError: 'small',
  repeatability: 'small',
};

/** Null for what has the same unit for everybody. */
export const kindOfQuantity = (name: QuantityName): UnitKind | null =>
  byName[name] ?? byUnit[quantities[name].unit] ?? null;

/** Stored in °C, but as far as one temperature is from another. */
export const isDifference = (name: QuantityName): boolean => name === 'toleranceTemperature';

/** @param scale false for a difference of two temperatures */
export function unitIn(choice: UnitChoice, kind: UnitKind, scale = true): DisplayUnit {
  const symbol = choice[kind];
  return symbol === '°F' && scale ? onScale : bySymbol.get(symbol)!;
}

export function unitOfQuantity(choice: UnitChoice, name: QuantityName): DisplayUnit {
  const kind = kindOfQuantity(name);
  if (kind !== null) return unitIn(choice, kind, !isDifference(name));
  return fixed[quantities[name].unit]!;
}

/** Of a choice that is no longer whole, or was never ours: what of it can be read, the rest as in SI. */
export function readChoice(from: unknown): UnitChoice {
  const kept = (typeof from === 'object' && from !== null ? from : {}) as Record<string, unknown>;
  return Object.fromEntries(
    kindNames.map((kind) => {
      const units: readonly string[] = unitKinds[kind].units;
      const symbol = kept[kind];
      return [
        kind,
        typeof symbol === 'string' && units.includes(symbol) ? symbol : presets.SI[kind],
      ];
    }),
  ) as unknown as UnitChoice;
}

/**
 * What has no choice of its own: areas go with lengths, turns with moments, loads of coupons with forces. Some
 * are written in smaller units of SI than what they go with, as their tables always were.
 */
export type DerivedKind =
  | 'area'
  | 'bondVolume'
  | 'difference'
  | 'load'
  | 'rotation'
  | 'spring'
  | 'turnSpring'
  | 'bendingStiffness';
export type Measure = UnitKind | DerivedKind;

const squares = new Map(
  unitKinds.length.units.map((name) => [name, made(`${name}²`, power(sizes[name], 2))]),
);
const turns = new Map(
  unitKinds.moment.units.map((name) => [
    name,
    // A turn of a joint is stiff: where moments are in N·m, kN·m a radian.
    name === 'N·m'
      ? made('kN·m/rad', times(sizes[name], thousand))
      : made(`${name}/rad`, sizes[name]),
  ]),
);
const newtonSquareMillimetre = made('N·mm²', sizes.N·mm);
const poundSquareInch = made('lbf·in²', times(of('lbf'), power(of('in'), 2)));
const cubicMillimetre = made('mm³', rational(1n));

export function unitOfMeasure(choice: UnitChoice, measure: Measure): DisplayUnit {
  switch (measure) {
    case 'area':
      return squares.get(choice.length)!;
    case 'rotation':
      return turns.get(choice.moment)!;
    case 'bondVolume':
      return choice.volume === 'ml' ? cubicMillimetre : unitIn(choice, 'volume');
    case 'load':
      return choice.force === 'kN' ? bySymbol.get('N')! : unitIn(choice, 'force');
    case 'spring':
      return choice.stiffness === 'kN/mm' ? bySymbol.get('N/mm')! : unitIn(choice, 'stiffness');
    case 'turnSpring':
      return choice.moment === 'N·m' ? turns.get('N·mm')! : turns.get(choice.moment)!;
    case 'bendingStiffness':
      return choice.moment.startsWith('lbf') ? poundSquareInch : newtonSquareMillimetre;
    case 'difference':
      return unitIn(choice, 'temperature', false);
    default:
      return unitIn(choice, measure);
  }
}
