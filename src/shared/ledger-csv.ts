/** The ledger of allowables as comma-separated values: a row for each environment and gap, then the rest. */
import { writeCsv } from './csv.ts';
import { ledgerOthers, offerText, sourceWords, useText } from './ledger-words.ts';
import type {
  AdhesiveLedger,
  LedgerEnvironment,
  LedgerGap,
  LedgerReport,
} from './reports-ledger.ts';

const columns = [
  'adhesive',
  'adhesive_name',
  'what',
  'temperature_C',
  'moisture',
  'gap_mm',
  'rows_used',
  'rows_low_C',
  'rows_high_C',
  'rows_shear_yield_MPa',
  'rows_peel_strength_MPa',
  'environment_factor',
  'ageing_factor',
  'scatter_factor',
  'scatter_from',
  'gap_factor',
  'left',
  'shear_yield_MPa',
  'plastic_strain',
  'peel_strength_MPa',
  'value',
  'rests_on',
  'basis',
  'source',
  'tested_here',
  'set',
  'set_now',
  'coupons',
  'batches',
  'coupons_gap_mm',
  'basis_value_MPa',
  'coupons_mean_MPa',
  'tested',
  'taken',
  'gap_outside_table',
  'gap_of',
  'joints',
  'cases',
  'not_taken',
] as const;
type Column = (typeof columns)[number];
type Cells = Partial<Record<Column, string | number | null>>;

const digits = (value: number | null | undefined): number | null =>
  value == null ? null : Number(value.toPrecision(9));
const yesNo = (value: boolean): string => (value ? 'yes' : 'no');

/** Of the environment: the same at each of its gaps. */
function environmentCells(one: LedgerEnvironment): Cells {
  const { taken, tested = null, set } = one.allowables[0] ?? {};
  return {
    what: 'strength',
    temperature_C: one.temperature,
    moisture: one.moisture,
    rows_used: one.rows,
    rows_low_C: one.rowsAt[0] ?? null,
    rows_high_C: one.rowsAt.at(-1) ?? null,
    rows_shear_yield_MPa: digits(one.table?.shearYield),
    rows_peel_strength_MPa: digits(one.table?.peelStrength),
    scatter_from: one.table === null ? '' : taken ? 'allowable' : 'knockdown',
    value: one.why,
    rests_on: one.restsOn,
    basis: one.basis,
    source: one.source,
    tested_here: taken ? yesNo(one.testedHere) : '',
    set: taken?.set ?? '',
    set_now: set ?? '',
    coupons: taken?.coupons ?? null,
    batches: taken?.batches ?? null,
    coupons_gap_mm: taken?.gap ?? null,
    basis_value_MPa: digits(taken?.value),
    coupons_mean_MPa: digits(taken?.mean),
    tested,
    taken: taken?.taken ?? '',
    not_taken: one.offers.map((offer) => `${offer.name}: ${offerText(offer)}`).join('; '),
  };
}

function gapCells(gap: LedgerGap, { uses }: LedgerEnvironment): Cells {
  const there = uses.filter(({ jointId }) => gap.joints.includes(jointId));
  return {
    gap_mm: gap.gap,
    environment_factor: digits(gap.factors?.environment),
    ageing_factor: digits(gap.factors?.ageing),
    scatter_factor: digits(gap.factors?.scatter),
    gap_factor: digits(gap.factors?.gap),
    left: digits(gap.factors?.left),
    shear_yield_MPa: digits(gap.strength?.shearYield),
    plastic_strain: digits(gap.strength?.plasticStrain),
    peel_strength_MPa: digits(gap.strength?.peelStrength),
    gap_outside_table: gap.factors === null ? '' : yesNo(gap.outsideTable),
    gap_of: gap.of.join('; '),
    joints: there.map(({ name }) => name).join('; '),
    cases: there.map((use) => `${use.name}: ${useText(use)}`).join(' | '),
  };
}

const otherCells = (adhesive: AdhesiveLedger): readonly Cells[] =>
  ledgerOthers(adhesive).map((other) => ({
    what: other.what,
    value: other.value,
    rests_on: sourceWords(other),
    basis: other.source?.kind ?? '',
    source: other.source?.text ?? '',
  }));

export function ledgerCsv({ adhesives }: Pick<LedgerReport, 'adhesives'>): string {
  const rows = adhesives.flatMap((adhesive) => {
    const strengths = adhesive.environments.flatMap((environment) => {
      const common = environmentCells(environment);
      return environment.gaps.map((gap) => ({ ...common, ...gapCells(gap, environment) }));
    });
    return [...strengths, ...otherCells(adhesive)].map(
      (cells): Cells => ({
        adhesive: adhesive.id,
        adhesive_name: adhesive.name,
        ...cells,
      }),
    );
  });
  return writeCsv([columns, ...rows.map((row) => columns.map((name) => row[name] ?? null))]);
}
