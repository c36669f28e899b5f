/** Opens a project file through the system's own dialog. */
import type { JSX } from 'solid-js';

export interface OpenButtonProps {
  readonly onFile: (file: File) => void;
  readonly text?: string;
  /** A button in the page rather than a word in the bar. */
  readonly plain?: boolean;
}

export function OpenButton(props: OpenButtonProps): JSX.Element {
  let input!: HTMLInputElement;
  const chosen = (): void => {
    const file = input.files?.[0];
    // The same file can then be chosen again after it was mended elsewhere.
    input.value = '';
    if (file) props.onFile(file);
  };
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
