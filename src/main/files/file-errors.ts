/** What the system says of a file, in words, with what to do about it. */
import type { ErrorCode } from '../../shared/reply.ts';

export const codeOf = (error: unknown): string =>
  (error as NodeJS.ErrnoException | null)?.code ?? '';

/** Why something could not be read, to follow its name and a colon. */
const unread: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  EACCES: 'this user may not read it',
  EPERM: 'this user may not read it',
  EISDIR: 'it is a folder, not a file',
  ENOTDIR: 'part of its path is not a folder',
  ENAMETOOLONG: 'its name is too long',
  ELOOP: 'its links go in a circle',
};
export const whyNotRead = (error: unknown): string => unread[codeOf(error)] ?? 'it cannot be read';

interface Why {
  readonly code: ErrorCode;
  /** As a sentence goes on after a colon. */
  readonly why: string;
  readonly remedy: string;
}

const ELSEWHERE = 'save it in another folder or under another name';
const denied: Why = {
  code: 'not-writable',
  why: 'this user may not write there',
  remedy: ELSEWHERE,
};
const full: Why = {
  code: 'not-writable',
  why: 'the disk is full',
  remedy: 'make room on it, or save on another disk',
};
const tooLong: Why = {
  code: 'bad-input',
  why: 'the name is too long for this disk',
  remedy: 'choose a shorter one',
};
const gone: Why = {
  code: 'not-found',
  why: 'its folder is not there any more',
  remedy: 'save it in another folder',
};

const unwritten: Readonly<Record<string, Why>> = {
  EACCES: denied,
  EPERM: denied,
  EROFS: { ...denied, why: 'the disk can only be read' },
  ENOSPC: full,
  EDQUOT: { ...full, why: "this user's share of the disk is full" },
  EFBIG: { ...full, why: 'this disk takes no file as large as that' },
  EIO: { code: 'not-writable', why: 'the disk reports a fault', remedy: 'save on another disk' },
  ENAMETOOLONG: tooLong,
  ENOENT: gone,
  ENOTDIR: gone,
  EISDIR: { code: 'bad-input', why: 'a folder has this name', remedy: 'choose another name' },
  EBUSY: {
    code: 'not-writable',
    why: 'another program holds the file',
    remedy: 'close it there and save again',
  },
};

/** Why something could not be written, and what to do. */
export const whyNotWritten = (error: unknown): Why =>
  unwritten[codeOf(error)] ?? {
    code: 'not-writable',
    why: codeOf(error) || String(error),
    remedy: ELSEWHERE,
  };
