/** The tornado as a picture: a bar for each input about the middle margin, its ends in figures. */
import type { MattersReport } from '../../shared/reports-scatter.ts';
import { changeText } from '../../shared/scatter-words.ts';
import { signed } from '../../shared/words.ts';
import { barScale } from '../size/matters/bar-scale.ts';
import { rule, write } from './pen.ts';
import type { Drawing } from './picture-file.ts';

const ROW = 24;
const HEAD = 26;
/** From the left: the input, its lower end, the bars, its upper end. */
const BARS = { from: 400, to: 790 } as const;

export function tornadoDrawing(report: MattersReport): Drawing {
  const { bars, middle, tolerances } = report;
  const height = HEAD + bars.length * ROW + 8;
  const unitOf = (input: string) =>
    tolerances.find((tolerance) => tolerance.input === input)?.unit ?? '1';
  return {
    height,
    axes: `Lowest margin with one input at either end of its tolerance, the others in their middle, ${signed(middle.margin)}. Full: upper end; open: lower end.`,
    paint(context, box, ink) {
      const scale = barScale(report);
      const x = (margin: number): number =>
        BARS.from + ((BARS.to - BARS.from) * scale.at(margin)) / 100;
      const line = (margin: number, dash: readonly number[]): void =>
        rule(
          context,
          { x: x(margin), y: HEAD - 4 },
          { x: x(margin), y: height },
          { colour: ink.ink, dash, width: 1.25 },
        );
      write(context, 'input', { x: 0, y: 10 }, { colour: ink.soft });
      write(context, 'lower end', { x: 320, y: 10 }, { colour: ink.soft, align: 'right' });
      write(context, 'margin', { x: 386, y: 10 }, { colour: ink.soft, align: 'right' });
      write(context, 'margin', { x: 850, y: 10 }, { colour: ink.soft, align: 'right' });
      write(context, 'upper end', { x: box.width, y: 10 }, { colour: ink.soft, align: 'right' });
      bars.forEach((bar, i) => {
        const y = HEAD + i * ROW + ROW / 2;
        const unit = unitOf(bar.input);
        const soft = { colour: ink.ink, align: 'right' } as const;
        write(context, bar.label, { x: 0, y }, { colour: ink.ink });
        write(context, changeText(bar.from, unit), { x: 320, y }, soft);
        write(context, signed(bar.low.margin), { x: 386, y }, soft);
        write(context, signed(bar.high.margin), { x: 850, y }, soft);
        write(context, changeText(bar.to, unit), { x: box.width, y }, soft);
        const [from, low, high] = [middle.margin, bar.low.margin, bar.high.margin].map(x);
        context.setLineDash([]);
        context.fillStyle = ink.shear;
        context.fillRect(Math.min(from!, high!), y - 7, Math.abs(high! - from!), 14);
        context.strokeStyle = ink.peel;
        context.lineWidth = 1.5;
        context.strokeRect(Math.min(from!, low!), y - 5, Math.abs(low! - from!), 10);
      });
      line(middle.margin, []);
      if (scale.zero) line(0, [3, 3]);
    },
  };
}
