/**
 * The project that is open: one document in one store, changed through one function, so that
 * everything else (what is unsaved, what must be asked again, what can be taken back) can hang on it.
 */
import { type Accessor, batch, createSignal } from 'solid-js';
import { createStore, produce, unwrap } from 'solid-js/store';
import type { Joint, Project } from '../../shared/project.ts';
import type { Opened } from '../../shared/reports.ts';
import { createHistory, type History } from './history.ts';
import { isPlain, type Path, valueAt } from './path.ts';
import { createRefused, type Refused } from './refused.ts';

export { type Path, pathText, valueAt } from './path.ts';

export interface ProjectState {
  readonly document: Accessor<Project | null>;
  readonly origin: Accessor<string>;
  /** Counts the openings: tells one project from the next, even where their ids are the same. */
  readonly opening: Accessor<number>;
  /** It stands in another file now, of this name. */
  setOrigin(origin: string): void;
  /** @param adrift what is opened stands in no file as it is: an unsaved document that was kept */
  open(opened: Opened, adrift?: boolean): void;
  /** Puts one value into the document; the only way to change it. Undefined takes it away. */
  edit(path: Path, value: unknown): void;
  readonly history: Pick<History, 'undo' | 'redo' | 'undoes' | 'redoes' | 'begin' | 'drop'>;
  /** What was typed into fields of the document and could not be taken. */
  readonly refused: Refused;
  /** Counts the edits and openings: read it to be told of any change. */
  readonly revision: Accessor<number>;
  /** The same, but blind to overlaps: what a sweep over the overlap depends on. */
  readonly revisionBesidesOverlap: Accessor<number>;
  /** The same, but blind to the words of the printed sheet, which no figure depends on. */
  readonly revisionOfFigures: Accessor<number>;
  readonly unsaved: Accessor<boolean>;
  /** How many changes are not saved; null where they cannot be counted. */
  readonly unsavedChanges: Accessor<number | null>;
  /** The state of the document as it is sent to be saved, to be told to `markSaved` once it is. */
  seal(): number;
  /** @param state the state that was saved; that of now when left out */
  markSaved(state?: number): void;
  /** The file of it is gone, or has become another: as it is, it stands nowhere. Gives the state that was saved. */
  markAdrift(): number;
  /** The document as plain data, to be sent or saved; not to be kept. */
  plain(): Project | null;
}

interface Store {
  document: Project | null;
  origin: string;
}

export function createProject(): ProjectState {
  const [store, setStore] = createStore<Store>({ document: null, origin: '' });
  const [revision, setRevision] = createSignal(0);
  const [besidesOverlap, setBesidesOverlap] = createSignal(0);
  const [ofFigures, setOfFigures] = createSignal(0);
  const [opening, setOpening] = createSignal(0);
  const next = (n: number): number => n + 1;
  const plain = (): Project | null => unwrap(store).document;

  function put(path: Path, value: unknown): void {
    const last = path.at(-1);
    if (last === undefined || store.document === null) return;
    batch(() => {
      setStore(
        'document',
        produce((document) => {
          const parent = valueAt(document, path.slice(0, -1)) as Record<string | number, unknown>;
          // What stood at the end of a list is gone when it is taken away: a list has no holes.
          if (value === undefined && Array.isArray(parent) && last === parent.length - 1)
            parent.pop();
          else parent[last] = value;
        }),
      );
      if (last !== 'overlap') setBesidesOverlap(next);
      if (path[0] !== 'sheet') setOfFigures(next);
      setRevision(next);
    });
  }
  const history = createHistory({ plain, put });
  const refused = createRefused(() => store.document);
  const [savedAt, setSavedAt] = createSignal(history.state());
  /** Nothing that is taken back leads to what a file has. */
  const ADRIFT = -1;

  return {
    document: () => store.document,
    origin: () => store.origin,
    opening,
    revision,
    revisionBesidesOverlap: besidesOverlap,
    revisionOfFigures: ofFigures,
    unsaved: () => history.state() !== savedAt(),
    unsavedChanges: () => history.since(savedAt()),
    seal: history.seal,
    markSaved: (state = history.seal()) => setSavedAt(state),
    markAdrift() {
      const state = savedAt();
      setSavedAt(ADRIFT);
      return state;
    },
    plain,
    history,
    setOrigin: (origin) => setStore('origin', origin),
    refused,
    open(opened, adrift = false) {
      batch(() => {
        setStore({ document: opened.document, origin: opened.origin });
        setOpening(next);
        setBesidesOverlap(next);
        setOfFigures(next);
        setRevision(next);
        history.clear();
        refused.clear();
        setSavedAt(adrift ? ADRIFT : history.state());
      });
    },
    edit(path, value) {
      // What is there already is no change, and no step.
      if (isPlain(value) && valueAt(plain(), path) === value) return;
      batch(() => {
        history.before(path);
        put(path, value);
        history.after(path);
      });
    },
  };
}

export const jointIndex = (project: Project, id: string): number =>
  project.joints.findIndex((joint) => joint.id === id);

/**
 * The project with this one joint alone: what analysing it needs. A mistake in another joint then
 * does not stop the work on this one, and a frame of a drag does not depend on the project's size.
 */
export function withOneJoint(project: Project, index: number): Project | null {
  const joint: Joint | undefined = project.joints[index];
  // Variants and measured parts are of joints that would not be there; coupons are of no joint.
  const { variants: _variants, gapChecks: _gapChecks, coupons: _coupons, ...rest } = project;
  return joint ? { ...rest, joints: [joint] } : null;
}

/** Errors about a one-joint project, told as places in the whole one. */
export const inWholeProject = (field: string, index: number): string =>
  field.replace(/^joints\.0(?=\.|$)/, `joints.${index}`);
