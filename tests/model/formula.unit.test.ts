/**
 * The formulas as they stand in docs/method.md, evaluated as text by mathjs, against the functions:
 * the page that a person reads and the code that computes say the same.
 */
import { evaluate } from 'mathjs/number';
import { describe, it } from 'vitest';
import { outerAdherendPeel } from '../../src/model/peel/outer-adherend.ts';
import { solvePlastic } from '../../src/model/plastic/one-bond.ts';
import { decayRate, solveOneBond } from '../../src/model/shear-lag/one-bond.ts';
import { expectClose } from '../support/close.ts';
import { bond, channel, member } from '../support/laps.ts';

const scope = {
  P: 8000,
  a: 0.95,
  c: 100,
  k: 4380,
  L: 30,
  Kt: 1.1e7,
  Ks: 1.3e7,
  De: -6e-4,
  se: 0.01,
};
const law = { ...bond(876, 0.2, scope.c), shearYield: scope.k * scope.se, slipAtFailure: 1 };
const lap = channel(scope.P, member(scope.Kt, scope.De), [member(scope.Ks)], [scope.a]);

const omega = 'sqrt(a^2*c*k*(1/Kt + 1/Ks))';
const say = (formula: string, more: Record<string, number> = {}): number =>
  evaluate(formula, { ...scope, w: evaluate(omega, { ...scope }), ...more }) as number;

describe('section 5, one bond', () => {
  const { mechanical, thermal } = solveOneBond(lap, law, scope.L);

  it('decay rate and both amplitudes', () => {
    expectClose(decayRate(lap, law), say('w'), { relative: 1e-12 }, 'omega');
    const even = say('P*w/(2*a*c*tanh(w*L/2))');
    const odd = say('(k*(a*P/Kt + De) + k*(-a*P/Ks + De))*tanh(w*L/2)/(2*w)');
    for (const x of [0, 4, 17, 30]) {
      const tau = say('A*cosh(w*(x - L/2))/cosh(w*L/2) + B*sinh(w*(x - L/2))/sinh(w*L/2)', {
        A: even,
        B: odd,
        x,
      });
      const computed = mechanical.shear(0, x) + thermal.shear(0, x);
      expectClose(computed, tau, { relative: 1e-11 }, `shear at ${x}`);
    }
  });
});

describe('section 6, both ends plastic', () => {
  const loaded = { ...lap, load: 90_000, tube: member(scope.Kt), outers: [member(scope.Ks)] };
  const solved = solvePlastic(loaded, law, scope.L);
  const ell = scope.L - solved.plasticAtRoot - solved.plasticAtMouth;
  const given = {
    P: 90_000,
    l: ell,
    g0: say('a*P/Ks', { P: 90_000 }),
    gL: say('a*P/Kt', { P: 90_000 }),
  };

  it('zones and end slips', () => {
    const zone = (g: number): number => say('(g - w*se*tanh(w*l/2))/(w^2*se)', { ...given, g });
    const slip = (g: number, c0: number): number =>
      say('se + (g + w*se*tanh(w*l/2))/2*c0', { ...given, g, c0 });
    expectClose(solved.plasticAtRoot, zone(given.g0), { relative: 1e-9 }, 'zone at the root');
    expectClose(solved.plasticAtMouth, zone(given.gL), { relative: 1e-9 }, 'zone at the mouth');
    expectClose(
      solved.slipAtRoot,
      slip(given.g0, solved.plasticAtRoot),
      { relative: 1e-9 },
      'slip',
    );
    expectClose(
      solved.slipAtMouth,
      slip(given.gL, solved.plasticAtMouth),
      { relative: 1e-9 },
      'slip',
    );
  });
});

describe('peel estimate', () => {
  it('is the formula above the function', () => {
    const text = 'tau*(3*Ec*(1 - nu^2)*t/(E*h))^(1/4)';
    const peel = evaluate(text, {
      tau: 38,
      Ec: 2400,
      nu: 0.34,
      t: 1.2,
      E: 114_000,
      h: 0.2,
    }) as number;
    expectClose(
      outerAdherendPeel(38, 2400, 1.2, 114_000, 0.34, 0.2),
      peel,
      { relative: 1e-12 },
      'peel',
    );
  });
});
