/** What the open project holds, each thing with the one act that leads to it. */
import type { Joint, Project } from '../../shared/project.ts';
import { groupsOf } from '../size/form-model.ts';
import type { Path } from '../state/project.ts';
import type { Action, Reach } from './action.ts';
import { reveal } from './reveal.ts';

const always = (): boolean => true;

const jointActions = ({ joints }: Project, { openJoint, joint, workspace }: Reach): Action[] =>
  joints.map(({ id, name }) => ({
    id: `joint ${id}`,
    title: () => name,
    group: 'joint',
    also: 'open size',
    ...(workspace() === 'size' && joint()?.id === id
      ? {}
      : { likely: ['joints', 'size', 'compare', 'gap'] as const }),
    available: always,
    run: () => openJoint(id),
  }));

/** The first joint that has it, the one that is looked at before all others. */
function firstJoint(
  { joints }: Project,
  now: Joint | undefined,
  has: (joint: Joint) => boolean,
): Joint | undefined {
  return now && has(now) ? now : joints.find(has);
}

/** A case that does not act on the joint that is looked at is drawn where it does. */
function caseActions(project: Project, { joint, sizing, openJoint }: Reach): Action[] {
  return project.loadCases.flatMap(({ id, name }): Action[] => {
    const on = firstJoint(project, joint(), ({ loads }) => loads.some((load) => load.case === id));
    if (!on) return [];
    const isHere = on.id === joint()?.id;
    return [
      {
        id: `case ${id}`,
        title: () => name,
        group: 'case',
        also: 'draw',
        about: `drawn on ${on.name}`,
        ...(isHere ? { likely: ['size'] as const } : {}),
        available: always,
        run: () => {
          sizing.drawCase(on.id, id);
          openJoint(on.id);
        },
      },
    ];
  });
}

function adhesiveActions(project: Project, { joint, openJoint, coupons, go }: Reach): Action[] {
  return project.adhesives.map(({ id, name }) => {
    const on = firstJoint(project, joint(), ({ adhesive }) => adhesive === id);
    return {
      id: `adhesive ${id}`,
      title: () => name,
      group: 'adhesive',
      about: on ? `of ${on.name}` : 'in the ledger: no joint is bonded with it',
      available: always,
      run: () => {
        if (on) {
          openJoint(on.id);
          reveal({ name: 'Adhesive', within: '.inputs' });
        } else {
          coupons.show('ledger');
          go('coupons');
        }
      },
    };
  });
}

/** The material's field of the first joint that has a part made of it. */
function materialActions(project: Project, { joint, openJoint }: Reach): Action[] {
  return project.adherends.flatMap(({ id, name }): Action[] => {
    const partOf = (one: Joint) =>
      groupsOf(one.type, 0)
        .flatMap(({ rows }) => rows)
        .find((row) => row.kind === 'adherend' && at(one, row.path.slice(2)) === id);
    const on = firstJoint(project, joint(), (one) => partOf(one) !== undefined);
    const part = on && partOf(on);
    if (!on || part?.kind !== 'adherend') return [];
    return [
      {
        id: `material ${id}`,
        title: () => name,
        group: 'adherend',
        about: `${part.part} of ${on.name}`,
        also: 'material adherend metal laminate',
        available: always,
        run: () => {
          openJoint(on.id);
          reveal({ name: part.name, within: '.inputs' });
        },
      },
    ];
  });
}

const at = (joint: Joint, path: Path): unknown =>
  path.reduce<unknown>(
    (value, key) => (value as Record<string, unknown> | undefined)?.[key],
    joint,
  );

function setActions({ coupons: all }: Project, { coupons, go }: Reach): Action[] {
  const sets = (all?.sets ?? []).map(
    ({ id, name }): Action => ({
      id: `set ${id}`,
      title: () => name,
      group: 'coupons',
      also: 'results',
      likely: ['coupons'],
      available: always,
      run: () => {
        coupons.choose(id);
        coupons.show('results');
        go('coupons');
      },
    }),
  );
  const lives = (all?.life ?? []).map(
    ({ id, name }): Action => ({
      id: `lives ${id}`,
      title: () => name,
      group: 'coupons',
      about: 'lives',
      also: 'results cycles',
      likely: ['coupons'],
      available: always,
      run: () => {
        coupons.lives.choose(id);
        coupons.show('lives');
        go('coupons');
      },
    }),
  );
  return [...sets, ...lives];
}

export function entityActions(reach: Reach): Action[] {
  const project = reach.project.document();
  if (!project) return [];
  return [jointActions, caseActions, adhesiveActions, materialActions, setActions].flatMap(
    (actionsOf) => actionsOf(project, reach),
  );
}
