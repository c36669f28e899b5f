import { fireEvent, render, screen } from '@solidjs/testing-library';
import { createSignal } from 'solid-js';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { byHand, keyed, OverlapHandle } from '../../src/renderer/size/section/OverlapHandle.tsx';
import { useBrowser } from './support/page.ts';

useBrowser();

const changes: number[] = [];
const dragging = vi.fn();
let [joint, setJoint] = createSignal('leg');
function renderHandle(overlap = 30): HTMLElement {
  const [value, setValue] = createSignal(overlap);
  [joint, setJoint] = createSignal('leg');
  render(() => (
    <svg>
      <title>section</title>
      <OverlapHandle
        // As in the page, where it is read from what the hand changes.
        joint={{ overlap: value(), id: joint() }.id}
        overlap={value()}
        x={100}
        top={10}
        bottom={60}
        scale={10}
        onChange={(next) => {
          changes.push(next);
          setValue(next);
        }}
        onDragging={dragging}
      />
    </svg>
  ));
  return screen.getByRole('slider', { name: 'Drag overlap' });
}
const pointer = (type: string, x: number): PointerEvent =>
  Object.assign(new MouseEvent(type, { clientX: x, button: 0, bubbles: true }), {
    pointerId: 1,
  }) as unknown as PointerEvent;
const frame = (): Promise<unknown> => new Promise((done) => requestAnimationFrame(done));

beforeEach(() => {
  changes.length = 0;
  dragging.mockClear();
});

describe('the handle at the mouth', () => {
  it('reads as a slider in millimetres', () => {
    const handle = renderHandle();
    expect(handle.getAttribute('aria-valuenow')).toBe('30');
    expect(handle.getAttribute('aria-valuetext')).toBe('30.0 mm');
    expect(handle.getAttribute('aria-valuemin')).toBe('1');
    expect(handle.getAttribute('aria-valuemax')).toBe('500');
    expect(handle.getAttribute('tabindex')).toBe('0');
  });

  it('follows the pointer by the scale of the drawing, once a frame', async () => {
    const handle = renderHandle();
    fireEvent(handle, pointer('pointerdown', 400));
    expect(dragging).toHaveBeenLastCalledWith(true);
    fireEvent(handle, pointer('pointermove', 410));
    fireEvent(handle, pointer('pointermove', 433));
    expect(changes).toEqual([]);
    await frame();
    expect(changes).toEqual([33.3]);
    fireEvent(handle, pointer('pointermove', 360));
    fireEvent(handle, pointer('pointerup', 360));
    expect(changes).toEqual([33.3, 26]);
    expect(dragging).toHaveBeenLastCalledWith(false);
    fireEvent(handle, pointer('pointermove', 500));
    await frame();
    expect(changes).toHaveLength(2);
  });

  it('does not wait for the frame where the browser tells of a move at once, and changes once a frame even so', async () => {
    const handle = renderHandle();
    fireEvent(handle, pointer('pointerrawupdate', 420));
    expect(changes).toEqual([]);
    fireEvent(handle, pointer('pointerdown', 400));
    fireEvent(handle, pointer('pointerrawupdate', 410));
    expect(changes).toEqual([31]);
    fireEvent(handle, pointer('pointerrawupdate', 420));
    fireEvent(handle, pointer('pointerrawupdate', 433));
    expect(changes).toEqual([31]);
    // The move itself says nothing new.
    fireEvent(handle, pointer('pointermove', 433));
    await frame();
    expect(changes).toEqual([31, 33.3]);
    fireEvent(handle, pointer('pointermove', 433));
    await frame();
    expect(changes).toHaveLength(2);
    fireEvent(handle, pointer('pointerrawupdate', 440));
    fireEvent(handle, pointer('pointerup', 440));
    expect(changes.at(-1)).toBe(34);
    fireEvent(handle, pointer('pointerrawupdate', 500));
    await frame();
    expect(changes.at(-1)).toBe(34);
  });

  it('lets go when another joint comes under the hand', async () => {
    const handle = renderHandle();
    fireEvent(handle, pointer('pointerdown', 400));
    fireEvent(handle, pointer('pointermove', 410));
    await frame();
    fireEvent(handle, pointer('pointermove', 420));
    setJoint('boom root');
    expect(dragging).toHaveBeenLastCalledWith(false);
    await frame();
    fireEvent(handle, pointer('pointermove', 440));
    fireEvent(handle, pointer('pointerrawupdate', 450));
    await frame();
    fireEvent(handle, pointer('pointerup', 450));
    expect(changes).toEqual([31]);
  });

  it('goes back on Escape', async () => {
    const handle = renderHandle();
    fireEvent(handle, pointer('pointerdown', 400));
    fireEvent(handle, pointer('pointermove', 500));
    await frame();
    fireEvent.keyDown(handle, { key: 'Escape' });
    expect(changes).toEqual([40, 30]);
    expect(dragging).toHaveBeenLastCalledWith(false);
  });

  it('moves by the keys', () => {
    const handle = renderHandle();
    fireEvent.keyDown(handle, { key: 'ArrowRight' });
    fireEvent.keyDown(handle, { key: 'ArrowLeft', shiftKey: true });
    fireEvent.keyDown(handle, { key: 'x' });
    fireEvent.keyDown(handle, { key: 'ArrowRight', ctrlKey: true });
    expect(changes).toEqual([30.5, 25.5]);
  });

  it('keeps between 1 and 500 mm', () => {
    expect(byHand(-3)).toBe(1);
    expect(byHand(501)).toBe(500);
    expect(byHand(30.0499)).toBe(30);
    expect(keyed(1.2, 'ArrowLeft', false)).toBe(1);
    expect(keyed(498, 'ArrowUp', true)).toBe(500);
    expect(keyed(30, 'Home', false)).toBe(1);
    expect(keyed(30, 'End', false)).toBe(500);
    expect(keyed(0.1 + 0.2 + 29.7, 'ArrowRight', false)).toBe(30.5);
    expect(keyed(30, 'Tab', false)).toBeNull();
  });
});
