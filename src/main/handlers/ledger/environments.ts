/** Every environment that an adhesive is asked about, and every gap of its bonds and its coupons. */
import type { Adhesive, Moisture, Project } from '../../../shared/project.ts';
import type { LedgerGap } from '../../../shared/reports-ledger.ts';
import { testedSets } from './coupon-sets.ts';
import { isAt, type JointUse, sameGap } from './uses.ts';

export interface Environment {
  readonly temperature: number;
  readonly moisture: Moisture;
  /** Load cases and conditions there. */
  readonly names: readonly string[];
}

/** Those of its rows, of the project's load cases and conditions, of its allowables, of its coupons. */
export function environmentsOf(
  project: Project,
  { id, states, allowables = [] }: Adhesive,
): readonly Environment[] {
  const named = [...project.loadCases, ...(project.conditions ?? [])];
  const found: Environment[] = [];
  for (const place of [...named, ...states, ...allowables, ...testedSets(project, id)]) {
    if (found.some((one) => isAt(one, place))) continue;
    const { temperature, moisture } = place;
    const names = named.filter((one) => isAt(one, place)).map(({ name }) => name);
    found.push({ temperature, moisture, names: [...new Set(names)] });
  }
  return found.sort(
    (a, b) => a.moisture.localeCompare(b.moisture) || a.temperature - b.temperature,
  );
}

export type NamedGap = Pick<LedgerGap, 'gap' | 'of'> & { readonly joints: ReadonlySet<string> };

/** The thinnest first; one without a number where nothing names a gap. */
export function gapsOf(
  project: Project,
  { id, knockdowns, allowables = [] }: Adhesive,
  uses: readonly JointUse[],
): readonly NamedGap[] {
  const joints = new Map<number, Set<string>>();
  for (const { joint, gaps } of uses) {
    for (const gap of gaps) joints.set(gap, (joints.get(gap) ?? new Set()).add(joint.id));
  }
  const table = new Set((knockdowns?.gap ?? []).map(({ gap }) => sameGap(gap)));
  const coupons = new Set(
    [...allowables, ...testedSets(project, id)].map(({ gap }) => sameGap(gap)),
  );
  const all = [...new Set([...joints.keys(), ...table, ...coupons])].sort((a, b) => a - b);
  if (all.length === 0) return [{ gap: null, of: [], joints: new Set() }];
  return all.map((gap) => ({
    gap,
    of: [
      ...(joints.has(gap) ? (['joints'] as const) : []),
      ...(table.has(gap) ? (['table'] as const) : []),
      ...(coupons.has(gap) ? (['coupons'] as const) : []),
    ],
    joints: joints.get(gap) ?? new Set(),
  }));
}
