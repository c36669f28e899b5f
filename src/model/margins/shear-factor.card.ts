/** The factor on the loads at which elastic shear reaches a limit, thermal stress held fixed. */
import { COMMON_PRACTICE, type Equation, equation, type Named } from '../card.ts';

export interface Limit {
  /** `tau_p`, or a share of it. */
  readonly formula: string;
  readonly symbols: Readonly<Record<string, Named>>;
  readonly words: string;
}

export const YIELD: Limit = {
  formula: 'tau_p',
  symbols: { tau_p: ['yield shear of the adhesive', 'MPa'] },
  words: 'the yield shear',
};
export const FATIGUE: Limit = {
  formula: '(q*tau_p)',
  symbols: {
    tau_p: ['yield shear of the adhesive', 'MPa'],
    q: ['share of yield allowed for this life', ''],
  },
  words: 'what its life allows',
};

const THERMAL: Named = ['shear by temperature at this place, elastic', 'MPa'];
const LOAD: Named = ['shear per load factor at this place, elastic', 'MPa'];
const AROUND: Named = ['shear around the axis per load factor at this place, elastic', 'MPa'];
const result = ['lambda', 'factor on the loads of the case', ''] as const;
const DOMAINS = ['short-overlap', 'thick-wall', 'outside-table', 'gap-outside-table'] as const;

/** Shear in one direction alone. */
export const reachOneWay = ({ formula, symbols, words }: Limit): Equation<string> =>
  equation<string>({
    id: 'reach-shear',
    title: 'Factor at which it is reached',
    statement: `The loads grow, thermal stress stays, until the elastic shear is ${words} at its worst place.`,
    formula: `(${formula} - tau_T*tau_1/abs(tau_1))/abs(tau_1)`,
    symbols: { ...symbols, tau_T: THERMAL, tau_1: LOAD },
    result,
    source: COMMON_PRACTICE,
    domains: DOMAINS,
  });

/**
 * Both directions: the positive root of |(τT + λτ1, λτθ)| = limit.
 * @param against thermal stress counts against the load: the form of the root that cancels nothing
 */
export const reachBothWays = (
  { formula, symbols, words }: Limit,
  against: boolean,
): Equation<string> => {
  const root = `sqrt((tau_T*tau_1)^2 + (tau_1^2 + tau_theta^2)*(${formula}^2 - tau_T^2))`;
  return equation<string>({
    id: 'reach-shear',
    title: 'Factor at which it is reached',
    statement: `The loads grow, thermal stress stays, until the elastic shear along and around together is ${words} at its worst place: the positive root of a quadratic.`,
    formula: against
      ? `(${root} - tau_T*tau_1)/(tau_1^2 + tau_theta^2)`
      : `(${formula}^2 - tau_T^2)/(tau_T*tau_1 + ${root})`,
    symbols: { ...symbols, tau_T: THERMAL, tau_1: LOAD, tau_theta: AROUND },
    result,
    source: COMMON_PRACTICE,
    domains: DOMAINS,
  });
};

export const reachedCold = ({ formula, symbols, words }: Limit): Equation<string> =>
  equation<string>({
    id: 'reach-shear',
    title: 'Reached by temperature alone',
    statement: `Thermal shear alone is ${words} or more: nothing is left for the load.`,
    formula: `max(0, 1 - abs(tau_T)/${formula})`,
    symbols: { ...symbols, tau_T: THERMAL },
    result,
    source: COMMON_PRACTICE,
    domains: DOMAINS,
  });
