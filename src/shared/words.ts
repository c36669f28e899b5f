/** Every word that the screens say about a figure, in one place, so that all of them say it alike. */
import type { Lap } from './convert-lap.ts';
import { figure, lengthText } from './measures.ts';
import type { LoadCase, Moisture } from './project.ts';
import type {
  EdgeMomentReport,
  GapState,
  JointReport,
  Ledger,
  LedgerRow,
  Margin,
  MarginState,
  Mode,
  Place,
  TroughLengths,
} from './reports.ts';
import { withUnit } from './units.ts';

export const lapWords: Readonly<Record<Lap, string>> = {
  socket: 'single, tube in socket',
  spigot: 'single, tube over spigot',
  'sleeve-double': 'double, spigot and socket',
  'flat-single': 'single',
  'flat-double': 'double',
};

export const stateWords: Readonly<Record<MarginState, string>> = {
  fails: 'fails',
  low: 'low',
  holds: 'holds',
};

export const gapWords: Readonly<Record<GapState, string>> = {
  min: 'gap min',
  nominal: 'gap nominal',
  max: 'gap max',
  'thin-side': 'offset, thin side',
  'thick-side': 'offset, thick side',
};

export const placeWords: Readonly<Record<Place, string>> = {
  root: 'root',
  mouth: 'mouth',
  within: 'within',
};

const counted = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'];

/** Small counts read better as words. */
export const count = (n: number): string => counted[n] ?? String(n);

/** `Boom root, Boom tip and two more`: names, as many as one reads. */
export function listed(names: readonly string[], most = 4): string {
  const more = names.length - most;
  // One more name is as short as to say that there is one more.
  const shown = more > 1 ? [...names.slice(0, most), `${count(more)} more`] : names;
  return shown.length < 2
    ? shown.join('')
    : `${shown.slice(0, -1).join(', ')} and ${shown[shown.length - 1]}`;
}

/** A message as a sentence: the backend names a field as it stands inside one. */
export const sentence = (text: string): string =>
  capital(text.trim()) + (/[.!?…]$/.test(text.trim()) ? '' : '.');

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** `+0.42`, `−0.08`; the sign is the true one even where two decimals round to nothing. */
export function signed(value: number, decimals = 2): string {
  const size = Math.abs(value);
  const sign = value < 0 ? '−' : '+';
  return size >= 99.995 ? `> ${sign}99` : `${sign}${size.toFixed(decimals)}`;
}

export { figure, lengthText } from './measures.ts';

/** −0 and 360 are both 0°. */
export const clocking = (theta: number): string => {
  const degrees = Math.round(theta) % 360;
  return `${degrees < 0 ? '−' : ''}${Math.abs(degrees)}°`;
};

export const environment = (temperature: number, moisture: Moisture): string =>
  `${withUnit('temperature', temperature)} ${moisture}`;

export const kindOf = (load: LoadCase): string =>
  load.kind === 'cyclic' ? `cyclic, ${power(load.cycles)} cycles` : load.kind;

/** 10 000 000 as 1e7; small or uneven counts as they are. */
function power(value: number): string {
  const exponent = Math.floor(Math.log10(value));
  const mantissa = value / 10 ** exponent;
  return exponent >= 4 && Number(mantissa.toFixed(2)) === mantissa
    ? `${mantissa}e${exponent}`
    : String(value);
}

/** Where along the overlap: at an end, or so far from the root. */
export const placeText = (margin: Pick<Margin, 'place' | 'x'>): string =>
  margin.place === 'within' ? `at ${lengthText(margin.x)}` : placeWords[margin.place];

/** `Gust, at Cold soak`: a case, and the condition it is judged in where that is not its own. */
export const caseText = (caseName: string, conditionName: string | null): string =>
  conditionName === null ? caseName : `${caseName}, at ${conditionName}`;

/** The case that sets a margin, with its condition. */
export const caseOf = ({ caseName, conditionName }: Margin): string =>
  caseText(caseName, conditionName);

/** Where a margin is reached; a flat joint has no clocking. */
export const whereText = (margin: Margin, flat: boolean): string =>
  [
    flat ? placeText(margin) : `${placeText(margin)}, ${clocking(margin.theta)}`,
    gapWords[margin.gapState],
  ].join(' · ');

export const troughText = ({ elastic, rest }: TroughLengths): string =>
  `elastic over ${lengthText(elastic)}, ${lengthText(rest)} below a tenth of yield`;

/** The remark of a margin, its lengths in the unit on the screen. */
export const remarkText = ({ trough, remark }: Margin): string =>
  trough ? troughText(trough) : remark;

const aWall = (margin: Margin): string => `the ${margin.part}`;
/** The only bond of a joint needs no name. */
const aBond = (what: string, margin: Margin): string =>
  margin.part === 'bond' ? what : `${what} in the ${margin.part}`;

/** A mode as a person would say it, where the list has its short label. */
const modeWords: Readonly<Record<Mode, (margin: Margin) => string>> = {
  'adhesive-yield': (margin) => aBond('yield of the adhesive', margin),
  'adhesive-strain': (margin) => aBond('shear strain of the adhesive', margin),
  'adhesive-peel': (margin) => aBond('peel', margin),
  'peel-shear': (margin) => aBond('peel with shear', margin),
  interlaminar: (margin) => aBond('the laminate between its plies', margin),
  'first-ply': () => 'the first ply',
  fracture: (margin) => aBond('fracture of the adhesive', margin),
  'durability-trough': () => 'the durability trough',
  'cyclic-shear': (margin) => aBond('cyclic shear', margin),
  'cyclic-damage': (margin) => aBond('all cycles together', margin),
  'metal-yield': (margin) => `yield of ${aWall(margin)}`,
  'metal-ultimate': (margin) => `ultimate strength of ${aWall(margin)}`,
  'laminate-strength': (margin) => `laminate strength of ${aWall(margin)}`,
};

/** A failure mode and where it happens, as a sentence begins: `Peel with shear at the mouth`. */
export const modeAndPlace = (margin: Margin): string =>
  `${capital(modeWords[margin.mode](margin))} ${
    margin.place === 'within' ? `${lengthText(margin.x)} from the root` : `at the ${margin.place}`
  }`;

/** What sets the strength of the joint: `Peel at the mouth governs: +0.12 in Gust, cold soak`. */
export function headline(report: JointReport): string {
  const [lowest] = report.margins;
  if (!lowest) return 'No load case acts on this joint: give it one to see margins.';
  return `${modeAndPlace(lowest)} governs: ${signed(lowest.margin)} in ${caseText(lowest.caseName, lowest.conditionName)}`;
}

/** How the margins stand, in one sentence. */
export function verdict({ margins }: JointReport): string {
  const of = (state: MarginState): number =>
    margins.filter((margin) => margin.state === state).length;
  const is = (n: number): string => (n === 1 ? 'is' : 'are');
  const [failing, low] = [of('fails'), of('low')];
  if (failing > 0) {
    return `${capital(count(failing))} of ${count(margins.length)} margins ${is(failing)} below zero.`;
  }
  if (low > 0) {
    return `Nothing fails, but ${count(low)} of ${count(margins.length)} margins ${is(low)} below the target.`;
  }
  return 'Every margin reaches the target.';
}

export const ledgerWords: Readonly<Record<LedgerRow['name'], string>> = {
  environment: 'environment',
  gap: 'gap',
  ageing: 'ageing',
  scatter: 'scatter',
  fitting: 'fitting',
};

/** `environment 1.00 × gap 0.90 = 0.90 ÷ fitting 1.15 = 0.78`: what is left of the strength, and of the load. */
export function ledgerText({
  rows,
  strength,
  left,
}: Pick<Ledger, 'rows' | 'strength' | 'left'>): string {
  const own = rows.filter(({ name }) => name !== 'fitting');
  const fitting = rows.find(({ name }) => name === 'fitting');
  const chain = own.map(({ name, factor }) => `${ledgerWords[name]} ${factor.toFixed(2)}`);
  const kept = `${chain.length === 0 ? 'nothing taken off:' : `${chain.join(' × ')} =`} ${strength.toFixed(2)}`;
  if (!fitting) return kept;
  return `${kept} ÷ ${ledgerWords.fitting} ${(1 / fitting.factor).toFixed(2)} = ${left.toFixed(2)}`;
}

export const edgeMomentWords = {
  'goland-reissner': 'Goland and Reissner',
  'hart-smith': 'Hart-Smith',
} as const;

/** Both factors of the edge moment of a flat single lap, the one that is used first. */
export function edgeMomentText(report: EdgeMomentReport): string {
  const k = ({ root, mouth }: { root: number; mouth: number }): string =>
    figure(root) === figure(mouth) ? figure(root) : `${figure(root)} root, ${figure(mouth)} mouth`;
  const texts = {
    'goland-reissner': `${edgeMomentWords['goland-reissner']} ${k(report.golandReissner)}`,
    'hart-smith': `${edgeMomentWords['hart-smith']} ${k(report.hartSmith)}`,
  };
  const other = report.chosen === 'hart-smith' ? 'goland-reissner' : 'hart-smith';
  return `${texts[report.chosen]} (used); ${texts[other]}`;
}

/** How a project stands, in one sentence. */
export function tally(
  counts: Readonly<Record<MarginState, number>>,
  joints: number,
  refused = 0,
): string {
  if (joints === 0) return 'This project has no joints.';
  const parts = (['fails', 'low', 'holds'] as const)
    .filter((state) => counts[state] > 0)
    .map((state) => {
      const n = counts[state];
      if (state === 'low') return `${count(n)} ${n === 1 ? 'is' : 'are'} low`;
      return `${count(n)} ${n === 1 ? state : state.slice(0, -1)}`;
    });
  const judged = counts.fails + counts.low + counts.holds;
  const unloaded = joints - judged - refused;
  if (unloaded > 0)
    parts.push(`${count(unloaded)} ${unloaded === 1 ? 'has' : 'have'} no load case`);
  if (refused > 0) parts.push(`${count(refused)} cannot be computed`);
  const last = parts.pop() ?? '';
  const list = parts.length === 0 ? last : `${parts.join(', ')} and ${last}`;
  return `Of ${count(joints)} ${joints === 1 ? 'joint' : 'joints'}, ${list}.`;
}
