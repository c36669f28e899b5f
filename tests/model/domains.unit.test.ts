/** Where each method holds: every statement can be kept and left. */
import { describe, expect, it } from 'vitest';
import type { JointInput, Material } from '../../src/model/joint/types.ts';
import type { Mode } from '../../src/model/margins/asked.ts';
import type { ModeResult } from '../../src/model/margins/result.ts';
import { type Domain, domainsOf } from '../../src/model/validity/domains.ts';
import { metal } from '../support/layered-laps.ts';
import {
  type Asked,
  flatSingle,
  sleeve,
  socket,
  stateOf,
  strongGlue,
} from '../support/peel-states.ts';

const result = (mode: Mode, more: Partial<ModeResult> = {}): ModeResult => ({
  mode,
  part: 'bond',
  reached: 2,
  asked: 1,
  margin: 1,
  place: 'mouth',
  x: 20,
  theta: 0,
  gapState: 'nominal',
  wholeBondFlows: false,
  ...more,
});

const domain = (
  code: string,
  asked: Asked,
  mode: Mode,
  more?: Partial<ModeResult>,
): Domain | undefined =>
  domainsOf(result(mode, more), stateOf(asked)).find((one) => one.code === code);

type Sleeve = Extract<JointInput, { type: 'sleeve-single' }>;
const single = socket as Sleeve;
const with1 = (change: Partial<Sleeve>): Asked => ({ joint: { ...single, ...change } });
const glueWithTable = strongGlue({
  knockdowns: {
    environment: 1,
    ageing: 1,
    scatter: 1,
    gap: [
      { gap: 0.1, factor: 1 },
      { gap: 0.3, factor: 0.9 },
    ],
  },
});
const flat = flatSingle as Extract<JointInput, { type: 'flat-single' }>;
const alike: JointInput = {
  ...flat,
  plate: { material: flat.strip.material, atRoot: 1.6, atMouth: 1.6 },
};
const laminateTube = single.tube.material as Material;

interface Limit {
  readonly code: string;
  readonly mode: Mode;
  /** What keeps it, and what leaves it. */
  readonly inside: Asked;
  readonly outside: Asked;
  readonly kept?: Partial<ModeResult>;
  readonly left?: Partial<ModeResult>;
}
const limit = (
  code: string,
  mode: Mode,
  inside: Asked,
  outside: Asked,
  kept: Partial<ModeResult> = {},
  left: Partial<ModeResult> = {},
): Limit => ({ code, mode, inside, outside, kept, left });
const cases: readonly Limit[] = [
  limit('short-overlap', 'adhesive-yield', {}, with1({ overlap: 4.7 })),
  limit(
    'thick-wall',
    'adhesive-yield',
    {},
    with1({ tube: { material: laminateTube, outsideDiameter: 14, wall: 1.6 } }),
  ),
  limit('outside-table', 'adhesive-yield', {}, { temperature: 30 }),
  limit(
    'gap-outside-table',
    'adhesive-yield',
    { adhesive: glueWithTable },
    { ...with1({ bond: { gap: 0.4, tolerance: 0 } }), adhesive: glueWithTable },
  ),
  limit('thick-bond', 'peel-shear', {}, with1({ bond: { gap: 0.7, tolerance: 0 } })),
  limit('adhesive-moduli', 'peel-shear', {}, { adhesive: strongGlue({}, { shearModulus: 600 }) }),
  limit('built-in-root', 'peel-shear', { joint: sleeve }, { joint: sleeve }, { x: 20 }, { x: 0.2 }),
  limit('unbalanced-lap', 'peel-shear', { joint: alike }, { joint: flat }),
  limit(
    'compressed-lap',
    'peel-shear',
    { joint: alike },
    { joint: alike, loads: { force: -4000 } },
  ),
  limit(
    'curved-plies',
    'first-ply',
    with1({ tube: { material: metal(7e4), outsideDiameter: 40, wall: 1.6 } }),
    {},
  ),
  limit('whole-bond-flows', 'adhesive-strain', {}, {}, {}, { wholeBondFlows: true }),
];

describe('each domain', () => {
  it.each(cases)('can be kept and left: $code', ({ code, mode, inside, outside, kept, left }) => {
    const one = domain(code, inside, mode, kept);
    const other = domain(code, outside, mode, left);
    expect(one?.inside).toBe(true);
    expect(other?.inside).toBe(false);
    expect(one!.text.length).toBeGreaterThan(20);
  });

  it('is named here', () => {
    const asked: readonly Asked[] = [{}, { joint: sleeve }, { joint: flat }];
    const modes: readonly Mode[] = ['peel-shear', 'first-ply', 'adhesive-strain'];
    const found = new Set(
      asked.flatMap((one) =>
        modes.flatMap((mode) => domainsOf(result(mode), stateOf(one)).map(({ code }) => code)),
      ),
    );
    expect([...found].sort()).toEqual(cases.map(({ code }) => code).sort());
  });

  it('is asked only where it matters', () => {
    expect(domain('thick-bond', {}, 'adhesive-yield')).toBeUndefined();
    expect(domain('built-in-root', {}, 'peel-shear')).toBeUndefined();
    expect(domain('unbalanced-lap', {}, 'peel-shear')).toBeUndefined();
    expect(domain('thick-wall', { joint: flat }, 'adhesive-yield')).toBeUndefined();
    expect(domain('whole-bond-flows', {}, 'peel-shear')).toBeUndefined();
  });
});
