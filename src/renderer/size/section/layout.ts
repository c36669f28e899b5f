/** The section in pixels: outlines, bonds, dimension and labels. Pure geometry; drawing is elsewhere. */
import { displayUnit, toDisplay, withUnit } from '../../../shared/units.ts';
import type { View } from './scale.ts';
import type { Hatch, Stack, WallLayer } from './stack.ts';

export interface Shape {
  readonly part: string;
  readonly hatch: Hatch;
  /** Path of the cut face, to be filled. */
  readonly face: string;
  /** Path of its outline, without the ends that are broken off. */
  readonly outline: string;
  /** Path of the broken end. */
  readonly broken: string;
}

export interface Label {
  readonly x: number;
  readonly y: number;
  readonly text: string;
}

export interface SectionLayout {
  readonly shapes: readonly Shape[];
  readonly bonds: readonly { part: string; x: number; y: number; width: number; height: number }[];
  readonly root: number;
  readonly mouth: number;
  readonly top: number;
  readonly bottom: number;
  /** Height of the dimension line. */
  readonly dimension: number;
  /** Height of the axis; null when flat. */
  readonly axis: number | null;
  /** Where the tube is broken off, and its outside face there: the diameter is measured to it. */
  readonly tubeEnd: { readonly x: number; readonly y: number };
  readonly labels: readonly Label[];
}

const BREAK_LEFT = 12;
const LETTER = 6.3;

/** A freehand break across a wall. */
function breakLine(x: number, top: number, bottom: number): string {
  const third = (bottom - top) / 3;
  return `M${x} ${top - 3} C${x - 4} ${top + third} ${x + 4} ${top + 2 * third} ${x} ${bottom + 3}`;
}

const shown = (name: 'wall' | 'gap' | 'outsideDiameter', value: number): string =>
  toDisplay(name, value);

/** With its unit where lengths have another one. */
const gapText = (gap: number): string =>
  displayUnit('gap') === displayUnit('wall') ? shown('gap', gap) : withUnit('gap', gap);

const wallText = (layer: WallLayer): string =>
  layer.atRoot === layer.atMouth
    ? `${layer.part}, wall ${shown('wall', layer.atRoot)}`
    : `${layer.part}, wall ${shown('wall', layer.atRoot)} to ${shown('wall', layer.atMouth)}`;

interface Placed {
  readonly layer: WallLayer;
  /** Faces at the root and at the mouth, from above. */
  readonly topRoot: number;
  readonly topMouth: number;
  readonly bottomRoot: number;
  readonly bottomMouth: number;
}

function outlineOf(placed: Placed, from: number, root: number, mouth: number, to: number): Shape {
  const { layer, topRoot, topMouth, bottomRoot, bottomMouth } = placed;
  if (layer.role === 'tube') {
    return {
      part: layer.part,
      hatch: layer.hatch,
      face: `M${root} ${topRoot} H${to} V${bottomRoot} H${root} Z`,
      outline: `M${to} ${topRoot} H${root} V${bottomRoot} H${to}`,
      broken: breakLine(to, topRoot, bottomRoot),
    };
  }
  const path = `M${from} ${topRoot} H${root} L${mouth} ${topMouth} V${bottomMouth} L${root} ${bottomRoot} H${from}`;
  return {
    part: layer.part,
    hatch: layer.hatch,
    face: `${path} Z`,
    outline: path,
    broken: breakLine(from, topRoot, bottomRoot),
  };
}

/** Two sleeve walls join in solid metal before the root: one outline around both prongs. */
function forkOf(upper: Placed, lower: Placed, from: number, root: number, mouth: number): Shape[] {
  const gum = root - 2;
  const outline =
    `M${from} ${upper.topRoot} H${root} L${mouth} ${upper.topMouth} V${upper.bottomMouth} L${gum} ${upper.bottomRoot} ` +
    `V${lower.topRoot} L${mouth} ${lower.topMouth} V${lower.bottomMouth} L${root} ${lower.bottomRoot} H${from}`;
  const whole: Shape = {
    part: `${upper.layer.part} and ${lower.layer.part}`,
    hatch: upper.layer.hatch,
    face: `${outline} Z`,
    outline,
    broken: breakLine(from, upper.topRoot, lower.bottomRoot),
  };
  if (upper.layer.hatch === lower.layer.hatch) return [whole];
  const prong: Shape = {
    ...whole,
    part: lower.layer.part,
    hatch: lower.layer.hatch,
    face: `M${gum} ${lower.topRoot} L${mouth} ${lower.topMouth} V${lower.bottomMouth} L${root} ${lower.bottomRoot} H${gum} Z`,
    broken: '',
  };
  return [whole, prong];
}

export interface Frame {
  readonly width: number;
  readonly height: number;
}

/** Room that the layers may take in a drawing of this height. */
export const roomForLayers = (stack: Stack, height: number): number =>
  Math.max(
    30,
    height - 22 - (hasLabelBelow(stack) ? 16 : 0) - 30 - (stack.diameter === null ? 4 : 24),
  );

/** A sleeve wall at the bottom is named under it. */
const hasLabelBelow = (stack: Stack): boolean => {
  const last = stack.layers.at(-1);
  return last?.kind === 'wall' && last.role === 'sleeve';
};

export function layOut(stack: Stack, overlap: number, view: View, frame: Frame): SectionLayout {
  const root = view.left;
  const mouth = root + overlap * view.scale;
  // A mouth that is dragged far out takes the tube's run-out along, off the sheet if need be.
  const end = Math.max(mouth + 22, frame.width - (stack.diameter === null ? 14 : 46));
  const walls: Placed[] = [];
  const bonds: SectionLayout['bonds'][number][] = [];
  const total = stack.layers.reduce(
    (sum, layer) =>
      sum +
      view.scale *
        (layer.kind === 'bond'
          ? layer.gap * view.gapFactor
          : Math.max(layer.atRoot, layer.atMouth) * view.wallFactor),
    0,
  );
  const room = roomForLayers(stack, frame.height);
  const top = 22 + Math.max(0, (room - total) / 2);

  let y = top;
  for (const layer of stack.layers) {
    if (layer.kind === 'bond') {
      const height = layer.gap * view.scale * view.gapFactor;
      bonds.push({ part: layer.part, x: root, y, width: mouth - root, height });
      y += height;
      continue;
    }
    const thick = Math.max(layer.atRoot, layer.atMouth) * view.scale * view.wallFactor;
    const rootGone = thick - layer.atRoot * view.scale * view.wallFactor;
    const mouthGone = thick - layer.atMouth * view.scale * view.wallFactor;
    const isTop = layer.taper === 'top';
    walls.push({
      layer,
      topRoot: y + (isTop ? rootGone : 0),
      topMouth: y + (isTop ? mouthGone : 0),
      bottomRoot: y + thick - (isTop ? 0 : rootGone),
      bottomMouth: y + thick - (isTop ? 0 : mouthGone),
    });
    y += thick;
  }
  const bottom = y;
  const sleeves = walls.filter(({ layer }) => layer.role === 'sleeve');
  const tube = walls.find(({ layer }) => layer.role === 'tube');
  const [upper, lower] = sleeves;
  const sleeveShapes =
    upper && lower
      ? forkOf(upper, lower, BREAK_LEFT, root, mouth)
      : sleeves.map((placed) => outlineOf(placed, BREAK_LEFT, root, mouth, end));
  const tubeShapes = tube ? [outlineOf(tube, BREAK_LEFT, root, mouth, end)] : [];

  const below = hasLabelBelow(stack);
  const dimension = bottom + (below ? 16 : 0) + 20;
  return {
    shapes: [...sleeveShapes, ...tubeShapes],
    bonds,
    root,
    mouth,
    top,
    bottom,
    dimension,
    axis: stack.diameter === null ? null : Math.max(dimension + 16, frame.height - 9),
    tubeEnd: { x: end, y: tube?.topRoot ?? top },
    labels: labelsOf({ stack, walls, bonds, root, mouth, top, bottom, end }),
  };
}

interface LabelSource {
  readonly stack: Stack;
  readonly walls: readonly Placed[];
  readonly bonds: SectionLayout['bonds'];
  readonly root: number;
  readonly mouth: number;
  readonly top: number;
  readonly bottom: number;
  readonly end: number;
}

/** Sleeve walls are named over the overlap, tube and gaps right of the mouth, where there is room. */
function labelsOf({ stack, walls, bonds, root, mouth, top, bottom, end }: LabelSource): Label[] {
  const labels: Label[] = [];
  const tube = walls.find(({ layer }) => layer.role === 'tube');
  const right = mouth + 14;
  const add = (x: number, y: number, ...texts: readonly string[]): void => {
    const text = texts.find(({ length }) => x + length * LETTER <= end + 40);
    if (text !== undefined) labels.push({ x, y, text });
  };
  for (const placed of walls) {
    if (placed.layer.role !== 'sleeve') continue;
    const isTop = placed.layer.taper === 'top';
    add(root + 6, isTop ? top - 7 : bottom + 15, wallText(placed.layer));
  }
  if (!tube) return labels;
  const wall = shown('wall', tube.layer.atRoot);
  const diameter = stack.diameter === null ? '' : ` ${shown('outsideDiameter', stack.diameter)} ×`;
  // Figures in inches are long: the diameter stands at the axis too.
  const tubeTexts = [`${tube.layer.part}${diameter} ${wall}`, `${tube.layer.part}, wall ${wall}`];
  let aboveY = tube.topRoot - 7;
  let belowY = tube.bottomRoot + 15;
  for (const layer of stack.layers) {
    if (layer.kind !== 'bond') continue;
    const bond = bonds.find(({ part }) => part === layer.part);
    const isAbove = bond !== undefined && bond.y < tube.topRoot;
    const text = `${layer.part} ${gapText(layer.gap)}`;
    add(right, isAbove ? aboveY : belowY, text);
    if (isAbove) aboveY -= 16;
    else belowY += 16;
  }
  // The tube is named on the side that has no gap; on the inner side, under the gap, when both have.
  const free = bonds.length > 1 || aboveY !== tube.topRoot - 7 ? belowY : aboveY;
  add(right, free, ...tubeTexts);
  return labels;
}
