"""Valid random shapes for every property test: built so that they are valid, never filtered junk.

`regions()` is the whole zoo. The parametric shapes know their closed forms: area, perimeter, the angles of
their corners, and how wide they are, so a fit of them can be worked out on paper.
"""

from __future__ import annotations

import math
import os
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from itertools import pairwise

import numpy as np
import shapely
from hypothesis import settings
from hypothesis import strategies as st
from numpy.typing import NDArray
from shapely.geometry.base import BaseGeometry

from inlayfit.geometry.flatten import flatten
from inlayfit.geometry.path import Path
from inlayfit.geometry.region import Region
from inlayfit.geometry.transform import Transform
from tests.oracles import fillet_area, fillet_shortening

Array = NDArray[np.float64]

_RIGHT = math.pi / 2


def examples(dev: int, ci: int) -> settings:
    """So many examples in everyday runs, and in the thorough profile."""
    return settings(max_examples=ci if os.environ.get("HYPOTHESIS_PROFILE") == "ci" else dev)


def lengths(smallest: float, largest: float) -> st.SearchStrategy[float]:
    """Lengths in a range, to a tenth of a micrometre: as fine as anyone measures."""
    return st.integers(round(smallest * 1e4), round(largest * 1e4)).map(lambda n: n / 1e4)


# --- random regions ------------------------------------------------------------------------------------


@st.composite
def star_rings(draw: st.DrawFn, *, radius: float = 20.0, most: int = 14) -> Array:
    """A polygon seen whole from the origin: increasing angles less than half a turn apart, any radii."""
    count = draw(st.integers(5, most))
    shares = np.array(draw(st.lists(st.floats(1.0, 3.0), min_size=count, max_size=count)))
    angles = 2 * math.pi * np.cumsum(shares) / shares.sum()
    radii = radius * np.array(draw(st.lists(st.floats(0.35, 1.0), min_size=count, max_size=count)))
    return np.column_stack([radii * np.cos(angles), radii * np.sin(angles)])


def stars(*, radius: float = 20.0) -> st.SearchStrategy[Region]:
    """Star polygons: sharp corners, convex and concave."""
    return star_rings(radius=radius).map(Region.of_ring)


@st.composite
def rounded(draw: st.DrawFn, *, radius: float = 20.0) -> Region:
    """Star polygons with every corner rounded by chords: many vertices, no corner."""
    ring = draw(star_rings(radius=radius))
    by = draw(lengths(0.3, 3.0))
    shape = shapely.Polygon(ring)
    for step in (-by, 2 * by, -by):
        shape = shapely.buffer(shape, step, quad_segs=24)
    region = Region.of(shape)
    return region if not region.is_empty else Region.of_ring(ring)


@st.composite
def nested(draw: st.DrawFn, *, radius: float = 25.0) -> Region:
    """A star with a hole of its own form, and sometimes an island in the hole, by shrinking it."""
    ring = draw(star_rings(radius=radius))
    hole = draw(st.floats(0.3, 0.8))
    with_hole = shapely.Polygon(ring, [ring * hole])
    if not draw(st.booleans()):
        return Region.of(with_hole)
    island = shapely.Polygon(ring * hole * draw(st.floats(0.3, 0.8)))
    return Region.of(shapely.union(with_hole, island))


@st.composite
def glyphs(draw: st.DrawFn, *, height: float = 30.0) -> Region:
    """Letter-like: a few straight strokes with square ends on a 3 × 4 grid, and sometimes a bowl."""
    nodes = [(x * height / 3, y * height / 3) for x in range(3) for y in range(4)]
    order = draw(st.permutations(nodes))
    count = draw(st.integers(2, 5))
    pieces: list[BaseGeometry] = []
    for start, end in pairwise(order[: count + 1]):
        width = draw(lengths(height / 12, height / 5))
        line = shapely.LineString([start, end])
        pieces.append(shapely.buffer(line, width / 2, cap_style="square", join_style="mitre"))
    if draw(st.booleans()):
        outer = draw(lengths(height / 6, height / 3))
        disk = shapely.buffer(shapely.Point(order[0]), outer, quad_segs=32)
        pieces.append(disk.difference(shapely.buffer(shapely.Point(order[0]), outer * 0.55, quad_segs=32)))
    return Region.of(shapely.union_all(pieces))


def regions() -> st.SearchStrategy[Region]:
    """Any of the above."""
    return st.one_of(stars(), rounded(), nested(), glyphs())


def turns() -> st.SearchStrategy[float]:
    """Angles in radians, to a millionth."""
    return st.floats(-math.pi, math.pi).map(lambda angle: round(angle, 6))


@st.composite
def rigid_motions(draw: st.DrawFn) -> Transform:
    """A turn, a shift, and sometimes a mirror image."""
    motion = Transform.turn(draw(turns()))
    if draw(st.booleans()):
        motion = motion.after(Transform.mirror_x())
    return Transform.shift(draw(st.floats(-100, 100)), draw(st.floats(-100, 100))).after(motion)


# --- paths ---------------------------------------------------------------------------------------------


@st.composite
def arc_paths(draw: st.DrawFn, *, closed: bool = True) -> Path:
    """Star polygons whose sides may be arcs, of up to almost half a turn."""
    ring = draw(star_rings(most=8))
    count = len(ring) if closed else len(ring) - 1
    bulge = st.one_of(st.just(0.0), st.floats(0.01, 0.9), st.floats(-0.9, -0.01))
    return Path(ring, np.array(draw(st.lists(bulge, min_size=count, max_size=count))), closed)


# --- shapes whose answers are known on paper -----------------------------------------------------------


@dataclass(frozen=True)
class KnownShape:
    """A shape with its closed forms.

    Attributes:
        name: which of the twelve.
        region: the shape; its arcs are flattened at 0.1 µm so that they count as true ones.
        area, perimeter: exact.
        convex, concave: interior angles of its sharp corners, the concave ones measured in the material
            outside (so both lie below half a turn).
        widest_cutter: largest radius for which every corner gets its own fillet and nothing is lost.
        euler: pieces less holes.
    """

    name: str
    region: Region
    area: float
    perimeter: float
    convex: tuple[float, ...]
    concave: tuple[float, ...]
    widest_cutter: float
    euler: int = 1

    def as_cut(self, radius: float) -> tuple[float, float]:
        """Area and perimeter of the opening by a disk: each convex corner becomes a fillet."""
        lost = sum(fillet_area(angle, radius) for angle in self.convex)
        shorter = sum(fillet_shortening(angle, radius) for angle in self.convex)
        return self.area - lost, self.perimeter - shorter

    def matched(self, pocket_radius: float, plug_radius: float) -> tuple[float, float]:
        """The same, with each concave corner filled to a radius too."""
        area, perimeter = self.as_cut(pocket_radius)
        gained = sum(fillet_area(angle, plug_radius) for angle in self.concave)
        shorter = sum(fillet_shortening(angle, plug_radius) for angle in self.concave)
        return area + gained, perimeter - shorter


def _ring_of(path: Path) -> Array:
    return flatten(path, 0.0001)


def _polygon(
    name: str, corners: Sequence[tuple[float, float]], widest: float, *, holes: Sequence[Array] = ()
) -> KnownShape:
    """A polygon with straight sides; angles by the turn at each corner, area by the shoelace formula."""
    ring = np.array(corners, dtype=float)
    before, after = np.roll(ring, 1, axis=0) - ring, np.roll(ring, -1, axis=0) - ring
    angles = (np.arctan2(before[:, 1], before[:, 0]) - np.arctan2(after[:, 1], after[:, 0])) % (2 * math.pi)
    convex = tuple(float(a) for a in angles if a < math.pi)
    concave = [float(2 * math.pi - a) for a in angles if a > math.pi]
    area = shapely.Polygon(ring).area
    perimeter = float(np.hypot(after[:, 0], after[:, 1]).sum())
    for hole in holes:  # rectangles only
        concave += [_RIGHT] * 4
        polygon = shapely.Polygon(hole)
        area, perimeter = area - polygon.area, perimeter + polygon.length
    region = Region.of_ring(ring, holes)
    return KnownShape(name, region, area, perimeter, convex, tuple(concave), widest, 1 - len(holes))


@st.composite
def rectangle(draw: st.DrawFn) -> KnownShape:
    a, b = draw(lengths(8, 80)), draw(lengths(8, 80))
    return _polygon("rectangle", [(0, 0), (a, 0), (a, b), (0, b)], min(a, b) / 2.5)


@st.composite
def ell(draw: st.DrawFn) -> KnownShape:
    a, b = draw(lengths(30, 80)), draw(lengths(30, 80))
    w, h = draw(lengths(10, a - 14)), draw(lengths(10, b - 14))
    corners = [(0.0, 0.0), (a, 0), (a, h), (w, h), (w, b), (0, b)]
    return _polygon("L", corners, min(w, h, a - w, b - h) / 2.5)


@st.composite
def tee(draw: st.DrawFn) -> KnownShape:
    a, h, w, b = draw(lengths(40, 80)), draw(lengths(10, 20)), draw(lengths(10, 16)), draw(lengths(34, 60))
    x = draw(lengths(11, a - w - 11))
    corners = [(0.0, b - h), (x, b - h), (x, 0), (x + w, 0), (x + w, b - h), (a, b - h), (a, b), (0, b)]
    return _polygon("T", corners, min(h, w, x, a - w - x, b - h) / 2.5)


@st.composite
def channel(draw: st.DrawFn) -> KnownShape:
    a, b, w, h = draw(lengths(36, 80)), draw(lengths(30, 70)), draw(lengths(10, 12)), draw(lengths(10, 16))
    corners = [(0.0, 0.0), (a, 0), (a, b), (a - w, b), (a - w, h), (w, h), (w, b), (0, b)]
    return _polygon("U", corners, min(w, h, a - 2 * w, b - h) / 2.5)


@st.composite
def cross(draw: st.DrawFn) -> KnownShape:
    w, v = draw(lengths(10, 25)), draw(lengths(10, 25))
    left, r, d, u = (draw(lengths(10, 30)) for _ in range(4))
    corners = [(0.0, -d), (w, -d), (w, 0), (w + r, 0), (w + r, v), (w, v), (w, v + u), (0, v + u), (0, v)]
    corners += [(-left, v), (-left, 0), (0, 0)]
    return _polygon("cross", corners, min(w, v, left, r, d, u) / 2.5)


@st.composite
def triangle(draw: st.DrawFn) -> KnownShape:
    a, x, h = draw(lengths(30, 80)), draw(lengths(5, 60)), draw(lengths(20, 70))
    corners = [(0.0, 0.0), (a, 0), (min(x, a), h)]
    polygon = shapely.Polygon(corners)
    return _polygon("triangle", corners, 0.8 * 2 * polygon.area / polygon.length)


@st.composite
def regular(draw: st.DrawFn) -> KnownShape:
    n, size = draw(st.integers(3, 12)), draw(lengths(15, 50))
    angles = 2 * math.pi * np.arange(n) / n
    corners = [
        (float(x), float(y)) for x, y in zip(size * np.cos(angles), size * np.sin(angles), strict=True)
    ]
    return _polygon("regular polygon", corners, 0.8 * size * math.cos(math.pi / n))


@st.composite
def rhomboid(draw: st.DrawFn) -> KnownShape:
    a, h, lean = draw(lengths(25, 80)), draw(lengths(12, 60)), draw(lengths(-30, 30))
    corners = [(0.0, 0.0), (a, 0), (a + lean, h), (lean, h)]
    width = a * h / math.hypot(h, lean)
    return _polygon("rhomboid", corners, min(h, width) / 2.6)


@st.composite
def frame(draw: st.DrawFn) -> KnownShape:
    wall = draw(lengths(10, 20))
    w, h = draw(lengths(8, 40)), draw(lengths(8, 40))
    hole = np.array([(wall, wall), (wall + w, wall), (wall + w, wall + h), (wall, wall + h)])
    a, b = w + 2 * wall, h + 2 * wall
    widest = min(wall, w, h) / 2.5
    return _polygon("frame", [(0.0, 0.0), (a, 0), (a, b), (0, b)], widest, holes=[hole])


@st.composite
def circle(draw: st.DrawFn) -> KnownShape:
    r = draw(lengths(3, 60))
    region = Region.of_ring(_ring_of(Path.circle((0, 0), r)))
    return KnownShape("circle", region, math.pi * r**2, 2 * math.pi * r, (), (), r / 1.2)


@st.composite
def annulus(draw: st.DrawFn) -> KnownShape:
    inner, wall = draw(lengths(3, 30)), draw(lengths(8, 30))
    r = inner + wall
    outer_ring, inner_ring = (_ring_of(Path.circle((0, 0), radius)) for radius in (r, inner))
    region = Region.of_ring(outer_ring, [inner_ring])
    area, perimeter = math.pi * (r**2 - inner**2), 2 * math.pi * (r + inner)
    return KnownShape("annulus", region, area, perimeter, (), (), min(wall / 2.5, inner / 1.2), euler=0)


@st.composite
def slot(draw: st.DrawFn) -> KnownShape:
    r, length = draw(lengths(3, 20)), draw(lengths(1, 80))
    path = Path(np.array([(0, -r), (length, -r), (length, r), (0, r)]), np.array([0.0, 1, 0, 1]))
    area, perimeter = 2 * r * length + math.pi * r**2, 2 * length + 2 * math.pi * r
    return KnownShape("slot", Region.of_ring(_ring_of(path)), area, perimeter, (), (), r / 1.2)


PARAMETRIC: dict[str, Callable[[], st.SearchStrategy[KnownShape]]] = {
    "rectangle": rectangle,
    "L": ell,
    "T": tee,
    "U": channel,
    "cross": cross,
    "triangle": triangle,
    "regular polygon": regular,
    "rhomboid": rhomboid,
    "frame": frame,
    "circle": circle,
    "annulus": annulus,
    "slot": slot,
}
"""Twelve shapes that are known on paper."""
