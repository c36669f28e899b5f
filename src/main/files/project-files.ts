/** All that the requests about files need: where projects may be, what was open, what is not saved. */
import { existsSync } from 'node:fs';
import { homedir } from 'node:os';
import { basename, dirname } from 'node:path';
import { MAX_BODY } from '../../shared/contract.ts';
import { inPlace } from '../../shared/place-words.ts';
import type { Project } from '../../shared/project.ts';
import { BACKUP_SUFFIX } from '../../shared/project-text.ts';
import { readProject } from '../../shared/read-project.ts';
import { ok, type Reply, refuse } from '../../shared/reply.ts';
import type { Opened } from '../../shared/reports.ts';
import type {
  ChosenFile,
  FileOnDisk,
  FilePlaces,
  FileStamp,
  FolderView,
  OpenedFile,
  SavedFile,
} from '../../shared/reports-files.ts';
import { folderAt, folderToChoose } from './choose-folder.ts';
import { folderName, lookInto } from './look.ts';
import { openProject } from './open-project.ts';
import { openNameTrouble, saveNameTrouble } from './path-form.ts';
import { makePresence, type Presence } from './presence.ts';
import { makeReach, type Reach, whereItLeads } from './reach.ts';
import { readBytes } from './read-project-file.ts';
import { makeRecent, type Recent } from './recent.ts';
import { makeRecovery, type Recovery } from './recovery.ts';
import { startRunClock } from './run-clock.ts';
import { markRunning } from './running.ts';
import { type Expected, saveProject } from './save-project.ts';
import { fileOnDisk, stampOf } from './stamp.ts';

export interface FileWish {
  readonly purpose: 'open' | 'save';
  readonly name?: string | undefined;
  readonly folder?: string | undefined;
}

export interface ProjectFiles {
  places(): Reply<FilePlaces>;
  choose(wish: FileWish): Promise<Reply<ChosenFile>> | Reply<ChosenFile>;
  look(folder: string | undefined): Reply<FolderView>;
  chooseFolder(folder: string, make: boolean): Reply<FolderView>;
  open(path: string): Reply<OpenedFile>;
  /** A file that whoever starts the program names, wherever it is. */
  openGiven(path: string): Reply<Opened>;
  /** A folder that whoever starts the program chooses, for this run. */
  giveFolder(path: string): Reply<string>;
  save(path: string, document: unknown, wish: Expected): Reply<SavedFile>;
  stamp(path: string): Reply<FileStamp>;
  forget(path: string): Reply<{ readonly forgotten: boolean }>;
  readonly recovery: Recovery;
  /** Puts away what a page keeps: its user does not want it. */
  discard(client: string): void;
  readonly presence: Presence;
  readonly reach: Reach;
  readonly recent: Recent;
  close(): void;
}

export interface ProjectFilesOptions {
  /** The data folder. */
  readonly data: string;
  /** The system's own dialogs choose: folders are then not looked into by the page. */
  readonly dialogs: boolean;
  /** Milliseconds without a word after which a page counts as gone; null: only when it is closed. */
  readonly silence: number | null;
  /** The list of files that were open lately is another; with the one that was opened or saved. */
  readonly listed?: (used: string | null) => void;
  readonly now?: () => Date;
  /** As `RunClock.ran`. */
  readonly ran?: () => number;
}

const notHere = (): Reply<never> =>
  refuse(
    'not-found',
    '',
    'There is no dialog of the system here: look for the folder in the page.',
  );
const byDialog = (): Reply<never> =>
  refuse('not-found', '', 'Files are chosen in the dialog of the system here.');

export function makeProjectFiles(options: ProjectFilesOptions): ProjectFiles {
  const { data, dialogs, silence, listed = () => undefined, now = () => new Date() } = options;
  const recent = makeRecent(data, now);
  const reach = makeReach({ data, known: recent.has });
  const clock = startRunClock();
  const presence = makePresence(silence, options.ran ?? clock.ran);
  const running = markRunning(data, now);

  /** Folder of the file that was opened or saved last in this run, or that whoever started it named. */
  let begun: string | null = null;
  const note = (file: FileOnDisk, { name }: Project): void => {
    // The copy of the last saving is no file that one works on.
    if (file.path.endsWith(BACKUP_SUFFIX)) return;
    begun = file.folder;
    recent.note(file.path, name);
    listed(file.path);
  };
  /** Where a path leads, if a project may be there; whoever started the program may name it otherwise. */
  const project = (path: string): Reply<string> => {
    const leads = reach.file(path);
    if (!leads.ok || recent.has(leads.value)) return leads;
    const trouble = openNameTrouble(leads.value);
    return trouble === null ? leads : refuse('bad-input', '', trouble);
  };
  const opened = (path: string): Reply<OpenedFile> => {
    const reply = openProject(path);
    if (reply.ok) note(reply.value.file, reply.value.document);
    return reply;
  };
  const fileAt = (path: string): FileOnDisk | null => {
    const leads = reach.file(path);
    if (!leads.ok) return null;
    const bytes = readBytes(leads.value, MAX_BODY, 'a project');
    return bytes.ok ? fileOnDisk(leads.value, stampOf(bytes.value)) : null;
  };
  const unsaved = makeRecovery({ data, running, presence, fileAt, now });
  const look = (folder: string): Reply<FolderView> =>
    lookInto(folder, reach.holds(folder), (place) => project(place).ok);

  return {
    places: () =>
      ok({
        dialogs,
        folders: dialogs ? [] : reach.folders().map((path) => ({ path, name: folderName(path) })),
        recent: recent.list(),
        last: begun ?? recent.list().find(({ found }) => found)?.folder ?? null,
      }),
    choose: notHere,
    look(folder) {
      if (dialogs) return byDialog();
      const leads = folderAt(folder ?? homedir());
      return leads.ok ? look(leads.value) : leads;
    },
    chooseFolder(folder, make) {
      if (dialogs) return byDialog();
      const leads = folderToChoose(folder, make);
      if (!leads.ok) return leads;
      const view = look(leads.value);
      if (!view.ok) return view;
      reach.allowFolder(leads.value, true);
      return look(leads.value);
    },
    open(path) {
      const leads = project(path);
      return leads.ok ? opened(leads.value) : leads;
    },
    openGiven(path) {
      const leads = whereItLeads(path);
      if (leads.ok) {
        if (dialogs) reach.allowFile(leads.value);
        else reach.allowFolder(dirname(leads.value), false);
      }
      return opened(leads.ok ? leads.value : path);
    },
    giveFolder(path) {
      const leads = folderToChoose(path, false);
      if (!leads.ok) return leads;
      reach.allowFolder(leads.value, false);
      begun = leads.value;
      return leads;
    },
    save(path, document, wish) {
      const leads = reach.file(path);
      if (!leads.ok) return leads;
      const trouble = saveNameTrouble(path) ?? saveNameTrouble(leads.value);
      if (trouble !== null) return refuse('bad-input', '', trouble);
      const read = readProject(document);
      if (!read.ok) {
        const { code, field, message } = read.error;
        const name = basename(leads.value);
        return refuse(
          code,
          field,
          `"${name}" is not saved, for it could not be opened again: ${inPlace(document, field, message)} Mend that, then save; the changes are kept meanwhile.`,
        );
      }
      const saved = saveProject(leads.value, read.value, wish);
      if (saved.ok) note(saved.value.file, read.value);
      return saved;
    },
    stamp(path) {
      const leads = project(path);
      if (!leads.ok) return leads;
      if (!existsSync(leads.value)) return ok({ stamp: null, at: null });
      const bytes = readBytes(leads.value, MAX_BODY, 'a project');
      if (!bytes.ok) return bytes;
      const { stamp, at } = fileOnDisk(leads.value, stampOf(bytes.value));
      return ok({ stamp, at });
    },
    forget(path) {
      const forgotten = recent.forget(path);
      if (forgotten) listed(null);
      return ok({ forgotten });
    },
    discard(client) {
      for (const recovery of presence.ownedBy(client)) unsaved.drop(recovery);
    },
    recovery: unsaved,
    presence,
    reach,
    recent,
    close() {
      running.close();
      clock.close();
    },
  };
}
