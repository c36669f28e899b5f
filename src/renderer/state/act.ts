/** What is typed into one field, as one act: kept when it is done, dropped when it cannot be read. */
import type { Begun, History } from './history.ts';
import type { Path } from './path.ts';

export interface Act {
  /** Something is typed. */
  begin(): void;
  /** It cannot be read: the document is as it was when the typing began. */
  drop(): void;
  /** The field is left. */
  end(): void;
}

/** @param path what the field may change */
export function createAct(history: Pick<History, 'begin' | 'drop'>, path: () => Path): Act {
  let begun: Begun | null = null;
  return {
    begin() {
      begun ??= history.begin();
    },
    drop() {
      if (begun) history.drop(begun, path());
    },
    end() {
      begun = null;
    },
  };
}
