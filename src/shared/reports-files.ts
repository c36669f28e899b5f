/** What the requests about files answer. */
import type { Project } from './project.ts';

/** A project file as it stood on the disk when it was read or written. */
export interface FileOnDisk {
  /** Absolute, as the system writes it. */
  readonly path: string;
  /** Last part of the path. */
  readonly name: string;
  readonly folder: string;
  /** Tells one content from another; equal for equal bytes. */
  readonly stamp: string;
  /** When it was last written, ISO. */
  readonly at: string;
  /** False where this user may not write it or its folder. */
  readonly writable: boolean;
}

export interface RecentFile {
  readonly path: string;
  readonly name: string;
  readonly folder: string;
  /** Name of the project in it. */
  readonly project: string;
  /** When it was last opened or saved here, ISO. */
  readonly at: string;
  /** False where it is not there any more. */
  readonly found: boolean;
}

export interface FilePlaces {
  /** Whether `file.choose` shows the system's own dialog. */
  readonly dialogs: boolean;
  /** Folders that the user chose; youngest first. */
  readonly folders: readonly { readonly path: string; readonly name: string }[];
  /** Youngest first, at most 12. */
  readonly recent: readonly RecentFile[];
  /** Folder of the file that was opened or saved last; null where none is known. */
  readonly last: string | null;
}

/** A path out of the system's dialog; null when it was cancelled. */
export interface ChosenFile {
  readonly path: string | null;
  /** True where the dialog asked whether the file that stands there may go, and the user said so. */
  readonly over?: boolean;
}

export interface FolderView {
  readonly path: string;
  /** The folder that it is in; null at the top. */
  readonly above: string | null;
  /** Whether project files in it may be opened and saved. */
  readonly chosen: boolean;
  /** Hidden ones left out; by name. */
  readonly folders: readonly { readonly path: string; readonly name: string }[];
  /** Project files in it, by name; none where the folder is not chosen. */
  readonly projects: readonly {
    readonly path: string;
    readonly name: string;
    readonly at: string;
  }[];
  /** Entries left out because there are too many of them. */
  readonly more: number;
}

/** A document with where it comes from; without `file` it is on no disk that this program knows. */
export interface OpenedFile {
  readonly document: Project;
  readonly origin: string;
  readonly file: FileOnDisk;
  /** Version of the project file as it stood on disk, where that is an older one. */
  readonly olderVersion?: number;
}

export interface SavedFile {
  readonly file: FileOnDisk;
  /** Name of the copy of what stood there before, in the same folder; null where nothing did. */
  readonly backup: string | null;
}

export interface FileStamp {
  /** Null where no file is there any more. */
  readonly stamp: string | null;
  readonly at: string | null;
}

export interface RecoveryKept {
  readonly kept: readonly {
    readonly recovery: string;
    readonly project: string;
    readonly origin: string;
    readonly path: string | null;
    /** When it was last kept, ISO. */
    readonly at: string;
    /** True where the file at `path` has another content by now than when it was opened. */
    readonly changedSince: boolean;
  }[];
}

/** Put away is not gone: until then it lies where it was kept, offered no more. */
export interface RecoveryDropped {
  readonly dropped: boolean;
  /** Path of it, and until when it stays at least, ISO; both null where nothing was dropped. */
  readonly at: string | null;
  readonly until: string | null;
}

/** An unsaved document as it was kept. */
export interface Recovered {
  readonly document: Project;
  readonly origin: string;
  /** The file that it is of, as it stands on disk now; null where it had none or that is gone. */
  readonly file: FileOnDisk | null;
  /** Stamp of the file that the changes were made on. */
  readonly expect: string | null;
  readonly at: string;
}

/** The answer to each request about files. */
export interface FileAnswers {
  'file.places': FilePlaces;
  'file.choose': ChosenFile;
  'folder.look': FolderView;
  'folder.choose': FolderView;
  'file.open': OpenedFile;
  'file.save': SavedFile;
  'file.stamp': FileStamp;
  'recent.forget': { readonly forgotten: boolean };
  'recovery.keep': { readonly at: string };
  'recovery.kept': RecoveryKept;
  'recovery.open': Recovered;
  'recovery.drop': RecoveryDropped;
  'recovery.take-back': { readonly back: boolean };
}
