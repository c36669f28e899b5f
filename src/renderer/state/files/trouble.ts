/** What went wrong with a file, in whole sentences, and what else can be done. */
import type { RequestError } from '../../../shared/reply.ts';
import { sentence } from '../../../shared/words.ts';

export interface Trouble {
  readonly text: string;
  readonly deed?: { readonly text: string; readonly act: () => void };
}

export interface Telling {
  /** @param text whole sentences; the message of the error when left out */
  tell(error: RequestError, text?: string): void;
  couldNot(name: string, error: RequestError): void;
}

export interface TellingSource {
  readonly hasProject: () => boolean;
  readonly openPath: (path: string) => Promise<void>;
  readonly onTrouble: (trouble: Trouble) => void;
}

export function createTelling({ hasProject, openPath, onTrouble }: TellingSource): Telling {
  function tell(error: RequestError, text = sentence(error.message)): void {
    // That nobody answers is said once, over every page.
    if (error.code === 'unreachable' && hasProject()) return;
    const { before } = error;
    onTrouble({
      text,
      ...(before === undefined
        ? {}
        : { deed: { text: 'Open the version before', act: () => void openPath(before) } }),
    });
  }
  return {
    tell,
    couldNot(name, error) {
      // What is wrong in a file is told with its name before it.
      const said = error.message.startsWith(`${name}: `)
        ? error.message
        : `${name}: ${error.message}`;
      tell(error, sentence(`Could not open ${said}`));
    },
  };
}
