/** Every action there is. */
import type { Action, Reach } from './action.ts';
import { entityActions } from './entity-actions.ts';
import { fieldActions } from './field-actions.ts';
import { pageActions, viewActions } from './page-actions.ts';
import { presetActions, unitActions } from './unit-actions.ts';
import { changeActions, fileActions, findActions, themeActions } from './window-actions.ts';

export interface Registry {
  /** Those that are always the same, among them all that have keys. */
  readonly fixed: readonly Action[];
  /** All of this moment, with what the open project holds. */
  all(): readonly Action[];
}

export function createRegistry(reach: Reach): Registry {
  const fixed = [
    findActions,
    pageActions,
    changeActions,
    fileActions,
    viewActions,
    presetActions,
    themeActions,
  ].flatMap((actionsOf) => actionsOf(reach));
  return {
    fixed,
    all: () => [...fixed, ...entityActions(reach), ...fieldActions(reach), ...unitActions(reach)],
  };
}
