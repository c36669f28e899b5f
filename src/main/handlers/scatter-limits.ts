/** What a scatter or a tornado leaves within its reach: the adhesive's table, and what sizes can be. */
import {
  degreesCelsius,
  type Said,
  saidTogether,
  say,
  smallMillimetres,
} from '../../model/said.ts';
import { ENDS } from '../../model/scatter/matters.ts';
import { bondsOf, type Variation } from '../../model/scatter/variation.ts';
import { LEAST, type Study } from '../../model/scatter/varied.ts';
import type { Flag } from '../../shared/reports.ts';

/** At two standard deviations, or the half-width: the ends that the tornado shows. */
const reachOf = ({ distribution, spread }: Variation): number => ENDS[distribution] * spread;

export function limitFlags(study: Study, variations: readonly Variation[]): Flag[] {
  const of = (input: Variation['input']): Variation | undefined =>
    variations.find((one) => one.input === input);
  return [
    ...temperatureFlags(study, of('service-temperature')),
    ...sizeFlags(study, of),
    ...cycleFlags(study),
  ];
}

/** A sum over cases is of no row that is sampled. */
function cycleFlags({ adhesive, cases }: Study): Flag[] {
  const cyclic = cases.filter(({ kind }) => kind === 'cyclic');
  if (!adhesive.fatigue || new Set(cyclic.map(({ occasion }) => occasion)).size < 2) return [];
  const message =
    'The cyclic cases are sampled each by itself; what they do together is in the margins, not here.';
  return [{ code: 'cycles-apart', message }];
}

/** Beyond the table the nearest row stands, so the strength no longer falls with the heat. */
function temperatureFlags({ adhesive, cases }: Study, varied: Variation | undefined): Flag[] {
  if (!varied) return [];
  const reach = reachOf(varied);
  const flags = (['dry', 'wet'] as const).flatMap((moisture): Flag[] => {
    const rows = adhesive.states.filter((state) => state.moisture === moisture);
    const felt = cases.filter((one) => one.moisture === moisture).map((one) => one.temperature);
    if (rows.length === 0 || felt.length === 0) return [];
    const table = rows.map(({ temperature }) => temperature);
    const [low, high] = [Math.min(...table), Math.max(...table)];
    const [least, most] = [Math.min(...felt) - reach, Math.max(...felt) + reach];
    if (least >= low && most <= high) return [];
    return [
      {
        code: 'outside-table',
        ...say`The service temperature reaches ${degreesCelsius(least)} to ${degreesCelsius(most)}, the adhesive's ${moisture} properties only ${degreesCelsius(low)} to ${degreesCelsius(high)}: beyond them the nearest row stands, so the strength does not fall there as that of the adhesive would.`,
      },
    ];
  });
  return flags;
}

/** A size held at its least possible value makes that end of its tolerance milder than it is named. */
function sizeFlags(study: Study, of: (input: Variation['input']) => Variation | undefined): Flag[] {
  const { joint, cases } = study;
  const held: Said[] = [];
  const gap = of('gap');
  const offset = 'offset' in joint ? joint.offset : 0;
  const thinnest = Math.min(...bondsOf(study).map((bond) => bond.gap));
  if (gap && thinnest - reachOf(gap) < offset + LEAST.gap) {
    held.push(say`the gap at ${smallMillimetres(LEAST.gap)} more than the offset`);
  }
  const load = of('load');
  if (load && cases.length > 0 && 1 - reachOf(load) < LEAST.factor) {
    held.push({ message: 'the loads at a twentieth of their value' });
  }
  if (held.length === 0) return [];
  const said = say`Some tolerances reach further than can be: ${saidTogether(held, ' and ')} ${held.length === 1 ? 'is' : 'are'} the least that is computed.`;
  return [{ code: 'held-at-limit', ...said }];
}
