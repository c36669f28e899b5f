/** What is said of a column of results on asking. */
import { type FieldHelp, helpOfChoice, helpOfNumber } from '../../shared/field-help.ts';
import type { QuantityName } from '../../shared/quantities.ts';

const quantityOf: Readonly<Record<string, QuantityName>> = {
  load_n: 'failureLoad',
  peak_n: 'failureLoad',
  gap_mm: 'gap',
  overlap_mm: 'overlap',
  width_mm: 'width',
  cycles: 'cycles',
  cohesive_pct: 'percent',
  thin_layer_pct: 'percent',
  adhesion_pct: 'percent',
  adherend_pct: 'percent',
};

const words: Readonly<Record<string, 'couponNumber' | 'batch' | 'apart' | 'runOut'>> = {
  coupon: 'couponNumber',
  batch: 'batch',
  apart: 'apart',
  run_out: 'runOut',
};

export function helpOfColumn(column: string): FieldHelp {
  const quantity = quantityOf[column];
  return quantity ? helpOfNumber(quantity) : helpOfChoice(words[column] ?? 'note');
}
