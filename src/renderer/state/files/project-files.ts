/**
 * The project as a file: begun, opened, saved, and what is asked on the way. Nothing unsaved is put away, and
 * nothing on the disk is written over, without a word.
 */
import { type Accessor, batch, createEffect, createSignal, on, onMount } from 'solid-js';
import type { Bridge } from '../../../shared/contract.ts';
import { newProject, UNTITLED } from '../../../shared/new-joint.ts';
import { BACKUP_SUFFIX } from '../../../shared/project-text.ts';
import type { Opened } from '../../../shared/reports.ts';
import type { FileOnDisk, FilePlaces, RecentFile } from '../../../shared/reports-files.ts';
import { textOf } from '../../../shared/utf8-text.ts';
import { copyName, download, fileName, fileText } from '../../files.ts';
import { lastPart } from '../../project-file/file-words.ts';
import type { ProjectState } from '../project.ts';
import { createFirst, type First } from './first.ts';
import { type Asking, createAsking, type Instead } from './questions.ts';
import { createRecovery, type KeptDocument, type Recovery } from './recovery.ts';
import { type Chosen, createSaving, type Meant } from './saving.ts';
import { createTelling, type Trouble } from './trouble.ts';
import { createWatch, type Outside } from './watch.ts';
import { windowFile } from './window-file.ts';

export interface ProjectFiles extends Pick<First, 'start' | 'lastWorked' | 'closeLast'> {
  /** Where the project stands on disk; null where it stands nowhere that this program knows. */
  readonly file: Accessor<FileOnDisk | null>;
  readonly places: Accessor<FilePlaces>;
  readonly saving: Accessor<boolean>;
  /** Of the file, where that is of an older one. */
  readonly olderVersion: Accessor<number | null>;
  hideOlderVersion(): void;
  /** What another window or program did to the file, until the user has said what is to become of it. */
  readonly outside: Accessor<Outside | null>;
  readonly asking: Asking;
  readonly recovery: Recovery;
  begin(): Promise<void>;
  open(): Promise<void>;
  openRecent(recent: RecentFile): Promise<void>;
  openPath(path: string): Promise<void>;
  /** Handed over by the browser: it has no place on disk. */
  openText(file: File): Promise<void>;
  openDemo(): Promise<void>;
  openKept(kept: KeptDocument): Promise<void>;
  openOutside(): Promise<void>;
  keepMine(): void;
  /** True when it is on the disk. */
  save(): Promise<boolean>;
  saveAs(): Promise<boolean>;
  /** As a download of the browser; it counts as saved, for the user has it. */
  saveCopy(): void;
  rename(): Promise<void>;
  forget(path: string): Promise<void>;
  /** For dialogs: the places have become others. */
  lookAtPlaces(): Promise<void>;
}

export interface ProjectFilesSource {
  readonly bridge: Bridge;
  readonly project: ProjectState;
  /** A project was put into the window. */
  readonly onOpened: () => void;
  /** The project was written somewhere: as its file, as another, as a copy. */
  readonly onWritten: () => void;
  readonly onTrouble: (trouble: Trouble | null) => void;
}

const noPlaces: FilePlaces = { dialogs: false, folders: [], recent: [], last: null };
export function createProjectFiles(source: ProjectFilesSource): ProjectFiles {
  const { bridge, project, onOpened, onWritten, onTrouble } = source;
  const [file, setFile] = createSignal<FileOnDisk | null>(null);
  const [places, setPlaces] = createSignal<FilePlaces>(noPlaces);
  const [saving, setSaving] = createSignal(false);
  const [olderVersion, setOlderVersion] = createSignal<number | null>(null);
  /** Where what is opened from a copy of the last saving would stand again. */
  const [meant, setMeant] = createSignal<Meant | null>(null);
  /** Stamp of another program's version that the user did not want; `gone` needs no answer. */
  const [unwanted, setUnwanted] = createSignal<string | null>(null);
  const asking = createAsking();
  const watch = createWatch(bridge, file, saving);
  const { tell, couldNot } = createTelling({
    hasProject: () => project.document() !== null,
    openPath: (path) => openPath(path),
    onTrouble,
  });
  const recovery = createRecovery({ bridge, project, file, onRefused: tell });

  const lookAtPlaces = async (): Promise<void> => {
    const reply = await bridge.ask('file.places', {});
    if (reply.ok) setPlaces(reply.value);
  };
  /** Before that it is not known how files are chosen here. */
  let known: Promise<void> = Promise.resolve();
  onMount(() => {
    known = lookAtPlaces();
  });
  /** While the file is gone the document stands nowhere; where it comes back as it was, it does again. */
  createEffect(
    on(
      () => watch.outside()?.kind,
      (kind, before) => {
        if (kind === 'gone') savedBefore = { file: file(), state: project.markAdrift() };
        else if (before === 'gone' && kind === undefined && savedBefore?.file === file()) {
          project.markSaved(savedBefore.state);
        }
      },
    ),
  );
  let savedBefore: { readonly file: FileOnDisk | null; readonly state: number } | null = null;

  function show(opened: Opened, adrift = false): void {
    const { file: found } = opened;
    const isCopy = found?.name.endsWith(BACKUP_SUFFIX) ?? false;
    const stands = found && !isCopy ? found : null;
    windowFile.write(stands?.path ?? null);
    first.hideLast();
    batch(() => {
      setFile(stands);
      setMeant(
        found && isCopy
          ? { name: found.name.slice(0, -BACKUP_SUFFIX.length), folder: found.folder }
          : null,
      );
      setOlderVersion(opened.olderVersion ?? null);
      setUnwanted(null);
      project.open(opened, adrift || isCopy);
      onTrouble(null);
      onOpened();
    });
    void lookAtPlaces();
  }
  /** Shows it, unless that would put unsaved changes away and the user wants to stay. */
  async function arrive(opened: Opened, instead: Instead = 'open'): Promise<void> {
    if (project.unsaved()) {
      const name = project.plain()?.name ?? '';
      const word = await asking.ask('unsaved', { name, instead });
      if (word === null || (word === 'save' && !(await save()))) return;
    }
    show(opened);
  }
  const first = createFirst({
    bridge,
    async places() {
      await known;
      return places();
    },
    show: (opened) => show(opened),
    // It begins with the name of a file, which stays as it is.
    onRefused: (error) => tell(error, error.message),
    couldNot,
  });

  async function openPath(path: string): Promise<void> {
    const reply = await bridge.ask('file.open', { path });
    if (reply.ok) return arrive(reply.value);
    couldNot(lastPart(path), reply.error);
    void lookAtPlaces();
  }
  async function openText(chosen: File): Promise<void> {
    const origin = chosen.name.slice(0, 300);
    const text = textOf(origin, new Uint8Array(await chosen.arrayBuffer()));
    const reply = text.ok ? await bridge.ask('project.read', { text: text.value, origin }) : text;
    if (reply.ok) await arrive(reply.value);
    else couldNot(chosen.name, reply.error);
  }

  /** By the system's own dialog where there is one, else by the page's. */
  async function choose(
    purpose: 'open' | 'save',
    name: string,
    folder: string | null,
  ): Promise<Chosen> {
    await known;
    const begin = folder ?? places().last;
    if (!places().dialogs) {
      const about = { purpose, name, folder: begin, project: project.plain()?.name ?? '' };
      const taken = await asking.ask('browse', about);
      return { taken, over: false };
    }
    const reply = await bridge.ask('file.choose', {
      purpose,
      ...(name === '' ? {} : { name }),
      ...(begin === null ? {} : { folder: begin }),
    });
    if (reply.ok) return { taken: reply.value.path, over: reply.value.over ?? false };
    tell(reply.error);
    return { taken: null, over: false };
  }

  async function open(): Promise<void> {
    const { taken } = await choose('open', '', file()?.folder ?? null);
    if (taken instanceof File) await openText(taken);
    else if (taken !== null) await openPath(taken);
  }

  const { save, saveAs } = createSaving({
    bridge,
    project,
    file,
    meant,
    asking,
    choose,
    setSaving,
    onRefused: tell,
    onSaved(now) {
      onTrouble(null);
      windowFile.write(now.path);
      first.hideLast();
      project.setOrigin(now.name);
      setFile(now);
      setMeant(null);
      setUnwanted(null);
      setOlderVersion(null);
      void lookAtPlaces();
      onWritten();
    },
    onChanged: () => void watch.look(),
  });

  const outside = (): Outside | null => {
    const now = watch.outside();
    return now?.kind === 'changed' && now.stamp === unwanted() ? null : now;
  };

  return {
    file,
    places,
    saving,
    olderVersion,
    hideOlderVersion: () => setOlderVersion(null),
    outside,
    asking,
    recovery,
    open,
    openPath,
    openText,
    save,
    saveAs,
    lookAtPlaces,
    start: first.start,
    lastWorked: first.lastWorked,
    closeLast: first.closeLast,
    async begin() {
      const wish = await asking.ask('begin', { name: UNTITLED });
      if (!wish) return;
      const reply = await bridge.ask('project.demo', {});
      if (!reply.ok) return tell(reply.error);
      const document = newProject(reply.value.document, wish.name, wish.lap);
      await arrive({ document, origin: 'new, in no file yet' }, 'begin');
    },
    async openRecent(recent) {
      if (recent.found) return openPath(recent.path);
      const { name, folder, path } = recent;
      const word = await asking.ask('lost', { name, folder });
      if (word === 'forget') await this.forget(path);
    },
    async openDemo() {
      const reply = await bridge.ask('project.demo', {});
      if (reply.ok) await arrive(reply.value);
      else tell(reply.error);
    },
    async openKept(kept) {
      const found = await recovery.open(kept);
      if ('message' in found) return tell(found);
      if (project.unsaved()) {
        const name = project.plain()?.name ?? '';
        const word = await asking.ask('unsaved', { name, instead: 'open' });
        if (word === null || (word === 'save' && !(await save()))) return;
      }
      const { document, origin, file: stands, expect } = found;
      // Of what the changes were made on: saving asks where the file has been changed since.
      const base = stands && { ...stands, stamp: expect ?? stands.stamp };
      show({ document, origin, ...(base ? { file: base } : {}) }, true);
      await recovery.now();
      await recovery.drop(kept);
    },
    async openOutside() {
      const here = file();
      if (!here) return;
      const reply = await bridge.ask('file.open', { path: here.path });
      if (reply.ok) show(reply.value);
      else couldNot(here.name, reply.error);
    },
    keepMine() {
      setUnwanted(watch.outside()?.stamp ?? null);
      project.markAdrift();
    },
    saveCopy() {
      const document = project.plain();
      if (!document) return;
      const name = file()?.name ?? meant()?.name;
      download(name === undefined ? fileName(document) : copyName(name), fileText(document));
      if (file() === null) project.markSaved();
      onWritten();
    },
    async rename() {
      const name = project.plain()?.name;
      if (name === undefined) return;
      const wish = await asking.ask('rename', { what: 'project', name });
      if (wish !== null && wish !== name) project.edit(['name'], wish);
    },
    async forget(path) {
      await bridge.ask('recent.forget', { path });
      await lookAtPlaces();
    },
  };
}
