/** Reads measured diameters from a file; what is wrong with it is said with its line. */
import { createSignal, For, type JSX } from 'solid-js';
import type { MeasuredRead } from '../../shared/measured-text.ts';
import type { MeasuredSurface } from '../../shared/project.ts';
import { sentence } from '../../shared/words.ts';

export interface ReadCsvButtonProps {
  readonly read: (text: string) => MeasuredRead;
  readonly onRead: (surfaces: readonly MeasuredSurface[]) => void;
}

export function ReadCsvButton(props: ReadCsvButtonProps): JSX.Element {
  let input!: HTMLInputElement;
  const [errors, setErrors] = createSignal<readonly string[]>([]);
  const take = async (file: File): Promise<void> => {
    const read = props.read(await file.text());
    setErrors(
      read.ok ? [] : read.errors.map(({ line, message }) => `Line ${line}: ${sentence(message)}`),
    );
    if (read.ok) props.onRead(read.surfaces);
  };
  return (
    <>
      <input
        ref={input}
        class="hidden"
        type="file"
        accept=".csv,text/csv"
        tabindex="-1"
        aria-label="File of measured diameters"
        onChange={(event) => {
          const [file] = event.currentTarget.files ?? [];
          if (file) void take(file);
          event.currentTarget.value = '';
        }}
      />
      <button type="button" class="link" onClick={() => input.click()}>
        Read CSV …
      </button>
      <For each={errors()}>
        {(message) => (
          <p class="refused" role="alert">
            {message}
          </p>
        )}
      </For>
    </>
  );
}
