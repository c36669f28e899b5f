/**
 * Anywhere in the declared ranges a joint is answered by finite numbers, or refused with the input to
 * change. Random projects, the ends of every range among them.
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createAsk } from '../../src/main/ask.ts';
import type { JointReport } from '../../src/shared/reports.ts';
import { projects } from '../support/random-projects.ts';

const ask = createAsk({ carrier: 'terminal' });

/** Path of the first number that is not finite. */
function notFinite(value: unknown, path = ''): string | null {
  if (typeof value === 'number') return Number.isFinite(value) ? null : path;
  if (typeof value !== 'object' || value === null) return null;
  for (const [key, inner] of Object.entries(value)) {
    const found = notFinite(inner, `${path}.${key}`);
    if (found) return found;
  }
  return null;
}

describe('any project in the declared ranges', () => {
  it('is answered by finite numbers or refused with the input to change', async () => {
    let answered = 0;
    await fc.assert(
      fc.asyncProperty(projects, async (document) => {
        const reply = await ask('joint.analyse', {
          document,
          jointId: 'j',
          focus: { stations: 21 },
        });
        if (!reply.ok) {
          expect(reply.error.code).toBe('bad-input');
          expect(reply.error.field).toMatch(/^joints\.0/);
          expect(reply.error.message).toMatch(/[Tt]hin|[Ww]iden|[Tt]ighten|lower|lengthen|change/);
          return;
        }
        answered++;
        expect(notFinite(reply.value)).toBeNull();
        const { margins } = reply.value as JointReport;
        for (const { margin, reached, asked } of margins) {
          expect(reached).toBeGreaterThanOrEqual(0);
          expect(margin).toBeCloseTo(reached / asked - 1, 9);
        }
      }),
      { numRuns: 250, seed: 20261125, endOnFailure: true },
    );
    expect(answered).toBeGreaterThan(125);
  }, 600_000);
});
