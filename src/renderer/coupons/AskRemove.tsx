/** Before a set goes away with what was measured of it. */
import type { JSX } from 'solid-js';
import { AskFirst } from '../parts/AskFirst.tsx';
import { some } from './coupon-format.ts';

export interface AskRemoveProps {
  /** Of static results or of lives. */
  readonly set: { readonly name: string; readonly results: readonly unknown[] };
  readonly onRemove: () => void;
  readonly onKeep: () => void;
}

export function AskRemove(props: AskRemoveProps): JSX.Element {
  const results = (): string => some(props.set.results.length, 'result');
  return (
    <AskFirst
      title={`${props.set.name} has results.`}
      text={`They go with it: ${results()}, measured and typed.`}
      keep="Keep the set"
      remove={`Remove it with ${results()}`}
      onKeep={props.onKeep}
      onRemove={props.onRemove}
    />
  );
}
