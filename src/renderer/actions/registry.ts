/** Every action there is. */
import type { Action, Reach } from './action.ts';
import { entityActions } from './entity-actions.ts';
import { fieldActions } from './field-actions.ts';
import { fileActions, recentActions } from './file-actions.ts';
import { helpActions } from './help-actions.ts';
import { jointActions } from './joint-actions.ts';
import { pageActions, viewActions } from './page-actions.ts';
import { settingActions } from './setting-actions.ts';
import { sheetActions } from './sheet-actions.ts';
import { takeActions } from './take-actions.ts';
import { presetActions, unitActions } from './unit-actions.ts';
import { changeActions, findActions, themeActions } from './window-actions.ts';

export interface Registry {
  /** Those that are always the same, among them all that have keys. */
  readonly fixed: readonly Action[];
  /** All of this moment, with what the open project holds. */
  all(): readonly Action[];
}

export function createRegistry(reach: Reach): Registry {
  const fixed = [
    findActions,
    helpActions,
    pageActions,
    sheetActions,
    changeActions,
    fileActions,
    jointActions,
    viewActions,
    settingActions,
    presetActions,
    themeActions,
  ].flatMap((actionsOf) => actionsOf(reach));
  return {
    fixed,
    all: () => [
      ...fixed,
      ...recentActions(reach),
      ...entityActions(reach),
      ...fieldActions(reach),
      ...takeActions(),
      ...unitActions(reach),
    ],
  };
}
