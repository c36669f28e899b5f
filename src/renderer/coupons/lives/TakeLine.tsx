/** The adhesive's S-N line: what stands there, and the bound of the coupons in its place. Taken by a person, never by itself. */
import { createSignal, For, type JSX, Show } from 'solid-js';
import { cyclesText, lineText, ratioText } from '../../../shared/life-words.ts';
import type { LifeSetReport } from '../../../shared/reports-coupons.ts';
import {
  casesBeyond,
  notTaken,
  reachText,
  type SnLine,
  shareOfText,
  snLineOf,
  standingOf,
} from '../../../shared/sn-line.ts';
import { sentence } from '../../../shared/words.ts';
import type { ProjectState } from '../../state/project.ts';

export interface TakeLineProps {
  readonly project: ProjectState;
  readonly report: LifeSetReport;
  /** True while the report is of the coupons before their last change. */
  readonly old: boolean;
  readonly tested: string | undefined;
  /** True of small single laps, which peel as well. */
  readonly small: boolean;
}

const kindWords = {
  tested: 'tested',
  published: 'published',
  typical: 'typical, no test of this adhesive',
  memory: 'from memory',
} as const;

const withRatio = (line: SnLine): string =>
  `${lineText(line)}, load ratio ${line.ratio === undefined ? 'not known' : ratioText(line.ratio)}`;

export function TakeLine(props: TakeLineProps): JSX.Element {
  /** What stood there before, by adhesive, while the page is open. */
  const [before, setBefore] = createSignal<{
    readonly adhesive: string;
    readonly line: SnLine | undefined;
  } | null>(null);
  let section!: HTMLElement;
  const index = (): number =>
    props.project.document()?.adhesives.findIndex(({ id }) => id === props.report.adhesive.id) ??
    -1;
  const now = (): SnLine | undefined => props.project.document()?.adhesives[index()]?.fatigue;
  const standing = () => standingOf(now(), props.report);
  const put = (line: SnLine | undefined): void => {
    if (index() < 0) return;
    const copy = line && { ...line, source: { ...line.source } };
    props.project.edit(['adhesives', index(), 'fatigue'], copy);
    // The button that had the focus is gone.
    section.focus();
  };
  const take = (): void => {
    const line = snLineOf(props.report, {
      tested: props.tested,
      taken: new Date().toISOString().slice(0, 10),
    });
    if (!line) return;
    const old = now();
    setBefore({
      adhesive: props.report.adhesive.id,
      line: old && { ...old, source: { ...old.source } },
    });
    put(line);
  };
  const kept = () => {
    const one = before();
    return one?.adhesive === props.report.adhesive.id && standing() !== 'other' ? one : null;
  };
  /** Why nothing can be taken; empty where the bound can. */
  const why = (): string => notTaken(props.report);
  const bound = () => (why() === '' ? (props.report.fit?.bound ?? null) : null);
  const beyond = () => {
    const [document, line] = [props.project.document(), bound()];
    return document && line
      ? casesBeyond(document, props.report.adhesive.id, line, props.report.fit!)
      : [];
  };

  return (
    <section
      class="coupon-block life-take"
      aria-label="S-N line of the adhesive"
      ref={section}
      tabindex="-1"
    >
      <h2>S-N line of {props.report.adhesive.name}</h2>
      <p>
        <Show
          when={now()}
          fallback="None stands there: joints with this adhesive are not checked for cyclic shear."
        >
          {(line) => (
            <>
              Stands there now: <b>{withRatio(line())}</b>. Source, {kindWords[line().source.kind]}:{' '}
              {sentence(line().source.text === '' ? 'not told' : line().source.text)}
            </>
          )}
        </Show>
      </p>
      <p role="status">
        <Show when={!props.old && standing() === 'same'}>
          <b>This line is taken from these coupons as they are.</b>
        </Show>
        <Show when={!props.old && standing() === 'changed'}>
          <b>
            The coupons, or what their shares are worked out from, have changed since it was taken
            {bound() ? ': take it again.' : '.'}
          </b>
        </Show>
      </p>
      <Show
        when={bound()}
        fallback={<p class="about">Nothing can be taken from this set. {sentence(why())}</p>}
      >
        {(line) => (
          <>
            <Show when={standing() !== 'same'}>
              <p>
                From these coupons:{' '}
                <b>
                  {lineText(line())}, load ratio {ratioText(props.report.ratio)}
                </b>
                , below the 90 % bound.{' '}
                <button type="button" class="plain" disabled={props.old} onClick={take}>
                  Take the bound as the adhesive’s S-N line
                </button>
              </p>
            </Show>
            <p class="units">{shareOfText(props.report)}</p>
            <p class="units">{reachText(line(), props.report.fit!)}</p>
            <For each={beyond()}>
              {({ name, cycles }) => (
                <p class="units">
                  {name} asks for {cyclesText(cycles)} cycles: outside of what was tested.
                </p>
              )}
            </For>
            <Show when={props.small}>
              <p class="units">
                Small single laps bend and peel: their lives say least about a joint (ASTM D4896).
              </p>
            </Show>
          </>
        )}
      </Show>
      <Show when={kept()}>
        {(one) => (
          <p>
            Before it {one().line ? `stood ${withRatio(one().line!)}` : 'there was none'}.{' '}
            <button
              type="button"
              class="plain"
              onClick={() => {
                const { line } = one();
                setBefore(null);
                put(line);
              }}
            >
              Put that back
            </button>
          </p>
        )}
      </Show>
    </section>
  );
}
