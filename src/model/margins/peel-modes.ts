/**
 * Modes that the layered model finds in the bonds: peel, peel with shear, between plies, fracture.
 * docs/method.md, margins.
 *
 * Peel and failure between plies end the joint: they are judged with the shear capped at yield, where
 * the elastic model overstates peel. First yield under both, and fracture energies, are elastic.
 */
import { fractureAt } from '../joint/knockdown.ts';
import type { AdhesiveInput, Factors, Material } from '../joint/types.ts';
import { constrainedModulus } from '../layered/of-joint.ts';
import { askedFactor, type Mode } from './asked.ts';
import { type BondFields, bondFields, type Sample, type Where } from './bond-fields.ts';
import { type CappedReach, cappedReach } from './capped-factor.ts';
import { worstClockings } from './clocking.ts';
import { fractureFactor, peelFactor, peelShearFactor } from './peel-factor.ts';
import { type ModeResult, resultOf, UNLOADED } from './result.ts';
import { BELOW, SURELY } from './shear-factor.ts';
import type { JointState } from './state.ts';

export interface PeelOptions {
  readonly only?: ReadonlySet<Mode>;
  /** Margins at or above this need not be found exactly: the elastic lower bound is left out then. */
  readonly ofInterest?: (mode: Mode) => number;
  /** Load factor at which the bonds fail in shear. */
  readonly shearStrength: number;
}

export interface Found {
  readonly factor: number;
  readonly bond: number;
  readonly x: number;
  readonly theta: number;
}

export type FactorOf = (sample: Sample) => number;

export function peelModes(
  state: JointState,
  adhesive: AdhesiveInput,
  factors: Factors,
  options: PeelOptions,
): ModeResult[] {
  const { assembly, adhesives, ledgers, bonds, loadCase } = state;
  const fields = bondFields(state);
  const results: ModeResult[] = [];

  const judge = (
    mode: Mode,
    factorOf: FactorOf,
    capped: CappedReach['judge'] | null,
    where?: Where,
  ): void => {
    if (options.only && !options.only.has(mode)) return;
    const asked = askedFactor(mode, loadCase.kind, factors);
    if (asked === null) return;
    const interest = options.ofInterest?.(mode) ?? Number.POSITIVE_INFINITY;
    const elastic = worst(state, fields, factorOf, where, (1 + interest) * asked);
    if (!elastic || !(elastic.factor < UNLOADED)) return;
    if (elastic.factor / asked - 1 >= interest) return;
    const reach = capped
      ? cappedReach(
          state,
          { ...elastic, judge: capped, shearStrength: options.shearStrength },
          (1 + interest) * asked,
        )
      : { ...elastic, shearFirst: false };
    if (!reach) return;
    results.push(
      resultOf(state, {
        mode,
        part: assembly.bonds[reach.bond]!.name,
        reached: reach.factor,
        asked,
        x: reach.x,
        theta: elastic.theta,
        wholeBondFlows: false,
        shearFirst: reach.shearFirst,
      }),
    );
  };

  const strengths = adhesives.map(({ peelStrength }) => peelStrength);
  const known = strengths.every((strength) => strength !== undefined);
  if (known) {
    const peel = (j: number): number => strengths[j]!;
    judge(
      'adhesive-peel',
      (sample) => peelFactor(sample, peel(sample.bond)),
      ({ bond, peel: stress }) => stress / peel(bond),
    );
    judge(
      'peel-shear',
      (sample) => peelShearFactor(sample, peel(sample.bond), bonds[sample.bond]!.shearYield),
      null,
    );
  }

  const faces = interlaminarOf(state);
  if (faces.some((ofBond) => ofBond.length > 0)) {
    judge('interlaminar', interlaminarFactor(faces), ({ bond, peel, shear }) =>
      interlaminarUse(faces[bond]!, peel, shear),
    );
  }

  const { fracture } = adhesive;
  if (fracture) {
    const limits = ledgers.map(({ left }) => fractureAt(fracture, left));
    const stiffness = adhesives.map((own, j) => ({
      gap: assembly.bonds[j]!.gap,
      normal: constrainedModulus(own),
      shear: own.shearModulus,
    }));
    judge(
      'fracture',
      (sample) => fractureFactor(sample, stiffness[sample.bond]!, limits[sample.bond]!),
      null,
      'ends',
    );
  }
  return results;
}

/** A face at which a bond meets a laminate whose interlaminar strengths are known. */
export interface Interface {
  /** Zt and S13, MPa. */
  readonly tension: number;
  readonly shear: number;
}

/** The faces of each bond. */
export const interlaminarOf = ({ assembly }: JointState): Interface[][] =>
  assembly.bonds.map((_bond, j) =>
    [assembly.tube, assembly.outers[j]!].flatMap(({ material }) => {
      const strengths = interlaminarStrengths(material);
      return strengths ? [strengths] : [];
    }),
  );

export const interlaminarFactor =
  (faces: readonly (readonly Interface[])[]): FactorOf =>
  (sample) => {
    let lowest = Number.POSITIVE_INFINITY;
    for (const { tension, shear } of faces[sample.bond]!) {
      lowest = Math.min(lowest, peelShearFactor(sample, tension, shear));
    }
    return lowest;
  };

/** Stress over strength on the face that is used most; 1 where plies part. */
export function interlaminarUse(faces: readonly Interface[], peel: number, shear: number): number {
  let most = 0;
  for (const face of faces) {
    most = Math.max(most, Math.hypot(Math.max(peel, 0) / face.tension, shear / face.shear));
  }
  return most;
}

export function interlaminarStrengths(material: Material): Interface | null {
  if (material.kind === 'isotropic') return null;
  const { interlaminarTension: tension, interlaminarShear: shear } = material;
  return tension === undefined || shear === undefined ? null : { tension, shear };
}

/**
 * The lowest factor over bonds, stations and clockings; the last digits of a flat lap by rounds.
 * @param factorOf never more for more peel, or for more shear either way
 * @param enough null may be given where the lowest factor is at or above this
 */
export function worst(
  state: JointState,
  fields: BondFields,
  factorOf: FactorOf,
  where?: Where,
  enough = Number.POSITIVE_INFINITY,
): Found | null {
  const { assembly, layered, loadCase } = state;
  /** Of the clocking that was looked at last. */
  let worstPlace = -1;
  const at = (theta: number, bendsAt: number, passes?: (place: number) => boolean): Found => {
    let found: Found = { factor: Number.POSITIVE_INFINITY, bond: 0, x: 0, theta };
    const see = (sample: Sample, place: number): void => {
      const factor = factorOf(sample);
      if (factor < found.factor * BELOW) {
        found = { factor, bond: sample.bond, x: sample.x, theta };
        worstPlace = place;
      }
    };
    fields.visit(theta, bendsAt, see, where, passes);
    return found;
  };
  if (layered.bendsWithLoad) return atOwnLoad((factor) => at(0, factor));
  const least = leastFactors(fields, factorOf, where);
  if (least.every((factor) => factor >= enough)) return null;
  const known = new Map<number, Found>();
  const atClocking = (theta: number): Found => {
    let found = known.get(theta);
    if (!found) {
      // What was worst at the clocking before is near to being so here: the rest need not be looked at.
      let near = Number.POSITIVE_INFINITY;
      if (worstPlace >= 0) {
        const see = (sample: Sample): void => {
          near = factorOf(sample);
        };
        fields.visit(theta, 1, see, where, (place) => place === worstPlace);
      }
      found = at(theta, 1, (place) => !(least[place]! > near));
      known.set(theta, found);
    }
    return found;
  };
  const [lowest] = worstClockings(
    assembly.flat,
    loadCase.loads,
    (theta) => atClocking(theta).factor,
  );
  return lowest ? atClocking(lowest.theta) : null;
}

/** What the factor of each place is not below at any clocking. */
function leastFactors(fields: BondFields, factorOf: FactorOf, where?: Where): Float64Array {
  const least = new Float64Array(fields.places(where)).fill(Number.POSITIVE_INFINITY);
  fields.visitBounds((sample, place) => {
    const factor = factorOf(sample) * SURELY;
    if (!(factor >= least[place]!)) least[place] = factor;
  }, where);
  return least;
}

const ROUNDS = 60;

/** Edge moments fall as the load grows: the factor is sought at the load that it itself makes. */
function atOwnLoad(at: (factor: number) => Found): Found {
  let found = at(1);
  for (let round = 0; round < ROUNDS; round++) {
    if (!(found.factor < UNLOADED) || found.factor === 0) return found;
    const next = at(found.factor);
    const moved = Math.abs(next.factor - found.factor);
    found = next;
    if (moved <= 1e-9 * next.factor) break;
  }
  return found;
}
