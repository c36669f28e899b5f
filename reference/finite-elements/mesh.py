"""Structured meshes of eight-node quadrilaterals of a bonded joint in the plane (radius, axial).

The layers lie one on another from the inside out. Each runs from its own start to its own end along
the axis, so that the bond is square-ended and the run-outs are single walls. Element edges lie on
every station and in the middle of every bond.
"""

from dataclasses import dataclass

import numpy as np

GRADING = 0.1  # growth of the element length with the distance from an end of the overlap
LONGEST = 0.4  # mm, within the overlap
LONGEST_RUN_OUT = 2.0


@dataclass
class Mesh:
    xy: np.ndarray  # nodes: radius (or thickness coordinate), axial
    elements: np.ndarray  # 8 nodes: corners counter-clockwise from the inner root corner, then mid-sides
    layer: np.ndarray  # layer of each element
    column: np.ndarray  # axial column of each element
    middle: dict  # bond layer -> nodes of its middle, root to mouth
    eighth: dict  # the same, an eighth of the gap further out
    faces: dict  # layer -> {"start": nodes, "end": nodes, "endElements": elements}
    gap_rows: dict  # bond layer -> number of elements across


def cut(a, b, size):
    """Breakpoints from a to b, each element no longer than size at its nearer end."""
    points = [a]
    while points[-1] < b - 1e-9:
        x = points[-1]
        points.append(x + size(x))
    points = np.array(points)
    return a + (points - a) * (b - a) / (points[-1] - a)


def axial_lines(stations, overlap, first, finer, before, after):
    """Corner lines along the axis: graded to both ends of the overlap, one on every station."""

    def size(x):
        near = min(abs(x), abs(overlap - x))
        outside = x < 0 or x > overlap
        return min(first + GRADING * near, LONGEST_RUN_OUT if outside else LONGEST) / finer

    marks = sorted({0.0, overlap, *stations})
    lines = []
    for a, b in zip(marks, marks[1:]):
        allowed = min(size(a), size(b)) if a > 0 and b < overlap else first / finer
        pieces = max(1, int(np.ceil((b - a) / allowed - 1e-6)))
        lines.extend(a + (b - a) * np.arange(pieces) / pieces)
    lines.append(overlap)
    left = -cut(0, before, size)[::-1][:-1] if before else np.array([])
    right = overlap + cut(0, after, size)[1:] if after else np.array([])
    return np.concatenate([left, lines, right])


def wall_fractions(thickness, first, longest, inner_bond, outer_bond):
    """Corner lines through a wall as fractions of it: graded to the faces that are bonded."""

    def size(s):
        near = min(s if inner_bond else np.inf, thickness - s if outer_bond else np.inf)
        return min(first + 0.25 * near, longest)

    if inner_bond and outer_bond:
        half = cut(0, thickness / 2, size) / thickness
        return np.concatenate([half, 1 - half[-2::-1]])
    if inner_bond:
        return cut(0, thickness, size) / thickness
    return 1 - cut(0, thickness, lambda s: size(thickness - s))[::-1] / thickness


def build(case, finer):
    """Mesh of a case; `finer`, a whole number or 1/4 or 1/2, divides every element length."""
    layers = case["layers"]
    gaps = [a["thickness"][0] for a in layers if a["kind"] == "bond"]
    first = min(gaps) / 20
    length = case["overlap"]
    x = axial_lines(
        case["stations"],
        length,
        first,
        finer,
        -min(a["start"] for a in layers),
        max(a["end"] for a in layers) - length,
    )
    across = round(8 * finer)
    fractions = []
    for j, layer in enumerate(layers):
        if layer["kind"] == "bond":
            fractions.append(np.linspace(0, 1, across + 1))
        else:
            t = max(layer["thickness"])
            size = min(gaps) / 8 / finer
            fractions.append(wall_fractions(t, size, 0.25 / finer, j > 0, j < len(layers) - 1))

    xs = np.empty(2 * len(x) - 1)
    xs[::2], xs[1::2] = x, (x[1:] + x[:-1]) / 2
    clipped = np.clip(xs / length, 0, 1)
    radius = np.full(len(xs), case["inner"])
    rows, row_layer = [], []
    for j, (layer, f) in enumerate(zip(layers, fractions)):
        root, mouth = layer["thickness"]
        thickness = root + (mouth - root) * clipped
        fine = np.empty(2 * len(f) - 1)
        fine[::2], fine[1::2] = f, (f[1:] + f[:-1]) / 2
        rows.extend(radius + s * thickness for s in fine[(0 if j == 0 else 1) :])
        row_layer.extend([j] * (len(f) - 1))
        radius = radius + thickness
    grid = np.array(rows)  # radius of grid row, grid column

    elements, element_layer, column = [], [], []
    at = np.arange(grid.size).reshape(grid.shape)
    offsets = [(0, 0), (2, 0), (2, 2), (0, 2), (1, 0), (2, 1), (1, 2), (0, 1)]
    centre = xs[1::2]
    for e, j in enumerate(row_layer):
        cols = np.flatnonzero((centre > layers[j]["start"]) & (centre < layers[j]["end"]))
        elements.append(np.stack([at[2 * e + a, 2 * cols + b] for a, b in offsets], axis=1))
        element_layer.extend([j] * len(cols))
        column.extend(cols)
    elements = np.concatenate(elements)
    used, elements = np.unique(elements, return_inverse=True)
    elements = elements.reshape(-1, 8)
    xy = np.stack([grid.ravel()[used], np.tile(xs, len(rows))[used]], axis=1)
    number = np.full(grid.size, -1)
    number[used] = np.arange(len(used))
    element_layer, column = np.array(element_layer), np.array(column)

    middle, eighth, faces, gap_rows = {}, {}, {}, {}
    row_layer = np.array(row_layer)
    for j, layer in enumerate(layers):
        own = np.flatnonzero(row_layer == j)
        span = np.flatnonzero((xs > layer["start"] - 1e-9) & (xs < layer["end"] + 1e-9))
        through = np.arange(2 * own[0], 2 * own[-1] + 3)
        mine = np.flatnonzero(element_layer == j)
        faces[j] = {
            "start": number[at[through, span[0]]],
            "end": number[at[through, span[-1]]],
            "endElements": mine[column[mine] == column[mine].max()],
        }
        if layer["kind"] == "bond":
            middle[j] = number[at[2 * own[0] + across, span]]
            eighth[j] = number[at[2 * own[0] + across + across // 4, span]]
            gap_rows[j] = across
    return Mesh(xy, elements, element_layer, column, middle, eighth, faces, gap_rows)
