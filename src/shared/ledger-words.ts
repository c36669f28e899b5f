/** What is said of the ledger of allowables, the same on the page, in the terminal and in a spreadsheet. */
import { plainOf, plainText, symbolOf } from './measures.ts';
import type { Source } from './project-fields.ts';
import type {
  AdhesiveLedger,
  LedgerAllowable,
  LedgerEnvironment,
  LedgerGap,
  LedgerOffer,
  LedgerUse,
  StrengthBasis,
} from './reports-ledger.ts';
import { bareWords } from './rests-on.ts';
import { caseText, count } from './words.ts';

/** True where the figures are nobody's own. */
export const isBare = (basis: StrengthBasis | null): boolean =>
  basis === 'typical' || basis === 'memory';

/** True of what is no allowable by its kind: it is marked wherever it stands. */
export const isMarked = (basis: StrengthBasis | null): boolean => isBare(basis) || basis === 'mean';

/** What the environments that joints meet rest on, in one sentence. */
export function ledgerSentence(adhesives: readonly AdhesiveLedger[]): string {
  const met = adhesives.flatMap(({ environments }) =>
    environments.filter(({ uses, basis }) => uses.length > 0 && basis !== null),
  );
  if (met.length === 0) return 'No joint is judged in any environment yet: no strength is used.';
  const of = (is: (one: LedgerEnvironment) => boolean): number => met.filter(is).length;
  const isAllowed = ({ basis }: LedgerEnvironment): boolean => basis === 'A' || basis === 'B';
  const counts: readonly (readonly [number, string])[] = [
    [of((one) => isAllowed(one) && one.testedHere), 'on an allowable tested there'],
    [of((one) => isAllowed(one) && !one.testedHere), 'on an allowable from another temperature'],
    [of(({ basis }) => basis === 'mean'), 'on a mean of coupons, no allowable'],
    [of(({ basis }) => basis === 'tested'), 'on tested values as entered'],
    [of(({ basis }) => basis === 'published'), 'on published values'],
    [of(({ basis }) => isBare(basis)), 'on values that are typical or from memory'],
  ];
  const there = counts.filter(([n]) => n > 0);
  const [only] = there;
  const environments = `${count(met.length)} ${met.length === 1 ? 'environment' : 'environments'} that joints meet`;
  if (there.length === 1 && only) {
    return met.length === 1
      ? `The ${environments} rests ${only[1]}.`
      : `All ${environments} rest ${only[1]}.`;
  }
  const said = there.map(
    ([n, words], i) => `${count(n)} ${i > 0 ? '' : n === 1 ? 'rests ' : 'rest '}${words}`,
  );
  return `Of ${environments}, ${said.join(', ')}.`;
}

const minus = (value: number): string => String(value).replace('-', '−');
const some = (n: number, what: string): string => `${n} ${what}${n === 1 ? '' : 's'}`;

/** Neighbouring gaps at which all is the same, as one line. */
export interface LedgerLine extends Omit<LedgerGap, 'gap'> {
  /** The thinnest first; none where nothing names a gap. */
  readonly gaps: readonly number[];
}

const figuresOf = ({ factors, strength, outsideTable, otherGap }: LedgerGap | LedgerLine): string =>
  JSON.stringify([factors, strength, outsideTable, otherGap]);

export function ledgerLines(list: readonly LedgerGap[]): readonly LedgerLine[] {
  const lines: LedgerLine[] = [];
  for (const { gap, ...one } of list) {
    const gaps = gap === null ? [] : [gap];
    const last = lines.at(-1);
    if (!last || figuresOf(last) !== figuresOf({ gap, ...one })) {
      lines.push({ ...one, gaps });
      continue;
    }
    lines[lines.length - 1] = {
      ...last,
      gaps: [...last.gaps, ...gaps],
      of: [...new Set([...last.of, ...one.of])],
      joints: [...new Set([...last.joints, ...one.joints])],
    };
  }
  return lines;
}

/**
 * `0.1 to 0.3`: the strength runs straight between two of these gaps, so that it is the same all the way
 * where it is the same at both. Where gaps were left out nothing is said of what lies between.
 */
export function gapsText(gaps: readonly number[], isWhole: boolean): string {
  const [first, last] = [gaps[0], gaps.at(-1)];
  if (first === undefined || last === undefined) return 'any';
  const text = (gap: number): string => plainOf('small', gap);
  if (isWhole && gaps.length > 1) return `${text(first)} to ${text(last)}`;
  return gaps.length > 4
    ? `${text(first)} … ${text(last)}, ${gaps.length} gaps`
    : gaps.map(text).join(', ');
}

/** How the adhesive's rows give the properties; empty where one of them stands for itself. */
export function rowsText({ rows, rowsAt }: LedgerEnvironment): string {
  const temperatures = rowsAt.map((at) => plainOf('temperature', at)).join(' and ');
  const degrees = symbolOf('temperature');
  if (rows === 'between') return `properties between the rows at ${temperatures} ${degrees}`;
  return rows === 'beyond'
    ? `beyond the rows: properties of that at ${temperatures} ${degrees}`
    : '';
}

const day = (taken: string): string => taken.slice(0, 10);

/** `18 coupons in 3 batches at gap 0.2 mm, tested 2026-02-03, taken 2026-03-01`. */
export function allowableText({ taken, tested }: LedgerAllowable): string {
  const { coupons, batches, gap } = taken;
  return [
    `${some(coupons, 'coupon')} in ${batches} batch${batches === 1 ? '' : 'es'} at gap ${plainText('small', gap)}`,
    ...(tested === null ? [] : [`tested ${tested}`]),
    `taken ${day(taken.taken)}`,
  ].join(', ');
}

/** What a person must do about an allowable; empty where nothing. */
export const setText = ({ set }: LedgerAllowable): string =>
  ({
    'as-taken': '',
    changed: 'The coupons have changed since: take it again.',
    gone: 'Its set is no longer in the project.',
  })[set];

/** `18 results at gap 0.4 mm, 16 of them count: no allowable is taken.` */
export function offerText({ results, counted, gap, barred }: LedgerOffer): string {
  const apart = counted === results ? '' : `, ${counted} of them count`;
  const rest = barred === '' ? 'no allowable is taken.' : `no allowable. ${barred}`;
  return `${some(results, 'result')} at gap ${plainText('small', gap)}${apart}: ${rest}`;
}

/** The cases that bring a joint there. */
export const useText = ({ cases }: LedgerUse): string =>
  cases.map(({ caseName, conditionName }) => caseText(caseName, conditionName)).join('; ');

/** What else of an adhesive margins hang on, each with a source of its own. */
export interface LedgerOther {
  readonly what: string;
  readonly value: string;
  /** Null where there is nothing to have a source. */
  readonly source: Source | null;
}

export const sourceWords = ({ source }: LedgerOther): string =>
  source ? bareWords[source.kind] : 'not given';

export function ledgerOthers({
  source,
  knockdowns,
  fracture,
  fatigue,
}: AdhesiveLedger): readonly LedgerOther[] {
  const others: LedgerOther[] = [
    { what: 'rows', value: 'properties at temperature and moisture, before knockdowns', source },
    knockdowns
      ? {
          what: 'knockdowns',
          value: `environment ${knockdowns.environment}, ageing ${knockdowns.ageing}, scatter ${knockdowns.scatter}`,
          source: knockdowns.source,
        }
      : { what: 'knockdowns', value: 'nothing is taken off', source: null },
    knockdowns && knockdowns.gap.length > 0
      ? {
          what: 'strength against gap',
          value: knockdowns.gap
            .toSorted((a, b) => a.gap - b.gap)
            .map(({ gap, factor }) => `${plainText('small', gap)} ${factor}`)
            .join(', '),
          source: knockdowns.source,
        }
      : { what: 'strength against gap', value: 'the same at every gap', source: null },
    fracture
      ? {
          what: 'fracture energies',
          value: `opening ${plainText('fractureEnergy', fracture.modeI)}, sliding ${plainText('fractureEnergy', fracture.modeII)}, exponent ${fracture.exponent}`,
          source: fracture.source,
        }
      : { what: 'fracture energies', value: 'a crack is not checked', source: null },
    fatigue
      ? {
          what: 'S-N line',
          value: `share of yield ${fatigue.coefficient}·n^−${fatigue.exponent}, at most 1; load ratio ${fatigue.ratio === undefined ? 'not known' : minus(fatigue.ratio)}`,
          source: fatigue.source,
        }
      : { what: 'S-N line', value: 'cyclic shear is not checked', source: null },
  ];
  return others;
}

/** What a line of the ledger says beside its figures; empty where nothing. */
export const lineText = ({ outsideTable, otherGap }: LedgerLine | LedgerGap): string =>
  [
    ...(outsideTable ? ['beyond the table of strength against gap'] : []),
    ...(otherGap ? ['not tested at this gap'] : []),
  ].join('; ');
