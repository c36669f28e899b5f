/** Sentences of the core in the units on the screen: only their figures change, each with its own unit. */
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import {
  bare,
  degreesCelsius,
  millimetres,
  saidTogether,
  say,
  smallMillimetres,
} from '../../src/model/said.ts';
import { presets, type UnitChoice } from '../../src/shared/display-units.ts';
import { saidText } from '../../src/shared/said.ts';
import { showUnitsOf } from '../../src/shared/shown-units.ts';

let shown: UnitChoice = presets.SI;
let back = (): void => {};
beforeEach(() => {
  shown = presets.SI;
  back = showUnitsOf(() => shown);
});
afterEach(() => back());
const show = (choice: UnitChoice): void => {
  shown = choice;
};

const gap = say`The bond is ${smallMillimetres(0.7)} thick; usual is ${bare(smallMillimetres(0.05))} to ${smallMillimetres(0.5)}.`;

describe('a sentence', () => {
  it('is whole as it stands', () => {
    expect(gap.message).toBe('The bond is 0.7 mm thick; usual is 0.05 to 0.5 mm.');
    expect(gap.figures?.map(({ as }) => as)).toEqual(['0.7 mm', '0.05', '0.5 mm']);
    expect(say`${degreesCelsius(-20)} lies beyond ${3} rows.`.message).toBe(
      '−20 °C lies beyond 3 rows.',
    );
    expect(say`Nothing is measured in it: ${1}.`).toEqual({
      message: 'Nothing is measured in it: 1.',
    });
  });

  it('holds sentences and lists, with their figures in order', () => {
    const walls = saidTogether(
      [say`spigot ${millimetres(1.5)}`, say`socket ${millimetres(2)}`],
      ', ',
    );
    expect(say`Same mass: ${walls}; ${gap}`).toEqual({
      message:
        'Same mass: spigot 1.5 mm, socket 2 mm; The bond is 0.7 mm thick; usual is 0.05 to 0.5 mm.',
      figures: [millimetres(1.5), millimetres(2), ...gap.figures!],
    });
    expect(saidTogether([], ', ')).toEqual({ message: '' });
  });

  it('stays as it is where its units are those of the screen', () => {
    expect(saidText(gap)).toBe(gap.message);
    show({ ...presets.US, small: 'mm' });
    expect(saidText(gap)).toBe(gap.message);
    expect(saidText({ message: 'No figure: 20 mm.' })).toBe('No figure: 20 mm.');
  });

  it('has its figures in the units of the screen, with as many digits as one reads', () => {
    show(presets.US);
    expect(saidText(gap)).toBe('The bond is 27.6 mil thick; usual is 1.97 to 19.7 mil.');
    expect(saidText(say`${degreesCelsius(-20)} and ${degreesCelsius(60)}.`)).toBe(
      '−4 °F and 140 °F.',
    );
    // Of 12.345 mm no digit is lost, of 14 mm none is made up.
    expect(saidText(say`${millimetres(12.345)}, ${millimetres(14)}`)).toBe('0.48602 in, 0.551 in');
    show({ ...presets.SI, small: 'µm' });
    expect(saidText(gap)).toBe('The bond is 700 µm thick; usual is 50 to 500 µm.');
  });

  it('leaves alone what a person called a load case', () => {
    show(presets.US);
    const said = say`Landing at 60 °C: ${degreesCelsius(60)} lies beyond the table.`;
    expect(saidText(said)).toBe('Landing at 60 °C: 140 °F lies beyond the table.');
  });

  it('loses none of its words, whatever its figures are', () => {
    const size = fc
      .double({ min: 1e-3, max: 1e4, noNaN: true })
      .map((x) => Number(x.toPrecision(4)));
    fc.assert(
      fc.property(size, size, size, (a, b, t) => {
        const said = say`From ${bare(millimetres(a))} to ${millimetres(b)} at ${degreesCelsius(t)} it holds.`;
        show(presets.US);
        const text = saidText(said);
        expect(text).toMatch(/^From [\d.e+-]+ to [\d.e+-]+ in at [\d.e+−-]+ °F it holds\.$/);
      }),
    );
  });
});
