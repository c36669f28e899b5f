/** The project as a file: begun, opened, saved. The File menu has the same by their ids. */
import { shortFolder } from '../project-file/file-words.ts';
import type { Action, Reach } from './action.ts';

export const fileActions = ({ project, files, upload }: Reach): Action[] => {
  const isOpen = (): boolean => project.document() !== null;
  const always = (): boolean => true;
  return [
    {
      id: 'new',
      title: () => 'New project …',
      group: 'file',
      keys: [
        { key: 'n', alt: true },
        { key: 'n', ctrl: true, writing: true },
      ],
      also: 'begin create',
      about: 'a browser may keep Ctrl+N for itself',
      available: always,
      run: () => void files.begin(),
    },
    {
      id: 'open',
      title: () => 'Open a project …',
      group: 'file',
      keys: [{ key: 'o', ctrl: true, writing: true }],
      also: 'file load',
      available: always,
      run: () => void files.open(),
    },
    {
      id: 'save',
      title: () => 'Save',
      group: 'file',
      keys: [{ key: 's', ctrl: true, writing: true }],
      also: 'write project file',
      available: isOpen,
      run: () => void files.save(),
    },
    {
      id: 'save-as',
      title: () => 'Save as …',
      group: 'file',
      keys: [{ key: 's', ctrl: true, shift: true, writing: true }],
      also: 'another name folder',
      available: isOpen,
      run: () => void files.saveAs(),
    },
    {
      id: 'save-copy',
      title: () => 'Save a copy',
      group: 'file',
      also: 'download project file browser',
      about: 'as a download',
      available: isOpen,
      run: () => files.saveCopy(),
    },
    {
      id: 'rename',
      title: () => 'Rename the project …',
      group: 'file',
      also: 'name',
      available: isOpen,
      run: () => void files.rename(),
    },
    {
      id: 'upload',
      title: () => 'Open through the browser …',
      group: 'file',
      also: 'upload from this computer file',
      available: always,
      run: upload,
    },
    {
      id: 'demo',
      title: () => 'Open the demonstration project',
      group: 'file',
      also: 'example',
      available: always,
      run: () => void files.openDemo(),
    },
  ];
};

/** Files that were open lately, by the names of their projects. */
export const recentActions = ({ files }: Reach): Action[] =>
  files.places().recent.map((recent) => ({
    id: `recent ${recent.path}`,
    title: () => recent.project,
    group: 'file',
    also: `open recent again ${recent.name}`,
    about: `${recent.found ? 'open' : 'not there any more:'} ${recent.name}, ${shortFolder(recent.folder)}`,
    available: () => true,
    run: () => void files.openRecent(recent),
  }));
