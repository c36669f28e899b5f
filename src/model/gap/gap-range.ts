/** Between which gaps a joint reaches its target: margins over a sweep, the ends by halving. */

/** What the margin at one gap is, and the mode that sets it. */
export interface GapMargin {
  readonly margin: number;
  readonly mode: string;
}

export interface GapRangeQuestion {
  /** Gap about which the range lies, mm. */
  readonly drawn: number;
  readonly target: number;
  /** Ends of the sweep, mm. */
  readonly from: number;
  readonly to: number;
  readonly points: number;
  /** Null where the joint cannot be made with this gap. */
  readonly marginAt: (gap: number) => GapMargin | null;
  /** Told after each margin how many of about how many are known. */
  readonly told?: (done: number, of: number) => void;
}

export interface GapRangeFound {
  readonly curve: readonly ({ readonly gap: number } & GapMargin)[];
  /** Whole micrometres, rounded inward; null where the drawn gap does not reach the target. */
  readonly range: { readonly from: number; readonly to: number } | null;
  /** True at an end where the sweep ends before the range does. */
  readonly open: { readonly from: boolean; readonly to: boolean };
}

/** mm. */
const MICROMETRE = 0.001;
const whole = (micrometres: number): number => Number((micrometres * MICROMETRE).toPrecision(12));
/** Exactly on target counts, whatever the last digit says. */
const ROUNDING = 1e-9;

/**
 * The range is the stretch around the drawn gap in which every point of the sweep reaches the target.
 * A stretch narrower than the sweep's step can be missed.
 */
export function gapRange(question: GapRangeQuestion): GapRangeFound {
  const { drawn, target, from, to, points, marginAt, told } = question;
  const halvings = Math.ceil(Math.log2((to - from) / (points - 1) / MICROMETRE));
  const of = points + 1 + 2 * (halvings + 2);
  let done = 0;
  const at = (gap: number): GapMargin | null => {
    const margin = marginAt(gap);
    told?.(Math.min(++done, of), of);
    return margin;
  };
  const reaches = (margin: GapMargin | null): boolean =>
    margin !== null && margin.margin >= target - ROUNDING;

  const grid = Array.from({ length: points }, (_, i) =>
    Number((from + ((to - from) * i) / (points - 1)).toPrecision(12)),
  );
  const gaps = [...new Set([...grid, drawn])].sort((a, b) => a - b);
  const margins = gaps.map(at);
  const curve = gaps.flatMap((gap, i) => (margins[i] ? [{ gap, ...margins[i] }] : []));

  const start = gaps.indexOf(drawn);
  if (!reaches(margins[start]!)) return { curve, range: null, open: { from: false, to: false } };
  /** From the drawn gap outward: the last point that reaches, and the edge past it. */
  const edge = (step: 1 | -1): { readonly gap: number; readonly open: boolean } => {
    let i = start;
    while (i + step >= 0 && i + step < gaps.length && reaches(margins[i + step]!)) i += step;
    const outside = gaps[i + step];
    const last = gaps[i]!;
    if (outside === undefined) return { gap: last, open: true };
    // Halved over whole micrometres: the last of them that reaches is the edge.
    const inward = step > 0 ? Math.floor : Math.ceil;
    let inner = inward(last / MICROMETRE + step * 1e-6);
    let outer = -inward(-outside / MICROMETRE + step * 1e-6);
    while (Math.abs(outer - inner) > 1) {
      const middle = Math.round((inner + outer) / 2);
      if (reaches(at(whole(middle)))) inner = middle;
      else outer = middle;
    }
    // Where the edge lies within the micrometre of the last point that reaches, that point is it.
    return { gap: (whole(inner) - last) * step > 0 ? whole(inner) : last, open: false };
  };
  const [lower, upper] = [edge(-1), edge(1)];
  return {
    curve,
    range: { from: lower.gap, to: upper.gap },
    open: { from: lower.open, to: upper.open },
  };
}
