/**
 * How much was tested, against the usual classes of data: MIL-HDBK-17-1F Vol. 1, chapter 2 (sampling of
 * lamina and laminate properties), from memory. A computed basis value is no published allowable because of it.
 */

export interface SamplingClass {
  readonly name: 'A75' | 'A55' | 'B30' | 'B18';
  readonly batches: number;
  readonly results: number;
}

export interface SamplingMet extends SamplingClass {
  readonly met: boolean;
  readonly batchesShort: number;
  readonly resultsShort: number;
}

export const SAMPLING_CLASSES: readonly SamplingClass[] = [
  { name: 'A75', batches: 10, results: 75 },
  { name: 'A55', batches: 5, results: 55 },
  { name: 'B30', batches: 5, results: 30 },
  { name: 'B18', batches: 3, results: 18 },
];

export const samplingOf = (batches: number, results: number): readonly SamplingMet[] =>
  SAMPLING_CLASSES.map((one) => {
    const batchesShort = Math.max(one.batches - batches, 0);
    const resultsShort = Math.max(one.results - results, 0);
    return { ...one, met: batchesShort + resultsShort === 0, batchesShort, resultsShort };
  });
