/** The body of a request, no longer than it may be. */
import type { IncomingMessage } from 'node:http';
import { notJson, type Refusal, tooLarge } from './guards.ts';

type Body = { readonly value: unknown } | { readonly refusal: Refusal };

function parse(bytes: Uint8Array): Body {
  try {
    return { value: JSON.parse(new TextDecoder('utf-8', { fatal: true }).decode(bytes)) };
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
