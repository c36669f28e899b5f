/** What the core would say of a sizing: figures that are easy to recognise. */
import type { Joint } from '../../../src/shared/project.ts';
import type { SizesReport, SizingReport } from '../../../src/shared/reports.ts';
import { makeMargin } from './reports.ts';

/** An overlap of 24 mm is found, checked one step below. */
export function makeSizing(joint: Joint, change: Partial<SizingReport> = {}): SizingReport {
  const margin = makeMargin(0.28);
  return {
    jointId: joint.id,
    type: joint.type,
    vary: 'overlap',
    target: 0.25,
    step: 1,
    from: 1,
    to: 60,
    present: { value: joint.overlap, margin: makeMargin(0.1) },
    points: [1, 12, 24, 60].map((value, i) => ({
      value,
      margin: [-0.9, -0.1, 0.28, 0.9][i]!,
      mode: 'adhesive-strain',
      label: 'adhesive, ultimate strain',
    })),
    found: {
      value: 24,
      margin,
      low: 24,
      lowBounded: true,
      high: null,
      highBounded: false,
      lostAt: null,
      checks: [
        { value: 23, reached: false, margin: makeMargin(0.23) },
        { value: 24, reached: true, margin },
      ],
      joint: { ...joint, overlap: 24 },
    },
    stop: null,
    suggestions: [],
    noHelp: [],
    flags: [],
    modelVersion: '1',
    ...change,
  };
}

/** Nothing is found; one change reaches the target, one only helps. */
export function makeStopped(joint: Joint): SizingReport {
  const margin = makeMargin(0.06);
  const common = { label: 'adhesive, yield', joint: { ...joint, overlap: 19 } };
  return makeSizing(joint, {
    found: null,
    stop: {
      best: 60,
      margin,
      levelFrom: 30,
      rising: false,
      end: 60,
      endMargin: margin,
      atBest: [margin],
      atEnd: [margin],
    },
    suggestions: [
      {
        ...common,
        kind: 'thicker-gap',
        change: 'gap 0.20 → 0.30 mm',
        reached: true,
        value: 19,
        margin: 0.26,
        gain: 0.2,
        joint: { ...common.joint, name: 'thicker gap' },
      },
      {
        ...common,
        kind: 'double-lap',
        change: 'double lap in place of single',
        reached: false,
        value: 60,
        margin: 0.15,
        gain: 0.09,
      },
    ],
    noHelp: ['sleeve-wall'],
  });
}

export function makeSizes(joint: Joint, each: boolean): SizesReport {
  const sizes = joint.sizes ?? [];
  const margins = [0.31, -0.07, 0.5];
  return {
    jointId: joint.id,
    overlap: joint.overlap,
    target: 0.25,
    step: 1,
    each,
    sizes: sizes.map(({ id, name }, i) => ({
      sizeId: id,
      name,
      lowest: makeMargin(margins[i] ?? 1),
      overlap: 20 + i,
      there: makeMargin(0.26),
      at: 20 + i,
      refused: null,
    })),
    worst: sizes[1]?.id ?? null,
    common: each
      ? null
      : {
          overlap: 21,
          by: sizes[1]?.id ?? '',
          checks: sizes.map(({ id }) => ({ sizeId: id, margin: makeMargin(0.27) })),
        },
    modelVersion: '1',
  };
}
