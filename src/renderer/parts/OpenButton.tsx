/** Opens a project file through the system's own dialog. */
import { type JSX, onMount } from 'solid-js';

export interface OpenButtonProps {
  readonly onFile: (file: File) => void;
  readonly text?: string;
  /** A button in the page rather than a word in the bar. */
  readonly plain?: boolean;
  /** Told how to open the dialog from elsewhere. */
  readonly onReady?: (choose: () => void) => void;
}

export function OpenButton(props: OpenButtonProps): JSX.Element {
  let input!: HTMLInputElement;
  const chosen = (): void => {
    const file = input.files?.[0];
    // The same file can then be chosen again after it was mended elsewhere.
    input.value = '';
    if (file) props.onFile(file);
  };
  onMount(() => props.onReady?.(() => input.click()));
  return (
    <>
      <input
        ref={input}
        class="hidden"
        type="file"
        accept=".json,application/json"
        tabindex="-1"
        aria-label={props.text ?? 'Open a project file'}
        onChange={chosen}
      />
      <button type="button" class={props.plain ? 'plain' : 'link'} onClick={() => input.click()}>
        {props.text ?? 'Open …'}
      </button>
    </>
  );
}
