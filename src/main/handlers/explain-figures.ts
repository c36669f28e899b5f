/** Workings of figures that are no margins: of the drawn state, of the bond, of the overlap. */
import type { Step } from '../../model/card.ts';
import { gapStates } from '../../model/joint/assembly.ts';
import { isFlatSingle } from '../../model/layered/edge-loads.ts';
import type { Mode } from '../../model/margins/asked.ts';
import { jointState } from '../../model/margins/state.ts';
import { withOverlap } from '../../model/sweep/overlap-sweep.ts';
import { domainsOf } from '../../model/validity/domains.ts';
import { peakPeelWorking, peakShearWorking } from '../../model/working/drawn.ts';
import { edgeMomentWorking } from '../../model/working/edge.ts';
import { plateauWorking } from '../../model/working/plateau.ts';
import { strengthAt, strengthSteps } from '../../model/working/strength.ts';
import type { Focus, figures } from '../../shared/contract.ts';
import type { Project } from '../../shared/project.ts';
import { ok, type Reply, refuse } from '../../shared/reply.ts';
import type { Working } from '../../shared/reports.ts';
import {
  caseText,
  clocking,
  edgeMomentWords,
  environment,
  gapWords,
  kindOf,
  lengthText,
} from '../../shared/words.ts';
import { drawnRow, isCaseOf } from './drawn-row.ts';
import { cardsOf } from './explain-cards.ts';
import { STATIONS } from './joint.ts';
import { degrees, governingModes, radians } from './margins.ts';
import type { ResolvedCase, ResolvedJoint } from './resolve.ts';
import { figureDomains } from './validity.ts';

export type Figure = (typeof figures)[number];

export interface FigureQuestion {
  readonly subject: Figure;
  readonly part?: string | undefined;
  readonly focus: Focus;
  /** The cases in the focus. */
  readonly there: readonly ResolvedCase[];
}

interface Shown {
  readonly title: string;
  readonly steps: readonly Step[];
  /** What the place adds to case, gap and clocking. */
  readonly place: string;
  /** Distance from the root, mm; 0 where the figure has none. */
  readonly x?: number;
  /** The mode whose domains this figure shares. */
  readonly like: Mode;
  readonly wholeBondFlows?: boolean;
}

export function explainFigure(
  project: Project,
  resolved: ResolvedJoint,
  question: FigureQuestion,
): Reply<Working> {
  if (question.subject === 'plateau') return explainPlateau(project, resolved);
  const { part } = question;
  const { settings } = project;
  const { state, loadCase, condition, theta, loadFactor } = seen(project, resolved, question);
  const names = state.assembly.bonds.map(({ name }) => name);
  if (part !== undefined && !names.includes(part)) {
    return refuse(
      'not-found',
      'part',
      `This joint has no bond "${part}". It has: ${names.join(', ')}.`,
    );
  }
  const given = { state, adhesive: resolved.adhesive, settings };
  const shown = showFigure(question, given, { theta, loadFactor, names });
  if (!shown.ok) return shown;
  const { title, steps, place, like, wholeBondFlows = false, x = 0 } = shown.value;
  const where = [
    `${caseText(loadCase.name, condition?.name ?? null)} (${kindOf(loadCase)})`,
    environment(state.loadCase.temperature, state.loadCase.moisture),
    gapWords[state.gapState],
    ...(state.assembly.flat ? [] : [`clocking ${clocking(degrees(theta))}`]),
    `loads × ${Number(loadFactor.toPrecision(4))}`,
    place,
  ];
  return ok({
    jointId: resolved.joint.id,
    title,
    where: where.filter((text) => text !== '').join(' · '),
    margin: null,
    cards: cardsOf(steps, figureDomains(state, like, { theta, x, wholeBondFlows })),
  });
}

/** The state that is drawn for a focus: what it leaves out is that of the governing row. */
function seen({ settings }: Project, resolved: ResolvedJoint, { focus, there }: FigureQuestion) {
  const { input, adhesive } = resolved;
  const row = drawnRow(resolved, settings, focus, there, () => governingModes(resolved, settings));
  const found = there.find((one) => row && isCaseOf(one, row)) ?? there[0]!;
  const { loadCase, condition, input: loaded } = found;
  const states = gapStates(input);
  const wanted = focus.gapState ?? row?.result.gapState ?? 'nominal';
  const gapState = states.includes(wanted) ? wanted : 'nominal';
  return {
    state: jointState(input, adhesive, loaded, gapState, settings),
    loadCase,
    condition,
    theta: focus.theta === undefined ? (row?.result.theta ?? 0) : radians(focus.theta),
    loadFactor: focus.loadFactor ?? 1,
  };
}

interface Seen {
  readonly theta: number;
  readonly loadFactor: number;
  readonly names: readonly string[];
}

type Given = Parameters<typeof strengthSteps>[0];

function showFigure(
  { subject, part, focus }: FigureQuestion,
  given: Given,
  { theta, loadFactor, names }: Seen,
): Reply<Shown> {
  const stations = focus.stations ?? STATIONS;
  const state = { theta, loadFactor, stations };
  const all = names.map((_name, j) => j);
  const asked = part === undefined ? all : all.filter((j) => names[j] === part);
  const inBond = (j: number): string => (names.length > 1 ? `, ${names[j]!}` : '');
  /** Without a bond named, the one with the larger figure. */
  const largest = <T extends { readonly steps: readonly Step[] }>(of: (j: number) => T) =>
    asked.map((j) => ({ j, ...of(j) })).reduce((a, b) => (last(b.steps) > last(a.steps) ? b : a));
  switch (subject) {
    case 'peak-shear': {
      const { j, steps, x } = largest((i) => peakShearWorking(given, state, i));
      const title = `Peak shear${inBond(j)}`;
      return ok({ title, steps, place: `at ${lengthText(x)}`, x, like: 'adhesive-yield' });
    }
    case 'peak-peel': {
      const { j, steps, x } = largest((i) => peakPeelWorking(given, state, i));
      const title = `Peak peel${inBond(j)}`;
      return ok({ title, steps, place: `at ${lengthText(x)}`, x, like: 'adhesive-peel' });
    }
    case 'edge-moment': {
      if (!isFlatSingle(given.state.assembly)) {
        return refuse(
          'not-found',
          'subject',
          'Only a flat single lap has an edge moment: this joint carries its load without one.',
        );
      }
      const method = edgeMomentWords[given.settings.edgeMoment ?? 'goland-reissner'];
      const title = `Edge moment (${method} is used)`;
      return ok({
        title,
        steps: edgeMomentWorking(given, loadFactor),
        place: '',
        like: 'adhesive-peel',
      });
    }
    default: {
      const strength = strengthAt(given.state.at(theta));
      if (!strength) {
        return refuse(
          'not-found',
          'subject',
          'No load acts at this clocking: a strength as a factor on it means nothing.',
        );
      }
      return ok({
        title: `Strength of the bond${inBond(strength.bond)}`,
        steps: strengthSteps(given, theta),
        place: `at the ${strength.end}`,
        like: 'adhesive-strain',
        wholeBondFlows: strength.wholeBondFlows,
      });
    }
  }
}

const last = (steps: readonly Step[]): number => steps[steps.length - 1]?.result ?? 0;

function explainPlateau({ settings }: Project, resolved: ResolvedJoint): Reply<Working> {
  const { input: joint, adhesive, cases } = resolved;
  const question = { joint, adhesive, cases: cases.map(({ input }) => input), settings };
  const { steps, overlap, at } = plateauWorking(question);
  const found = at && cases[at.caseIndex];
  if (!found) {
    return refuse(
      'not-found',
      'subject',
      'The bond has no strength to compare: no load acts on it, or temperature alone fails it.',
    );
  }
  const { loadCase, condition, input } = found;
  const { mode } = at;
  const state = jointState(
    withOverlap(joint, at.overlap),
    adhesive,
    input,
    mode.gapState,
    settings,
  );
  const where = [
    `${caseText(loadCase.name, condition?.name ?? null)} (${kindOf(loadCase)})`,
    gapWords[mode.gapState],
    overlap === null
      ? 'no plateau within the longest overlap that is looked at'
      : `plateau at ${lengthText(overlap)}`,
  ];
  return ok({
    jointId: resolved.joint.id,
    title: 'Plateau of the bond',
    where: where.join(' · '),
    margin: null,
    cards: cardsOf(steps, domainsOf(mode, state)),
  });
}
