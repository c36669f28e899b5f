/**
 * The numbers of a hundred thousand random joints anywhere in the declared ranges, the ends of every range among
 * them: finite, in balance, reached sooner by higher loads, strength that does not fall as the overlap grows, double
 * laps whose limits are single laps, and a temperature that turns round turns the stress round.
 *
 * The closed forms are looked at in every joint; walls, tapers and the strengths that the chain finds, which take a
 * hundred times as long, in every two hundredth. `LAPWRIGHT_JOINTS=n` tries n, `LAPWRIGHT_JOINTS_SEED` others.
 */
import { describe, expect, it } from 'vitest';
import { randomJoint } from './any-joint/random-joint.ts';
import { makeTally, tryJoint } from './any-joint/try-joint.ts';

const JOINTS = Number(process.env.LAPWRIGHT_JOINTS ?? 100_000);
const WHOLE = Number(process.env.LAPWRIGHT_JOINTS_WHOLE ?? 200);
const SEED = Number(process.env.LAPWRIGHT_JOINTS_SEED ?? 20261127);

describe('any joint in the declared ranges', () => {
  it(`has sound numbers, ${JOINTS} times`, () => {
    const tally = makeTally();
    const found: string[] = [];
    for (let index = 0; index < JOINTS && found.length < 5; index++) {
      const whole = index % WHOLE === 0;
      const wrong = tryJoint(randomJoint(SEED, index, whole), tally, whole);
      if (wrong) found.push(`joint ${index}: ${wrong}`);
    }
    console.info(JSON.stringify(tally));
    expect(found).toEqual([]);
    expect(tally.answered).toBeGreaterThan(JOINTS / 2);
  }, 3_600_000);
});
