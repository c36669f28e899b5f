/** Plan: the test matrix, the sets that came of it, the sheet for the machine. */

import { createSignal, type JSX, Show } from 'solid-js';
import type { Project } from '../../shared/project.ts';
import type { CouponSet } from '../../shared/project-coupons.ts';
import { TakeOut } from '../parts/TakeOut.tsx';
import { type PlannedSet, setsSheet } from '../sheets/coupon-sheets.ts';
import { Disclosure } from '../size/Disclosure.tsx';
import type { CouponEdits } from '../state/coupon-edits.ts';
import type { CouponsState } from '../state/coupons.ts';
import type { ProjectState } from '../state/project.ts';
import { AddSet } from './AddSet.tsx';
import { AskRemove } from './AskRemove.tsx';
import { plannedNumber } from './coupon-format.ts';
import { MatrixForm } from './MatrixForm.tsx';
import { PieceList } from './pieces/PieceList.tsx';
import { SetTable } from './SetTable.tsx';
import { TestSheet } from './TestSheet.tsx';

export interface PlanViewProps {
  readonly source: ProjectState;
  readonly project: Project;
  readonly state: CouponsState;
  readonly edits: CouponEdits;
}

export function PlanView(props: PlanViewProps): JSX.Element {
  const [asked, setAsked] = createSignal<CouponSet | null>(null);
  let plan!: HTMLDivElement;
  const remove = (id: string): void => {
    props.edits.remove(id);
    // The row that had the focus is gone with its button.
    plan.closest<HTMLElement>('.coupon-page')?.focus();
  };
  const planned = (): PlannedSet[] =>
    props.state.sets().map((set) => ({
      name: set.name,
      temperature: set.temperature,
      moisture: set.moisture,
      gap: set.gap,
      planned: plannedNumber(set),
      results: set.results.length,
      report: props.state.report(set.id),
    }));
  const matrix = (): JSX.Element => (
    <MatrixForm project={props.project} onMake={(planned) => props.edits.take(planned)} />
  );
  return (
    <section data-pane aria-label="Plan" class="coupon-plan" ref={plan}>
      <Show
        when={props.state.sets().length > 0}
        fallback={
          <div class="coupon-start">
            <h2>What do the strengths rest on?</h2>
            <p>
              Choose test pieces, where they are tested, at which gaps and how many. Each cell of
              the matrix becomes a set: with its bonded area, the load to expect, and what the grips
              must hold.
            </p>
            {matrix()}
          </div>
        }
      >
        <p class="take-row">
          <TakeOut what="Sets of coupons" sheet={() => setsSheet(planned())} />
        </p>
        <SetTable
          state={props.state}
          onRename={props.edits.rename}
          onOpen={(set) => {
            props.state.choose(set.id);
            props.state.show('results');
          }}
          onRemove={(set) => {
            if (set.results.length === 0) remove(set.id);
            else setAsked(set);
          }}
        />
        <div class="coupon-tools">
          <button type="button" class="plain" onClick={() => window.print()}>
            Print test sheet
          </button>
          <p class="units">
            Expected loads by mean properties, without knockdowns and factors: to choose machine and
            grips, not to design to.
          </p>
        </div>
        <div class="coupon-more">
          <Disclosure title="One more set">
            <AddSet
              project={props.project}
              specimens={props.state.specimens()}
              like={props.state.sets().at(-1)}
              edits={props.edits}
            />
          </Disclosure>
          <Disclosure title="Sets by the matrix">{matrix()}</Disclosure>
        </div>
        <TestSheet project={props.project} state={props.state} />
      </Show>
      <PieceList source={props.source} project={props.project} state={props.state} />
      <Show when={asked()}>
        {(set) => (
          <AskRemove
            set={set()}
            onKeep={() => setAsked(null)}
            onRemove={() => {
              const { id } = set();
              setAsked(null);
              remove(id);
            }}
          />
        )}
      </Show>
    </section>
  );
}
