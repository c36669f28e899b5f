/** The demonstration project with coupons of its adhesive, and with what they allow taken. */
import type { Ask } from '../../src/main/ask.ts';
import type { Allowable, Project } from '../../src/shared/project.ts';
import type { CouponSet } from '../../src/shared/project-coupons.ts';
import type { Reply } from '../../src/shared/reply.ts';
import type { CouponsReport } from '../../src/shared/reports-coupons.ts';
import { standardSpecimen, standardSpecimens } from '../../src/shared/standard-specimens.ts';
import { EIGHTEEN } from './coupons-published.ts';

const piece = (id: string) =>
  standardSpecimen(standardSpecimens.find((one) => one.id === id)!, 'titanium-printed');

/** Eighteen published strengths in three batches, scaled to a load in N. */
export const couponSet = (
  id: string,
  scale: number,
  change: Partial<CouponSet> = {},
): CouponSet => ({
  id,
  name: `Set ${id}`,
  specimen: piece('d3528').id,
  adhesive: 'toughened-paste',
  temperature: 60,
  moisture: 'wet',
  gap: 0.2,
  tested: '2026-02-03',
  results: EIGHTEEN.map((strength, i) => ({
    coupon: String(i + 1),
    batch: `batch ${i % 3}`,
    load: strength * scale,
    modes: { cohesive: 100 },
  })),
  ...change,
});

export const withSets = (project: Project, ...sets: CouponSet[]): Project => ({
  ...project,
  coupons: { specimens: [piece('d3528'), piece('d1002')], sets },
});

/** The B value of each of these sets taken, as the page takes it. */
export async function withAllowables(
  ask: Ask,
  project: Project,
  ...ids: readonly string[]
): Promise<Project> {
  const reply = (await ask('project.coupons', { document: project })) as Reply<CouponsReport>;
  if (!reply.ok) throw new Error(reply.error.message);
  const allowables = ids.map((wanted): Allowable => {
    const { setId, name, temperature, moisture, gap, offers, notOffered } = reply.value.sets.find(
      (one) => one.setId === wanted,
    )!;
    const offer = offers.find(({ basis }) => basis === 'B');
    if (!offer) throw new Error(`${wanted}: ${notOffered}`);
    const head = { set: setId, setName: name, temperature, moisture, gap };
    return { ...head, ...offer, taken: '2026-03-01T08:00:00Z' };
  });
  const [first, ...others] = project.adhesives;
  return { ...project, adhesives: [{ ...first!, allowables }, ...others] };
}
