/** Whether a joint has changed since a check of it was recorded. */
import { describe, expect, it } from 'vitest';
import demo from '../../src/main/demo/curlew.lapwright.json' with { type: 'json' };
import { convertLap } from '../../src/shared/convert-lap.ts';
import type { CheckResult, Joint, Project } from '../../src/shared/project.ts';
import { changedSince, drawnText } from '../../src/shared/recorded-check.ts';

const tip = (demo as unknown as Project).joints[1]!;
const result = (drawn: boolean): CheckResult => ({
  verdict: 'accept',
  reason: '',
  bonds: [],
  margin: null,
  targetMargin: 0.25,
  modelVersion: '2',
  made: {
    lap: 'socket',
    overlap: tip.overlap,
    ...(drawn ? { drawn: drawnText(tip) } : {}),
    adhesive: '',
    cure: '',
    steps: [],
    remarks: [],
    guarded: null,
  },
});

describe('a joint', () => {
  it.each([true, false])('that is as it was has not changed; text of the drawing: %s', (drawn) => {
    expect(changedSince(result(drawn), tip)).toBeNull();
    // What the bench is told and what it is called are no part of what was judged.
    const renamed = { ...tip, name: 'Other', bench: { waste: 3 } } as Joint;
    expect(changedSince(result(drawn), renamed)).toBeNull();
  });

  it('has changed with its overlap and with its lap, and of what it was is said', () => {
    const was = `this verdict is of a single lap in a socket, overlap ${tip.overlap} mm`;
    expect(changedSince(result(false), { ...tip, overlap: tip.overlap + 1 })).toContain(was);
    expect(changedSince(result(false), convertLap(tip, 'sleeve-double'))).toContain(was);
  });

  it('has changed with its sizes, its adhesive and its loads', () => {
    const other = 'this verdict is of other sizes, loads or adhesive';
    const changes = [{ adhesive: 'other' }, { loads: [] }, { bond: { gap: 0.3, tolerance: 0 } }];
    for (const change of changes) {
      const joint = { ...tip, ...change } as Joint;
      expect(changedSince(result(true), joint)).toContain(other);
      expect(changedSince(result(false), joint)).toBeNull();
    }
  });

  it('without a record of it has nothing to be compared with', () => {
    const { made: _, ...bare } = result(true);
    expect(changedSince(bare, tip)).toBeNull();
    expect(changedSince(undefined, tip)).toBeNull();
  });
});
