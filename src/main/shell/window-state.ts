/** Where a window was when it was closed, and where the next one goes: always on a display that is there. */
import { join } from 'node:path';
import type { BrowserWindow, Rectangle } from 'electron';
import { z } from 'zod';
import { makeSmallStore, type SmallStore } from '../files/small-store.ts';
import { leastWindow, usualWindow } from './window-options.ts';

const coordinate = z.int().min(-100_000).max(100_000);
const size = z.int().min(1).max(100_000);
const shape = z.object({
  x: coordinate,
  y: coordinate,
  width: size,
  height: size,
  maximised: z.boolean(),
});
export type WindowState = z.infer<typeof shape>;

export const windowStore = (data: string): SmallStore<WindowState | null> =>
  makeSmallStore<WindowState | null>(
    join(data, 'window.json'),
    (parsed) => shape.safeParse(parsed).data ?? null,
    null,
  );

export interface Placed {
  readonly width: number;
  readonly height: number;
  /** Left to the system where it is not known. */
  readonly x?: number;
  readonly y?: number;
}

/** How much two lie over one another. */
function overlap(a: Rectangle, b: Rectangle): number {
  const along = Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x);
  const down = Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y);
  return along > 0 && down > 0 ? along * down : 0;
}

const clamp = (value: number, from: number, to: number): number =>
  Math.min(Math.max(value, from), Math.max(from, to));

/** Beside a window that is open already, so that both are seen. */
const STEP = 28;

/**
 * @param displays what of each display a window may take, the main one first
 * @param open how many windows there are already
 */
export function placeWindow(
  state: WindowState | null,
  displays: readonly Rectangle[],
  open: number,
): Placed {
  const [main] = displays;
  if (!main) return usualWindow;
  const wanted = state ?? usualWindow;
  const best = state
    ? displays.reduce((a, b) => (overlap(state, b) > overlap(state, a) ? b : a))
    : main;
  const width = clamp(wanted.width, leastWindow.width, best.width);
  const height = clamp(wanted.height, leastWindow.height, best.height);
  // Of a display that is gone the place means nothing, but the size does.
  if (!state || overlap(state, best) === 0) return { width, height };
  const shift = open * STEP;
  return {
    width,
    height,
    x: clamp(state.x + shift, best.x, best.x + best.width - width),
    y: clamp(state.y + shift, best.y, best.y + best.height - height),
  };
}

export const stateOf = (
  window: Pick<BrowserWindow, 'getNormalBounds' | 'isMaximized'>,
): WindowState => {
  const { x, y, width, height } = window.getNormalBounds();
  return { x, y, width, height, maximised: window.isMaximized() };
};
