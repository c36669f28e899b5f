/** At most one paint per frame of the screen, however often it is asked for. */
export interface Frame {
  ask(): void;
  /** The same, but at once where the last paint is a frame ago. */
  soon(): void;
  /** Paints now what was asked for, when a moment must not be missed (the end of a drag). */
  flush(): void;
  drop(): void;
}

/** Milliseconds from one frame to the next on a usual screen, less what a clock may be out. */
const FRAME = 14;

export function makeFrame(paint: () => void): Frame {
  let handle: number | null = null;
  let last = Number.NEGATIVE_INFINITY;
  const run = (): void => {
    last = performance.now();
    paint();
  };
  const drop = (): void => {
    if (handle !== null) cancelAnimationFrame(handle);
    handle = null;
  };
  return {
    ask() {
      handle ??= requestAnimationFrame(() => {
        handle = null;
        run();
      });
    },
    soon() {
      if (performance.now() - last < FRAME) return this.ask();
      drop();
      run();
    },
    flush() {
      if (handle === null) return;
      drop();
      run();
    },
    drop,
  };
}
