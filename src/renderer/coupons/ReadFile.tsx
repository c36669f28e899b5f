/** Chooses a file of results and hands on its text. */
import type { JSX } from 'solid-js';

export function ReadFile(props: { readonly onText: (text: string) => void }): JSX.Element {
  let input!: HTMLInputElement;
  return (
    <>
      <input
        ref={input}
        class="hidden"
        type="file"
        accept=".csv,text/csv"
        tabindex="-1"
        aria-label="File of coupon results"
        onChange={(event) => {
          const [file] = event.currentTarget.files ?? [];
          if (file) void file.text().then((text) => props.onText(text));
          event.currentTarget.value = '';
        }}
      />
      <button type="button" class="link" onClick={() => input.click()}>
        Read CSV …
      </button>
    </>
  );
}
