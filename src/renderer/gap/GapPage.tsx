/** Gap check: may this tube and this sleeve be bonded? For the technician at the bench. */
import { createMemo, createSignal, For, type JSX, Show } from 'solid-js';
import { glossary } from '../../shared/bench-words.ts';
import { checksCsv, readingsCsv } from '../../shared/gap-records.ts';
import { findMistakes } from '../../shared/measured-mistakes.ts';
import { readMeasuredCsv } from '../../shared/measured-text.ts';
import { instrumentsOf, measuringPlan } from '../../shared/measuring-plan.ts';
import type { Joint, Project } from '../../shared/project.ts';
import { changedSince } from '../../shared/recorded-check.ts';
import { sentence } from '../../shared/words.ts';
import { download } from '../files.ts';
import { Disclosure } from '../size/Disclosure.tsx';
import type { FoundSource } from '../state/found.ts';
import type { GapCheckState } from '../state/gap-check.ts';
import type { KeptChecks } from '../state/kept-checks.ts';
import { BenchCard } from './BenchCard.tsx';
import { BenchPanel } from './BenchPanel.tsx';
import { EngineerPanel } from './EngineerPanel.tsx';
import { GapFigures, RecordedFigures } from './GapFigures.tsx';
import { clock, GapHead, titleOf } from './GapHead.tsx';
import { ReadCsvButton } from './ReadCsvButton.tsx';
import { ReadingGrid } from './ReadingGrid.tsx';
import { VerdictView } from './VerdictView.tsx';

export interface GapPageProps {
  readonly state: GapCheckState;
  readonly kept: KeptChecks;
  readonly source: FoundSource;
  readonly project: Project;
  readonly joint: Joint;
  readonly onJoint: (id: string) => void;
}

export function GapPage(props: GapPageProps): JSX.Element {
  const check = () => props.state.current();
  const [places, setPlaces] = createSignal(false);
  const fixed = (): boolean => check()?.recorded !== undefined;
  const mistakes = createMemo(() =>
    fixed() ? [] : findMistakes(props.joint, check()?.surfaces ?? []),
  );
  const adhesive = () => props.project.adhesives.find(({ id }) => id === props.joint.adhesive);
  const canRecord = (): boolean => {
    const verdict = props.state.verdict();
    return !fixed() && verdict !== null && verdict.state !== 'unknown';
  };
  const flat = (): boolean => measuringPlan(props.joint) === null;
  const save = (name: string, text: string): void => download(name, text, 'text/csv');

  return (
    <div class="gap-page" tabindex="-1">
      <h1 class="hidden">Gap check {props.joint.name}</h1>
      <GapHead {...props} fixed={fixed()} flat={flat()} />
      <For each={props.kept.offered()}>
        {(kept) => (
          <div class="gap-offer" role="status">
            <p>
              Measured parts of{' '}
              {props.project.joints.find(({ id }) => id === kept.check.joint)?.name ??
                'a joint that is gone'}{' '}
              from {clock(kept.at)} ({titleOf(kept.check)}) are not in this file.
            </p>
            <button
              type="button"
              class="plain"
              onClick={() => {
                props.kept.takeIn(kept);
                props.onJoint(kept.check.joint);
                props.state.choose(kept.check.id);
              }}
            >
              Take them in
            </button>
            <button type="button" class="plain" onClick={() => props.kept.putAway(kept)}>
              Put away
            </button>
          </div>
        )}
      </For>
      <Show
        when={!flat()}
        fallback={
          <p class="gap-start">
            A flat joint has no diameters to measure: its gap is set by spacers and read with feeler
            gauges.
          </p>
        }
      >
        <Show
          when={check()}
          fallback={
            <section data-pane aria-label="Start of a check" class="gap-start">
              <h2>May this tube and this sleeve be bonded?</h2>
              <p>
                Measure both at every station and clocking. Stations count from the mouth of the
                sleeve; on the tube, from the line that stands at the mouth when it is home.
              </p>
              <button
                type="button"
                class="plain is-first"
                onClick={() => {
                  props.state.begin();
                  queueMicrotask(() =>
                    document.querySelector<HTMLInputElement>('input.reading')?.focus(),
                  );
                }}
              >
                Start measuring
              </button>
            </section>
          }
        >
          {(one) => (
            <div class="gap-body">
              <section
                data-pane
                aria-label="Readings"
                class="gap-readings"
                classList={{ 'is-double': one().surfaces.length > 2 }}
              >
                <For each={one().surfaces}>
                  {(surface, k) => (
                    <ReadingGrid
                      surface={surface}
                      memory={props.state.typed(surface.surface)}
                      instruments={instrumentsOf(props.project)}
                      mistakes={mistakes().filter((found) => found.surface === surface.surface)}
                      fixed={fixed()}
                      places={places() && !fixed()}
                      onRead={(i, j, value) => props.state.read(k(), [i, j], value)}
                      onConfirm={(i, j) => props.state.confirm(k(), [i, j])}
                      onStation={(i, x) => props.state.edit(['surfaces', k(), 'stations', i], x)}
                      onClocking={(j, angle) =>
                        props.state.edit(['surfaces', k(), 'clockings', j], angle)
                      }
                      onInstrument={({ name, error, repeatability }) =>
                        props.state.edit(['surfaces', k(), 'instrument'], {
                          name,
                          error,
                          repeatability,
                        })
                      }
                    />
                  )}
                </For>
                <div class="gap-tools">
                  <Show when={!fixed()}>
                    <button
                      type="button"
                      class="link"
                      aria-pressed={places()}
                      onClick={() => setPlaces(!places())}
                    >
                      {places()
                        ? 'Stations and clockings are right'
                        : 'Change stations and clockings'}
                    </button>
                    <ReadCsvButton
                      read={(text) =>
                        readMeasuredCsv(text, props.joint, instrumentsOf(props.project))
                      }
                      onRead={(surfaces) => props.state.takeIn(surfaces)}
                    />
                  </Show>
                  <button
                    type="button"
                    class="link"
                    onClick={() => save('gap-checks.csv', checksCsv(props.project))}
                  >
                    Checks as CSV
                  </button>
                  <button
                    type="button"
                    class="link"
                    onClick={() => save('gap-readings.csv', readingsCsv(props.project))}
                  >
                    Readings as CSV
                  </button>
                </div>
              </section>
              <section data-pane aria-label="Verdict and its figures" class="gap-answer">
                <VerdictView
                  result={one().result}
                  verdict={props.state.verdict()}
                  report={props.state.report()}
                  job={props.state.job}
                  changed={changedSince(one().result, props.joint)}
                />
                <Show when={!props.state.fits()}>
                  <p class="gap-reason" role="status">
                    The joint was changed since: other parts or places are to be measured.{' '}
                    <button type="button" class="plain" onClick={() => props.state.carryOver()}>
                      Go on with what still fits
                    </button>
                  </p>
                </Show>
                <Show when={!fixed() && props.state.refusal()}>
                  {(error) => (
                    <p class="refused" role="alert">
                      {sentence(error().message)}
                    </p>
                  )}
                </Show>
                <div class="gap-actions">
                  <Show
                    when={!fixed()}
                    fallback={
                      <button type="button" class="plain" onClick={() => props.state.begin(one())}>
                        Measure again
                      </button>
                    }
                  >
                    <button
                      type="button"
                      class="plain is-first"
                      disabled={!canRecord()}
                      onClick={() => props.state.record()}
                    >
                      Record this check
                    </button>
                  </Show>
                  <button type="button" class="plain" onClick={() => window.print()}>
                    Print card
                  </button>
                </div>
                <Show
                  when={props.state.report()}
                  fallback={
                    <Show when={one().result}>
                      {(result) => <RecordedFigures bonds={result().bonds} />}
                    </Show>
                  }
                >
                  {(report) => <GapFigures report={props.state.verdict()?.gap ?? report()} />}
                </Show>
                <BenchPanel
                  state={props.state}
                  check={one()}
                  joint={props.joint}
                  adhesive={adhesive()}
                  report={props.state.report()}
                />
                <For each={props.state.report()?.flags ?? []}>
                  {({ message }) => <p class="units">{message}</p>}
                </For>
                <Disclosure title="Words">
                  <dl class="gap-glossary">
                    <For each={glossary}>
                      {({ word, means }) => (
                        <>
                          <dt>{word}</dt>
                          <dd>{means}</dd>
                        </>
                      )}
                    </For>
                  </dl>
                </Disclosure>
              </section>
              <BenchCard
                project={props.project}
                joint={props.joint}
                check={one()}
                report={props.state.report()}
                verdict={props.state.verdict()}
              />
            </div>
          )}
        </Show>
        <section data-pane aria-label="Engineer" class="gap-foot">
          <Disclosure title="Set by the engineer">
            {/* What is typed for one joint is not of another. */}
            <Show when={props.joint.id} keyed>
              {(_id) => <EngineerPanel source={props.source} joint={props.joint} />}
            </Show>
          </Disclosure>
        </section>
      </Show>
    </div>
  );
}
