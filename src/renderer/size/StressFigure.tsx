/** Shear and peel along the bond: what is drawn, both curves on one axis, and their figures. */

import { type Accessor, createMemo, createSignal, type JSX, Show } from 'solid-js';
import { isFlat } from '../../shared/convert-lap.ts';
import { symbolOf } from '../../shared/measures.ts';
import type { Joint, Project } from '../../shared/project.ts';
import type { JointReport } from '../../shared/reports.ts';
import { caseText, figure, sentence } from '../../shared/words.ts';
import type { Ink } from '../charts/ink.ts';
import { fieldOf, mapTable } from '../charts/map-data.ts';
import { peelPlot, peelSentence } from '../charts/peel-data.ts';
import { shearPlot, shearSentence } from '../charts/shear-data.ts';
import { stressTable } from '../charts/stress-table.ts';
import { Mark } from '../parts/Mark.tsx';
import { askedFactor, type Choice as Drawn } from '../state/drawn-state.ts';
import type { MapState } from '../state/stress-map.ts';
import type { Subject } from '../state/working.ts';
import { Around } from './Around.tsx';
import { BondFigure } from './BondFigure.tsx';
import { Choice } from './Choice.tsx';
import { DrawnState } from './DrawnState.tsx';
import { Figures } from './Figures.tsx';
import type { OpenWorking } from './Reading.tsx';
import { StressNotes } from './StressNotes.tsx';
import { StressReadings } from './StressReadings.tsx';
import type { View } from './section/scale.ts';
import { TakeStress } from './TakeStress.tsx';

export interface StressFigureProps {
  readonly report: JointReport | null;
  readonly project: Project;
  readonly joint: Joint;
  readonly view: View | null;
  readonly ink: Accessor<Ink | null>;
  readonly choice: Drawn;
  readonly onChoice: (choice: Drawn) => void;
  readonly map: MapState;
  readonly explained: Subject | null;
  readonly onWorking: OpenWorking;
}

export function StressFigure(props: StressFigureProps): JSX.Element {
  const stress = () => props.report?.stress ?? null;
  const [layered, setLayered] = createSignal(false);
  const [chosenPart, setPart] = createSignal('');
  const cases = createMemo(() =>
    props.project.loadCases.filter(({ id }) => props.joint.loads.some((load) => load.case === id)),
  );
  const drawnCase = () => cases().find(({ id }) => id === stress()?.caseId);
  const caseName = (): string => caseText(drawnCase()?.name ?? '', stress()?.conditionName ?? null);
  const flat = (): boolean => isFlat(props.joint);
  const around = (): boolean => props.map.shown() && !flat() && stress() !== null;
  const parts = (): string[] => stress()?.bonds.map(({ part }) => part) ?? [];
  /** The outer bond, or the only one, unless another was chosen. */
  const part = (): string =>
    parts().includes(chosenPart()) ? chosenPart() : (parts().at(-1) ?? 'bond');
  const unknown = (): boolean =>
    stress()?.bonds.some(({ layered }) => layered.strength === null) ?? false;

  const tables = createMemo(() => {
    const drawn = stress();
    if (!drawn) return null;
    const mapped = around() ? props.map.stress() : null;
    if (!mapped) {
      const caption = `Shear and peel along the bond, ${caseName()}`;
      return [{ caption, ...stressTable(drawn) }];
    }
    return (['shear', 'peel'] as const).flatMap((quantity) => {
      const field = fieldOf(mapped, part(), quantity);
      const caption = `Elastic ${quantity} around the ${part()}, ${symbolOf('stress')}, ${caseName()}`;
      return field ? [{ caption, ...mapTable(field) }] : [];
    });
  });
  const shear = createMemo(() => {
    const drawn = stress();
    return drawn ? shearPlot(drawn, layered()) : null;
  });
  const peel = createMemo(() => {
    const drawn = stress();
    return drawn ? peelPlot(drawn) : null;
  });
  const word = (): string => (around() ? 'around' : 'along');
  const take = (quantity: 'shear' | 'peel'): JSX.Element => (
    <TakeStress
      quantity={quantity}
      stress={stress()!}
      mapped={around() ? (props.map.stress() ?? stress()!) : null}
      part={part()}
      plot={quantity === 'shear' ? shear() : peel()}
      layered={layered()}
      caseName={caseName()}
    />
  );

  return (
    <section class="figure-block is-stress" aria-labelledby="shear-title">
      <header>
        <h2 id="shear-title">Shear {word()} the bond</h2>
        <span class="units">
          {around() ? `${symbolOf('stress')}, elastic, layered shells` : symbolOf('stress')}
        </span>
        <Show when={!around() && stress()}>
          {(drawn) => (
            <StressReadings
              stress={drawn()}
              quantity="shear"
              explained={props.explained}
              onWorking={props.onWorking}
            />
          )}
        </Show>
        <span class="figure-tools">
          <Show when={around() && parts().length > 1}>
            <Choice
              name="Bond drawn"
              help="drawnBond"
              class="bond-choice"
              options={parts().map((name) => ({ value: name, text: name }))}
              value={part()}
              onChoose={setPart}
            />
          </Show>
          <Show when={!flat() && stress()}>
            <button
              type="button"
              class="link"
              aria-pressed={props.map.shown()}
              onClick={() => props.map.show(!props.map.shown())}
            >
              Around the bond
            </button>
          </Show>
          <Show when={stress()}>{take('shear')}</Show>
          <Show when={tables()}>{(list) => <Figures tables={list()} />}</Show>
        </span>
      </header>
      <Show when={stress()} fallback={<div class="drawn" />}>
        {(drawn) => (
          <DrawnState
            project={props.project}
            cases={cases()}
            stress={drawn()}
            flat={flat()}
            choice={props.choice}
            asked={props.report ? askedFactor(props.report, props.project) : 1}
            onChoice={props.onChoice}
          />
        )}
      </Show>
      <div class="stress-words">
        {/* Its line is there without it: plots that jump under the hand cannot be read. */}
        <p class="not-carried">
          <Show when={stress()?.carried === false && stress()}>
            {(drawn) => (
              <>
                <Mark state="fails" /> the bond cannot carry this load: curve at the most it carries
                (× {figure(drawn().capacity)})
              </>
            )}
          </Show>
        </p>
        <Show when={around() && props.map.refused()}>
          {(why) => <p class="not-carried">The map cannot be drawn. {sentence(why())}</p>}
        </Show>
        <Show when={stress()}>
          {(drawn) => (
            <StressNotes
              stress={drawn()}
              layered={layered()}
              canLayer={!around()}
              onLayered={setLayered}
              explained={props.explained}
              onWorking={props.onWorking}
            />
          )}
        </Show>
      </div>
      <Show
        when={stress()}
        fallback={
          <div class="figure-body">
            <p class="figure-empty">
              {props.report ? 'No load acts: there is no stress to draw.' : 'Calculating …'}
            </p>
          </div>
        }
      >
        {(drawn) => (
          <>
            <Show
              when={around()}
              fallback={
                <BondFigure
                  plot={shear()}
                  view={props.view}
                  ink={props.ink}
                  foot={false}
                  label={shearSentence(drawn(), caseName())}
                />
              }
            >
              <Around
                stress={props.map.stress() ?? drawn()}
                part={part()}
                quantity="shear"
                view={props.view}
                ink={props.ink}
                foot={false}
              />
            </Show>
            <header class="is-second">
              <h2>Peel {word()} the bond</h2>
              <span class="units">
                {symbolOf('stress')}
                {around() ? ', elastic, layered shells, opening +' : ', opening +'}
              </span>
              <Show when={!around()}>
                <StressReadings
                  stress={drawn()}
                  quantity="peel"
                  explained={props.explained}
                  onWorking={props.onWorking}
                />
              </Show>
              <Show when={unknown()}>
                <span class="unknown-strength">no peel strength given</span>
              </Show>
              <span class="figure-tools">{take('peel')}</span>
            </header>
            <Show
              when={around()}
              fallback={
                <BondFigure
                  plot={peel()}
                  view={props.view}
                  ink={props.ink}
                  foot
                  label={peelSentence(drawn(), caseName())}
                />
              }
            >
              <Around
                stress={props.map.stress() ?? drawn()}
                part={part()}
                quantity="peel"
                view={props.view}
                ink={props.ink}
                foot
              />
            </Show>
          </>
        )}
      </Show>
    </section>
  );
}
