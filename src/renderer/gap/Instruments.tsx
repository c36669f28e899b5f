/** What diameters are read with at this bench: name, largest error, scatter of one reading. */

import { createSignal, For, type JSX } from 'solid-js';
import { helpOfChoice } from '../../shared/field-help.ts';
import { usualInstrument } from '../../shared/measuring-plan.ts';
import type { Instrument } from '../../shared/project.ts';
import type { QuantityName } from '../../shared/quantities.ts';
import { tellHelp } from '../help/known-fields.ts';
import { LooseNumber, readLoose } from '../parts/LooseNumber.tsx';
import { RemoveButton } from '../parts/RemoveButton.tsx';
import { createAct } from '../state/act.ts';
import type { ProjectState } from '../state/project.ts';

export function Instruments(props: { readonly project: ProjectState }): JSX.Element {
  const list = (): readonly Instrument[] => props.project.document()?.instruments ?? [];
  const set = (next: readonly Instrument[]): void =>
    props.project.edit(['instruments'], next.length > 0 ? next : undefined);
  const change = (i: number, part: Partial<Instrument>): void =>
    set(list().map((one, k) => (k === i ? { ...one, ...part } : { ...one })));
  const add = (): void => {
    let n = list().length + 1;
    while (list().some(({ id }) => id === `instrument-${n}`)) n += 1;
    set([
      ...list().map((one) => ({ ...one })),
      { ...usualInstrument, id: `instrument-${n}`, name: `Instrument ${n}` },
    ]);
  };
  const number = (
    i: number,
    label: string,
    quantity: QuantityName,
    key: 'error' | 'repeatability',
  ): JSX.Element => {
    const act = createAct(props.project.history, () => ['instruments']);
    const [typed, setTyped] = createSignal<string | null>(null);
    return (
      <LooseNumber
        label={label}
        quantity={quantity}
        text={typed() ?? String(list()[i]?.[key] ?? '')}
        placeholder=""
        act={act}
        onText={(text) => {
          const read = readLoose(text, quantity);
          setTyped(text);
          if ('value' in read && read.value !== undefined) change(i, { [key]: read.value });
        }}
      />
    );
  };
  return (
    <section aria-label="Instruments">
      <b>Instruments</b>
      {/* By id: a row keeps its focus while its figures change. */}
      <For each={list().map(({ id }) => id)}>
        {(id, i) => (
          <div class="gap-engineer-fields">
            <input
              ref={(field) => tellHelp(field, () => helpOfChoice('instrument'))}
              class="words"
              type="text"
              maxlength={120}
              aria-label={`Name of instrument ${i() + 1}`}
              value={list().find((one) => one.id === id)?.name ?? ''}
              onChange={(event) => {
                const name = event.currentTarget.value.trim();
                if (name !== '') change(i(), { name });
              }}
            />
            {number(i(), '±', 'instrumentError', 'error')}
            {number(i(), 'scatter of a reading', 'repeatability', 'repeatability')}
            <RemoveButton
              label={`Remove instrument ${i() + 1}`}
              title="Remove"
              onRemove={() => set(list().filter((one) => one.id !== id))}
            />
          </div>
        )}
      </For>
      <button type="button" class="plain" onClick={add}>
        Add an instrument
      </button>
    </section>
  );
}
