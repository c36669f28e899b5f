/** What may be taken from coupons into the margins: allowables, and strength against gap. Offered, never taken by itself. */
import type { BondMode, Project } from '../../../shared/project.ts';
import type { Specimen } from '../../../shared/project-coupons.ts';
import { quantities } from '../../../shared/quantities.ts';
import type {
  AllowableOffer,
  ApartBecause,
  CalibrationOffer,
  Correlation,
  CouponLine,
  CouponSetReport,
  CouponStatistics,
  GapCurve,
} from '../../../shared/reports-coupons.ts';
import { isSmallSingleLap } from '../../../shared/standard-specimens.ts';

/** Largest factor that a project takes: properties that the coupons exceed so far are not those of the adhesive. */
const MOST = quantities.strengthFactor.max;
/** Smallest: a basis value near nothing is that of too few results. */
const LEAST = quantities.strengthFactor.min;

export interface Tested {
  readonly specimen: Specimen;
  readonly lines: readonly CouponLine[];
  readonly statistics: CouponStatistics | null;
  /** Measured over the load at which the model has the adhesive fail. */
  readonly bond: Correlation | null;
  /** Mode of the adhesive that the model expects by the drawing. */
  readonly mode: BondMode | null;
}

/** Why nothing is offered, as far as that shows before anything is computed; empty where it does not. */
export function barred(
  { shape }: Specimen,
  results: readonly { readonly apart: ApartBecause | null }[],
): string {
  if (results.length === 0) return 'There are no results yet.';
  if (results.every(({ apart }) => apart !== null)) return 'No result counts.';
  if (isSmallSingleLap(shape)) {
    return 'A small single lap is no design allowable (ASTM D4896): test thick adherends, double laps or the tube in its sleeve.';
  }
  if (results.some(({ apart }) => apart === 'surface')) {
    return 'Coupons came off a surface: mend the preparation and test again.';
  }
  return '';
}

/** Why these coupons say nothing of the adhesive in a joint; empty where they do. */
function whyNothing({ specimen, lines, statistics, bond, mode }: Tested): string {
  const at = barred(specimen, lines);
  if (at !== '' || !statistics) return at;
  return bond && mode
    ? ''
    : 'The model does not predict a failure of the adhesive in these coupons.';
}

const TOO_STRONG =
  'The coupons are more than twice as strong as the properties of the adhesive say: mend those first.';

function whyNot(tested: Tested): string {
  const nothing = whyNothing(tested);
  if (nothing !== '') return nothing;
  const [statistics, bond] = [tested.statistics!, tested.bond!];
  if (!statistics.chosen.B && !statistics.chosen.A) {
    return 'There is no basis value: see the decisions.';
  }
  const factor = (bond.mean * (statistics.chosen.B?.value ?? 0)) / statistics.all.mean;
  return factor > MOST ? TOO_STRONG : '';
}

export function offersOf(tested: Tested): {
  readonly offers: readonly AllowableOffer[];
  readonly notOffered: string;
} {
  const notOffered = whyNot(tested);
  if (notOffered !== '') return { offers: [], notOffered };
  const { statistics, bond, mode } = tested;
  const { all, batches, chosen } = statistics!;
  const offers = (['B', 'A'] as const).flatMap((basis): AllowableOffer[] => {
    const line = chosen[basis];
    if (line?.value == null) return [];
    const factor = (bond!.mean * line.value) / all.mean;
    if (!(factor >= LEAST)) return [];
    return [
      {
        basis,
        method: line.method,
        value: line.value,
        mean: all.mean,
        ratio: bond!.mean,
        mode: mode!,
        factor,
        coupons: all.n,
        batches: batches.length,
      },
    ];
  });
  return offers.length > 0
    ? { offers, notOffered: '' }
    : {
        offers,
        notOffered:
          'The basis value is nearly nothing, or below: too few results, or too much scatter.',
      };
}

/** The mean as a calibration: also where the results are too few for a basis value. */
export function calibrationOf(tested: Tested): CalibrationOffer | null {
  if (whyNothing(tested) !== '') return null;
  const { all, batches } = tested.statistics!;
  const { mean: factor, low, high } = tested.bond!;
  if (low === null || high === null || factor > MOST || factor < LEAST) return null;
  return {
    factor,
    mode: tested.mode!,
    low,
    high,
    mean: all.mean,
    coupons: all.n,
    batches: batches.length,
  };
}

/** Sets of one adhesive, specimen and environment at two gaps or more. */
export function gapCurvesOf(
  { adhesives }: Project,
  sets: readonly CouponSetReport[],
): readonly GapCurve[] {
  const groups = new Map<string, CouponSetReport[]>();
  for (const set of sets) {
    if (!set.bond) continue;
    const key = [set.adhesive.id, set.specimen.id, set.temperature, set.moisture].join(' ');
    groups.set(key, [...(groups.get(key) ?? []), set]);
  }
  return [...groups.values()].flatMap((group): GapCurve[] => {
    const gaps = [...new Set(group.map(({ gap }) => gap))].sort((a, b) => a - b);
    if (gaps.length < 2) return [];
    const [{ adhesive, specimen, temperature, moisture }] = group as [CouponSetReport];
    const meanAt = (gap: number): { readonly ratio: number; readonly n: number } => {
      const here = group.filter((set) => set.gap === gap).map(({ bond }) => bond!);
      const n = here.reduce((sum, one) => sum + one.n, 0);
      return { n, ratio: here.reduce((sum, one) => sum + one.n * one.mean, 0) / n };
    };
    const allowed = adhesives
      .find(({ id }) => id === adhesive.id)
      ?.allowables?.find((one) => one.temperature === temperature && one.moisture === moisture);
    const reference = gaps.find((gap) => gap === allowed?.gap) ?? gaps[0]!;
    const unit = meanAt(reference).ratio;
    return [
      {
        adhesive: adhesive.id,
        temperature,
        moisture,
        specimen: specimen.id,
        reference,
        rows: gaps.map((gap) => {
          const { ratio, n } = meanAt(gap);
          return { gap, factor: ratio / unit, n };
        }),
      },
    ];
  });
}
