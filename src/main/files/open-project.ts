/** Opens a project with where it stands on the disk. What cannot be read is left as it is. */
import { basename } from 'node:path';
import { MAX_BODY } from '../../shared/contract.ts';
import { BACKUP_SUFFIX } from '../../shared/project-text.ts';
import { ok, type Reply, refuse } from '../../shared/reply.ts';
import type { OpenedFile } from '../../shared/reports-files.ts';
import { projectOf, readBytes } from './read-project-file.ts';
import { fileOnDisk, stampOf } from './stamp.ts';

/** Path of the copy that the last saving made, where that is a project that can be opened. */
function wholeBackup(path: string): string | null {
  if (path.endsWith(BACKUP_SUFFIX)) return null;
  const before = path + BACKUP_SUFFIX;
  const bytes = readBytes(before, MAX_BODY, 'a project');
  return bytes.ok && projectOf(basename(before), bytes.value).ok ? before : null;
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
  const before = wholeBackup(path);
  const unchanged = /nothing was changed/i.test(message) ? '' : ' Nothing was changed.';
  const said = `${message}${unchanged}`;
  if (before === null) return refuse(code, field, said);
  const remedy = ' The version before its last saving can be opened.';
  return { ok: false, error: { code, field, message: said + remedy, before } };
}
