/** Test pieces of one's own: what they are made of, and what they may still claim. */
import { describe, expect, it } from 'vitest';
import demo from '../../src/main/demo/curlew.lapwright.json' with { type: 'json' };
import {
  claimAfter,
  copyPiece,
  MOST_PIECES,
  newPiece,
  pieceLap,
  pieceLaps,
  pieceMaterials,
  pieceSizes,
  usesOf,
} from '../../src/shared/coupon-pieces.ts';
import { planCoupons } from '../../src/shared/coupon-plan.ts';
import type { Project } from '../../src/shared/project.ts';
import type { CouponSet, Specimen } from '../../src/shared/project-coupons.ts';
import { readProject } from '../../src/shared/read-project.ts';
import {
  sleeveSpecimen,
  standardSpecimen,
  standardSpecimens,
} from '../../src/shared/standard-specimens.ts';

const project = structuredClone(demo) as unknown as Project;
const d1002 = standardSpecimen(standardSpecimens[0]!, 'titanium-printed');
const tube = sleeveSpecimen(project.joints[1]!, 'tube');
const withPieces = (...specimens: Specimen[]): Project => ({
  ...project,
  coupons: { specimens, sets: [] },
});
const wider = ({ shape }: Specimen): Specimen['shape'] =>
  'width' in shape ? { ...shape, width: shape.width + 1 } : { ...shape, overlap: 99 };

describe('a new piece', () => {
  it('is one of each kind that the core accepts', () => {
    const pieces: Specimen[] = [];
    for (const lap of pieceLaps) pieces.push(newPiece(lap, project.adherends, pieces)!);
    expect(pieces.map(({ shape }) => pieceLap(shape))).toEqual(pieceLaps);
    expect(new Set(pieces.map(({ id }) => id)).size).toBe(5);
    expect(readProject(withPieces(...pieces))).toMatchObject({ ok: true });
    for (const { standard, source } of pieces) {
      expect(standard).toBe('');
      expect(source.text).toContain('put in your own');
    }
  });

  it('has ids and names of its own, and needs a material and a place in the file', () => {
    const first = newPiece('socket', project.adherends, [])!;
    const second = newPiece('socket', project.adherends, [first])!;
    expect([second.id === first.id, second.name === first.name]).toEqual([false, false]);
    expect(newPiece('socket', [], [])).toBeNull();
    const full = Array.from({ length: MOST_PIECES }, () => first);
    expect(newPiece('socket', project.adherends, full)).toBeNull();
    expect(copyPiece(first, full)).toBeNull();
  });

  it('has strips of metal and a tube of what is none', () => {
    const kinds = (ids: readonly string[]) =>
      ids.map((id) => project.adherends.find((one) => one.id === id)!.kind);
    const of = (lap: (typeof pieceLaps)[number]) =>
      kinds(pieceMaterials(newPiece(lap, project.adherends, [])!.shape));
    expect(of('flat-double')).toEqual(['isotropic']);
    const [first, second] = of('sleeve-double');
    expect(first).not.toBe('isotropic');
    expect(second).toBe('isotropic');
  });
});

describe('sizes in a line', () => {
  it('tell all that a piece has, a taper from root to mouth', () => {
    expect(pieceSizes(d1002.shape)).toBe('width 25.4, overlap 12.7, strip 1.6, plate 1.6 mm');
    const double = newPiece('flat-double', project.adherends, [])!.shape;
    if (double.type !== 'flat-double') throw new Error('no double lap');
    double.lowerStrap.atMouth = 0.8;
    expect(pieceSizes(double)).toBe(
      'width 25, overlap 25, strip 4, upper strap 2, lower strap 2 to 0.8 mm',
    );
    expect(pieceSizes(newPiece('spigot', project.adherends, [])!.shape)).toBe(
      'tube 30 × 1.5, overlap 25, sleeve 1.5 mm',
    );
    expect(pieceSizes(newPiece('sleeve-double', project.adherends, [])!.shape)).toBe(
      'tube 30 × 1.5, overlap 25, socket 1.5, spigot 1.5 mm',
    );
  });
});

describe('a copy', () => {
  it('claims no standard, says what it was copied from, and is another set than the first', () => {
    const copy = copyPiece(d1002, [d1002])!;
    expect(copy.shape).toEqual(d1002.shape);
    expect(copy.shape).not.toBe(d1002.shape);
    expect(copy.standard).toBe('');
    expect(copy.source).toEqual({
      kind: 'memory',
      text: 'Copied from “Lap shear, thin metal”, ASTM D1002, whose sizes are from memory: look them up.',
    });
    // Of the same sizes as the first, but chosen by its own name.
    const other = copyPiece(copy, [d1002, copy])!;
    const { added } = planCoupons(withPieces(d1002, copy, other), {
      adhesive: 'toughened-paste',
      pieces: [{ kind: 'own', id: other.id }],
      environments: [{ temperature: 23, moisture: 'dry' }],
      gaps: [0.2],
      planned: { batches: 1, each: 1 },
    });
    expect(added.map(({ specimen }) => specimen)).toEqual([other.id]);
  });
});

describe('what a piece may claim once it is changed', () => {
  it('is its standard only while the sizes are that standard’s, of whatever material', () => {
    const { standard, source } = d1002;
    expect(claimAfter(d1002, d1002.shape)).toEqual({ standard, source });
    const inSteel = JSON.parse(
      JSON.stringify(d1002.shape).replaceAll('titanium-printed', 'carbon-strip'),
    ) as Specimen['shape'];
    expect(claimAfter(d1002, inSteel)).toEqual({ standard, source });
    expect(claimAfter(d1002, wider(d1002))).toEqual({
      standard: '',
      source: { kind: 'typical', text: 'Own sizes, changed from those of ASTM D1002.' },
    });
  });

  it('is the joint it was drawn after only while sizes and materials are that joint’s', () => {
    expect(claimAfter(tube, tube.shape).source).toEqual(tube.source);
    const told = {
      kind: 'typical',
      text: `Own sizes, changed from those of the joint “${project.joints[1]!.name}”.`,
    };
    expect(claimAfter(tube, wider(tube)).source).toEqual(told);
    const [first] = pieceMaterials(tube.shape);
    const other = JSON.parse(
      JSON.stringify(tube.shape).replaceAll(`"${first}"`, '"carbon-strip"'),
    ) as Specimen['shape'];
    expect(claimAfter(tube, other).source).toEqual(told);
  });

  it('is told of a copy and of a new one, and left alone where it was written by hand', () => {
    const copy = copyPiece(d1002, [d1002])!;
    expect(claimAfter(copy, wider(copy)).source.text).toBe(
      'Own sizes, changed from those of “Lap shear, thin metal”, ASTM D1002.',
    );
    const made = newPiece('flat-single', project.adherends, [])!;
    expect(claimAfter(made, wider(made)).source.text).toBe('Own sizes.');
    const own = { ...made, source: { kind: 'tested', text: 'Drawing 12' } as const };
    expect(claimAfter(own, wider(own)).source).toEqual(own.source);
    const claimed = { ...own, standard: 'ISO 4587' };
    expect(claimAfter(claimed, wider(claimed)).standard).toBe('');
  });
});

describe('who uses a piece', () => {
  it('are its sets, and its sets of lives, with what was measured of them', () => {
    const set = (name: string, specimen: string, loads: number): CouponSet => ({
      id: name,
      name,
      specimen,
      adhesive: 'toughened-paste',
      temperature: 23,
      moisture: 'dry',
      gap: 0.2,
      results: Array.from({ length: loads }, (_, i) => ({
        coupon: String(i + 1),
        batch: '',
        load: 4000,
      })),
    });
    const { results: _results, ...life } = set('life', 'd1002', 0);
    const coupons = {
      specimens: [d1002],
      sets: [set('a', 'd1002', 2), set('b', 'd1002', 0), set('c', 'tube', 9)],
      life: [
        {
          ...life,
          ratio: 0.1,
          results: [{ coupon: '1', batch: '', peak: 2000, cycles: 1e5, runOut: false }],
        },
      ],
    };
    expect(usesOf(coupons, 'd1002')).toEqual({
      names: ['a', 'b', 'life'],
      withResults: 2,
      results: 3,
    });
    expect(usesOf({ sets: [] }, 'd1002').names).toEqual([]);
  });
});
