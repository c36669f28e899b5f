/** A table or a plot taken out of the page: its figures as comma-separated values, its picture as PNG. */
import { createContext, createSignal, type JSX, Show, useContext } from 'solid-js';
import { type Sheet, sheetCsv } from '../../shared/sheet.ts';
import { onPaper, readInk } from '../charts/ink.ts';
import { type Drawing, drawPicture, pngOf } from '../charts/picture-file.ts';
import { svgDrawing } from '../charts/svg-drawing.ts';
import { download, takenName } from '../files.ts';

/** What a page's figures are of. */
export interface TakenFrom {
  readonly project: string;
  /** Null where the page is not of one joint. */
  readonly joint: string | null;
}

const From = createContext<() => TakenFrom>(() => ({ project: '', joint: null }));

export const TakenFromProvider = From.Provider;

/** Of what the figures of this page are. */
export const useTakenFrom = (): (() => TakenFrom) => useContext(From);

export interface TakeOutProps {
  /** Names the file and the picture: `Shear along the bond`. */
  readonly what: string;
  /** The case, the state: on the picture beside project and joint. */
  readonly about?: string;
  /** Read when it is taken. */
  readonly sheet?: () => Sheet | null;
  readonly picture?: () => Drawing | null;
}

export function TakeOut(props: TakeOutProps): JSX.Element {
  const from = useTakenFrom();
  const [said, setSaid] = createSignal('');
  let place!: HTMLSpanElement;
  const name = (ending: 'csv' | 'png'): string => takenName(from(), props.what, ending);
  const csv = (): void => {
    const sheet = props.sheet?.();
    if (!sheet) return;
    download(name('csv'), sheetCsv(sheet), 'text/csv');
    setSaid(`${name('csv')} saved.`);
  };
  const png = async (): Promise<void> => {
    const drawing = props.picture?.();
    if (!drawing) return;
    const { project, joint } = from();
    const words = {
      title: props.what,
      from: [project, joint ?? '', props.about ?? ''],
      day: new Date().toISOString().slice(0, 10),
    };
    const sheet = onPaper(() => drawPicture(drawing, words, readInk(place)));
    const blob = sheet && (await pngOf(sheet));
    if (!blob) return void setSaid('No picture could be made.');
    download(name('png'), blob);
    setSaid(`${name('png')} saved.`);
  };
  return (
    <span class="take-out" ref={place}>
      <Show when={props.sheet}>
        <button
          type="button"
          class="link"
          data-takes="csv"
          aria-label={`CSV, ${props.what}`}
          title="Every figure as comma-separated values, in N, mm, MPa and °C"
          onClick={csv}
        >
          CSV
        </button>
      </Show>
      <Show when={props.picture}>
        <button
          type="button"
          class="link"
          data-takes="png"
          aria-label={`PNG, ${props.what}`}
          title="The drawing on paper, with a title and where it is from"
          onClick={() => void png()}
        >
          PNG
        </button>
      </Show>
      <span class="hidden" aria-live="polite">
        {said()}
      </span>
    </span>
  );
}

/** The one drawing of this kind within an element, such as a chart that is SVG. */
export const svgWithin = (element: Element | undefined, axes: string): Drawing | null => {
  const svg = element?.querySelector<SVGSVGElement>('svg[role]');
  return svg ? svgDrawing(svg, axes) : null;
};
