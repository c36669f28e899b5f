/**
 * Units by name, each an exact multiple of the units that are stored: what an expression may name, and what
 * the units on the screen are made of.
 */
import { parseDecimal } from './number-entry.ts';
import type { Unit } from './quantities.ts';
import { divided, ofDecimal, power, type Rational, rational, times } from './rational.ts';

/** Powers of N, mm, K, kg, s and degrees of angle. Force stands for itself: nothing here accelerates. */
export type Dimension = readonly [
  force: number,
  length: number,
  temperature: number,
  mass: number,
  time: number,
  angle: number,
];

const pure: Dimension = [0, 0, 0, 0, 0, 0];
const force: Dimension = [1, 0, 0, 0, 0, 0];
const length: Dimension = [0, 1, 0, 0, 0, 0];
const temperature: Dimension = [0, 0, 1, 0, 0, 0];
const mass: Dimension = [0, 0, 0, 1, 0, 0];
const time: Dimension = [0, 0, 0, 0, 1, 0];
const angle: Dimension = [0, 0, 0, 0, 0, 1];

export const product = (a: Dimension, b: Dimension, sign = 1): Dimension =>
  a.map((exponent, i) => exponent + sign * b[i]!) as unknown as Dimension;
export const raised = (a: Dimension, exponent: number): Dimension =>
  // Zero times a negative exponent would be another zero.
  a.map((one) => (one === 0 ? 0 : one * exponent)) as unknown as Dimension;
export const isSame = (a: Dimension, b: Dimension): boolean => a.every((one, i) => one === b[i]);

export const noDimension = pure;
export const temperatureDimension = temperature;
const stress = product(force, length, -2);
const moment = product(force, length);
export const momentDimension = moment;
const perKelvin = raised(temperature, -1);
const density = product(mass, length, -3);

const words: readonly (readonly [Dimension, string])[] = [
  [pure, 'a number without a unit'],
  [length, 'a length'],
  [product(length, length), 'an area'],
  [product(length, length, 2), 'a volume'],
  [force, 'a force'],
  [moment, 'a moment'],
  [stress, 'a stress'],
  [product(force, length, -1), 'a force per length'],
  [temperature, 'a temperature'],
  [perKelvin, 'an expansion per kelvin'],
  [mass, 'a mass'],
  [density, 'a density'],
  [time, 'a time'],
  [angle, 'an angle'],
];

/** `a length`, as it stands in a sentence. */
export const dimensionWords = (dimension: Dimension): string =>
  words.find(([one]) => isSame(one, dimension))?.[1] ?? 'of no kind that a field takes';

export interface NamedUnit {
  readonly factor: Rational;
  readonly dimension: Dimension;
  /** As it is written in an answer, where that is not its name. */
  readonly shown?: string;
  /** What is added after the factor: a reading on a scale whose zero is not that of kelvin. */
  readonly zero?: Rational;
}

export const exact = (text: string): Rational => ofDecimal(parseDecimal(text)!);
const unit = (factor: string | Rational, dimension: Dimension, shown?: string): NamedUnit => ({
  factor: typeof factor === 'string' ? exact(factor) : factor,
  dimension,
  ...(shown === undefined ? {} : { shown }),
});

const thousand = exact('1e3');
const thousandth = exact('1e-3');
const inch = exact('25.4');
const poundForce = exact('4.4482216152605');
const psi = divided(poundForce, power(inch, 2));
const fahrenheit = rational(5n, 9n);
export const iceInKelvin = exact('273.15');

/** By a map: no name of JavaScript's own objects is found in it. */
export const namedUnits: ReadonlyMap<string, NamedUnit> = new Map(
  Object.entries({
    mm: unit('1', length),
    cm: unit('10', length),
    m: unit('1e3', length),
    um: unit('1e-3', length, 'µm'),
    in: unit(inch, length),
    ft: unit('304.8', length),
    mil: unit(times(inch, thousandth), length),
    thou: unit(times(inch, thousandth), length),
    uin: unit(times(inch, exact('1e-6')), length, 'µin'),
    N: unit('1', force),
    kN: unit('1e3', force),
    lbf: unit(poundForce, force),
    kip: unit(times(poundForce, thousand), force),
    Nmm: unit('1', moment, 'N·mm'),
    Nm: unit('1e3', moment, 'N·m'),
    kNm: unit('1e6', moment, 'kN·m'),
    J: unit('1e3', moment),
    Pa: unit('1e-6', stress),
    MPa: unit('1', stress),
    GPa: unit('1e3', stress),
    psi: unit(psi, stress),
    ksi: unit(times(psi, thousand), stress),
    Msi: unit(times(psi, exact('1e6')), stress),
    K: unit('1', temperature),
    degC: { ...unit('1', temperature, '°C'), zero: iceInKelvin },
    degF: {
      ...unit(fahrenheit, temperature, '°F'),
      zero: times(exact('459.67'), fahrenheit),
    },
    kg: unit('1', mass),
    g: unit('1e-3', mass),
    lb: unit('0.45359237', mass),
    s: unit('1', time),
    min: unit('60', time),
    h: unit('3600', time),
    deg: unit('1', angle, '°'),
    percent: unit('1e-2', pure, '%'),
    cycles: unit('1', pure),
  }),
);

/** Of each kind what is told to whoever named another unit, as it is typed. */
const lists: readonly (readonly [Dimension, string])[] = [
  [length, 'mm, cm, m, µm, in, ft, mil, thou'],
  [force, 'N, kN, lbf, kip'],
  [moment, 'N·m, N·mm, kN·m, in-lbf, ft-lbf'],
  [stress, 'MPa, GPa, Pa, psi, ksi, Msi'],
  [product(force, length, -1), 'N/mm, kN/mm, J/m², lbf/in'],
  [temperature, '°C, °F, K'],
  [perKelvin, '1/K, µm/m/K, µin/in/°F'],
  [density, 'kg/m³, g/cm³, lb/in³'],
  [mass, 'kg, g, lb'],
  [time, 's, min, h'],
  [angle, '°'],
];

/** `mm, cm, m …`: the units of one kind; empty of what has none but the per cent. */
export const unitsOfKind = (dimension: Dimension): string =>
  lists.find(([one]) => isSame(one, dimension))?.[1] ?? '';

/** The same with pounds and kilograms meant as forces: what whoever typed `lb` for `lbf` had in mind. */
export const massAsForce = ([force, length, temperature, mass, ...rest]: Dimension): Dimension => [
  force + mass,
  length,
  temperature,
  0,
  ...rest,
];

/** One of what is stored, in the same measure. */
export const storedUnits: Readonly<Record<Unit, readonly [Rational, Dimension]>> = {
  mm: [exact('1'), length],
  MPa: [exact('1'), stress],
  N: [exact('1'), force],
  'N/mm': [exact('1'), product(force, length, -1)],
  N·mm: [exact('1'), moment],
  '°C': [exact('1'), temperature],
  '1/K': [exact('1'), perKelvin],
  'kg/m³': [exact('1e-9'), density],
  '1': [exact('1'), pure],
  cycles: [exact('1'), pure],
  '°': [exact('1'), angle],
  min: [exact('60'), time],
  h: [exact('3600'), time],
};
