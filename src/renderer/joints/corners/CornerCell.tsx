/** The worst of a joint under one load case: press it to see that very state. */
import { type JSX, Show } from 'solid-js';
import type { CornerMargin } from '../../../shared/reports.ts';
import {
  caseText,
  clocking,
  gapWords,
  placeText,
  signed,
  stateWords,
} from '../../../shared/words.ts';
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
export const stateOfCorner = (corner: CornerMargin, flat: boolean): string =>
  [
    corner.label,
    flat ? placeText(corner) : `${placeText(corner)}, ${clocking(corner.theta)}`,
    gapWords[corner.gapState],
    ...(corner.conditionName === null ? [] : [`at ${corner.conditionName}`]),
  ].join(' · ');

export function CornerCell(props: CornerCellProps): JSX.Element {
  const spoken = (): string => {
    const { caseName, conditionName, state, margin } = props.corner;
    const figure = `${stateWords[state]} ${signed(margin)}`;
    const governs = props.governs ? ', governs the joint' : '';
    return `${props.jointName}, ${caseText(caseName, conditionName)}: ${figure}, ${stateOfCorner(props.corner, props.flat)}${governs}`;
  };
  return (
    <button
      type="button"
      class={`corner is-${props.corner.state}`}
      classList={{ 'does-govern': props.governs }}
      aria-label={spoken()}
      title={`${stateOfCorner(props.corner, props.flat)}\nDraw this state`}
      tabindex={props.inTabOrder ? 0 : -1}
      onFocus={() => props.onFocus()}
      onClick={() => props.onOpen()}
    >
      <Mark state={props.corner.state} />
      <span class="value">{signed(props.corner.margin)}</span>
      <span class="corner-mode">
        {props.corner.label.replace(/^adhesive, /, '')}
        <Show when={props.corner.conditionName}>{(name) => `, at ${name()}`}</Show>
      </span>
    </button>
  );
}
