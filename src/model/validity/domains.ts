/**
 * Where each method holds, as statements that a result either keeps or leaves. Limits are common
 * practice with no source unless one is named.
 */

import { flatEdgeMoments, isFlatSingle } from '../layered/edge-loads.ts';
import { adhesivePoisson, LARGEST_POISSON } from '../layered/of-joint.ts';
import { type Mode, PEEL_MODES, WALL_MODES } from '../margins/asked.ts';
import type { ModeResult } from '../margins/result.ts';
import type { JointState } from '../margins/state.ts';
import {
  bare,
  degreesCelsius,
  millimetres,
  type Said,
  type SaidFigure,
  saidTogether,
  say,
  smallMillimetres,
} from '../said.ts';

export interface Domain {
  readonly code: string;
  /** What must hold, and what is. */
  readonly text: string;
  /** Those in the text that have a unit. */
  readonly figures?: readonly SaidFigure[];
  readonly inside: boolean;
}

/** Thinnest tube, R/t, for shells and membranes. */
export const THIN_WALL = 5;
/** R/t for lamination theory of flat plies in a tube. */
const FLAT_PLIES = 10;
/** Overlap over the thickest wall, for theories of walls as beams and shells. */
const LONG_ENOUGH = 3;
/** From here on the layered model meets finite elements at a built-in root (the verification book). */
const ROOT_GAPS = 5;
/** Walls over the gap, for a bond that is a thin layer between them. */
const THIN_BOND = 2;

const layered = (mode: Mode): boolean => PEEL_MODES.has(mode) || WALL_MODES.has(mode);

/** With the sign that the rest of the program writes. */
const short = (value: number): string => String(Number(value.toPrecision(3))).replace('-', '−');

const stated = ({ message, figures }: Said): Pick<Domain, 'text' | 'figures'> => ({
  text: message,
  ...(figures ? { figures } : {}),
});

/** `0.2 and 0.4 mm` */
const gapsOf = (gaps: readonly number[]): Said => {
  const figures = gaps.map((gap) => smallMillimetres(gap, 3));
  return saidTogether([...figures.slice(0, -1).map(bare), ...figures.slice(-1)], ' and ');
};

export function domainsOf(result: ModeResult, state: JointState): Domain[] {
  const { assembly, ledgers, adhesives, loadCase } = state;
  const parts = [assembly.tube, ...assembly.outers];
  const domains: Domain[] = [];
  const thickest = Math.max(
    ...parts.map(({ root, mouth }) => Math.max(root.thickness, mouth.thickness)),
  );
  domains.push({
    code: 'short-overlap',
    text: `the overlap is at least ${LONG_ENOUGH} times the thickest wall (here ${short(assembly.overlap / thickest)} times)`,
    inside: assembly.overlap >= LONG_ENOUGH * thickest,
  });
  if (!assembly.flat) {
    const ratios = parts.map(({ name, root }) => ({
      name,
      ratio: root.meanRadius / root.thickness,
    }));
    const worst = ratios.reduce((a, b) => (b.ratio < a.ratio ? b : a));
    domains.push({
      code: 'thick-wall',
      text: `every wall is thin, mean radius at least ${THIN_WALL} times the wall (the ${worst.name}: ${short(worst.ratio)})`,
      inside: worst.ratio >= THIN_WALL,
    });
  }
  domains.push(
    {
      code: 'outside-table',
      ...stated(
        say`${degreesCelsius(loadCase.temperature, 3)} lies within the adhesive's table of properties`,
      ),
      inside: !adhesives[0]!.outsideTable,
    },
    {
      code: 'gap-outside-table',
      ...stated(
        say`the gap (${gapsOf(assembly.bonds.map(({ gap }) => gap))}) lies within the table of strength against gap`,
      ),
      inside: ledgers.every(({ gapOutsideTable }) => !gapOutsideTable),
    },
  );
  if (layered(result.mode)) {
    const thinnest = Math.min(
      ...assembly.bonds.map(
        ({ gap }) => Math.min(...parts.map(({ mouth }) => mouth.thickness)) / gap,
      ),
    );
    domains.push(
      {
        code: 'thick-bond',
        text: `the bond is a thin layer, every wall at least ${THIN_BOND} times the gap (here ${short(thinnest)} times)`,
        inside: thinnest >= THIN_BOND,
      },
      {
        code: 'adhesive-moduli',
        text: `the adhesive's two moduli fit a solid, E/2G − 1 from 0 to ${LARGEST_POISSON} (here ${short(adhesives[0]!.modulus / (2 * adhesives[0]!.shearModulus) - 1)})`,
        inside: fitsSolid(adhesives[0]!),
      },
    );
  }
  if (PEEL_MODES.has(result.mode) && assembly.bonds.length === 2) {
    const gap = Math.max(...assembly.bonds.map((bond) => bond.gap));
    domains.push({
      code: 'built-in-root',
      ...stated(
        say`the place is at least ${ROOT_GAPS} gaps from the root, where the walls are built into solid metal: nearer, the model does not resolve peel (here ${millimetres(result.x, 3)})`,
      ),
      inside: result.x >= ROOT_GAPS * gap,
    });
  }
  if (layered(result.mode) && isFlatSingle(assembly)) {
    const edge = flatEdgeMoments(assembly, loadCase.loads.force);
    domains.push(
      {
        code: 'unbalanced-lap',
        text: 'both adherends of the single lap are alike, as the published edge moments have it',
        inside: edge.balanced,
      },
      {
        code: 'compressed-lap',
        text: 'the single lap is pulled: under compression its edge moment grows with the load',
        inside: !edge.growsWithLoad,
      },
    );
  }
  if (result.mode === 'first-ply' && !assembly.flat) {
    const { root } = assembly.tube;
    domains.push({
      code: 'curved-plies',
      text: `the tube is wide enough to take its plies as flat, R/t at least ${FLAT_PLIES} (here ${short(root.meanRadius / root.thickness)})`,
      inside: root.meanRadius >= FLAT_PLIES * root.thickness,
    });
  }
  if (result.mode === 'adhesive-strain') {
    domains.push({
      code: 'whole-bond-flows',
      text: 'part of the bond stays elastic up to its strength: creep has something to hold on to',
      inside: !result.wholeBondFlows,
    });
  }
  return domains;
}

function fitsSolid(adhesive: JointState['adhesives'][number]): boolean {
  const raw = adhesive.modulus / (2 * adhesive.shearModulus) - 1;
  return Math.abs(raw - adhesivePoisson(adhesive)) < 1e-12;
}
