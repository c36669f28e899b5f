/** Every quantity says what it is, where it comes from and what is usual; usual lies inside of allowed. */
import { describe, expect, it } from 'vitest';
import demo from '../../src/main/demo/curlew.lapwright.json' with { type: 'json' };
import { type ChoiceName, choiceHelp } from '../../src/shared/choice-help.ts';
import { helpOfChoice, helpOfNumber, unusual } from '../../src/shared/field-help.ts';
import { type QuantityName, quantities } from '../../src/shared/quantities.ts';
import { quantityHelp } from '../../src/shared/quantity-help.ts';

const names = Object.keys(quantities) as QuantityName[];
const ranged = names.filter((name) => typeof quantityHelp[name].usual !== 'string');
const sentence = /^\S.*[.!?]$/;

describe('the help of quantities', () => {
  it('is there for every one of them, and for no other', () => {
    expect(Object.keys(quantityHelp).toSorted()).toEqual(names.toSorted());
    expect(ranged.length).toBeGreaterThan(40);
  });

  it.each(names)('is whole sentences: %s', (name) => {
    const { what, whereFrom, usual, allowed } = helpOfNumber(name);
    for (const words of [what, whereFrom, usual, allowed]) expect(words).toMatch(sentence);
  });

  it.each(ranged)('has the usual range inside the allowed one: %s', (name) => {
    const { min, max } = quantities[name];
    const { usual } = quantityHelp[name];
    if (typeof usual === 'string') throw new Error('no range');
    expect(usual.from).toBeLessThan(usual.to);
    expect(usual.from).toBeGreaterThanOrEqual(min);
    expect(usual.to).toBeLessThanOrEqual(max);
    // A range that leaves nothing out is none.
    expect(usual.to - usual.from).toBeLessThan(max - min);
  });

  it('is written in the units of the screen', () => {
    expect(helpOfNumber('gap').usual).toBe('Usually 0.1 to 0.3 mm.');
    expect(helpOfNumber('modulus').usual).toBe('Usually 5 to 250 GPa.');
    expect(helpOfNumber('expansion').usual).toBe('Usually −1 to 80 µm/m/K.');
    expect(helpOfNumber('cycles').usual).toBe('Usually 1000 to 1e9 cycles.');
    expect(helpOfNumber('force').allowed).toBe('Taken from −10000 to 10000 kN.');
  });

  it('gives way to what a field says of itself', () => {
    const field = { help: 'Gap of the coupons.', usual: { from: 0.05, to: 1 } };
    expect(helpOfNumber('gap', field)).toMatchObject({
      what: 'Gap of the coupons.',
      usual: 'Usually 0.05 to 1 mm.',
    });
  });
});

describe('the help of choices', () => {
  it.each(Object.keys(choiceHelp) as ChoiceName[])('is whole sentences: %s', (name) => {
    for (const words of Object.values(helpOfChoice(name))) expect(words).toMatch(sentence);
  });
});

describe('the remark on a value', () => {
  it('is made outside of the usual range alone, and never of what is refused', () => {
    expect(unusual('gap', 0.2)).toBeNull();
    expect(unusual('gap', 0.1)).toBeNull();
    expect(unusual('gap', 0.3)).toBeNull();
    expect(unusual('gap', 0.31)).toBe('unusual: usually 0.1 to 0.3 mm');
    expect(unusual('gap', 0.09)).toBe('unusual: usually 0.1 to 0.3 mm');
    expect(unusual('gap', 0)).toBeNull();
    expect(unusual('gap', undefined)).toBeNull();
    expect(unusual('force', 9e6)).toBeNull();
    expect(unusual('gap', 0.5, { usual: { from: 0.05, to: 1 } })).toBeNull();
  });

  it('is not made of what the demonstration holds', () => {
    const { joints, adhesives, plies } = demo;
    const values: [QuantityName, number | undefined][] = [
      ...joints.map((joint): [QuantityName, number] => ['overlap', joint.overlap]),
      ...adhesives.flatMap(({ states }) =>
        states.flatMap((state): [QuantityName, number][] => [
          ['adhesiveModulus', state.modulus],
          ['adhesiveShearModulus', state.shearModulus],
          ['shearYield', state.shearYield],
          ['plasticStrain', state.plasticStrain],
          ['peelStrength', state.peelStrength],
          ['temperature', state.temperature],
        ]),
      ),
      ...plies.flatMap((ply): [QuantityName, number][] => [
        ['modulus', ply.axialModulus],
        ['modulus', ply.transverseModulus],
        ['strength', ply.transverseTensileStrength],
        ['plyThickness', ply.thickness],
      ]),
    ];
    expect(values.length).toBeGreaterThan(30);
    expect(values.map(([name, value]) => unusual(name, value)).filter(Boolean)).toEqual([]);
  });
});
