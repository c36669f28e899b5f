/** Reports of the shape that the handlers give, with figures that are easy to recognise. */
import type { Joint, Project } from '../../../src/shared/project.ts';
import type {
  BondStress,
  Card,
  CornerMargin,
  CornersReport,
  JointCorners,
  JointReport,
  JointSummary,
  LayeredStress,
  Ledger,
  Margin,
  MarginState,
  StressMap,
  StressReport,
  SweepReport,
  Working,
} from '../../../src/shared/reports.ts';
import type { JointSheet } from '../../../src/shared/reports-sheet.ts';

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
  conditionId: null,
  conditionName: null,
  gapState: 'max',
  place: 'mouth',
  x: 30,
  theta: 0,
  part: 'bond',
  typical: true,
  restsOn: 'typical values, no allowable',
  remark: '',
  flags: [],
  ...change,
});

/** Peel that closes along the middle and opens at both ends, most at the mouth. */
export function makeLayered(length: number, change: Partial<LayeredStress> = {}): LayeredStress {
  const x = stations(length);
  const peel = x.map(
    (at) =>
      12 * Math.exp((at - length) / 1.5) + 5 * Math.exp(-at / 1.5) - (at > length / 2 ? 1 : 0),
  );
  return {
    shear: x.map((at) => 5 * Math.exp(-at / 4) + 24 * Math.exp((at - length) / 3)),
    peel,
    capped: null,
    peak: { x: length, value: Math.max(...peel) },
    strength: 42,
    ...change,
  };
}

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
    layered: makeLayered(length),
    ...change,
  };
}

export const stations = (length: number): number[] =>
  Array.from({ length: 41 }, (_, i) => (i / 40) * length);

export const makeStress = (length: number, change: Partial<StressReport> = {}): StressReport => ({
  jointId: 'tip',
  caseId: 'gust',
  conditionId: null,
  conditionName: null,
  gapState: 'max',
  gapStates: ['min', 'nominal', 'max', 'thin-side', 'thick-side'],
  temperature: 20,
  moisture: 'dry',
  theta: 0,
  loadFactor: 1,
  carried: true,
  capacity: 2.1,
  x: stations(length),
  bonds: [makeBond(length)],
  adherends: [],
  trough: { ratio: 0.02, elasticLength: length, restLength: length / 2 },
  ledgers: [makeLedger()],
  edgeMoment: null,
  map: null,
  flags: [],
  ...change,
});

export const makeLedger = (change: Partial<Ledger> = {}): Ledger => ({
  part: 'bond',
  gap: 0.25,
  rows: [
    { name: 'environment', factor: 1 },
    { name: 'gap', factor: 0.9 },
    { name: 'ageing', factor: 0.8 },
    { name: 'scatter', factor: 1 },
    { name: 'fitting', factor: 1 / 1.15 },
  ],
  strength: 0.9 * 0.8,
  left: (0.9 * 0.8) / 1.15,
  ...change,
});

/** One hump around the bond: most at the mouth and at 0°. */
export function makeMap(
  length: number,
  clockings = 36,
  parts: readonly string[] = ['bond'],
): StressMap {
  const x = Array.from({ length: 13 }, (_, i) => (i / 12) * length);
  const theta = Array.from({ length: clockings }, (_, i) => (i * 360) / clockings);
  const over = (most: number) =>
    theta.map((degrees) =>
      x.map(
        (at) =>
          most * Math.exp((at - length) / 6) * (0.4 + 0.6 * Math.cos((degrees * Math.PI) / 180)),
      ),
    );
  return { x, theta, bonds: parts.map((part) => ({ part, shear: over(30), peel: over(12) })) };
}

export const makeCard = (change: Partial<Card> = {}): Card => ({
  id: 'volkersen-peak',
  title: 'Shear at the mouth',
  statement: 'Shear lag in a lap whose bond is elastic.',
  formula: 'tau_max = F / (2 pi R) * lambda * sqrt(1 + beta^2) / tanh(lambda * L)',
  filled: '22.0 = 16000 / (2 * 3.142 * 16) * 0.138 * sqrt(1 + 0.2^2) / tanh(0.138 * 30)',
  values: [
    { symbol: 'F', label: 'axial force', value: 16_000, unit: 'N' },
    { symbol: 'lambda', label: 'decay of the shear', value: 0.138, unit: '1/mm' },
    { symbol: 'beta', label: 'stiffness out of balance', value: 0.2, unit: '' },
  ],
  result: { symbol: 'tau_max', label: 'peak shear', value: 22, unit: 'MPa' },
  source: 'Volkersen (1938), equation 12',
  domain: [
    { text: 'adhesive elastic', inside: true },
    { text: 'wall thinner than a tenth of the radius', inside: false },
  ],
  ...change,
});

export const makeWorking = (change: Partial<Working> = {}): Working => ({
  jointId: 'tip',
  title: 'adhesive, ultimate strain',
  where: 'Gust, gap max, at the mouth',
  margin: makeMargin(0.2),
  cards: [makeCard(), makeCard({ id: 'margin', title: 'Margin', formula: 'M = r / a - 1' })],
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

/** A cell's figure follows the case it is about, so that a test sees which one it is. */
export function makeCorner(margin: number, change: Partial<CornerMargin> = {}): CornerMargin {
  const { reached: _r, asked: _a, remark: _m, flags: _f, ...corner } = makeMargin(margin);
  return { ...corner, ...change };
}

export function makeCorners(
  { name, settings, loadCases, joints }: Project,
  margins: Readonly<Record<string, number>>,
): CornersReport {
  const named = (caseId: string): string => loadCases.find(({ id }) => id === caseId)!.name;
  return {
    project: name,
    targetMargin: settings.targetMargin,
    cases: loadCases.flatMap(({ id, name: caseName }) =>
      joints.some(({ loads }) => loads.some((load) => load.case === id))
        ? [{ caseId: id, name: caseName }]
        : [],
    ),
    joints: joints.map((joint): JointCorners => {
      const cells = joint.loads.map(({ case: caseId }) => {
        const margin = margins[`${joint.id} ${caseId}`];
        const change = { caseId, caseName: named(caseId) };
        return {
          caseId,
          states: 5,
          lowest: margin === undefined ? null : makeCorner(margin, change),
        };
      });
      const found = cells.flatMap(({ lowest }) => (lowest ? [lowest] : []));
      return {
        jointId: joint.id,
        name: joint.name,
        description: 'single lap, tube in socket',
        flat: joint.type.startsWith('flat'),
        cells,
        lowest: found.toSorted((a, b) => a.margin - b.margin)[0] ?? null,
        states: 5 * cells.length,
        refused: null,
      };
    }),
    counts: { fails: 1, low: 1, holds: 1 },
    states: 20,
    corners: null,
    modelVersion: '1',
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

/** What the sheet is told of a joint: the report and the sweep of above, workings as many as asked. */
export function makeSheet(
  joint: Joint,
  { workings = 0, sweep = true }: { workings?: number | undefined; sweep?: boolean | undefined },
): JointSheet {
  const report = makeReport(joint);
  return {
    jointId: joint.id,
    report,
    sweep: sweep && joint.loads.length > 0 ? makeSweep({ jointId: joint.id }) : null,
    sweepRefused: null,
    workings: report.margins.slice(0, workings).map((margin) => ({
      margin,
      working: makeWorking({ title: margin.label }),
      refused: null,
    })),
    tolerances: [],
    couponFlags: [],
  };
}
