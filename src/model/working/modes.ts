/** The working of a margin: cards in the order of the calculation, the margin's own last. */
import type { Step } from '../card.ts';
import type { Mode } from '../margins/asked.ts';
import type { GivenMode } from './context.ts';
import { damageWorking } from './damage.ts';
import { peelWorking, pliesWorking } from './peel.ts';
import { fractureWorking, peelShearWorking } from './peel-shear.ts';
import { firstPlyWorking } from './plies.ts';
import { cyclicWorking, yieldWorking } from './shear.ts';
import { strainWorking, troughWorking } from './strength.ts';
import { wallWorking } from './walls.ts';

const workings: Readonly<Record<Mode, (given: GivenMode) => Step[]>> = {
  'adhesive-yield': yieldWorking,
  'adhesive-strain': strainWorking,
  'adhesive-peel': peelWorking,
  'peel-shear': peelShearWorking,
  interlaminar: pliesWorking,
  'first-ply': firstPlyWorking,
  fracture: fractureWorking,
  'durability-trough': troughWorking,
  'cyclic-shear': cyclicWorking,
  'cyclic-damage': damageWorking,
  'metal-yield': wallWorking,
  'metal-ultimate': wallWorking,
  'laminate-strength': wallWorking,
};

export const marginWorking = (given: GivenMode): Step[] => workings[given.result.mode](given);
