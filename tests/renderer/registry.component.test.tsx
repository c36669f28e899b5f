/** The registry: whole, every action of it runs, every key of it is listed and works. */
import { render, screen } from '@solidjs/testing-library';
import { createRoot, createSignal } from 'solid-js';
import { beforeEach, describe, expect, it, onTestFinished, vi } from 'vitest';
import type { Action, Reach } from '../../src/renderer/actions/action.ts';
import { type Chord, chordText } from '../../src/renderer/actions/chord.ts';
import { act } from '../../src/renderer/actions/listen.ts';
import { createRegistry, type Registry } from '../../src/renderer/actions/registry.ts';
import { ShortcutList } from '../../src/renderer/actions/ShortcutList.tsx';
import { createCoupons } from '../../src/renderer/state/coupons.ts';
import { createProjectFiles } from '../../src/renderer/state/files/project-files.ts';
import { createJointsView } from '../../src/renderer/state/joints-view.ts';
import { createProject } from '../../src/renderer/state/project.ts';
import { createSaid } from '../../src/renderer/state/said.ts';
import { createSizing } from '../../src/renderer/state/sizing.ts';
import { createUndoing } from '../../src/renderer/state/undoing.ts';
import { createTheme } from '../../src/renderer/theme.ts';
import { createUnits } from '../../src/renderer/units.ts';
import type { WorkspaceName } from '../../src/renderer/workspaces.ts';
import { cautionShort } from '../../src/shared/cautions.ts';
import { planCoupons } from '../../src/shared/coupon-plan.ts';
import { useDialogs } from './support/dialogs.ts';
import { makeFakeBridge } from './support/fake-bridge.ts';
import { useBrowser } from './support/page.ts';
import { makeProject } from './support/project.ts';

useBrowser();
useDialogs();

const recent = {
  path: '/disk/mira/frames/heron.lapwright.json',
  name: 'heron.lapwright.json',
  folder: '/disk/mira/frames',
  project: 'Heron',
  at: '2026-03-01T09:00:00Z',
  found: true,
};

function projectWithSets() {
  const project = makeProject();
  const { coupons } = planCoupons(project, {
    adhesive: 'paste',
    pieces: [{ kind: 'standard', id: 'd1002', adherend: 'titanium' }],
    environments: [{ temperature: 23, moisture: 'dry' }],
    gaps: [0.2],
    planned: { batches: 3, each: 6 },
  });
  const [spare] = makeProject().adhesives;
  return makeProject({
    coupons,
    adhesives: [...project.adhesives, { ...spare!, id: 'spare', name: 'Spare film' }],
  });
}

let registry: Registry;
/** All that an action may change, as text. */
let seen: () => string;

beforeEach(() => {
  document.body.innerHTML = '<main><div data-pane></div><div class="bench-card"></div></main>';
  vi.spyOn(HTMLElement.prototype, 'getClientRects').mockReturnValue([{}] as never);
  const print = vi.fn();
  vi.stubGlobal('print', print);
  const dispose = createRoot((done) => {
    const bridge = makeFakeBridge(projectWithSets());
    const project = createProject();
    project.open({ document: projectWithSets(), origin: 'test' });
    project.edit(['joints', 0, 'overlap'], 31);
    project.history.undo();
    project.edit(['joints', 0, 'overlap'], 32);
    const [workspace] = createSignal<WorkspaceName>('gap');
    const off = () => false;
    const spies = {
      go: vi.fn(),
      openJoint: vi.fn(),
      upload: vi.fn(),
      showSheet: vi.fn(),
      setPaper: vi.fn(),
      find: vi.fn(),
      listKeys: vi.fn(),
      guide: vi.fn(),
      fieldHelp: vi.fn(),
      showNotes: vi.fn(),
      about: vi.fn(),
      chooseUnits: vi.fn(),
    };
    const deeds = {
      begin: vi.fn(),
      open: vi.fn(),
      openRecent: vi.fn(),
      openDemo: vi.fn(),
      save: vi.fn(),
      saveAs: vi.fn(),
      saveCopy: vi.fn(),
    };
    const renames = vi.fn();
    const jointDeeds = { add: vi.fn(), copy: vi.fn(), rename: vi.fn(), remove: vi.fn() };
    const files = createProjectFiles({
      bridge,
      project,
      onOpened: vi.fn(),
      onWritten: vi.fn(),
      onTrouble: vi.fn(),
    });
    const reach: Reach = {
      files: {
        ...files,
        ...deeds,
        rename: renames,
        places: () => ({ dialogs: false, folders: [], recent: [recent], last: null }),
      },
      jointDeeds,
      project,
      theme: createTheme(),
      units: createUnits(),
      sizing: createSizing({ bridge, project, index: () => 0, active: off }),
      joints: createJointsView(bridge, project, off),
      coupons: createCoupons({ bridge, project, active: off }),
      undoing: createUndoing(project, createSaid(), () => {}),
      sheetOpen: off,
      workspace,
      joint: () => project.document()?.joints[0],
      index: () => 0,
      ...spies,
    };
    registry = createRegistry(reach);
    seen = () =>
      JSON.stringify([
        project.revision(),
        reach.theme.version(),
        reach.units.choice(),
        reach.sizing.choice(),
        document.activeElement?.tagName,
        print.mock.calls,
        renames.mock.calls,
        ...[spies, deeds, jointDeeds]
          .flatMap((all) => Object.values(all))
          .map(({ mock }) => mock.calls),
      ]);
    return done;
  });
  onTestFinished(dispose);
});

const chords = (): { readonly action: Action; readonly chord: Chord }[] =>
  registry.fixed.flatMap((action) => (action.keys ?? []).map((chord) => ({ action, chord })));
const event = (
  { key, ctrl, shift, alt }: Pick<Chord, 'key' | 'ctrl' | 'shift' | 'alt'>,
  more: KeyboardEventInit = {},
): KeyboardEvent =>
  new KeyboardEvent('keydown', {
    key,
    ctrlKey: ctrl ?? false,
    shiftKey: shift ?? false,
    altKey: alt ?? false,
    cancelable: true,
    ...more,
  });
/** The same actions, of which only the run is told. */
const watched = (isThere = true) => {
  const ran: string[] = [];
  const actions = registry.fixed.map(
    (action): Action => ({
      ...action,
      available: () => isThere,
      run: () => ran.push(action.id),
    }),
  );
  return { ran, actions };
};

describe('the registry', () => {
  it('names every action once, in words', () => {
    const all = registry.all();
    expect(new Set(all.map(({ id }) => id)).size).toBe(all.length);
    for (const action of all) expect(action.title()).toMatch(/^\p{Lu}.*\S$/u);
    // Two of one kind would not be told apart.
    const told = all.map(({ group, title, about }) => `${group} ${title()} ${about}`);
    expect(new Set(told).size).toBe(all.length);
  });

  it('has what the project holds, and what the pages show', () => {
    const titles = registry.all().map((one) => `${one.group}: ${one.title()}`);
    for (const wanted of [
      'page: Gap check',
      'view: By case',
      'view: Stress',
      'view: What matters',
      'view: Springs',
      'view: Ledger',
      'joint: Tail lug',
      'case: Hard landing',
      'adhesive: Toughened paste',
      'adhesive: Spare film',
      'setting: Overlap',
      'setting: Gust, bending moment',
      'setting: Fitting factor',
      'setting: Target margin to find a size for',
      'change: Undo overlap 30.0 → 32.0 mm, Boom tip',
      'look: Night',
      'page: Print card',
      'file: New project …',
      'file: Save as …',
      'file: Heron',
      'joint: Add a joint, double lap: strip between two straps',
      'joint: Remove Boom tip …',
    ]) {
      expect(titles).toContain(wanted);
    }
    expect(titles.some((title) => title.startsWith('coupons: '))).toBe(true);
    // No load of a joint is in it.
    expect(titles).not.toContain('case: Rotor');
  });

  it('runs every action that is there', () => {
    let ran = 0;
    for (const action of registry.all()) {
      if (!action.available()) continue;
      const before = seen();
      action.run();
      expect(seen(), action.id).not.toBe(before);
      (document.activeElement as HTMLElement | null)?.blur();
      ran += 1;
    }
    expect(ran).toBeGreaterThan(50);
  });

  it('has one action for each chord', () => {
    const texts = chords().map(({ chord }) => chordText(chord));
    expect(new Set(texts).size).toBe(texts.length);
  });
});

describe('the keys', () => {
  it('each run their own action', () => {
    for (const { action, chord } of chords()) {
      const { ran, actions } = watched();
      const pressed = event(chord);
      act(actions, pressed);
      expect(ran).toEqual([action.id]);
      expect(pressed.defaultPrevented).toBe(true);
    }
  });

  it.each(['input', 'textarea'])('are off while a person writes in an %s, but for a few', (tag) => {
    const field = document.createElement(tag);
    document.body.append(field);
    field.focus();
    const { ran, actions } = watched();
    for (const { chord } of chords()) act(actions, event(chord));
    const pages = ran.filter((id) => id.startsWith('page '));
    expect(pages).toHaveLength(5);
    expect(ran.filter((id) => !pages.includes(id))).toEqual([
      'find',
      'list keys',
      'guide',
      'field help',
      'next pane',
      'previous pane',
      'print',
      'new',
      'open',
      'save',
      'save-as',
    ]);
  });

  it('leave the print of a page without paper to the browser, while one writes too', () => {
    document.body.innerHTML = '<main><input></main>';
    document.querySelector('input')!.focus();
    const before = seen();
    const pressed = event(chords().find(({ action }) => action.id === 'print')!.chord);
    act(registry.fixed, pressed);
    expect(seen()).toBe(before);
    expect(pressed.defaultPrevented).toBe(false);
  });

  it('are on at a slider, a box to tick and a button', () => {
    for (const html of ['<input type="range">', '<input type="checkbox">', '<button>x</button>']) {
      document.body.innerHTML = html;
      (document.body.firstElementChild as HTMLElement).focus();
      const { ran, actions } = watched();
      act(actions, event({ key: 'z', ctrl: true }));
      expect(ran).toEqual(['undo']);
    }
  });

  it('wait while a dialog asks something, except that our own change places', () => {
    document.body.innerHTML = '<dialog open></dialog>';
    const asked = watched();
    const save = event({ key: 's', ctrl: true });
    for (const { chord } of chords()) act(asked.actions, event(chord));
    act(asked.actions, save);
    expect(asked.ran).toEqual([]);
    expect(save.defaultPrevented).toBe(true);
    document.body.innerHTML = '<dialog open class="keys-dialog"></dialog>';
    const own = watched();
    for (const { chord } of chords()) act(own.actions, event(chord));
    expect(own.ran).toEqual(['find', 'list keys', 'list keys', 'guide']);
  });

  it('held down go on only where that means something', () => {
    const { ran, actions } = watched();
    act(actions, event({ key: 's', ctrl: true }, { repeat: true }));
    act(actions, event({ key: 'z', ctrl: true }, { repeat: true }));
    expect(ran).toEqual(['undo']);
  });

  it('that have nothing to do stay with the browser, but for those of ours alone', () => {
    const { ran, actions } = watched(false);
    const [print, undo] = [event({ key: 'p', ctrl: true }), event({ key: 'z', ctrl: true })];
    act(actions, print);
    act(actions, undo);
    expect(ran).toEqual([]);
    expect([print.defaultPrevented, undo.defaultPrevented]).toEqual([false, true]);
  });
});

it('the list has every key with its title, and the caution', () => {
  render(() => <ShortcutList actions={registry.fixed} onClose={() => {}} />);
  const list = screen.getByRole('dialog', { name: 'Keys' });
  const written = [...list.querySelectorAll('kbd')].map((kbd) => kbd.textContent);
  for (const { action, chord } of chords()) {
    expect(written).toContain(chordText(chord));
    expect(list.textContent).toContain(action.title());
  }
  expect(list.textContent).toContain(cautionShort);
  expect(list.textContent).toContain(
    'only Ctrl+1 to Ctrl+5, Ctrl+K, F1, Shift+F1, F2, F6, Shift+F6, Ctrl+P, Ctrl+N, Ctrl+O, Ctrl+S and Ctrl+Shift+S do this',
  );
});
