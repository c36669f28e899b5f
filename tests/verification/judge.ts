/** Holds the cases to their tolerances. One verdict for each check, found once. */
import {
  type Case,
  type Check,
  type Comparison,
  type CurveCase,
  type GroupCheck,
  group,
  isCurve,
  type SameCheck,
  type ValueCheck,
} from './case.ts';

export interface Verdict {
  /** What went wrong, for whoever reads the failing test; null when nothing did. */
  readonly failure: string | null;
}
export interface ValueVerdict extends Verdict {
  readonly computed: number;
  readonly difference: number;
  readonly allowed: number;
}
export interface GroupVerdict extends Verdict {
  readonly count: number;
  readonly largest: number;
  /** Where the largest difference is. */
  readonly worst: Comparison | null;
}
export interface SameVerdict extends Verdict {
  readonly count: number;
  readonly agreeing: number;
}

function judgeValue(check: ValueCheck): ValueVerdict {
  const { name, unit, expected, tolerance } = check;
  const computed = check.computed();
  const difference = computed - expected;
  const allowed = Math.max(tolerance.absolute ?? 0, (tolerance.relative ?? 0) * Math.abs(expected));
  // Written so that what is not a number fails.
  const holds = Math.abs(difference) <= allowed;
  const failure = `${name}: computed ${computed} ${unit}, expected ${expected}, off by ${difference}, allowed ${allowed}`;
  return { computed, difference, allowed, failure: holds ? null : failure };
}

/** Difference as a share of the scale: 0 when both are the same, whatever the scale. */
export function shareOf({ computed, expected, scale = expected }: Comparison): number {
  const miss = Math.abs(computed - expected);
  if (miss === 0) return 0;
  const share = miss / Math.abs(scale);
  return Number.isNaN(share) ? Number.POSITIVE_INFINITY : share;
}

/** Of differences this near to the largest the first is named: which is the largest may be chance. */
const TIE = 0.99;

function judgeGroup({ name, compare, tolerance, scale }: GroupCheck): GroupVerdict {
  const all = compare();
  const shares = all.map(shareOf);
  const largest = Math.max(0, ...shares);
  const worst = all[shares.findIndex((share) => share >= TIE * largest)] ?? null;
  const failing = shares.filter((share) => !(share <= tolerance)).length;
  let failure: string | null = null;
  if (worst === null) failure = `${name}: nothing was compared`;
  else if (failing > 0) {
    failure = `${name}: ${failing} of ${all.length} beyond ${tolerance} ${scale}; the worst is ${worst.what}: computed ${worst.computed}, expected ${worst.expected}, off by ${largest} ${scale}`;
  }
  return { count: all.length, largest, worst, failure };
}

function judgeSame({ name, compare }: SameCheck): SameVerdict {
  const all = compare();
  const [first, ...others] = all.filter(({ expected, computed }) => expected !== computed);
  let failure: string | null = null;
  if (all.length === 0) failure = `${name}: nothing was compared`;
  else if (first) {
    failure = `${name}: ${others.length + 1} of ${all.length} differ; the first is ${first.what}: computed ${first.computed}, expected ${first.expected}`;
  }
  return { count: all.length, agreeing: all.length - (first ? others.length + 1 : 0), failure };
}

const verdicts = new WeakMap<Check, Verdict>();

export function judge(check: ValueCheck): ValueVerdict;
export function judge(check: GroupCheck): GroupVerdict;
export function judge(check: SameCheck): SameVerdict;
export function judge(check: Check): Verdict;
export function judge(check: Check): Verdict {
  const known = verdicts.get(check);
  if (known) return known;
  const verdict =
    check.kind === 'value'
      ? judgeValue(check)
      : check.kind === 'group'
        ? judgeGroup(check)
        : judgeSame(check);
  verdicts.set(check, verdict);
  return verdict;
}

export interface ZoneCheck {
  readonly panel: number;
  readonly series: number;
  readonly zone: number;
  readonly check: GroupCheck;
}

const zoneChecks = new WeakMap<CurveCase, readonly ZoneCheck[]>();

const scaleWords = {
  value: 'of the value',
  peak: 'of the peak',
  stretch: 'of the largest in this stretch',
} as const;

const largestOf = (figures: readonly number[]): number => Math.max(...figures.map(Math.abs));

/** Every series in every zone in which it has a station. */
export function checksOf(curve: CurveCase): readonly ZoneCheck[] {
  const known = zoneChecks.get(curve);
  if (known) return known;
  const found = curve.panels.flatMap((panel, p) =>
    panel.series.flatMap((_series, s) => checksOfSeries(curve, p, s)),
  );
  zoneChecks.set(curve, found);
  return found;
}

function checksOfSeries(curve: CurveCase, p: number, s: number): ZoneCheck[] {
  const { title, x, series } = curve.panels[p]!;
  const { name, stress, expected, computed } = series[s]!;
  const zoneAt = (at: number): number =>
    curve.zones.findIndex(
      (zone) =>
        (zone.stress ?? stress) === stress && (zone.series ?? name) === name && zone.contains(at),
    );
  const open = x.find((at) => zoneAt(at) < 0);
  if (open !== undefined) throw new Error(`${curve.id}: no tolerance at x = ${open} of ${name}`);
  return curve.zones.flatMap((zone, z) => {
    const stations = x.flatMap((at, i) => (zoneAt(at) === z ? [i] : []));
    if (stations.length === 0) return [];
    const stretch = largestOf(stations.map((i) => expected[i]!));
    const scales = { value: undefined, peak: largestOf(expected), stretch };
    const check = group({
      name: `${title}, ${name}, ${zone.name}`,
      compare: () => {
        const curveAt = computed();
        return stations.map((i) => ({
          what: `x = ${x[i]} mm`,
          expected: expected[i]!,
          computed: curveAt(x[i]!),
          scale: scales[zone.of] ?? expected[i]!,
        }));
      },
      tolerance: zone.tolerance,
      scale: scaleWords[zone.of],
      why: zone.why,
    });
    return [{ panel: p, series: s, zone: z, check }];
  });
}

/** Every check of a case, those of its curves' stretches first. */
export const judgements = (one: Case | CurveCase): readonly Check[] => [
  ...(isCurve(one) ? checksOf(one).map(({ check }) => check) : []),
  ...(one.checks ?? []),
];
