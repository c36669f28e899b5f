/** Shear or peel of the bond taken out of the page: along it, or around it where that is drawn. */
import type { JSX } from 'solid-js';
import type { StressReport } from '../../shared/reports.ts';
import type { Sheet } from '../../shared/sheet.ts';
import { clocking, environment, gapWords } from '../../shared/words.ts';
import type { BondPlot } from '../charts/bond-picture.ts';
import { fieldOf, type Quantity } from '../charts/map-data.ts';
import type { Drawing } from '../charts/picture-file.ts';
import { bondDrawing, mapDrawing } from '../charts/plot-drawings.ts';
import { TakeOut } from '../parts/TakeOut.tsx';
import { mapSheet, peelSheet, shearSheet } from '../sheets/stress-sheets.ts';

export interface TakeStressProps {
  readonly quantity: Quantity;
  readonly stress: StressReport;
  /** Null where it is drawn along the bond. */
  readonly mapped: StressReport | null;
  readonly part: string;
  readonly plot: BondPlot | null;
  /** The shear of the layered shells is drawn too. */
  readonly layered: boolean;
  readonly caseName: string;
}

export function TakeStress(props: TakeStressProps): JSX.Element {
  const field = () => (props.mapped ? fieldOf(props.mapped, props.part, props.quantity) : null);
  const what = (): string =>
    props.mapped
      ? `${props.quantity} around the ${props.part}`
      : `${props.quantity} along the bond`;
  const about = (): string => {
    const { gapState, temperature, moisture, theta } = props.stress;
    const state = [props.caseName, environment(temperature, moisture), gapWords[gapState]];
    return [...state, ...(props.mapped ? [] : [`clocking ${clocking(theta)}`])].join(', ');
  };
  const sheet = (): Sheet | null => {
    const map = field();
    if (props.mapped) return map && mapSheet(map, props.part, props.quantity);
    return props.quantity === 'shear'
      ? shearSheet(props.stress, props.layered)
      : peelSheet(props.stress);
  };
  const picture = (): Drawing | null => {
    const map = field();
    const sign = props.quantity === 'peel' ? ', opening +' : '';
    if (props.mapped) {
      const axes = `Elastic ${props.quantity} stress, MPa${sign}; up: clocking, °; along: from the root, mm`;
      return map && mapDrawing(map, props.quantity, axes);
    }
    return (
      props.plot &&
      bondDrawing(props.plot, `Up: ${props.quantity} stress, MPa${sign}; along: from the root, mm`)
    );
  };
  return (
    <TakeOut
      what={what().replace(/^./, (first) => first.toUpperCase())}
      about={about()}
      sheet={sheet}
      picture={picture}
    />
  );
}
