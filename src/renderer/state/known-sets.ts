/** What is known of each set of a list, and whether it is of the set as it stands. */
import { type Accessor, createMemo, createSignal } from 'solid-js';
import type { RequestError } from '../../shared/reply.ts';
import type { SetKeys } from './coupon-sets.ts';

interface Known<Report> {
  readonly key: string;
  readonly report: Report | null;
  readonly refusal: RequestError | null;
}

export interface SetReports<Report> {
  /** What is known of a set; also while it is being worked out anew: see `old`. */
  report(id: string): Report | null;
  /** True where what is known is of the set before its last change. */
  old(id: string): boolean;
  refusal(id: string): RequestError | null;
}

export interface KnownSets<Report> extends SetReports<Report> {
  /** True where the set has not changed since. */
  isNew(id: string): boolean;
  /** Ids of sets to be asked for, in their order. */
  readonly stale: Accessor<readonly string[]>;
  /** @param about keys at the time of the question */
  answer(about: SetKeys, reports: readonly Report[]): void;
  /** What is known of these sets stays, and is refused. */
  refuse(about: SetKeys, ids: readonly string[], refusal: RequestError): void;
  clear(): void;
}

export function createKnownSets<Report extends { readonly setId: string }>(
  sets: Accessor<readonly { readonly id: string }[]>,
  keys: Accessor<SetKeys>,
): KnownSets<Report> {
  const [known, setKnown] = createSignal<ReadonlyMap<string, Known<Report>>>(new Map());
  const isNew = (id: string): boolean => known().get(id)?.key === keys().get(id);
  const put = (entries: readonly (readonly [string, Known<Report>])[]): void =>
    void setKnown((all) => new Map([...all, ...entries]));
  return {
    report: (id) => known().get(id)?.report ?? null,
    old: (id) => known().has(id) && !isNew(id),
    refusal: (id) => (isNew(id) ? (known().get(id)?.refusal ?? null) : null),
    isNew,
    stale: createMemo(() => sets().flatMap(({ id }) => (isNew(id) ? [] : [id]))),
    answer(about, reports) {
      put(
        reports.map((report) => [
          report.setId,
          { key: about.get(report.setId)!, report, refusal: null },
        ]),
      );
    },
    refuse(about, ids, refusal) {
      put(
        ids.map((id) => [
          id,
          { key: about.get(id)!, report: known().get(id)?.report ?? null, refusal },
        ]),
      );
    },
    clear: () => void setKnown(new Map()),
  };
}
