/** Says the new lowest margin once the figures have come to rest; a drag is not read out frame by frame. */
import { createEffect, createSignal, type JSX, onCleanup } from 'solid-js';
import type { JointReport } from '../../shared/reports.ts';
import { signed, stateWords } from '../../shared/words.ts';
import { peelSpoken } from '../charts/peel-data.ts';
import { makeSettle } from '../settle.ts';

export function Spoken(props: {
  readonly report: JointReport | null;
  readonly stale: boolean;
}): JSX.Element {
  const [words, setWords] = createSignal('');
  const text = (): string => {
    if (props.stale) return 'Not recalculated.';
    const lowest = props.report?.margins[0];
    if (!lowest) return '';
    const stress = props.report?.stress;
    const peel = stress ? ` ${peelSpoken(stress)}` : '';
    return `Lowest margin ${signed(lowest.margin)}, ${stateWords[lowest.state]}: ${lowest.label}.${peel}`;
  };
  let next = '';
  const settle = makeSettle(() => setWords(next), 800);
  onCleanup(() => settle.drop());
  createEffect(() => {
    next = text();
    settle.ask();
  });
  return (
    <p class="hidden" role="status">
      {words()}
    </p>
  );
}
