/** Runs once things have been quiet for a while: for answers that nobody needs in every frame. */
export interface Settle {
  ask(): void;
  drop(): void;
}

export function makeSettle(run: () => void, quiet: number): Settle {
  let timer: ReturnType<typeof setTimeout> | undefined;
  return {
    ask() {
      clearTimeout(timer);
      timer = setTimeout(run, quiet);
    },
    drop() {
      clearTimeout(timer);
    },
  };
}
