/** What a sizing rounds to where neither it nor the project says so. */
import type { Settings } from './project-settings.ts';
import { shownUnits } from './shown-units.ts';
import { tidy, type Vary } from './vary-joint.ts';

export interface Steps {
  readonly overlap: number;
  readonly wall: number;
  readonly gap: number;
}

/** In mm, as docs/project-file.md has them. */
const USUAL: Steps = { overlap: 1, wall: 0.1, gap: 0.05 };
const INCH = 25.4;
/** Of like size and round in inches: 0.05, 0.005 and 0.002 in. */
const IN_INCHES: Steps = {
  overlap: tidy(0.05 * INCH),
  wall: tidy(0.005 * INCH),
  gap: tidy(0.002 * INCH),
};

/** Round in the units that are shown. mm. */
export function usualSteps(): Steps {
  const { length, small } = shownUnits();
  const thin = small === 'in' || small === 'mil' ? IN_INCHES : USUAL;
  return { ...(length === 'in' ? IN_INCHES : USUAL), gap: thin.gap };
}

/** What a sizing rounds to: the project's own step, or the usual one. mm. */
export function stepOf({ steps }: Pick<Settings, 'steps'>, vary: Vary): number {
  const kind = vary === 'overlap' || vary === 'gap' ? vary : 'wall';
  return steps?.[kind] ?? usualSteps()[kind];
}
