/** The body of a request, no longer than it may be. */
import type { IncomingMessage } from 'node:http';
import { notJson, type Refusal, tooDeep, tooLarge } from './guards.ts';

type Body = { readonly value: unknown } | { readonly refusal: Refusal };

/** A request is a few levels deeper than the project in it; what is deeper, no schema and no thread can take. */
const DEEPEST = 100;

function isDeep(value: unknown, left = DEEPEST): boolean {
  if (typeof value !== 'object' || value === null) return false;
  if (left === 0) return true;
  if (Array.isArray(value)) return value.some((one) => isDeep(one, left - 1));
  for (const key in value) {
    if (isDeep((value as Record<string, unknown>)[key], left - 1)) return true;
  }
  return false;
}

function parse(bytes: Uint8Array): Body {
  try {
    const value: unknown = JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes));
    return isDeep(value) ? { refusal: tooDeep } : { value };
  } catch {
    // Not UTF-8, not JSON, or nested deeper than the parser goes.
    return { refusal: notJson };
  }
}

/** @returns null when the sender went away. */
export async function readJson(request: IncomingMessage, maxBody: number): Promise<Body | null> {
  const parts: Buffer[] = [];
  let size = 0;
  try {
    // Not `for await`: leaving it early would cut the connection before the refusal is read.
    return await new Promise<Body | null>((resolve, reject) => {
      request.on('data', (part: Buffer) => {
        size += part.length;
        if (size <= maxBody) parts.push(part);
        else {
          parts.length = 0;
          resolve({ refusal: tooLarge(maxBody) });
        }
      });
      request.on('end', () => resolve(parse(Buffer.concat(parts))));
      request.on('error', reject);
      request.on('close', () => resolve(null));
    });
  } catch {
    return null;
  }
}
