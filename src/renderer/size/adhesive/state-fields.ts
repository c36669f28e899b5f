/** The figures of an adhesive in one state as fields, and the state that a new row begins with. */
import type { Adhesive } from '../../../shared/project.ts';
import { type QuantityName, quantities } from '../../../shared/quantities.ts';

export type AdhesiveState = Adhesive['states'][number];
type FigureOf<T> = { [K in keyof T]-?: NonNullable<T[K]> extends number ? K : never }[keyof T];

export interface StateField {
  readonly key: FigureOf<AdhesiveState>;
  readonly label: string;
  /** As it is read out before `at 60 °C wet`. */
  readonly name: string;
  readonly quantity: QuantityName;
  readonly help?: string;
  readonly optional?: true;
}

/** All but the temperature, which says which state it is. */
export const stateFields: readonly StateField[] = [
  { key: 'modulus', label: 'E', name: 'Modulus', quantity: 'adhesiveModulus' },
  { key: 'shearModulus', label: 'G', name: 'Shear modulus', quantity: 'adhesiveShearModulus' },
  { key: 'shearYield', label: 'Shear yield', name: 'Shear yield', quantity: 'shearYield' },
  {
    key: 'plasticStrain',
    label: 'Plastic strain',
    name: 'Plastic strain',
    quantity: 'plasticStrain',
  },
  {
    key: 'peelStrength',
    label: 'Peel strength',
    name: 'Peel strength',
    quantity: 'peelStrength',
    help: 'Stress across the bond at which it opens, in this state; not set, peel is not checked.',
    optional: true,
  },
];

export const MOST_STATES = 40;

const STEP = 10;
const { min: COLDEST, max: HOTTEST } = quantities.temperature;

/** The last row a step warmer, or where that is taken or too hot at the next free step: to be changed. */
export function nextState(states: readonly AdhesiveState[]): AdhesiveState {
  const last = states[states.length - 1]!;
  const isFree = (temperature: number): boolean =>
    temperature >= COLDEST &&
    temperature <= HOTTEST &&
    !states.some((one) => one.moisture === last.moisture && one.temperature === temperature);
  for (let n = 1; ; n++) {
    for (const temperature of [last.temperature + n * STEP, last.temperature - n * STEP]) {
      if (isFree(temperature)) return { ...last, temperature };
    }
  }
}
