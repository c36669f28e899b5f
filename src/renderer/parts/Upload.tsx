/** The browser's own way to choose a project file, unseen until it is asked for. */
import { type JSX, onMount } from 'solid-js';

export interface UploadProps {
  readonly onFile: (file: File) => void;
  /** Told how to open it. */
  readonly onReady: (choose: () => void) => void;
}

export function Upload(props: UploadProps): JSX.Element {
  let input!: HTMLInputElement;
  const chosen = (): void => {
    const file = input.files?.[0];
    // The same file can then be chosen again after it was mended elsewhere.
    input.value = '';
    if (file) props.onFile(file);
  };
  onMount(() => props.onReady(() => input.click()));
  return (
    <input
      ref={input}
      class="hidden"
      type="file"
      accept=".json,.previous,application/json"
      tabindex="-1"
      aria-label="Open a project file"
      onChange={chosen}
    />
  );
}
