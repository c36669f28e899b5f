import { describe, expect, it } from 'vitest';
import { placeWindow, windowStore } from '../../src/main/shell/window-state.ts';
import { freshPlaces, put } from '../main/files/places.ts';

const main = { x: 0, y: 0, width: 1920, height: 1040 };
const right = { x: 1920, y: -200, width: 1280, height: 1000 };
const state = { x: 100, y: 80, width: 1400, height: 800, maximised: false };

describe('the place of a window', () => {
  it('is where it was, if that is on a display', () => {
    expect(placeWindow(state, [main], 0)).toEqual({ x: 100, y: 80, width: 1400, height: 800 });
    const there = { ...state, x: 2000, y: -100, width: 900, height: 700 };
    expect(placeWindow(there, [main, right], 0)).toEqual({
      x: 2000,
      y: -100,
      width: 900,
      height: 700,
    });
  });

  it('is left to the system at first, and where its display is gone', () => {
    expect(placeWindow(null, [main], 0)).toEqual({ width: 1360, height: 900 });
    const gone = { ...state, x: 2500 };
    expect(placeWindow(gone, [main], 0)).toEqual({ width: 1400, height: 800 });
    expect(placeWindow(state, [], 0)).toEqual({ width: 1360, height: 900 });
  });

  it('is wholly on the display that most of it was on', () => {
    expect(placeWindow({ ...state, x: -300, y: -50 }, [main], 0)).toMatchObject({ x: 0, y: 0 });
    expect(placeWindow({ ...state, x: 1700 }, [main, right], 0)).toMatchObject({
      x: 1920,
      width: 1280,
    });
    expect(placeWindow({ ...state, width: 5000, height: 9 }, [main], 0)).toMatchObject({
      x: 0,
      width: 1920,
      height: 520,
    });
  });

  it('is not over another window', () => {
    expect(placeWindow(state, [main], 2)).toMatchObject({ x: 156, y: 136 });
  });

  const places = freshPlaces();
  it('is remembered, and forgotten where its file is damaged', () => {
    const store = windowStore(places.data);
    expect(store.read()).toBeNull();
    store.write(state);
    expect(windowStore(places.data).read()).toEqual(state);
    for (const damaged of ['{', '7', '{"x":1}', JSON.stringify({ ...state, x: 1e9 })]) {
      put(places.data, 'window.json', damaged);
      expect(windowStore(places.data).read()).toBeNull();
    }
  });
});
