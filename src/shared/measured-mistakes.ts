/**
 * What looks wrong among measured diameters, in the words of the bench; asked at every keystroke, on
 * grids that are partly filled. `wrong` must be mended; a `doubt` may be confirmed by the technician.
 */
import { surfaceWords } from './bench-words.ts';
import { type BondToMeasure, type MeasuringPlan, measuringPlan } from './measuring-plan.ts';
import type { Joint, MeasuredSurface } from './project.ts';
import { doubtsOf } from './reading-doubts.ts';
import type { Mistake } from './reports-gap.ts';

type Found = Omit<Mistake, 'surface' | 'at' | 'meant'> & Partial<Pick<Mistake, 'at' | 'meant'>>;
const mistake = (surface: MeasuredSurface['surface'], found: Found): Mistake => ({
  surface,
  at: null,
  meant: null,
  ...found,
});

const mm = (value: number): string => `${Number(value.toFixed(3))} mm`;

/** First value that does not rise, with the one before it. */
function notRising(list: readonly number[]): readonly [before: number, here: number] | null {
  const i = list.findIndex((value, k) => k > 0 && value <= list[k - 1]!);
  return i < 0 ? null : [list[i - 1]!, list[i]!];
}

/** Stations, clockings and the shape of the grid. */
function headMistakes(
  { surface, stations, clockings, diameters }: MeasuredSurface,
  overlap: number,
) {
  const found: Found[] = [];
  const turn = notRising(clockings);
  if (turn) {
    const [before, here] = turn;
    const message =
      before === here
        ? `The clocking ${here}° stands twice.`
        : `The clockings must rise: ${before}° stands before ${here}°.`;
    found.push({ level: 'wrong', code: 'clocking-order', message });
  }
  const beyond = clockings.find((at) => at < 0 || at >= 180);
  if (beyond !== undefined) {
    const message = `The clocking ${beyond}° is not between 0° and 180°: half a turn on, a diameter is the same.`;
    found.push({ level: 'wrong', code: 'clocking-order', message });
  }
  const place = notRising(stations);
  if (place) {
    const [before, here] = place;
    const message =
      before === here
        ? `The station ${here} mm stands twice.`
        : `The stations must rise: ${before} mm stands before ${here} mm.`;
    found.push({ level: 'wrong', code: 'station-order', message });
  }
  const outside = stations.find((x) => x < 0 || x > overlap);
  if (outside !== undefined) {
    const message = `The station ${outside} mm is not within the joint: it is ${overlap} mm long from the mouth.`;
    found.push({ level: 'wrong', code: 'station-outside', message });
  }
  const full =
    diameters.length === stations.length &&
    diameters.every(({ length }) => length === clockings.length);
  if (!full) {
    const message = `There must be ${clockings.length} readings at each of ${stations.length} stations.`;
    found.push({ level: 'wrong', code: 'grid', message });
  }
  return found.map((one) => mistake(surface, one));
}

/** Rows with at least one reading, with their place along the joint. */
const rowsOf = ({ stations, diameters }: MeasuredSurface) =>
  diameters.flatMap((row, i) => {
    const read = row.flatMap((value, j) => (value === null ? [] : [{ value, i, j }]));
    return read.length > 0 && stations[i] !== undefined ? [{ x: stations[i], read }] : [];
  });

const partOf = (surface: MeasuredSurface['surface']): string =>
  surfaceWords[surface].split(',')[0]!;

/**
 * The part that goes inside is not to be larger than the other, at the nearest station of it: one
 * mistake for each station. It stands at the reading that is doubted already, else at the inner part's.
 * @param doubts those that say what was meant count as mended
 */
function misfits(
  bond: BondToMeasure,
  inside: MeasuredSurface,
  outside: MeasuredSurface,
  doubts: readonly Mistake[],
): readonly Mistake[] {
  const doubted = (of: MeasuredSurface, i: number, j: number): Mistake | undefined =>
    doubts.find(({ surface, at }) => surface === of.surface && at?.[0] === i && at[1] === j);
  const plausible = (of: MeasuredSurface) =>
    rowsOf(of).flatMap(({ x, read }) => {
      const kept = read.filter(({ i, j }) => (doubted(of, i, j)?.meant ?? null) === null);
      return kept.length > 0 ? [{ x, read: kept }] : [];
    });
  const others = plausible(outside);
  if (others.length === 0) return [];
  const rows = plausible(inside);
  const found = rows.flatMap(({ x, read }): Mistake[] => {
    const nearest = others.reduce((a, b) => (Math.abs(b.x - x) < Math.abs(a.x - x) ? b : a));
    const large = read.reduce((a, b) => (b.value > a.value ? b : a));
    const small = nearest.read.reduce((a, b) => (b.value < a.value ? b : a));
    if (large.value < small.value) return [];
    const than = large.value === small.value ? 'as large as' : 'larger than';
    const message = `Here the ${partOf(bond.inside)} (${mm(large.value)}) is ${than} the ${partOf(bond.outside)} (${mm(small.value)}): it cannot go in.`;
    const atOuter =
      doubted(outside, small.i, small.j) !== undefined &&
      doubted(inside, large.i, large.j) === undefined;
    return [
      mistake(atOuter ? bond.outside : bond.inside, {
        level: 'wrong',
        code: 'larger-than-sleeve',
        message,
        at: atOuter ? [small.i, small.j] : [large.i, large.j],
      }),
    ];
  });
  // A part that is too large all along is one mistake.
  if (found.length === rows.length) return found.slice(0, 1);
  const cell = ({ surface, at }: Mistake): string => `${surface} ${at}`;
  return found.filter((one, i) => found.findIndex((other) => cell(other) === cell(one)) === i);
}

const meanOf = (surface: MeasuredSurface): number | null => {
  const all = rowsOf(surface).flatMap(({ read }) => read.map(({ value }) => value));
  return all.length === 0 ? null : all.reduce((sum, value) => sum + value, 0) / all.length;
};

/** Each surface reads like the drawing of the other one. */
function exchanged(
  plan: MeasuringPlan,
  bond: BondToMeasure,
  inside: MeasuredSurface,
  outside: MeasuredSurface,
): boolean {
  const [small, large] = [meanOf(inside), meanOf(outside)];
  if (small === null || large === null || small - large < bond.gap) return false;
  const drawn = (surface: MeasuredSurface['surface']): number =>
    plan.surfaces.find((one) => one.surface === surface)!.drawn;
  const near = (value: number, to: number): boolean => Math.abs(value - to) < 2 * bond.gap;
  return near(small, drawn(bond.outside)) && near(large, drawn(bond.inside));
}

/** All that looks wrong; one entry for each reading, the most telling. */
export function findMistakes(
  joint: Joint,
  measured: readonly MeasuredSurface[],
): readonly Mistake[] {
  const plan = measuringPlan(joint);
  if (!plan) return [];
  const found: Mistake[] = [];
  const bySurface = new Map(measured.map((one) => [one.surface, one]));
  for (const one of measured) found.push(...headMistakes(one, joint.overlap));
  for (const { surface, drawn } of plan.surfaces) {
    const one = bySurface.get(surface);
    if (!one) continue;
    const gap = plan.bonds.find((bond) => bond.inside === surface || bond.outside === surface)!.gap;
    found.push(...doubtsOf(one, drawn, gap));
  }
  for (const bond of plan.bonds) {
    const [inside, outside] = [bySurface.get(bond.inside), bySurface.get(bond.outside)];
    if (!inside || !outside) continue;
    if (exchanged(plan, bond, inside, outside)) {
      const message = `The readings of ${partOf(bond.inside)} and ${partOf(bond.outside)} look exchanged.`;
      found.push(mistake(bond.inside, { level: 'wrong', code: 'parts-exchanged', message }));
      continue;
    }
    const wrong = misfits(bond, inside, outside, found);
    // It says more of a reading than that it stands off the others.
    for (const { surface, at } of wrong) {
      const doubted = found.findIndex(
        (one) => one.surface === surface && one.at?.[0] === at?.[0] && one.at?.[1] === at?.[1],
      );
      if (doubted >= 0) found.splice(doubted, 1);
    }
    found.push(...wrong);
  }
  return found;
}
