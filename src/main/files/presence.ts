/** Which page keeps which unsaved document, and whether it is still there. */

export interface Presence {
  /** A page has asked something. */
  heard(client: string): void;
  /** It keeps a document, or asks about its own. */
  owns(recovery: string, client: string): void;
  /** It was closed, or died: what it kept is nobody's, also where it is loaded anew under the same name. */
  left(client: string): void;
  isHere(recovery: string): boolean;
  ownedBy(client: string): readonly string[];
}

/**
 * @param silence milliseconds without a word after which a page counts as gone; null: only when it leaves
 * @param ran as `RunClock.ran`: a page is not silent while the machine sleeps, nor by a clock that is set
 */
export function makePresence(silence: number | null, ran: () => number): Presence {
  const owners = new Map<string, string>();
  const last = new Map<string, number>();
  const heard = (client: string): void => void last.set(client, ran());
  const ownedBy = (client: string): string[] =>
    [...owners].filter(([, owner]) => owner === client).map(([recovery]) => recovery);
  return {
    heard,
    owns(recovery, client) {
      owners.set(recovery, client);
      heard(client);
    },
    left(client) {
      last.delete(client);
      for (const recovery of ownedBy(client)) owners.delete(recovery);
    },
    isHere(recovery) {
      const owner = owners.get(recovery);
      const time = owner === undefined ? undefined : last.get(owner);
      if (time === undefined) return false;
      return silence === null || ran() - time <= silence;
    },
    ownedBy,
  };
}
