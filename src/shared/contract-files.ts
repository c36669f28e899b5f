/**
 * Requests about files on this machine: the same for the window and the loopback host. A path counts only
 * inside a folder that the user chose, and only for project files.
 */
import { z } from 'zod';

const path = z.string().min(1).max(4096);
/** As `FileOnDisk.stamp`. */
const stamp = z.string().min(1).max(128);
/** Checked by `readProject`, not here: its errors name the place in the document. */
const document = z.unknown();
/** Of one opening of a project in one page: a page makes it, and keeps it when it is loaded anew. */
const recoveryId = z.string().regex(/^[a-z0-9][a-z0-9-]{7,63}$/);

/**
 * Milliseconds that a page of the loopback host may be silent until it counts as gone: a browser lets the timers of
 * a page in the background run once a minute.
 */
export const SILENCE = 90_000;

export const fileRequests = {
  /** How files are chosen here, which folders may be used, what was open lately. */
  'file.places': z.strictObject({}),
  /** The system's own dialog; refused (`not-found`) where there is none: the page then shows its own. */
  'file.choose': z.strictObject({
    purpose: z.enum(['open', 'save']),
    /** Name that is offered for saving. */
    name: z.string().min(1).max(255).optional(),
    /** Folder to begin in. */
    folder: path.optional(),
  }),
  /** What is in a folder; the user's own when left out. Of a folder not chosen: its folders alone. */
  'folder.look': z.strictObject({ folder: path.optional() }),
  /** The user chooses a folder: project files in it and below may be opened and saved from now on. */
  'folder.choose': z.strictObject({
    folder: path,
    /** Makes it, where only its last part is missing. */
    make: z.boolean().default(false),
  }),
  'file.open': z.strictObject({ path }),
  /**
   * Writes the whole file or nothing, after a copy of what stood there. Refused with `changed` where another
   * content stands there than `expect`, with `exists` where something stands there and `expect` is null;
   * `over` writes all the same.
   */
  'file.save': z.strictObject({
    path,
    document,
    expect: stamp.nullable(),
    over: z.boolean().default(false),
  }),
  /** What stands at a path now. */
  'file.stamp': z.strictObject({ path }),
  /** Takes a file from the list of those that were open lately; it stays on the disk. */
  'recent.forget': z.strictObject({ path }),
  /** Keeps an unsaved document, in the place of what was kept under this id before. */
  'recovery.keep': z.strictObject({
    recovery: recoveryId,
    document,
    origin: z.string().max(300),
    path: path.nullable(),
    expect: stamp.nullable(),
  }),
  /** Unsaved documents whose page is gone, youngest first; `own` are those of the page that asks. */
  'recovery.kept': z.strictObject({ own: z.array(recoveryId).max(100).default([]) }),
  'recovery.open': z.strictObject({ recovery: recoveryId }),
  /** It is saved, or the user put it away: it is offered no more. */
  'recovery.drop': z.strictObject({ recovery: recoveryId }),
  /** What was dropped is kept and offered again. */
  'recovery.take-back': z.strictObject({ recovery: recoveryId }),
} as const;
