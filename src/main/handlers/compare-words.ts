/** Why one joint carries more than another, in a sentence made of their own figures. */
import { bare, type Said, type SaidFigure, saidTogether, say } from '../../model/said.ts';
import type { CompareColumn } from '../../shared/reports-compare.ts';
import { figure } from '../../shared/words.ts';

/** Ratios closer to one than this are not worth a word. */
const SAME = 0.02;
const differs = (ratio: number): boolean => Math.abs(ratio - 1) > SAME;

/** A fact about the second joint beside the first, and which way it works: + for more strength. */
interface Fact {
  readonly said: Said;
  readonly helps: boolean;
}

/** `44 to 56 %`, rounded so that they make a hundred. */
function shareWords({ bonds }: CompareColumn): string {
  const [first] = bonds;
  const one = Math.round(first!.share * 100);
  return `${one} to ${100 - one} %`;
}

const total = (column: CompareColumn, of: 'area'): number =>
  column.bonds.reduce((sum, bond) => sum + bond[of], 0);
const largest = (column: CompareColumn, of: 'peakShear' | 'peakPeel' | 'strain'): number =>
  Math.max(...column.bonds.map((bond) => Math.abs(bond[of])));

const stress = (value: number): SaidFigure => ({
  as: `${figure(value)} MPa`,
  measure: 'stress',
  value,
});

function facts(a: CompareColumn, b: CompareColumn): Fact[] {
  const found: Fact[] = [];
  if (b.bonds.length > a.bonds.length) {
    found.push({ helps: true, said: say`two bonds share the load ${shareWords(b)}` });
  } else if (b.bonds.length < a.bonds.length) {
    found.push({ helps: false, said: say`one bond carries what two shared ${shareWords(a)}` });
  }
  const area = total(b, 'area') / total(a, 'area');
  if (differs(area)) {
    found.push({ helps: area > 1, said: say`the bonded area is ${figure(area)} times as large` });
  }
  const moved = (name: string, of: 'peakShear' | 'peakPeel'): void => {
    const [was, is] = [largest(a, of), largest(b, of)];
    if (was === 0 || !differs(is / was)) return;
    const verb = is < was ? 'falls' : 'rises';
    found.push({
      helps: is < was,
      said: say`${name} ${verb} from ${bare(stress(was))} to ${stress(is)}`,
    });
  };
  moved('peak shear', 'peakShear');
  moved('peak peel', 'peakPeel');
  return found;
}

const joined = (parts: readonly Said[]): Said => {
  const last = parts[parts.length - 1]!;
  return parts.length === 1 ? last : say`${saidTogether(parts.slice(0, -1), ', ')} and ${last}`;
};

/** What the reader calls them: their laps where these differ, else their names. */
function calls(a: CompareColumn, b: CompareColumn): readonly [string, string] {
  const lapWord = ({ bonds }: CompareColumn): string =>
    bonds.length === 2 ? 'the double lap' : 'the single lap';
  return a.bonds.length === b.bonds.length
    ? [`“${a.name}”`, `“${b.name}”`]
    : [lapWord(a), lapWord(b)];
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Null where one of the two has no strength in the common case. */
function strengthSentence(a: CompareColumn, b: CompareColumn, sameLoads: boolean): Said | null {
  if (!a.carried || !b.carried || a.carried.shear <= 0) return null;
  if (!sameLoads) {
    // A factor on other loads is no measure of strength.
    return say`“${b.name}” carries ${figure(b.carried.shear)} times its own loads of the case before its bond fails in shear, “${a.name}” ${figure(a.carried.shear)} times its own: the loads differ, so these are no ratio of strength.`;
  }
  const [first, second] = calls(a, b);
  const ratio = b.carried.shear / a.carried.shear;
  const more = ratio > 1;
  const head = differs(ratio)
    ? `${capital(second)} carries ${figure(ratio)} times the load of ${first} before its bond fails in shear`
    : `${capital(second)} carries as much as ${first} before its bond fails in shear`;
  const all = facts(a, b);
  const reasons = all.filter(({ helps }) => helps === more).map(({ said }) => said);
  const against = all.filter(({ helps }) => helps !== more).map(({ said }) => said);
  const because =
    differs(ratio) && reasons.length > 0
      ? against.length > 0
        ? say`: ${joined(reasons)}, although ${joined(against)}`
        : say`: ${joined(reasons)}`
      : all.length > 0
        ? say`; ${joined(all.map(({ said }) => said))}`
        : '';
  const failure = firstFailure(a, b);
  return say`${head}${because}.${failure === '' ? '' : ' '}${failure}`;
}

/** The first failure of any kind, where it is not the same story as shear alone. */
function firstFailure(a: CompareColumn, b: CompareColumn): string {
  const [one, other] = [a.carried!.first, b.carried!.first];
  if (one.factor >= a.carried!.shear && other.factor >= b.carried!.shear) return '';
  const ratio = other.factor / one.factor;
  if (one.label === other.label) {
    return `What fails first in both is ${one.label}: at ${figure(one.factor)} and ${figure(other.factor)} times the case’s loads, ${figure(ratio)} times as much.`;
  }
  return `What fails first is ${one.label} at ${figure(one.factor)} times the case’s loads, and ${other.label} at ${figure(other.factor)}: ${figure(ratio)} times as much.`;
}

/**
 * One sentence for each further column beside the first.
 * @param sameLoads whether a column has the first one's loads in the common case
 */
export const sentencesOf = (
  [first, ...others]: readonly CompareColumn[],
  sameLoads: (column: number) => boolean,
): Said[] =>
  others.flatMap((other, i) =>
    first ? (strengthSentence(first, other, sameLoads(i + 1)) ?? []) : [],
  );
