/** Opens a project with where it stands on the disk. What cannot be read is left as it is. */
import { basename } from 'node:path';
import { MAX_BODY } from '../../shared/contract.ts';
import { BACKUP_SUFFIX } from '../../shared/project-text.ts';
import { ok, type Reply, refuse } from '../../shared/reply.ts';
import type { OpenedFile } from '../../shared/reports-files.ts';
import { projectOf, readBytes } from './read-project-file.ts';
import { fileOnDisk, stampOf } from './stamp.ts';

/** The copy that the last saving made, where that is a project that can be opened. */
function wholeBackup(path: string): string | null {
  if (path.endsWith(BACKUP_SUFFIX)) return null;
  const name = basename(path) + BACKUP_SUFFIX;
  const bytes = readBytes(path + BACKUP_SUFFIX, MAX_BODY, 'a project');
  return bytes.ok && projectOf(name, bytes.value).ok ? name : null;
}

export function openProject(path: string): Reply<OpenedFile> {
  const name = basename(path);
  const bytes = readBytes(path, MAX_BODY, 'a project');
  if (!bytes.ok) return bytes;
  const opened = projectOf(name, bytes.value);
  if (opened.ok) {
    return ok({ ...opened.value, file: fileOnDisk(path, stampOf(bytes.value)) });
  }
  const { code, field, message } = opened.error;
  const backup = wholeBackup(path);
  const unchanged = /nothing was changed/i.test(message) ? '' : ' Nothing was changed.';
  const remedy =
    backup === null
      ? ''
      : ` The version before its last saving can be opened: "${backup}", in the same folder.`;
  return refuse(code, field, `${message}${unchanged}${remedy}`);
}
