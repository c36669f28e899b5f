/**
 * Who may ask the loopback host: only the page that it served itself, to whoever was handed the
 * address with the token. Each check compares literally; none tries to be clever.
 */
import { createHash, timingSafeEqual } from 'node:crypto';
import type { IncomingHttpHeaders } from 'node:http';
import type { ErrorCode } from '../../shared/reply.ts';

export interface Refusal {
  readonly status: number;
  readonly code: ErrorCode;
  readonly message: string;
}

const bad = (status: number, message: string): Refusal => ({
  status,
  code: 'bad-request',
  message,
});

/**
 * A foreign name that resolves to this machine (DNS rebinding) arrives with that name as its Host.
 * @param hosts every Host header that was sent
 */
export const checkHost = (hosts: readonly string[] = [], authority: string): Refusal | null =>
  hosts.length === 1 && hosts[0] === authority
    ? null
    : bad(403, 'This host answers only to its own address.');

const digest = (text: string): Buffer => createHash('sha256').update(text).digest();

/** Digests have equal lengths, so the comparison takes the same time for every guess. */
const sameSecret = (a: string, b: string): boolean => timingSafeEqual(digest(a), digest(b));

const isJson = (contentType: string | undefined): boolean =>
  /^application\/json(;\s*charset=utf-8)?$/i.test(contentType ?? '');

/** All that can be known before the body is read. */
export function checkAsk(
  method: string | undefined,
  headers: IncomingHttpHeaders,
  own: { readonly authority: string; readonly token: string; readonly maxBody: number },
): Refusal | null {
  if (method !== 'POST') return bad(405, 'Requests are sent by POST.');
  if (headers.origin !== `http://${own.authority}`) {
    return bad(403, 'Only the page of this host may ask.');
  }
  if (!sameSecret(headers.authorization ?? '', `Bearer ${own.token}`)) {
    return bad(401, 'The token of this run of the program is missing or wrong.');
  }
  // Only this kind cannot be sent across origins without asking first.
  if (!isJson(headers['content-type'])) return bad(415, 'Requests are sent as application/json.');
  if (Number(headers['content-length'] ?? 0) > own.maxBody) return tooLarge(own.maxBody);
  return null;
}

export const tooLarge = (maxBody: number): Refusal =>
  bad(413, `This is larger than a request may be: ${Math.floor(maxBody / 1024 / 1024)} MB.`);

export const notJson: Refusal = bad(400, 'The request is not JSON.');

export const tooDeep: Refusal = bad(400, 'The request is nested deeper than any project is.');
