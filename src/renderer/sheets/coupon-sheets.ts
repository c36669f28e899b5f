/** What coupons come to, as tables of figures. */

import { pieceSizes } from '../../shared/coupon-pieces.ts';
import { apartWords, becauseWords, methodWords } from '../../shared/coupon-words.ts';
import { ledgerOthers, sourceWords } from '../../shared/ledger-words.ts';
import type { Specimen } from '../../shared/project-coupons.ts';
import type {
  Correlation,
  CouponSetReport,
  CouponStatistics,
  GapCurve,
  LifeFit,
  LifeSetReport,
  SampleSummary,
} from '../../shared/reports-coupons.ts';
import type { AdhesiveLedger } from '../../shared/reports-ledger.ts';
import { column, type Sheet, type SheetCell } from '../../shared/sheet.ts';
import type { SetLine } from '../charts/coupon-data.ts';

const summary = (name: string, one: SampleSummary): SheetCell[] => [
  name,
  one.n,
  one.mean,
  one.deviation,
  one.variation,
  one.lowest,
  one.highest,
];

export const summarySheet = ({ all, batches }: CouponStatistics): Sheet => ({
  head: [
    'load over area',
    'results',
    column('mean', 'MPa'),
    column('standard deviation', 'MPa'),
    'scatter as a share',
    column('lowest', 'MPa'),
    column('highest', 'MPa'),
  ],
  rows: [
    summary('all that count', all),
    ...batches.map((one) => summary(one.name === '' ? 'no batch' : `batch ${one.name}`, one)),
  ],
});

export const basisSheet = ({ basis, chosen }: CouponStatistics): Sheet => ({
  head: ['by', 'basis', column('value', 'MPa'), 'chosen', 'why none'],
  rows: basis.map((line) => [
    methodWords[line.method],
    line.kind,
    line.value,
    chosen[line.kind]?.method === line.method ? 'yes' : 'no',
    line.value === null ? becauseWords(line) : null,
  ]),
});

export const samplingSheet = ({ sampling }: CouponStatistics): Sheet => ({
  head: ['class of data', 'batches', 'results', 'met', 'batches short', 'results short'],
  rows: sampling.map((one) => [
    one.name,
    one.batches,
    one.results,
    one.met ? 'yes' : 'no',
    one.batchesShort,
    one.resultsShort,
  ]),
});

export const probabilitySheet = ({ plot }: CouponStatistics): Sheet => ({
  head: [column('load over area', 'MPa'), 'chance', `${plot.family} axis along`, 'axis up', 'what'],
  rows: [
    ...plot.points.map(({ value, chance, x, y }) => [value, chance, x, y, 'result']),
    ...(plot.line ?? []).map(({ x, y }) => [null, null, x, y, 'fitted line']),
  ],
});

export const agreementSheet = (lines: readonly SetLine[]): Sheet => ({
  head: [
    'set',
    'coupon',
    'batch',
    column('gap', 'mm'),
    column('overlap', 'mm'),
    column('temperature', '°C'),
    column('load', 'N'),
    column('predicted load', 'N'),
    'measured over predicted',
    'counts',
  ],
  rows: lines.map((line) => [
    line.set,
    line.coupon,
    line.batch,
    line.gap,
    line.overlap,
    line.temperature,
    line.load,
    line.predicted,
    line.ratio,
    line.apart === null ? 'yes' : apartWords[line.apart],
  ]),
});

export const correlationSheet = ({ n, mean, variation, low, high }: Correlation): Sheet => ({
  head: [
    'results',
    'mean of measured over predicted',
    'scatter as a share',
    '95 % from',
    '95 % to',
  ],
  rows: [[n, mean, variation, low, high]],
});

export const gapCurveSheet = ({ rows, reference }: GapCurve): Sheet => ({
  head: [column('gap', 'mm'), `share of that at ${reference} mm`, 'coupons'],
  rows: rows.map(({ gap, factor, n }) => [gap, factor, n]),
});

export interface PlannedSet {
  readonly name: string;
  readonly temperature: number;
  readonly moisture: string;
  readonly gap: number;
  readonly planned: number;
  readonly results: number;
  readonly report: CouponSetReport | null;
}

export const setsSheet = (sets: readonly PlannedSet[]): Sheet => ({
  head: [
    'set',
    column('temperature', '°C'),
    'moisture',
    column('gap', 'mm'),
    'planned',
    column('bonded area', 'mm²'),
    column('expected load', 'N'),
    'fails by',
    column('grips hold', 'N'),
    'results',
  ],
  rows: sets.map(({ report, ...set }) => [
    set.name,
    set.temperature,
    set.moisture,
    set.gap,
    set.planned,
    report?.area ?? null,
    report?.predicted.load ?? null,
    report?.predicted.mode ?? null,
    report?.grip ?? null,
    set.results,
  ]),
});

export const lifeSheet = ({ lines, fit }: LifeSetReport): Sheet => ({
  head: [
    'what',
    'coupon',
    'batch',
    column('peak load', 'N'),
    'peak shear over yield',
    'cycles',
    'ran out',
  ],
  rows: [
    ...lines.map(({ coupon, batch, peak, share, cycles, runOut }) => [
      'coupon',
      coupon,
      batch,
      peak,
      share,
      cycles,
      runOut ? 'yes' : 'no',
    ]),
    ...(['median', 'bound'] as const).flatMap((what) =>
      (fit?.curve ?? []).map((at) => [what, null, null, null, at.share, at[what], null]),
    ),
  ],
});

export const fitSheet = (fit: LifeFit): Sheet => ({
  head: [
    'fitted by',
    'failures',
    'run-outs',
    'standard deviation of log10 N',
    'lowest share tested',
    'highest share tested',
    'longest test in cycles',
    'bound coefficient',
    'bound exponent',
  ],
  rows: [
    [
      fit.method,
      fit.failures,
      fit.runOuts,
      fit.deviation,
      ...fit.shares,
      fit.longest,
      fit.bound?.coefficient ?? null,
      fit.bound?.exponent ?? null,
    ],
  ],
});

export const goodmanSheet = ({ goodman }: LifeSetReport): Sheet => ({
  head: ['load ratio R', 'times the highest peak shear tested'],
  rows: goodman.map(({ ratio, factor }) => [ratio, factor]),
});

export const sourcesSheet = (adhesive: AdhesiveLedger): Sheet => ({
  head: ['of the adhesive', 'value', 'what it is', 'source'],
  rows: ledgerOthers(adhesive).map((other) => [
    other.what,
    other.value,
    sourceWords(other),
    other.source?.text ?? null,
  ]),
});

/** Sizes of all kinds of pieces, each in a column of its own name; in mm. */
export const piecesSheet = (pieces: readonly Specimen[]): Sheet => ({
  head: ['test piece', 'standard', 'kind', 'sizes'],
  rows: pieces.map(({ name, standard, shape }) => [
    name,
    standard ?? null,
    shape.type,
    pieceSizes(shape).replaceAll('×', 'x'),
  ]),
});
