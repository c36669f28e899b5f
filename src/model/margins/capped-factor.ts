/**
 * The load factor at which peel ends the joint when the bonds flow on the way: found on the layered
 * model with its shear capped at yield, from the elastic factor upward.
 */
import { fieldStations } from '../layered/fields.ts';
import { findRoot } from '../numerics/root.ts';
import { hoopShear, pullOfPeel } from './bond-fields.ts';
import { BELOW } from './shear-factor.ts';
import type { JointState } from './state.ts';

export interface CappedPlace {
  readonly bond: number;
  readonly peel: number;
  /** Resultant shear, capped. */
  readonly shear: number;
}

export interface CappedReach {
  /** Elastic factor, place and clocking: the capped factor is not lower. */
  readonly factor: number;
  readonly bond: number;
  readonly x: number;
  readonly theta: number;
  /** Load factor at which the bonds fail in shear. */
  readonly shearStrength: number;
  /** Stress over strength at a place: 1 where the mode is reached; proportional to the stress. */
  judge(place: CappedPlace): number;
}

export interface Reached {
  readonly factor: number;
  readonly bond: number;
  readonly x: number;
  /**
   * True when the bonds fail in shear before the mode is reached: the factor is then the least at which
   * the mode could be, the larger of shear's own and the elastic one.
   */
  readonly shearFirst: boolean;
}

interface Use {
  readonly share: number;
  readonly bond: number;
  readonly x: number;
}

const TOLERANCE = 1e-6;
/** A use this near to 1 is 1: stress goes with the factor, or a little faster. */
const REACHED = 1e-8;
/** How near to the flow of the whole bond states are looked for. */
const CLOSE = 1e-3;

/**
 * @param interest factors at or above this need not be found
 * @returns null when the factor is not below `interest`
 */
export function cappedReach(
  state: JointState,
  reach: CappedReach,
  interest: number,
): Reached | null {
  const elastic: Reached = { ...reach, shearFirst: false };
  if (reach.factor === 0) return elastic;
  // No further than shear itself lets the joint come.
  if (reach.factor >= reach.shearStrength) return shearDecides(reach);
  const useAt = uses(state, reach);
  let low = reach.factor;
  let high = Math.min(reach.shearStrength, interest);
  let far = useAt(high);
  // The shells flow from end to end a little before the shear lag does: as far as they still hold.
  for (let beyond = high; !far && beyond - low > CLOSE * beyond; ) {
    high = (low + beyond) / 2;
    const use = useAt(high);
    if (!use) beyond = high;
    else if (use.share >= 1) far = use;
    else low = high;
  }
  // Nothing between the last state that holds and the flow reaches it, or nothing up to `interest`.
  if (!far || far.share < 1) {
    return high < interest || reach.shearStrength <= interest ? shearDecides(reach) : null;
  }
  const first = useAt(low);
  if (!first) return elastic;
  if (first.share >= 1 - TOLERANCE) return at(low, first);
  // A false-position step first: stress over strength is nearly a straight line in the factor.
  const guess = low + ((high - low) * (1 - first.share)) / (far.share - first.share);
  const middle = useAt(guess);
  if (middle) {
    if (middle.share < 1) low = guess;
    else high = guess;
  }
  const over = (value: number): number => {
    const share = useAt(value)?.share ?? 2;
    return Math.abs(share - 1) < REACHED ? 0 : share - 1;
  };
  const factor = findRoot(over, low, high, TOLERANCE * low);
  const found = useAt(factor);
  return found ? at(factor, found) : elastic;
}

const at = (factor: number, { bond, x }: Use): Reached => ({ factor, bond, x, shearFirst: false });

const shearDecides = (reach: CappedReach): Reached => ({
  factor: Math.max(reach.factor, reach.shearStrength),
  bond: reach.bond,
  x: reach.x,
  shearFirst: true,
});

/** The highest use of the mode over bonds and stations at a factor; null without a capped state. */
function uses(
  state: JointState,
  { theta, judge, bond, x: x0 }: CappedReach,
): (factor: number) => Use | null {
  const { assembly, bonds, layered } = state;
  const { unit, force } = hoopShear(state);
  const hoop = force(theta);
  // One load for force and moment: the one whose elastic peel at the place is theirs.
  const pull = pullOfPeel(state, theta, bond, x0);
  const stations = fieldStations(assembly.overlap);
  let known: { readonly load: number; readonly use: Use } | null = null;
  return (factor) => {
    const load = factor * pull;
    const capped = layered.capped(load);
    if (!capped) return null;
    if (known?.load === load) return known.use;
    let worst: Use = { share: 0, bond: 0, x: 0 };
    const columns = capped.solution.columns(stations, load, 1, false).bonds;
    stations.forEach((x, i) => {
      columns.forEach(({ shear, peel }, j) => {
        const around = unit[j]![i]! * hoop * factor;
        const size = Math.min(Math.hypot(shear[i]!, around), bonds[j]!.shearYield);
        const share = judge({ bond: j, peel: peel[i]!, shear: size });
        if (share * BELOW > worst.share) worst = { share, bond: j, x };
      });
    });
    known = { load, use: worst };
    return worst;
  };
}
