/** Between which gaps a bond may be made, as the engineer sets it: both ends, or neither. */
import { createEffect, createSignal, type JSX, on, Show } from 'solid-js';
import { plainOf, plainText } from '../../shared/measures.ts';
import type { BondToMeasure } from '../../shared/measuring-plan.ts';
import type { GapRange } from '../../shared/reports-gap.ts';
import { LooseNumber, readLoose } from '../parts/LooseNumber.tsx';

export interface BondLimitsProps {
  readonly bond: BondToMeasure;
  readonly stored: GapRange | undefined;
  /** Undefined leaves the range to the coupons. */
  readonly onLimits: (range: GapRange | undefined) => void;
}

type End = 'from' | 'to';

export function BondLimits(props: BondLimitsProps): JSX.Element {
  const [typed, setTyped] = createSignal<Partial<Record<End, string>>>({});
  const textOf = (end: End): string => typed()[end] ?? String(props.stored?.[end] ?? '');
  const read = (end: End) => readLoose(textOf(end), 'gap');
  const numberOf = (end: End): number | undefined => {
    const found = read(end);
    return 'value' in found ? found.value : undefined;
  };
  // Limits that come from elsewhere, such as the range that was found, take the place of what was typed.
  createEffect(
    on(
      () => props.stored,
      (stored) => {
        if (stored && (stored.from !== numberOf('from') || stored.to !== numberOf('to'))) {
          setTyped({});
        }
      },
      { defer: true },
    ),
  );
  const wrong = (): string | null => {
    if ('wrong' in read('from') || 'wrong' in read('to')) return null;
    const [from, to] = [numberOf('from'), numberOf('to')];
    if (from === undefined && to === undefined) return null;
    if (from === undefined || to === undefined) return 'Give both ends: not stored yet.';
    return from < to
      ? null
      : `${plainOf('small', from)} to ${plainText('small', to)} do not rise: not stored.`;
  };
  const enter = (end: End, text: string): void => {
    setTyped({ ...typed(), [end]: text });
    if (wrong() !== null || 'wrong' in read('from') || 'wrong' in read('to')) return;
    const [from, to] = [numberOf('from'), numberOf('to')];
    props.onLimits(from === undefined || to === undefined ? undefined : { from, to });
  };
  const field = (end: End): JSX.Element => (
    <LooseNumber
      label={end}
      quantity="gap"
      text={textOf(end)}
      placeholder="coupons"
      onText={(text) => enter(end, text)}
    />
  );
  return (
    <div class="gap-engineer-fields">
      <b>Limits of the {props.bond.bond}</b>
      {field('from')}
      {field('to')}
      <Show when={wrong()}>
        {(message) => (
          <span class="refused" role="alert">
            {message()}
          </span>
        )}
      </Show>
    </div>
  );
}
