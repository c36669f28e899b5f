/** Test pieces of one's own through the door: each kind is predicted, and what does not fit is told at its place. */
import { describe, expect, it } from 'vitest';
import { misfit } from '../../src/main/handlers/coupons/misfit.ts';
import { ModelError } from '../../src/model/errors.ts';
import { newPiece, pieceLaps } from '../../src/shared/coupon-pieces.ts';
import { makeCouponSet } from '../../src/shared/coupon-plan.ts';
import type { Project } from '../../src/shared/project.ts';
import type { CouponSet, Specimen } from '../../src/shared/project-coupons.ts';
import { refuse } from '../../src/shared/reply.ts';
import type { CouponsReport } from '../../src/shared/reports-coupons.ts';
import { ask, curlew, value } from './asking.ts';

/** A set of each kind of piece, as they are made on the page. */
async function ownPieces(): Promise<Project> {
  const project = await curlew();
  const specimens: Specimen[] = [];
  const sets: CouponSet[] = [];
  for (const lap of pieceLaps) {
    const piece = newPiece(lap, project.adherends, specimens)!;
    specimens.push(piece);
    const of = {
      adhesive: 'toughened-paste',
      temperature: 23,
      moisture: 'dry',
      gap: 0.2,
    } as const;
    sets.push(makeCouponSet(sets, piece, { ...of, planned: { batches: 1, each: 5 } }));
  }
  return { ...project, coupons: { specimens, sets } };
}

describe('pieces of one’s own', () => {
  it('have an area and a load to expect, whatever their kind', async () => {
    const { sets } = await value<CouponsReport>('project.coupons', { document: await ownPieces() });
    const areas = Object.fromEntries(sets.map(({ area }, i) => [pieceLaps[i]!, area]));
    expect(areas['flat-single']).toBeCloseTo(25 * 25, 9);
    expect(areas['flat-double']).toBeCloseTo(2 * 25 * 25, 9);
    // At the middle of the bond: outside the tube of 30 mm, inside its bore of 27 mm, and both.
    expect(areas.socket).toBeCloseTo(2 * Math.PI * 15.1 * 25, 6);
    expect(areas.spigot).toBeCloseTo(2 * Math.PI * 13.4 * 25, 6);
    expect(areas['sleeve-double']).toBeCloseTo(areas.socket! + areas.spigot!, 6);
    for (const { predicted } of sets) expect(predicted.load).toBeGreaterThan(0);
  });

  it('are told at their own place where their parts do not fit', async () => {
    const document = await ownPieces();
    const place = document.coupons!.specimens.findIndex(
      ({ shape }) => shape.type === 'sleeve-double',
    );
    const { shape } = document.coupons!.specimens[place]!;
    if (shape.type !== 'sleeve-double') throw new Error('no sleeve');
    shape.spigot.atMouth = 40;
    expect(await ask('project.coupons', { document })).toEqual({
      ok: false,
      error: {
        code: 'bad-input',
        field: `coupons.specimens.${place}.shape.spigot.atMouth`,
        message: expect.stringContaining('A spigot wall of 40 mm does not fit inside the tube'),
      },
    });
  });

  it('are told by their set where that is at fault, and not at all where the program is', async () => {
    const { coupons } = await ownPieces();
    const set = coupons!.sets[2]!;
    expect(misfit(new ModelError('moisture', 'it was never tested wet'), coupons!, set)).toEqual(
      refuse('bad-input', 'coupons.sets.2', 'it was never tested wet'),
    );
    const slip = new TypeError('x is not a function');
    expect(() => misfit(slip, coupons!, set)).toThrow(slip);
  });

  it('say that their sizes are from memory, in whatever words their source is', async () => {
    const said = async (text: string) => {
      const document = await ownPieces();
      document.coupons!.specimens[0]!.source = { kind: 'memory', text };
      const { sets } = await value<CouponsReport>('project.coupons', { document });
      return sets[0]!.flags.find(({ code }) => code === 'sizes-from-memory')?.message;
    };
    expect(await said('')).toBe('Sizes from memory: look them up.');
    expect(await said('As the workshop told')).toBe('Sizes from memory: As the workshop told');
    expect(await said('From memory of a drawing.')).toBe('From memory of a drawing.');
  });
});
