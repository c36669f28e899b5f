/** Chooses a file of comma-separated values and hands on its text. */
import type { JSX } from 'solid-js';

export interface ReadFileProps {
  /** As it is read out: what the file holds. */
  readonly label: string;
  readonly onText: (text: string) => void;
}

export function ReadFile(props: ReadFileProps): JSX.Element {
  let input!: HTMLInputElement;
  return (
    <>
      <input
        ref={input}
        class="hidden"
        type="file"
        accept=".csv,text/csv"
        tabindex="-1"
        aria-label={props.label}
        onChange={(event) => {
          const [file] = event.currentTarget.files ?? [];
          if (file) void file.text().then((text) => props.onText(text));
          // The same file can be chosen again.
          event.currentTarget.value = '';
        }}
      />
      <button type="button" class="link" onClick={() => input.click()}>
        Read CSV …
      </button>
    </>
  );
}
