/** The working of a figure: which state it is of, its cards, where it holds. */

import { domainsOf } from '../../model/validity/domains.ts';
import { marginWorking } from '../../model/working/modes.ts';
import { type Focus, figures } from '../../shared/contract.ts';
import type { Joint, Project } from '../../shared/project.ts';
import { ok, type Reply, refuse } from '../../shared/reply.ts';
import type { Mode, Place, Working } from '../../shared/reports.ts';
import { caseText, environment, kindOf, whereText } from '../../shared/words.ts';
import { cardsOf } from './explain-cards.ts';
import { explainFigure, type Figure } from './explain-figures.ts';
import { isMode, whyNot } from './explain-refusals.ts';
import { type About, fitting, onlyFor, rowInFocus } from './explain-rows.ts';
import { casesInFocus } from './focus.ts';
import { governingModes, toMargin } from './margins.ts';
import type { ResolvedCase, ResolvedJoint } from './resolve.ts';

export interface Question {
  readonly subject: string;
  readonly part?: string | undefined;
  readonly place?: Place | undefined;
  readonly focus: Focus;
}

const isFigure = (subject: string): subject is Figure =>
  (figures as readonly string[]).includes(subject);

/** Figures that a joint of this type has: only a flat single lap has an edge moment. */
const figuresOf = ({ type }: Joint): readonly Figure[] =>
  figures.filter((figure) => figure !== 'edge-moment' || type === 'flat-single');

const list = (names: readonly string[]): string => [...new Set(names)].join(', ');

export function explain(
  project: Project,
  resolved: ResolvedJoint,
  question: Question,
): Reply<Working> {
  const { subject, focus } = question;
  const { joint, index, cases } = resolved;
  if (cases.length === 0) {
    return refuse(
      'bad-input',
      `joints.${index}.loads`,
      `The joint "${joint.name}" has no load case: give it one to see a working.`,
    );
  }
  const there = casesInFocus(project, resolved, focus);
  if (!there.ok) return there;
  if (!isFigure(subject) && !isMode(subject)) {
    const modes = governingModes(resolved, project.settings).map(({ result }) => result.mode);
    return refuse(
      'not-found',
      'subject',
      `Nothing here is called "${subject}". This joint has: ${list([...modes, ...figuresOf(joint)])}.`,
    );
  }
  return isFigure(subject)
    ? explainFigure(project, resolved, { ...question, subject, there: there.value })
    : explainMode(project, resolved, { ...question, subject, there: there.value });
}

function explainMode(
  project: Project,
  resolved: ResolvedJoint,
  {
    subject: mode,
    part,
    place,
    focus,
    there,
  }: Question & {
    readonly subject: Mode;
    readonly there: readonly ResolvedCase[];
  },
): Reply<Working> {
  const { settings } = project;
  const rows = governingModes(resolved, settings, false, onlyFor(mode));
  const about: About = { mode, part, place };
  const row = rowInFocus(resolved, settings, rows, about, focus, there);
  if (!row) {
    const parts = fitting(rows, { mode }).map(({ result }) => result.part);
    return part !== undefined && parts.length > 0 && !parts.includes(part)
      ? refuse(
          'not-found',
          'part',
          `The ${part} has no such margin; it is listed for: ${list(parts)}.`,
        )
      : refuse('not-found', 'subject', whyNot(mode, resolved, there));
  }
  const { state, result, loadCase, condition } = row;
  if (place !== undefined && result.place !== place) {
    return refuse(
      'not-found',
      'place',
      `This margin is listed for the place "${result.place}": there is none at "${place}".`,
    );
  }
  const margin = toMargin(row, resolved, settings.targetMargin, '');
  const steps = marginWorking({ state, adhesive: resolved.adhesive, settings, result });
  const where = [
    `${caseText(loadCase.name, condition?.name ?? null)} (${kindOf(loadCase)})`,
    environment(state.loadCase.temperature, state.loadCase.moisture),
    whereText(margin, state.assembly.flat),
    ...(state.assembly.bonds.length > 1 || result.part !== 'bond' ? [result.part] : []),
  ];
  return ok({
    jointId: resolved.joint.id,
    title: margin.label,
    where: where.join(' · '),
    margin,
    cards: cardsOf(steps, domainsOf(result, state)),
  });
}
