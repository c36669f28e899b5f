/** In a few words, what a material of walls and strips is like. */
import type { Adherend } from '../../shared/project.ts';
import type { LaminateReport } from '../../shared/reports.ts';
import { displayUnit, withUnit } from '../../shared/units.ts';
import { rounded } from './stack/figures.ts';

function aboutLaminate(stack: string, report: LaminateReport | null, across: string): string {
  if (!report) return stack;
  const { axialModulus, hoopModulus } = report.plane;
  const held = report.curvatureHeld ? '; curvature suppressed' : '';
  const { symbol } = displayUnit('modulus');
  return `E ${rounded('modulus', axialModulus)} ${symbol} along, ${rounded('modulus', hoopModulus)} ${symbol} ${across}${held}`;
}

/** @param report of a laminate; without it its stack stands for it */
export function aboutAdherend(
  adherend: Adherend,
  report: LaminateReport | null,
  flat: boolean,
): string {
  const across = flat ? 'across' : 'around';
  switch (adherend.kind) {
    case 'isotropic':
      return `E ${withUnit('modulus', adherend.modulus)}, yield ${withUnit('strength', adherend.yieldStrength)}`;
    case 'orthotropic':
      return `E ${withUnit('modulus', adherend.axialModulus)} along, ${withUnit('modulus', adherend.hoopModulus)} ${across}`;
    case 'laminate':
      return aboutLaminate(adherend.stack, report, across);
  }
}
