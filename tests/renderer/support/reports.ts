/** Reports of the shape that the handlers give, with figures that are easy to recognise. */
import type { Joint } from '../../../src/shared/project.ts';
import type {
  BondStress,
  JointReport,
  JointSummary,
  Margin,
  MarginState,
  StressReport,
  SweepReport,
} from '../../../src/shared/reports.ts';

const stateOf = (margin: number): MarginState =>
  margin < 0 ? 'fails' : margin < 0.25 ? 'low' : 'holds';

export const makeMargin = (margin: number, change: Partial<Margin> = {}): Margin => ({
  mode: 'adhesive-strain',
  label: 'adhesive, ultimate strain',
  margin,
  state: stateOf(margin),
  reached: 1.725 * (1 + margin),
  asked: 1.725,
  caseId: 'gust',
  caseName: 'Gust',
  gapState: 'max',
  place: 'mouth',
  x: 30,
  theta: 0,
  part: 'bond',
  typical: true,
  remark: '',
  ...change,
});

/** A shear-lag trough between two ends, cut at the yield. */
export function makeBond(length: number, change: Partial<BondStress> = {}): BondStress {
  const x = stations(length);
  const shear = x.map((at) => 4 * Math.exp(-at / 4) + 22 * Math.exp((at - length) / 3));
  return {
    part: 'bond',
    gap: 0.2,
    radius: 16,
    axialShear: shear,
    hoopShear: shear.map(() => 0),
    shear,
    shearYield: 38,
    peak: { x: length, value: Math.max(...shear) },
    plastic: [],
    strain: 0.02,
    strainAllowed: 0.44,
    force: 16_000,
    ...change,
  };
}

export const stations = (length: number): number[] =>
  Array.from({ length: 41 }, (_, i) => (i / 40) * length);

export const makeStress = (length: number, change: Partial<StressReport> = {}): StressReport => ({
  jointId: 'tip',
  caseId: 'gust',
  gapState: 'max',
  temperature: 20,
  theta: 0,
  loadFactor: 1,
  carried: true,
  capacity: 2.1,
  x: stations(length),
  bonds: [makeBond(length)],
  adherends: [],
  trough: { ratio: 0.02, elasticLength: length, restLength: length / 2 },
  flags: [],
  ...change,
});

/** Margins grow with the overlap, so that a test sees which overlap an answer is about. */
export function makeReport(joint: Joint, change: Partial<JointReport> = {}): JointReport {
  const bonded = joint.overlap / 25 - 1;
  const loaded = joint.loads.length > 0;
  return {
    jointId: joint.id,
    description: 'single lap, tube in socket',
    targetMargin: 0.25,
    margins: loaded
      ? [
          makeMargin(bonded, { x: joint.overlap }),
          makeMargin(bonded + 1, {
            mode: 'metal-yield',
            label: 'sleeve, yield',
            part: 'sleeve',
            caseId: joint.loads.at(-1)?.case ?? 'gust',
            caseName: 'Hard landing',
            gapState: 'min',
            place: 'root',
            theta: 180,
            typical: false,
            asked: 1.15,
          }),
        ]
      : [],
    stress: loaded ? makeStress(joint.overlap, { jointId: joint.id }) : null,
    flags: [{ code: 'no-peel', message: 'Shear only: peel is not checked here.' }],
    modelVersion: '1',
    ...change,
  };
}

export const makeSummary = (
  joint: Pick<Joint, 'id' | 'name' | 'overlap'>,
  lowest: Margin | null,
  change: Partial<JointSummary> = {},
): JointSummary => ({
  jointId: joint.id,
  name: joint.name,
  description: 'single lap, tube in socket',
  overlap: joint.overlap,
  lowest,
  refused: null,
  flags: [],
  ...change,
});

export const makeSweep = (change: Partial<SweepReport> = {}): SweepReport => ({
  jointId: 'tip',
  points: Array.from({ length: 30 }, (_, i) => {
    const overlap = 2 + 2 * i;
    const bond = 1.6 * Math.tanh(overlap / 20);
    return { overlap, bond, all: Math.min(bond, 1.4), mode: bond < 1.4 ? 'bond' : 'tube' };
  }),
  plateau: 38,
  plateauStrength: 1.6,
  caseName: 'Gust',
  flags: [],
  ...change,
});
