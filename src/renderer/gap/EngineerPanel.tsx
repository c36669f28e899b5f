/** What the engineer sets for a joint at the bench: limits with the ranges found, holding, waste, steps. */

import { createSignal, For, Index, type JSX, Show } from 'solid-js';
import { usualChecklist } from '../../shared/bench-words.ts';
import { plainOf, plainText } from '../../shared/measures.ts';
import { measuringPlan, usualWaste } from '../../shared/measuring-plan.ts';
import type { Bench, Joint } from '../../shared/project.ts';
import type { QuantityName } from '../../shared/quantities.ts';
import type { GapRange } from '../../shared/reports-gap.ts';
import { sentence } from '../../shared/words.ts';
import { JobProgress } from '../parts/JobProgress.tsx';
import { LooseNumber, readLoose } from '../parts/LooseNumber.tsx';
import { Choice } from '../size/Choice.tsx';
import { createAct } from '../state/act.ts';
import { createFound, type FoundSource } from '../state/found.ts';
import { BondLimits } from './BondLimits.tsx';
import { Checklist } from './Checklist.tsx';
import { Instruments } from './Instruments.tsx';
import { PlaceList } from './PlaceList.tsx';
import { RangeChart } from './RangeChart.tsx';

export interface EngineerPanelProps {
  readonly source: FoundSource;
  readonly joint: Joint;
}

const rangeText = (range: GapRange | null): string =>
  range ? `${plainOf('small', range.from)} to ${plainText('small', range.to)}` : 'none';

export function EngineerPanel(props: EngineerPanelProps): JSX.Element {
  const found = createFound('joint.gap-limits', props.source);
  const { project, index } = props.source;
  const bench = (): Bench => props.joint.bench ?? {};
  const set = (change: Partial<Record<keyof Bench, unknown>>): void => {
    const next = Object.entries({ ...JSON.parse(JSON.stringify(bench())), ...change });
    // What is undefined is left out: a file has no place for it.
    const kept = Object.fromEntries(next.filter(([, value]) => value !== undefined));
    project.edit(['joints', index(), 'bench'], kept);
  };
  /** A field of its own text; what can be read is stored. */
  const field = (
    label: string,
    quantity: QuantityName,
    stored: () => number | undefined,
    placeholder: string,
    store: (value: number | undefined) => void,
  ): JSX.Element => {
    const act = createAct(project.history, () => ['joints', index(), 'bench']);
    const [typed, setTyped] = createSignal<string | null>(null);
    const text = (): string => typed() ?? (stored() === undefined ? '' : String(stored()));
    return (
      <LooseNumber
        label={label}
        quantity={quantity}
        text={text()}
        placeholder={placeholder}
        act={act}
        onText={(next) => {
          const read = readLoose(next, quantity);
          setTyped('wrong' in read ? next : next.trim() === '' ? '' : next);
          if ('value' in read) store(read.value);
        }}
      />
    );
  };
  /** Of the spacer that was there before. */
  const [lastSize, setLastSize] = createSignal(bench().spacer?.size ?? 0.1);
  const plan = () => measuringPlan(props.joint);
  const limitOf = (key: 'bond' | 'innerBond' | 'outerBond') => bench().limits?.[key];
  const setLimit = (key: 'bond' | 'innerBond' | 'outerBond', range: GapRange | undefined): void => {
    const { [key]: _old, ...others } = bench().limits ?? {};
    const limits = { ...others, ...(range ? { [key]: range } : {}) };
    set({ limits: Object.keys(limits).length > 0 ? limits : undefined });
  };

  return (
    <div class="gap-engineer">
      <div class="gap-engineer-fields">
        <span class="loose">
          Spacer{' '}
          <Choice
            name="Spacer"
            help="spacer"
            options={[
              { value: 'none', text: 'none' },
              { value: 'wire', text: 'wire' },
              { value: 'beads', text: 'beads' },
            ]}
            value={bench().spacer?.form ?? 'none'}
            onChoose={(form) =>
              set({
                spacer:
                  form === 'none' ? undefined : { form, size: bench().spacer?.size ?? lastSize() },
              })
            }
          />
        </span>
        <Show when={bench().spacer}>
          {(spacer) =>
            field(
              'of',
              'spacerSize',
              () => spacer().size,
              'size',
              (size) => {
                if (size === undefined) return;
                setLastSize(size);
                set({ spacer: { form: spacer().form, size } });
              },
            )
          }
        </Show>
        {field(
          'Jig lets the tube off centre by',
          'offset',
          () => bench().jigOffset,
          'no jig',
          (jigOffset) => set({ jigOffset }),
        )}
        {field(
          'Waste factor',
          'wasteFactor',
          () => bench().waste,
          String(usualWaste),
          (waste) => set({ waste }),
        )}
      </div>
      <Index each={plan()?.bonds ?? []}>
        {(bond) => (
          <BondLimits
            bond={bond()}
            stored={limitOf(bond().key)}
            onLimits={(range) => setLimit(bond().key, range)}
          />
        )}
      </Index>
      <div class="gap-engineer-fields">
        <button
          type="button"
          class="plain"
          disabled={found.job.running()}
          onClick={() => void found.ask({})}
        >
          Find the range of gaps
        </button>
        <JobProgress job={found.job} label="Range of gaps" />
        <Show when={found.refusal()}>
          {(error) => <p class="refused">{sentence(error().message)}</p>}
        </Show>
      </div>
      <Show when={found.answer()}>
        {(report) => (
          <For each={report().bonds}>
            {(range) => (
              <section class="gap-range" aria-label={`Range of the ${range.bond}`}>
                <RangeChart range={range} target={report().targetMargin} />
                <div>
                  <p>
                    By the model: <b>{rangeText(range.model)}</b>. By coupons:{' '}
                    <b>{rangeText(range.coupons)}</b>
                    {range.coupons ? ` (${range.coupons.source.kind})` : ''}. The narrower:{' '}
                    <b>{rangeText(range.narrower)}</b>.
                    <Show when={found.old()}> Found before the last change.</Show>
                  </p>
                  <For each={range.flags}>{({ message }) => <p class="units">{message}</p>}</For>
                  <Show when={range.narrower}>
                    {(narrower) => (
                      <button
                        type="button"
                        class="plain"
                        onClick={() =>
                          setLimit(plan()!.bonds.find(({ bond }) => bond === range.bond)!.key, {
                            ...narrower(),
                          })
                        }
                      >
                        Take the narrower as the limits
                      </button>
                    )}
                  </Show>
                </div>
              </section>
            )}
          </For>
        )}
      </Show>
      <div class="gap-engineer-fields">
        <PlaceList
          label="Stations, mm from the mouth"
          list={plan()?.stations ?? []}
          most={props.joint.overlap}
          onList={(stations) => set({ stations })}
        />
        <PlaceList
          label="Clockings, °"
          list={plan()?.clockings ?? []}
          most={179.999}
          onList={(clockings) => set({ clockings })}
        />
      </div>
      <p class="units">
        Density, mix, open time and cure of the adhesive stand with it on the Size page, under “Mix
        and cure”.
      </p>
      <Instruments project={project} />
      <Checklist
        steps={bench().checklist ?? usualChecklist}
        onSteps={(checklist) => set({ checklist })}
      />
    </div>
  );
}
