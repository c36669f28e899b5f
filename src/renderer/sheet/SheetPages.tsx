/** The pages as they come out of the printer: laid out anew whenever what stands on them has changed. */
import { createEffect, createSignal, For, type JSX, on, onCleanup, Show } from 'solid-js';
import { render } from 'solid-js/web';
import { cautionShort } from '../../shared/cautions.ts';
import { createFontsReady } from '../fonts.ts';
import { momentText } from '../parts/clock.ts';
import { makeSettle } from '../settle.ts';
import { Content } from './Content.tsx';
import { fileText, type SheetData, versionText } from './data.ts';
import { type PaperPage, paginate } from './paginate.ts';

export interface SheetPagesProps {
  /** Null until all of it is there. */
  readonly data: SheetData | null;
  /** Told how many pages there are; 0 while they are not of what is wanted. */
  readonly onLaid: (pages: number) => void;
}

interface Laid {
  readonly data: SheetData;
  readonly pages: readonly PaperPage[];
}

/** Milliseconds of quiet in which a word of the head is typed to its end. */
const QUIET = 200;
/** Where nothing is laid out, as in a test without a screen. */
const BODY = { width: 680, height: 960 };

export function SheetPages(props: SheetPagesProps): JSX.Element {
  let probe!: HTMLDivElement;
  const fonts = createFontsReady();
  const [laid, setLaid] = createSignal<Laid | null>(null);
  let dispose = (): void => {};

  const lay = (): void => {
    const { data } = props;
    if (!data) return;
    probe.className = pageClass(data);
    const body = probe.querySelector('.sheet-body')!;
    const box = {
      width: body.clientWidth || BODY.width,
      // A line that breaks otherwise on paper by a hair must not push a page over its edge.
      height: (body.clientHeight || BODY.height) - 4,
    };
    dispose();
    const column = document.createElement('div');
    body.replaceChildren(column);
    dispose = render(() => <Content data={data} width={box.width} />, column);
    const pages = paginate(column, box.height);
    column.remove();
    setLaid({ data, pages });
    props.onLaid(pages.length);
  };
  const settle = makeSettle(lay, QUIET);
  createEffect(
    on([() => props.data, fonts], ([data]) => {
      settle.drop();
      if (data === null) {
        props.onLaid(0);
        return;
      }
      // The first is laid at once; what is typed into its head is waited for.
      if (laid() === null) lay();
      else settle.ask();
    }),
  );
  onCleanup(() => {
    settle.drop();
    dispose();
  });

  return (
    <>
      <div class="sheet-measure" aria-hidden="true">
        <div ref={probe} class="sheet-page">
          <p class="sheet-head">{'\u00A0'}</p>
          <div class="sheet-body" />
          <Foot data={props.data} />
        </div>
      </div>
      <For each={laid()?.pages}>
        {(page, i) => {
          const { data, pages } = laid()!;
          const number = `page ${i() + 1} of ${pages.length}`;
          return (
            <section class={pageClass(data)} aria-label={`Page ${i() + 1} of ${pages.length}`}>
              <p class="sheet-head">
                <span>{headText(data, page)}</span>
                <span class="sheet-number">{number}</span>
              </p>
              <div class="sheet-body">{[...page.nodes]}</div>
              <Foot data={data} />
            </section>
          );
        }}
      </For>
    </>
  );
}

function Foot(props: { readonly data: SheetData | null }): JSX.Element {
  return (
    <p class="sheet-foot">
      <span>{cautionShort}</span>
      <span>
        <Show when={props.data}>
          {(data) => (
            <>
              {fileText(data())} · printed {momentText(data().at)} · {versionText(data())}
            </>
          )}
        </Show>
      </span>
    </p>
  );
}

const pageClass = ({ paper }: SheetData): string => `sheet-page is-${paper.toLowerCase()}`;

function headText({ project }: SheetData, { part }: PaperPage): string {
  const { job, revision } = project.sheet ?? {};
  return [
    job,
    project.name,
    part === project.name ? '' : part,
    revision ? `revision ${revision}` : '',
  ]
    .filter(Boolean)
    .join(' · ');
}
