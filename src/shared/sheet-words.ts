/** What the printed sheet says in words: where figures come from, how they were computed. */

import { isFlat } from './convert-lap.ts';
import type { Adherend, Joint, Project, Source } from './project.ts';
import type { Flag, JointReport, Margin, SweepReport } from './reports.ts';
import { bareWords } from './rests-on.ts';
import { type Said, shownRest } from './said.ts';
import { signed, stateWords } from './words.ts';

export const replaceTypical = 'typical: replace by your coupons';

/** A source in words; what is typical or from memory says that it is to be replaced. */
export function sourceWords({ kind, text }: Source): { mark: string | null; text: string } {
  if (kind === 'typical') return { mark: replaceTypical, text };
  if (kind === 'memory') return { mark: 'from memory: replace by your coupons', text };
  return { mark: null, text: text === '' ? kind : `${kind}: ${text}` };
}

/** Material of a wall by the name that margins and drawings have for it. */
function adherendIdOf(joint: Joint, part: string): string | null {
  switch (joint.type) {
    case 'sleeve-single':
      return part === 'tube' ? joint.tube.adherend : joint.sleeve.adherend;
    case 'sleeve-double':
      if (part === 'tube') return joint.tube.adherend;
      return part === 'spigot' ? joint.spigot.adherend : joint.socket.adherend;
    case 'flat-single':
      return part === 'strip' ? joint.strip.adherend : joint.plate.adherend;
    case 'flat-double':
      if (part === 'strip') return joint.strip.adherend;
      return part === 'lower strap' ? joint.lowerStrap.adherend : joint.upperStrap.adherend;
  }
}

/** What a margin rests on: of a bond as the core says it, of a wall by the source of its material. */
export function restsOnText(margin: Margin, joint: Joint, project: Project): string {
  if (margin.restsOn !== '') return shownRest(margin);
  const adherend = project.adherends.find(({ id }) => id === adherendIdOf(joint, margin.part));
  if (margin.typical) return bareWords.typical;
  return adherend ? bareWords[adherend.source.kind] : 'values as entered';
}

/** Materials of the walls of a joint, each once, with the walls that are made of it. */
export function wallsOf(
  joint: Joint,
  project: Project,
): { readonly adherend: Adherend; readonly parts: readonly string[] }[] {
  const parts = {
    'sleeve-single': ['tube', 'sleeve'],
    'sleeve-double': ['tube', 'socket', 'spigot'],
    'flat-single': ['strip', 'plate'],
    'flat-double': ['strip', 'upper strap', 'lower strap'],
  }[joint.type];
  return project.adherends.flatMap((adherend) => {
    const own = parts.filter((part) => adherendIdOf(joint, part) === adherend.id);
    return own.length === 0 ? [] : [{ adherend, parts: own }];
  });
}

/** State, and how it stands to what was asked: `low: below the target of +0.25`. */
export function stateText(state: Margin['state'], target: number): string {
  const asked = `the target of ${signed(target)}`;
  const how = {
    fails: `below zero; ${asked} asked`,
    low: `below ${asked}`,
    holds: `reaches ${asked}`,
  };
  return `${stateWords[state]}: ${how[state]}`;
}

/** In a few sentences what was computed, with the sections of the method that say it in full. */
export function methodSentences(joint: Joint, report: JointReport): string[] {
  const { type } = joint;
  const two = type === 'sleeve-double' || type === 'flat-double';
  const walls = isFlat(joint) ? 'strip and plates' : 'tube and sleeve';
  const isCyclic = report.margins.some(({ mode }) => mode.startsWith('cyclic'));
  return [
    `Shear lag: ${walls} are elastic walls joined by ${two ? 'two bonds' : 'one bond'}, each elastic up to its yield stress and flowing beyond it up to its ultimate strain, at temperature and moisture of each case (sections 2 to 7).`,
    `Peel, bending of the walls${isFlat(joint) ? '' : ', hoop'} and what they do to the plies: layered shells (section 10${type === 'flat-single' ? '; edge moment, section 11' : ''}).`,
    `Margin = factor on the loads at which a mode is reached over the factor asked, less one; the worst over all load cases, conditions${isFlat(joint) ? ' and gaps' : ', gaps and clockings'} (section 8${isCyclic ? ', cyclic loads among them' : ''}). Strength against overlap: section 9.`,
    'It is a screening method: peel right at a corner built into solid metal, creep, crack growth and ageing beyond the knockdowns entered are not in it.',
    `Model version ${report.modelVersion}; every equation with its source and limits stands in docs/method.md, checks against other solutions in docs/verification.md.`,
  ];
}

export interface Remark {
  readonly said: Said;
  /** Figures that it is about; empty where it is about the joint. */
  readonly about: readonly string[];
}

/** All that must be known of the figures, each once, with the figures that it is said of. */
export function remarksOf(
  report: JointReport,
  sweep: SweepReport | null,
  besides: readonly Flag[],
): Remark[] {
  const found = new Map<string, { readonly said: Said; readonly names: Set<string> }>();
  const add = (flags: readonly Flag[], about: string | null): void => {
    for (const flag of flags) {
      const one = found.get(flag.message) ?? { said: flag, names: new Set<string>() };
      if (about !== null) one.names.add(about);
      found.set(flag.message, one);
    }
  };
  add(report.flags, null);
  add(besides, null);
  for (const margin of report.margins) add(margin.flags, margin.label);
  add(report.stress?.flags ?? [], 'stress along the bond');
  add(sweep?.flags ?? [], 'strength against overlap');
  return [...found.values()].map(({ said, names }) => ({ said, about: [...names] }));
}
