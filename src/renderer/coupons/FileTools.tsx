/** Results from a file and into one, and an empty one to fill in. */
import type { JSX } from 'solid-js';
import { download } from '../files.ts';
import { ReadFile } from '../parts/ReadFile.tsx';

export interface FileToolsProps {
  /** What the file to be read holds, as it is read out. */
  readonly label: string;
  /** Name of the file that is written. */
  readonly file: string;
  readonly onText: (text: string) => void;
  readonly results: () => string;
  readonly template: () => string;
}

export function FileTools(props: FileToolsProps): JSX.Element {
  return (
    <>
      <ReadFile label={props.label} onText={props.onText} />
      <button
        type="button"
        class="link"
        data-takes="csv"
        onClick={() => download(props.file, props.results(), 'text/csv')}
      >
        Results as CSV
      </button>
      <button
        type="button"
        class="link"
        onClick={() => download(`to-fill-in-${props.file}`, props.template(), 'text/csv')}
      >
        Empty CSV to fill in
      </button>
    </>
  );
}
