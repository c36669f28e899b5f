/** At most one paint per frame of the screen, however often it is asked for. */
export interface Frame {
  ask(): void;
  /** Paints now what was asked for, when a moment must not be missed (the end of a drag). */
  flush(): void;
  drop(): void;
}

export function makeFrame(paint: () => void): Frame {
  let handle: number | null = null;
  const drop = (): void => {
    if (handle !== null) cancelAnimationFrame(handle);
    handle = null;
  };
  return {
    ask() {
      handle ??= requestAnimationFrame(() => {
        handle = null;
        paint();
      });
    },
    flush() {
      if (handle === null) return;
      drop();
      paint();
    },
    drop,
  };
}
