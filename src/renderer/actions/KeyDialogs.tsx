/** Which of the sheets over the page is open, if any: what finds, the list of keys, the guide, the units, what the program is. */
import { createSignal, type JSX, Match, Switch } from 'solid-js';
import type { Bridge } from '../../shared/contract.ts';
import { AboutDialog } from '../about/AboutDialog.tsx';
import { Guide } from '../guide/Guide.tsx';
import { UnitsSheet } from '../parts/UnitsSheet.tsx';
import type { Units } from '../units.ts';
import type { WorkspaceName } from '../workspaces.ts';
import { CommandBox } from './CommandBox.tsx';
import type { Registry } from './registry.ts';
import { ShortcutList } from './ShortcutList.tsx';

type Sheet = 'find' | 'list' | 'guide' | 'units' | 'about';

export interface Sheets {
  readonly open: () => Sheet | null;
  /** Once more closes it again. */
  toggle(sheet: Sheet): void;
  close(): void;
}

export function createSheets(): Sheets {
  const [open, setOpen] = createSignal<Sheet | null>(null);
  const close = (): void => {
    setOpen(null);
  };
  return {
    open,
    close,
    toggle(sheet) {
      setOpen(open() === sheet ? null : sheet);
    },
  };
}

export interface KeyDialogsProps {
  readonly bridge: Bridge;
  readonly sheets: Sheets;
  readonly registry: Registry;
  readonly units: Units;
  readonly page: WorkspaceName;
}

export function KeyDialogs(props: KeyDialogsProps): JSX.Element {
  return (
    // The one that goes gives the focus back first, so that the next can give it back in turn.
    <Switch>
      <Match when={props.sheets.open() === 'find'}>
        <CommandBox
          actions={props.registry.all()}
          page={props.page}
          onClose={() => props.sheets.close()}
        />
      </Match>
      <Match when={props.sheets.open() === 'list'}>
        <ShortcutList actions={props.registry.fixed} onClose={() => props.sheets.close()} />
      </Match>
      <Match when={props.sheets.open() === 'guide'}>
        <Guide page={props.page} onClose={() => props.sheets.close()} />
      </Match>
      <Match when={props.sheets.open() === 'units'}>
        <UnitsSheet units={props.units} onClose={() => props.sheets.close()} />
      </Match>
      <Match when={props.sheets.open() === 'about'}>
        <AboutDialog bridge={props.bridge} onClose={() => props.sheets.close()} />
      </Match>
    </Switch>
  );
}
