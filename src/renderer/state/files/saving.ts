/** Saves the project, and asks where something is in the way: a file that is there, or has become another. */
import { type Accessor, batch } from 'solid-js';
import type { Bridge } from '../../../shared/contract.ts';
import type { RequestError } from '../../../shared/reply.ts';
import type { FileOnDisk } from '../../../shared/reports-files.ts';
import { fileName } from '../../files.ts';
import { folderOf, lastPart } from '../../project-file/file-words.ts';
import type { ProjectState } from '../project.ts';
import type { Asking } from './questions.ts';

export interface Chosen {
  /** A path, or a file that the browser hands over; null for none. */
  readonly taken: string | File | null;
  /** The dialog has asked already whether what stands there may go. */
  readonly over: boolean;
}

/** Where a project that stands in no file would be saved, by what it was opened from. */
export interface Meant {
  readonly name: string;
  readonly folder: string;
}

export interface Saving {
  /** True when it is on the disk. */
  save(): Promise<boolean>;
  saveAs(): Promise<boolean>;
}

export interface SavingSource {
  readonly bridge: Bridge;
  readonly project: ProjectState;
  readonly file: Accessor<FileOnDisk | null>;
  readonly meant: Accessor<Meant | null>;
  readonly asking: Asking;
  readonly choose: (purpose: 'save', name: string, folder: string | null) => Promise<Chosen>;
  readonly setSaving: (on: boolean) => void;
  readonly onSaved: (file: FileOnDisk) => void;
  /** Another content was found in the file. */
  readonly onChanged: () => void;
  readonly onRefused: (error: RequestError) => void;
}

export function createSaving(source: SavingSource): Saving {
  const { bridge, project, file, meant, asking, choose, setSaving } = source;
  const { onSaved, onChanged, onRefused } = source;

  /** One saving at a time: a second wish waits for the first, and saves what was changed meanwhile. */
  let writing: Promise<unknown> = Promise.resolve();
  function write(path: string, over = false): Promise<boolean> {
    const done = writing.then(() => writeNow(path, over));
    writing = done.catch(() => false);
    return done.then((reply) => reply === true || (reply !== false && refused(path, reply)));
  }
  async function writeNow(path: string, over: boolean): Promise<boolean | RequestError> {
    const document = project.plain();
    if (!document) return false;
    const [opening, state, here] = [project.opening(), project.seal(), file()];
    setSaving(true);
    const reply = await bridge.ask('file.save', {
      path,
      // As it is now: what is changed while it is on its way is not saved with it.
      document: structuredClone(document),
      expect: here?.path === path ? here.stamp : null,
      over,
    });
    setSaving(false);
    if (opening !== project.opening()) return false;
    if (!reply.ok) return reply.error;
    batch(() => {
      onSaved(reply.value.file);
      project.markSaved(state);
    });
    return true;
  }

  async function refused(path: string, error: RequestError): Promise<boolean> {
    const name = lastPart(path);
    if (error.code === 'changed') {
      onChanged();
      const word = await asking.ask('changed', { name });
      if (word === 'replace') return write(path, true);
      return word === 'as' ? saveAs() : false;
    }
    if (error.code === 'exists') {
      const folder = folderOf(path);
      const word = await asking.ask('exists', { name, folder });
      if (word === 'replace') return write(path, true);
      return word === 'as' ? saveUnder(name, folder) : false;
    }
    onRefused(error);
    return false;
  }

  async function saveUnder(name: string, folder: string | null): Promise<boolean> {
    const { taken, over } = await choose('save', name, folder);
    return typeof taken === 'string' && write(taken, over);
  }
  const saveAs = async (): Promise<boolean> => {
    const document = project.plain();
    if (!document) return false;
    const { name, folder } = file() ?? meant() ?? { name: fileName(document), folder: null };
    return saveUnder(name, folder);
  };
  async function save(): Promise<boolean> {
    const here = file();
    if (!here) return saveAs();
    if (!here.writable) {
      const word = await asking.ask('readOnly', { name: here.name, folder: here.folder });
      return word === 'as' ? saveAs() : false;
    }
    return write(here.path);
  }

  return { save, saveAs };
}
