/**
 * Draws a curve case as an SVG file: what was computed as a line, the reference as dots. The file
 * brings its own paper for light and dark, so that it can be read wherever it is shown.
 */
import type { CurveCase, Panel, Series } from './case.ts';

const WIDTH = 720;
const PANEL = 250;
const LEFT = 64;
const RIGHT = 16;
const TOP = 34;
const BOTTOM = 44;
/** Lines have this many pieces. */
const PIECES = 120;

const style = `
.paper{fill:#fffefb}.ink{fill:#1d2733}.soft{fill:#56636f}.rule{stroke:#d9d6cc}.axis{stroke:#85898a}
.line{fill:none;stroke-width:2;stroke-linejoin:round}.dashed{stroke-width:1.5;stroke-dasharray:6 4}.dot{stroke-width:1.5}
.line.shear{stroke:#1f5fa8}.line.peel{stroke:#b4530a}.dot{fill:#fffefb}.dot.shear{stroke:#1f5fa8}.dot.peel{stroke:#b4530a}
text{font:13px system-ui,sans-serif}
@media (prefers-color-scheme:dark){
.paper{fill:#181e26}.ink{fill:#e8e4da}.soft{fill:#a3adb7}.rule{stroke:#303a45}.axis{stroke:#76818c}
.line.shear{stroke:#7fb6f5}.line.peel{stroke:#f0a45c}.dot{fill:#181e26}.dot.shear{stroke:#7fb6f5}.dot.peel{stroke:#f0a45c}
}`;

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
const pixel = (place: number): string => (Math.round(place * 10) / 10 + 0).toString();

/** About `count` round steps over the range. */
export function ticks(low: number, high: number, count: number): number[] {
  const raw = (high - low) / count;
  const power = 10 ** Math.floor(Math.log10(raw));
  // The round step that is nearest by ratio.
  const rest = raw / power;
  const step = power * (rest < Math.SQRT2 ? 1 : rest < 3.2 ? 2 : rest < 7.1 ? 5 : 10);
  const first = Math.ceil(low / step - 1e-9);
  const last = Math.floor(high / step + 1e-9);
  return Array.from({ length: last - first + 1 }, (_one, i) =>
    Number(((first + i) * step).toPrecision(12)),
  );
}

const label = (tick: number): string => String(tick).replace('-', '−');

const lineOf = ({ stress, line }: Series): string =>
  line === 'dashed' ? `line dashed ${stress}` : `line ${stress}`;

/** The series whose dots are drawn: two theories of one stress share theirs. */
const references = ({ series }: Panel): readonly Series[] =>
  series.filter(({ expected }, s) => series.findIndex((one) => one.expected === expected) === s);

/** From the right: dots last, lines before them. */
function drawLegend(panel: Panel, right: number, y: number): string[] {
  const parts: string[] = [];
  let from = right;
  // The width of a text is not known here; seven to a letter is enough.
  const write = (text: string, mark: (x: number) => string, room: number): void => {
    from -= 7 * text.length + room + 12;
    parts.push(
      mark(from),
      `<text class="soft" x="${from + room}" y="${y + 4}">${escaped(text)}</text>`,
    );
  };
  for (const { stress } of [...references(panel)].reverse()) {
    const dot = (x: number): string =>
      `<circle class="dot ${stress}" cx="${x}" cy="${y}" r="3.5"/>`;
    write('reference', dot, 9);
  }
  for (const series of [...panel.series].reverse()) {
    const line = (x: number): string =>
      `<line class="${lineOf(series)}" x1="${x}" x2="${x + 22}" y1="${y}" y2="${y}"/>`;
    write(series.name, line, 28);
  }
  return parts;
}

function drawPanel(panel: Panel, length: number, offset: number): string {
  // Closer together at both ends, where the curves are steep.
  const stations = Array.from(
    { length: PIECES + 1 },
    (_one, i) => (length / 2) * (1 - Math.cos((Math.PI * i) / PIECES)),
  );
  const lines = panel.series.map(({ computed }) => {
    const at = computed();
    return stations.map(at);
  });
  const shown = [0, ...panel.series.flatMap(({ expected }) => expected), ...lines.flat()];
  const low = Math.min(...shown);
  const high = Math.max(...shown);
  const margin = 0.05 * (high - low);
  const [bottom, top] = [low < 0 ? low - margin : 0, high > 0 ? high + margin : 0];
  const right = WIDTH - RIGHT;
  const floor = offset + PANEL - BOTTOM;
  const toX = (x: number): number => LEFT + ((right - LEFT) * x) / length;
  const toY = (y: number): number =>
    floor - ((floor - offset - TOP) * (y - bottom)) / (top - bottom);
  const parts: string[] = [
    `<text class="ink" x="${LEFT}" y="${offset + 20}">${escaped(panel.title)}</text>`,
    `<text class="soft" x="${LEFT - 8}" y="${offset + 20}" text-anchor="end">MPa</text>`,
  ];
  for (const tick of ticks(bottom, top, 5)) {
    const y = pixel(toY(tick));
    parts.push(
      `<line class="${tick === 0 ? 'axis' : 'rule'}" x1="${LEFT}" x2="${right}" y1="${y}" y2="${y}"/>`,
      `<text class="soft" x="${LEFT - 8}" y="${pixel(toY(tick) + 4)}" text-anchor="end">${label(tick)}</text>`,
    );
  }
  for (const tick of ticks(0, length, 6)) {
    parts.push(
      `<text class="soft" x="${pixel(toX(tick))}" y="${floor + 18}" text-anchor="middle">${label(tick)}</text>`,
    );
  }
  parts.push(
    `<text class="soft" x="${right}" y="${floor + 36}" text-anchor="end">x, mm from the root</text>`,
  );
  panel.series.forEach((series, s) => {
    const points = lines[s]!.map((y, i) => `${pixel(toX(stations[i]!))},${pixel(toY(y))}`);
    parts.push(`<polyline class="${lineOf(series)}" points="${points.join(' ')}"/>`);
  });
  for (const { stress, expected } of references(panel)) {
    expected.forEach((y, i) => {
      const [cx, cy] = [pixel(toX(panel.x[i]!)), pixel(toY(y))];
      parts.push(`<circle class="dot ${stress}" cx="${cx}" cy="${cy}" r="3.5"/>`);
    });
  }
  parts.push(...drawLegend(panel, right, offset + 16));
  return parts.join('\n');
}

export function drawCurves(curve: CurveCase): string {
  const height = PANEL * curve.panels.length;
  const panels = curve.panels.map((panel, i) => drawPanel(panel, curve.length, PANEL * i));
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH} ${height}" role="img" aria-label="${escaped(curve.title)}">
<style>${style}
</style>
<rect class="paper" width="${WIDTH}" height="${height}"/>
${panels.join('\n')}
</svg>
`;
}
