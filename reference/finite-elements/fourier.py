"""Finite elements of revolution for one harmonic, written from the strain energy alone.

Displacements: radial U cos(n theta), axial W cos(n theta), tangential V sin(n theta); n = 0 is the
axisymmetric problem, n = 1 is bending. Eight-node quadrilaterals, three by three integration points;
stresses are taken at two by two points, extrapolated and averaged at the nodes within one material.
Shares the mesh and the cases with the CalculiX runs, and no mechanics.
"""

import numpy as np
from scipy.sparse import coo_matrix
from scipy.sparse.linalg import splu

from materials import stiffness

CORNERS = np.array([(-1, -1), (1, -1), (1, 1), (-1, 1), (0, -1), (1, 0), (0, 1), (-1, 0)], float)


def shape(xi, eta):
    """The eight shape functions and their derivatives along xi (radial) and eta (axial)."""
    n, dxi, deta = np.zeros(8), np.zeros(8), np.zeros(8)
    for k, (a, b) in enumerate(CORNERS):
        if a and b:
            n[k] = (1 + a * xi) * (1 + b * eta) * (a * xi + b * eta - 1) / 4
            dxi[k] = a * (1 + b * eta) * (2 * a * xi + b * eta) / 4
            deta[k] = b * (1 + a * xi) * (a * xi + 2 * b * eta) / 4
        elif a == 0:
            n[k] = (1 - xi**2) * (1 + b * eta) / 2
            dxi[k] = -xi * (1 + b * eta)
            deta[k] = b * (1 - xi**2) / 2
        else:
            n[k] = (1 + a * xi) * (1 - eta**2) / 2
            dxi[k] = a * (1 - eta**2) / 2
            deta[k] = -eta * (1 + a * xi)
    return n, dxi, deta


def strain_matrix(mesh, n, xi, eta):
    """Strains (rr, xx, tt, rx, rt, xt) from (U, W, V) of each node; also r times the Jacobian."""
    s, dxi, deta = shape(xi, eta)
    xy = mesh.xy[mesh.elements]
    jac = np.stack([np.einsum("k,eki->ei", d, xy) for d in (dxi, deta)], axis=1)
    det = np.linalg.det(jac)
    grad = np.linalg.solve(jac, np.broadcast_to(np.stack([dxi, deta]), (len(xy), 2, 8)))
    r = xy[:, :, 0] @ s
    dr, dx, over = grad[:, 0], grad[:, 1], s / r[:, None]
    b = np.zeros((len(xy), 6, 8, 3))
    b[:, 0, :, 0] = dr
    b[:, 1, :, 1] = dx
    b[:, 2, :, 0], b[:, 2, :, 2] = over, n * over
    b[:, 3, :, 0], b[:, 3, :, 1] = dx, dr
    b[:, 4, :, 0], b[:, 4, :, 2] = -n * over, dr - over
    b[:, 5, :, 1], b[:, 5, :, 2] = -n * over, dx
    return b.reshape(len(xy), 6, 24), det * r


def end_load(case, mesh, n, factor):
    """Nodal forces of the traction on the tube's loaded end: uniform, or in proportion to r cos(theta)."""
    force = np.zeros((len(mesh.xy), 3))
    a, b = (mesh.xy[mesh.faces[case["tube"]]["end"], 0][i] for i in (0, -1))
    area, second = np.pi * (b**2 - a**2), np.pi * (b**4 - a**4) / 4
    g, w = np.polynomial.legendre.leggauss(3)
    for e in mesh.faces[case["tube"]]["endElements"]:
        nodes = mesh.elements[e][[3, 6, 2]]
        r0, r1 = mesh.xy[nodes[0], 0], mesh.xy[nodes[2], 0]
        for xi, weight in zip(g, w):
            r = (r0 + r1) / 2 + xi * (r1 - r0) / 2
            traction = case["load"] / area if n == 0 else case["moment"] * r / second
            s = np.array([xi * (xi - 1) / 2, 1 - xi**2, xi * (xi + 1) / 2])
            force[nodes, 1] += factor * traction * s * r * weight * (r1 - r0) / 2
    return force


def solve(case, mesh, n):
    """Nodal displacements of one harmonic."""
    factor = 2 * np.pi if n == 0 else np.pi  # integral of cos^2(n theta)
    laws = [stiffness(layer["material"]) for layer in case["layers"]]
    c = np.array([law[0] for law in laws])[mesh.layer]
    thermal = np.array([[*law[1], 0, 0, 0] for law in laws])[mesh.layer]
    thermal = thermal * (case["temperatureChange"] if n == 0 else 0.0)
    k = np.zeros((len(c), 24, 24))
    f = np.zeros((len(c), 24))
    g, w = np.polynomial.legendre.leggauss(3)
    for xi, wi in zip(g, w):
        for eta, wj in zip(g, w):
            b, volume = strain_matrix(mesh, n, xi, eta)
            stress = np.einsum("eij,ejk->eik", c, b)
            weight = factor * wi * wj * volume
            k += np.einsum("eji,ejk,e->eik", b, stress, weight, optimize=True)
            f += np.einsum("eik,ei,e->ek", stress, thermal, weight, optimize=True)
    dofs = (3 * mesh.elements[:, :, None] + np.arange(3)).reshape(-1, 24)
    size = 3 * len(mesh.xy)
    rows, cols = np.repeat(dofs, 24, axis=1).ravel(), np.tile(dofs, (1, 24)).ravel()
    matrix = coo_matrix((k.ravel(), (rows, cols)), shape=(size, size)).tocsc()
    load = np.bincount(dofs.ravel(), f.ravel(), size) + end_load(case, mesh, n, factor).ravel()

    fixed = set(3 * np.arange(len(mesh.xy)) + 2) if n == 0 else set()
    for j, what in case["held"].items():
        nodes = mesh.faces[j]["start"]
        fixed |= {3 * nodes[0] + 1} if what == "one node" else set(3 * nodes + 1)
        if "radial" in what:
            fixed |= set(3 * nodes) | set(3 * nodes + 2)
        elif n == 1:
            fixed |= {3 * nodes[0]}  # the rigid sideways motion
    free = np.setdiff1d(np.arange(size), np.array(sorted(fixed)))
    factored = splu(
        matrix[free][:, free],
        permc_spec="MMD_AT_PLUS_A",
        diag_pivot_thresh=0.0,
        options={"SymmetricMode": True},
    )
    moved = np.zeros(size)
    moved[free] = factored.solve(load[free])
    return moved, c, thermal


def stresses(case, mesh, n):
    """Stresses (rr, xx, tt, rx, rt, xt) at two by two points of each element, radial position
    fastest, and extrapolated to its eight nodes."""
    moved, c, thermal = solve(case, mesh, n)
    g = 1 / np.sqrt(3)
    points = [(-g, -g), (g, -g), (-g, g), (g, g)]
    own = moved[(3 * mesh.elements[:, :, None] + np.arange(3)).reshape(-1, 24)]
    sampled = []
    for xi, eta in points:
        b, _ = strain_matrix(mesh, n, xi, eta)
        sampled.append(np.einsum("eij,ej->ei", c, np.einsum("eik,ek->ei", b, own) - thermal))
    at = CORNERS / g
    weights = np.array(
        [(1 + np.sign(p) * at[:, 0]) * (1 + np.sign(q) * at[:, 1]) / 4 for p, q in points]
    )
    sampled = np.array(sampled)
    return sampled.transpose(1, 0, 2), np.einsum("pk,pei->eki", weights, sampled)


def line_stresses(mesh, j, nodal, line):
    """Average over the elements of bond j that share each node of a line in it."""
    mine = mesh.layer == j
    nodes, size = mesh.elements[mine].ravel(), len(mesh.xy)
    count = np.bincount(nodes, minlength=size)[line]
    return np.stack(
        [np.bincount(nodes, nodal[mine][:, :, i].ravel(), size)[line] / count for i in range(6)],
        axis=1,
    )
