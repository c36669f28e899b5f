import { expect, it } from 'vitest';
import { inPlace, steady } from '../../src/renderer/joints/steady.ts';

const rows = (text: string) => [...text].map((id) => ({ id }));
const ids = (list: readonly { id: string }[]): string => list.map(({ id }) => id).join('');
const id = (row: { id: string }): string => row.id;

it('puts new rows after those that stood, and leaves out what is gone', () => {
  expect(ids(inPlace(rows('cab'), rows('abcd'), id))).toBe('cabd');
  expect(ids(inPlace(rows('cab'), rows('db'), id))).toBe('bd');
});

it('shows the rows as they are now, not as they were', () => {
  const now = rows('ab');
  expect(inPlace(rows('ba'), now, id)).toEqual([now[1], now[0]]);
  expect(inPlace(rows('ba'), now, id)[0]).toBe(now[1]);
});

it.each([
  { filling: true, underHand: true, before: false, shown: 'bac', kept: true },
  { filling: true, underHand: false, before: true, shown: 'abc', kept: false },
  { filling: false, underHand: true, before: true, shown: 'bac', kept: true },
  { filling: false, underHand: true, before: false, shown: 'abc', kept: false },
  { filling: false, underHand: false, before: true, shown: 'abc', kept: false },
])('keeps rows under the hand from the filling on, until it goes: %o', (at) => {
  const held = steady({ rows: rows('ba'), kept: at.before }, rows('abc'), at, id);
  expect([ids(held.rows), held.kept]).toEqual([at.shown, at.kept]);
});
