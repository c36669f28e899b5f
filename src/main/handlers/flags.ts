/** What a reader must know about a joint's figures beside the figures. */

import { adhesiveStateAt } from '../../model/joint/adhesive-state.ts';
import { assemble } from '../../model/joint/assembly.ts';
import type { AdhesiveInput, CaseInput } from '../../model/joint/types.ts';
import { bare, degreesCelsius, say, smallMillimetres } from '../../model/said.ts';
import { THIN_WALL } from '../../model/validity/domains.ts';
import type { Flag } from '../../shared/reports.ts';
import { caseText } from '../../shared/words.ts';
import type { ResolvedJoint } from './resolve.ts';
import { stackFlags } from './stack-flags.ts';

/** Bondlines for which adhesives' shear properties are usually measured, mm (common practice, no source). */
const USUAL_GAP = { min: 0.05, max: 0.5 };

export function jointFlags(resolved: ResolvedJoint): Flag[] {
  const { input, adhesive, cases } = resolved;
  const flags: Flag[] = missingData(resolved);
  for (const { loadCase, condition, input: loaded } of cases) {
    const state = adhesiveStateAt(adhesive, loaded.temperature, loaded.moisture);
    if (state.outsideTable) {
      flags.push({
        code: 'outside-table',
        ...say`${caseText(loadCase.name, condition?.name ?? null)}: ${degreesCelsius(loaded.temperature)} lies beyond the adhesive's ${loaded.moisture} properties; the nearest row is used, not an extrapolation.`,
      });
    }
    // What the loads and their kind bring is the same in all surroundings.
    if (condition !== null) continue;
    if (loaded.kind === 'cyclic' && !adhesive.fatigue) {
      flags.push({
        code: 'no-fatigue',
        message: `${loadCase.name}: the adhesive has no S-N line, so cyclic shear is not checked; first yield is, and that is not enough for a long life. Give the adhesive one from coupons.`,
      });
    }
    const ratio = ratioMessage(loaded, adhesive);
    if (ratio) flags.push({ ...ratio, message: `${loadCase.name}: ${ratio.message}` });
    const { force, moment, torque, shear } = loaded.loads;
    if (force === 0 && moment === 0 && torque === 0 && shear === 0) {
      flags.push({
        code: 'no-load',
        message: `${loadCase.name}: no load acts on this joint, so it has no margin in that case; only thermal stress is there.`,
      });
    }
  }
  const assembly = assemble(input, 'nominal');
  if (assembly.bonds.length === 2) {
    flags.push({
      code: 'built-in-root',
      message:
        'Peel at the root, where the outer walls are built into solid metal, is not resolved: finite elements give two to five times as much right at that corner under load. The rows of peel judge it as the model has it.',
    });
  }
  flags.push(...stackFlags(assembly));
  for (const part of [assembly.tube, ...assembly.outers]) {
    const ratio = part.root.meanRadius / part.root.thickness;
    if (!assembly.flat && ratio < THIN_WALL) {
      flags.push({
        code: 'thick-wall',
        message: `The ${part.name}'s mean radius is ${ratio.toFixed(1)} times its wall; below ${THIN_WALL} the stress varies through the wall, which shear lag does not see.`,
      });
    }
  }
  for (const bond of assembly.bonds) {
    if (bond.gap < USUAL_GAP.min || bond.gap > USUAL_GAP.max) {
      flags.push({
        code: 'unusual-gap',
        ...say`The ${bond.name} is ${smallMillimetres(bond.gap)} thick; shear properties are usually measured between ${bare(smallMillimetres(USUAL_GAP.min))} and ${smallMillimetres(USUAL_GAP.max)} and change outside.`,
      });
    }
  }
  return flags;
}

/** What the load ratio of a cyclic case, or one that is not given, means for its margin. */
function ratioMessage(loaded: CaseInput, { fatigue }: AdhesiveInput): Flag | null {
  if (loaded.kind !== 'cyclic' || !fatigue) return null;
  const [own, line] = [loaded.ratio, fatigue.ratio];
  if (own !== undefined && line !== undefined) {
    return own === line
      ? null
      : {
          code: 'ratio-carried',
          message: `its load ratio ${minus(own)} is not that of the S-N line, ${minus(line)}: it is carried over by Goodman's line, an approximation made for metals. Test at the ratio of service.`,
        };
  }
  const missing =
    own === undefined
      ? line === undefined
        ? 'neither its load ratio nor that of the S-N line is given'
        : 'its load ratio is not given'
      : 'the load ratio of the S-N line is not given';
  return {
    code: 'ratio-unknown',
    message: `${missing}, so that both are taken to be the same. A load that reverses is far worse than one that only pulses.`,
  };
}

/** What the project does not say, and what is therefore not checked or left out. */
function missingData({ adhesive, input }: ResolvedJoint): Flag[] {
  const flags: Flag[] = [];
  const say = (code: string, message: string): void => {
    flags.push({ code, message });
  };
  if (adhesive.states.some(({ peelStrength }) => peelStrength === undefined)) {
    say(
      'no-peel-strength',
      'The adhesive has no peel strength at every temperature and moisture: peel is not checked where it is missing. A bonded laminate often fails by peel first.',
    );
  }
  if (adhesive.expansion === undefined) {
    say(
      'no-expansion',
      "The adhesive's own expansion is not given: its shrinkage on cooling is left out of peel.",
    );
  }
  if (!adhesive.fracture) {
    say(
      'no-fracture',
      'The adhesive has no fracture energies: a crack in the bond is not checked.',
    );
  }
  const { tube, outers } = assemble(input, 'nominal');
  for (const { name, material } of [tube, ...outers]) {
    if (material.kind !== 'orthotropic') continue;
    const { interlaminarTension, interlaminarShear, throughExpansion, throughModulus } = material;
    if (interlaminarTension === undefined || interlaminarShear === undefined) {
      say(
        'no-interlaminar',
        `The ${name} has no strengths between plies: a laminate often parts there, one ply below the bond, and it is not checked.`,
      );
    }
    if (throughExpansion === undefined || throughModulus === undefined) {
      say(
        'no-through-thickness',
        `The ${name} lacks modulus or expansion through its thickness: peel takes it as rigid there, or leaves its own shrinkage out.`,
      );
    }
  }
  return flags;
}

/** With the sign that the rest of the page uses. */
const minus = (value: number): string => String(value).replace('-', '−');
