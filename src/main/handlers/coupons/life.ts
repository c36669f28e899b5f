/** Coupons under cycles: peak shear of each over yield, the line of lives, its tolerance bound as an S-N line. */
import { fitLifeLine, type LifeLine, lifeAt } from '../../../model/coupons/life-line.ts';
import { ModelError } from '../../../model/errors.ts';
import type { Mode } from '../../../model/margins/asked.ts';
import { carriedOver } from '../../../model/margins/cyclic.ts';
import type { Project } from '../../../shared/project.ts';
import type { LifeSet, Specimen } from '../../../shared/project-coupons.ts';
import type { LifeFit, LifeLineReport, LifeSetReport } from '../../../shared/reports-coupons.ts';
import { governingModes } from '../margins.ts';
import { couponJoint, PREDICTING, pullOf } from './specimen-joint.ts';

const CYCLIC: ReadonlySet<Mode> = new Set<Mode>(['cyclic-shear']);

/**
 * The pull at which the elastic peak shear is this share of yield; thermal stress is in it. Null where
 * the model has none.
 */
function pullAt(project: Project, specimen: Specimen, set: LifeSet, share: number): number | null {
  const coupon = couponJoint(project, specimen.shape, set, { gap: set.gap });
  const cases = coupon.cases.map((one) => ({
    ...one,
    input: { ...one.input, kind: 'cyclic' as const, cycles: 1 },
  }));
  const adhesive = { ...coupon.adhesive, fatigue: { coefficient: share, exponent: 0 } };
  const settings = { ...project.settings, factors: PREDICTING };
  const [row] = governingModes({ ...coupon, cases, adhesive }, settings, false, CYCLIC);
  return row ? row.result.reached * pullOf : null;
}

/** Peak shear over yield, by pull: a straight line, for the stress is elastic. */
function shareOf(
  project: Project,
  specimen: Specimen,
  set: LifeSet,
): (pull: number) => number | null {
  const [whole, half] = [1, 0.5].map((share) => pullAt(project, specimen, set, share));
  if (whole == null || half == null || !(whole > half)) return () => null;
  return (pull) => {
    const share = 0.5 + (0.5 * (pull - half)) / (whole - half);
    return share > 0 ? share : null;
  };
}

/** Shares at which the bound is looked at, from the lowest to the highest that was tested. */
const PLACES = 9;

function fitOf(line: LifeLine): LifeFit {
  const [low, high] = line.stresses;
  const shares = Array.from({ length: PLACES }, (_, i) => low * (high / low) ** (i / (PLACES - 1)));
  const curve = shares.map((share) => {
    const { median, bound } = lifeAt(line, share);
    return { share, median, bound };
  });
  const { basquin } = line;
  return {
    method: line.method,
    failures: line.failures,
    runOuts: line.results - line.failures,
    deviation: line.deviation,
    median: basquin,
    // The line of the fit's own slope that nowhere among the tested stresses promises more than the bound.
    bound: basquin && {
      exponent: basquin.exponent,
      coefficient: Math.min(...curve.map(({ share, bound }) => share * bound ** basquin.exponent)),
    },
    shares: [low, high],
    longest: line.longest,
    curve,
  };
}

/** Ratios of the load to which the peak is carried over by Goodman's line. */
const OTHER_RATIOS = [-1, 0, 0.1] as const;

export function lifeReport(project: Project, specimen: Specimen, set: LifeSet): LifeSetReport {
  const { id, name, adhesive, temperature, moisture, gap, ratio } = set;
  const head = {
    setId: id,
    name,
    specimen: { id: specimen.id, name: specimen.name, standard: specimen.standard },
    adhesive: { id: adhesive, name: project.adhesives.find((one) => one.id === adhesive)!.name },
    temperature,
    moisture,
    gap,
    ratio,
  };
  const none = (why: string, lines: readonly LifeLineReport[] = []): LifeSetReport => ({
    ...head,
    lines,
    fit: null,
    goodman: [],
    why,
  });
  try {
    const share = shareOf(project, specimen, set);
    const lines = set.results.map(
      ({ coupon, batch, peak, cycles, runOut }): LifeLineReport => ({
        coupon,
        batch,
        peak,
        cycles,
        runOut,
        share: share(peak),
      }),
    );
    if (lines.length === 0) return none('There are no results yet.');
    const points = lines.flatMap(({ share: stress, cycles, runOut }) =>
      stress === null ? [] : [{ stress, cycles, runOut }],
    );
    if (points.length < lines.length) {
      return none('The model has no shear stress for these coupons.', lines);
    }
    const fit = fitOf(fitLifeLine(points));
    const highest = Math.max(...points.map(({ stress }) => stress));
    // As the margins carry a peak over; above yield there is nothing to carry.
    const goodman =
      highest >= 1
        ? []
        : OTHER_RATIOS.filter((to) => to !== ratio).map((to) => ({
            ratio: to,
            factor: carriedOver(highest, ratio, to) / highest,
          }));
    return { ...head, lines, fit, goodman, why: '' };
  } catch (error) {
    if (!(error instanceof ModelError || error instanceof RangeError)) throw error;
    return none(error.message);
  }
}
