/** Reads measured diameters from a file; what is wrong with it is said with its line. */
import { createSignal, For, type JSX } from 'solid-js';
import type { MeasuredRead } from '../../shared/measured-text.ts';
import type { MeasuredSurface } from '../../shared/project.ts';
import { sentence } from '../../shared/words.ts';
import { ReadFile } from '../parts/ReadFile.tsx';

export interface ReadCsvButtonProps {
  readonly read: (text: string) => MeasuredRead;
  readonly onRead: (surfaces: readonly MeasuredSurface[]) => void;
}

export function ReadCsvButton(props: ReadCsvButtonProps): JSX.Element {
  const [errors, setErrors] = createSignal<readonly string[]>([]);
  const take = (text: string): void => {
    const read = props.read(text);
    setErrors(
      read.ok ? [] : read.errors.map(({ line, message }) => `Line ${line}: ${sentence(message)}`),
    );
    if (read.ok) props.onRead(read.surfaces);
  };
  return (
    <>
      <ReadFile label="File of measured diameters" onText={take} />
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
