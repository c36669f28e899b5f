/** The worst of a joint under one load case: press it to see that very state. */
import { type JSX, Show } from 'solid-js';
import type { CornerMargin } from '../../../shared/reports.ts';
import { clocking, gapWords, placeText, signed, stateWords } from '../../../shared/words.ts';
import { Mark } from '../../parts/Mark.tsx';

export interface CornerCellProps {
  readonly corner: CornerMargin;
  readonly jointName: string;
  readonly flat: boolean;
  /** True for the lowest of its joint. */
  readonly governs: boolean;
  readonly inTabOrder: boolean;
  readonly onOpen: () => void;
  readonly onFocus: () => void;
}

/** Where and in which state, in words. */
const stateText = (corner: CornerMargin, flat: boolean): string =>
  [
    flat ? placeText(corner) : `${placeText(corner)}, ${clocking(corner.theta)}`,
    gapWords[corner.gapState],
    ...(corner.conditionName === null ? [] : [`at ${corner.conditionName}`]),
  ].join(', ');

/** What is seen is part of what is read out, in the same order; the rest stands around it unseen. */
export function CornerCell(props: CornerCellProps): JSX.Element {
  const where = (): string => stateText(props.corner, props.flat);
  return (
    <button
      type="button"
      class={`corner is-${props.corner.state}`}
      classList={{ 'does-govern': props.governs }}
      title={`${props.corner.label}, ${where()}\nDraw this state`}
      tabindex={props.inTabOrder ? 0 : -1}
      onFocus={() => props.onFocus()}
      onClick={() => props.onOpen()}
    >
      <Mark state={props.corner.state} />
      <span class="hidden">
        {props.jointName}, {props.corner.caseName}: {stateWords[props.corner.state]}{' '}
      </span>
      <span class="value">{signed(props.corner.margin)}</span>{' '}
      <span class="corner-mode">
        {props.corner.label.replace(/^adhesive, /, '')}
        <Show when={props.corner.conditionName}>{(name) => `, at ${name()}`}</Show>
      </span>
      <span class="hidden">
        , {where()}
        {props.governs ? ', governs the joint' : ''}
      </span>
    </button>
  );
}
