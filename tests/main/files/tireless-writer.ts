/**
 * A program that changes, keeps and saves one project without pause, through the functions that answer the page,
 * and says what it has done. For the tests that kill it.
 *
 * Arguments: data folder, project file, number of the first change, savings for each change kept.
 */
import { writeSync } from 'node:fs';
import { dirname } from 'node:path';
import { makeProjectFiles } from '../../../src/main/files/project-files.ts';
import { told } from './told.ts';

const [data, path, first, keeps] = process.argv.slice(2) as [string, string, string, string];
const files = makeProjectFiles({ data, dialogs: false, silence: null });
told(files.giveFolder(dirname(path)));
const opened = told(files.open(path));
let { stamp } = opened.file;

/** At once in the pipe: it stays there when this program is gone. */
const say = (what: string, number: number): void => {
  writeSync(1, `${what} ${number}\n`);
};

for (let number = Number(first); ; number += 1) {
  const document = { ...opened.document, name: `Change ${number}` };
  const unsaved = {
    recovery: 'the-document',
    document,
    origin: 'curlew.lapwright',
    path,
    expect: stamp,
  };
  told(files.recovery.keep(unsaved, 'page'));
  say('kept', number);
  if (number % Number(keeps) !== 0) continue;
  ({ stamp } = told(files.save(path, document, { expect: stamp, over: false })).file);
  say('saved', number);
  told(files.recovery.drop('the-document'));
  say('dropped', number);
}
