/** Jumps to what is set for the whole project, and to what else one looks for by its name. */
import type { Action, GroupName, Reach } from './action.ts';
import { focusPane } from './panes.ts';
import { reveal } from './reveal.ts';

/** The fields of the project's settings that are always there, by their names, and other words for them. */
const settings: readonly (readonly [name: string, also: string])[] = [
  ['Target margin', 'reserve low aim'],
  ['Factor on limit loads', 'safety factor'],
  ['Factor on ultimate loads', 'safety factor'],
];

/** Parts of the Joints page that stand below the table of cases. */
const tables: readonly (readonly [title: string, selector: string, also: string])[] = [
  ['Load cases of the project', '[aria-labelledby="load-cases-title"]', 'table kinds cycles ratio'],
  [
    'Conditions of the project',
    '[aria-labelledby="conditions-title"]',
    'surroundings temperature moisture hot cold wet aged',
  ],
];

/** Frames to wait for a page that is just being drawn. */
const PATIENCE = 60;

function whenThere(selector: string, then: (found: HTMLElement) => void): void {
  let left = PATIENCE;
  const look = (): void => {
    const found = document.querySelector<HTMLElement>(selector);
    left -= 1;
    if (found) then(found);
    else if (left > 0) requestAnimationFrame(look);
  };
  look();
}

export function settingActions({ project, joints, joint, openJoint, go }: Reach): Action[] {
  const there = (): boolean => project.document() !== null;
  const jump = (
    title: string,
    about: string,
    also: string,
    run: () => void,
    group: GroupName = 'setting',
    available: () => boolean = there,
  ): Action => ({ id: `to ${title}`, title: () => title, group, about, also, available, run });
  const inSettings = (name?: string) => (): void => {
    joints.setView('list');
    go('joints');
    reveal({ within: '.joints-page', inside: 'Project settings', ...(name ? { name } : {}) });
  };
  return [
    jump(
      'Project settings',
      'of the Joints page',
      'factors steps printing layer base target',
      inSettings(),
    ),
    ...settings.map(([name, also]) =>
      jump(name, 'of the project', `go to field setting ${also}`, inSettings(name)),
    ),
    ...tables.map(([title, selector, also]) =>
      jump(title, 'of the Joints page', also, () => {
        joints.setView('cases');
        go('joints');
        whenThere(selector, focusPane);
      }),
    ),
    jump(
      'Bench card',
      'of the Gap check page',
      'bench print process steps',
      () => go('gap'),
      'page',
    ),
    jump(
      'Working of the lowest margin',
      'of this joint',
      'equation derivation formula explain why',
      () => {
        const id = joint()?.id;
        if (id === undefined) return;
        openJoint(id);
        whenThere('.margins .value .reading, .margins .reading', (figure) => figure.click());
      },
      'view',
      () => joint() !== undefined,
    ),
  ];
}
