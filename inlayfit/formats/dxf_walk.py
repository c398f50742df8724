"""Walk through model space and its blocks, and put each entity where it lies.

A block reference maps its block by a 4 × 4 matrix (scale, mirror, turn, move, in the plane of its
extrusion vector); references nest, so matrices multiply. An entity's own plane comes first. Seen from
above, both together are one affine map of the plane, which `Transform` applies without error.

What may grow without end is counted before it is walked: a file of a few hundred bytes can ask for 10^18
copies of a line.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field, replace
from itertools import pairwise
from pathlib import Path as FilePath
from typing import Any

import numpy as np
from ezdxf.document import Drawing as DxfDocument
from ezdxf.lldxf.const import DXFError
from ezdxf.math import OCS, Matrix44, Vec3

from inlayfit.drawing import Figure, FillRule, Role
from inlayfit.errors import HostileFileError
from inlayfit.formats.dxf_hatch import DrawnLines, hatch_shapes
from inlayfit.formats.dxf_layers import LayerBook, is_reader_style
from inlayfit.formats.dxf_notes import SKIPPED, WITHOUT_WORD, Notes
from inlayfit.formats.dxf_shapes import MAKERS, UP, Shape, shape_of, solid_shape
from inlayfit.geometry.path import Path
from inlayfit.geometry.transform import Transform
from inlayfit.wording import Worded

MOST_ENTITIES = 250_000
"""More than this, copies by blocks counted, is refused."""
_MOST_VISITS = 2 * MOST_ENTITIES  # blocks that lead back to themselves are counted too low
FARTHEST_MM = 1e9
"""A thousand kilometres: survey coordinates stay below, and a double still holds a tenth of a micrometre."""
_DEEPEST = 64
_FLAT = 1e-6
_FILLED = frozenset({"HATCH", "MPOLYGON", "SOLID", "TRACE"})
_BROKEN = (DXFError, ValueError, TypeError, KeyError, IndexError, AttributeError, ArithmeticError)


@dataclass(frozen=True, slots=True)
class Place:
    """Where entities are drawn, and what they inherit.

    Attributes:
        matrix: from the coordinates of the block to millimetres in space.
        flat: the same for what lies in the plane z = 0 and faces up, as a map of the plane.
        layer: what layer "0" stands for; None in model space.
        linetype: what a line style by block stands for.
        name: the block's name; empty in model space.
        hidden: whether the reference itself lies on a hidden layer.
    """

    matrix: Matrix44
    flat: Transform
    layer: str | None = None
    linetype: str = "CONTINUOUS"
    name: str = ""
    blocks: tuple[str, ...] = ()
    hidden: bool = False

    @classmethod
    def at(cls, matrix: Matrix44) -> Place:
        """A place in model space."""
        return cls(matrix, _flat_map(matrix, Vec3(1, 0, 0), Vec3(0, 1, 0), Vec3(0, 0, 0)))

    def plane(self, shape: Shape) -> Transform:
        """The map from a shape's plane to the drawing."""
        if shape.height == 0 and shape.normal == UP:
            return self.flat
        ocs = OCS(shape.normal)
        return _flat_map(self.matrix, Vec3(ocs.ux), Vec3(ocs.uy), Vec3(ocs.uz) * shape.height)

    def lies_flat(self, shape: Shape) -> bool:
        """Whether a shape's plane is parallel to the drawing's."""
        if not shape.is_flat:
            return False
        normal = UP if shape.normal == UP else OCS(shape.normal).uz
        ocs = OCS(normal)
        ends = [self.matrix.transform_direction(Vec3(axis)) for axis in (ocs.ux, ocs.uy)]
        return all(abs(end.z) <= _FLAT * max(end.magnitude, 1e-300) for end in ends)


def _flat_map(matrix: Matrix44, ux: Vec3, uy: Vec3, origin: Vec3) -> Transform:
    x, y = matrix.transform_direction(ux), matrix.transform_direction(uy)
    at = matrix.transform(origin)
    return Transform(x.x, x.y, y.x, y.y, at.x, at.y)


@dataclass(frozen=True, slots=True)
class _Kind:
    """What loose lines must share to be one figure."""

    layer: str
    name: str
    role: Role


@dataclass(slots=True)
class Walker:
    """Turns a document into figures; see the module docstring."""

    document: DxfDocument
    notes: Notes
    source: FilePath
    visits: int = 0
    _layers: LayerBook = field(init=False)
    _lines: dict[_Kind, list[tuple[float, float, float, float]]] = field(default_factory=dict)
    _open: dict[_Kind, list[Path]] = field(default_factory=dict)
    _figures: list[Figure] = field(default_factory=list)
    _filled: list[Figure] = field(default_factory=list)
    _sizes: dict[str, int] = field(default_factory=dict)
    _kinds_in: Place | None = None
    _kinds: dict[tuple[str, str, int], tuple[_Kind, str]] = field(default_factory=dict)

    def __post_init__(self) -> None:
        self._layers = LayerBook(self.document)

    def figures(self, scale: float) -> list[Figure]:
        """All figures of model space, one drawing unit being `scale` mm.

        Raises:
            HostileFileError: blocks ask for too many copies.
        """
        space = self.document.modelspace()
        total = self._count(space, ())
        if total > MOST_ENTITIES:
            raise self._too_many(total)
        self._walk(space, Place.at(Matrix44.scale(scale)))
        loose = self._loose_figures()
        lines = loose + self._figures
        return lines + self._fills_without_lines(lines)

    def _too_many(self, count: int) -> HostileFileError:
        message = Worded(
            "“{name}” holds {count} elements once its blocks are spread out, more than the {most} that are "
            "read; save only the outline as a file of its own.",
            name=self.source.name,
            count=_rounded(count),
            most=MOST_ENTITIES,
        )
        return HostileFileError(message, path=self.source)

    def _count(self, entities: Iterable[Any], around: tuple[str, ...]) -> int:
        """How many entities a list comes to, block references spread out."""
        total = 0
        for entity in entities:
            total += 1
            if entity.dxftype() != "INSERT":
                continue
            name = str(entity.dxf.get("name", "")).lower()
            if name not in self._sizes and name not in around and len(around) < _DEEPEST:
                block = self.document.blocks.get(name) if name else None
                self._sizes[name] = 0 if block is None else self._count(block, (*around, name))
            total += min(self._sizes.get(name, 0) * _copies(entity), 10**18)
        return total

    def _walk(self, entities: Iterable[Any], place: Place) -> None:
        for entity in entities:
            self.visits += 1
            if self.visits > _MOST_VISITS:
                raise self._too_many(self.visits)
            kind = entity.dxftype()
            try:
                self._take(entity, kind, place)
            except _BROKEN:
                mesh = kind == "POLYLINE" and not (entity.is_2d_polyline or entity.is_3d_polyline)
                self.notes.add("solid-3d-skipped" if mesh else "entity-degenerate", _place_of(entity, place))

    def _take(self, entity: Any, kind: str, place: Place) -> None:
        if kind == "LINE":
            self._add_line(entity, place)
        elif kind in MAKERS:
            self._add_shape(entity, place)
        elif kind == "INSERT":
            self._enter(entity, place)
        elif kind in SKIPPED:
            self._skip(entity, SKIPPED[kind], place)
        elif kind in _FILLED:
            self._add_fill(entity, kind, place)
        elif kind == "MLINE":
            self._walk(entity.virtual_entities(), place)
        elif kind not in WITHOUT_WORD:
            self._skip(entity, "entity-skipped", place, name=kind)

    def _kind(self, entity: Any, place: Place) -> _Kind:
        dxf = entity.dxf
        asked = dxf.get("layer", "0"), dxf.get("linetype", "BYLAYER"), dxf.get("invisible", 0)
        if self._kinds_in is not place:
            self._kinds_in, self._kinds = place, {}
        known = self._kinds.get(asked)
        if known is None:
            known = self._kinds[asked] = self._kind_of(*asked, place)
        kind, note = known
        if note:
            self.notes.add(note, name=kind.layer)
        return kind

    def _kind_of(self, layer: str, linetype: str, invisible: int, place: Place) -> tuple[_Kind, str]:
        """What loose lines of a layer and style belong to, and what is to be noted about them."""
        if layer == "0" and place.layer is not None:
            layer = place.layer
        if place.hidden or self._layers.is_hidden(layer) or invisible:
            return _Kind(layer, place.name, Role.MARK), "hidden-skipped"
        style = self._layers.linetype(linetype, layer, place.linetype)
        if self._layers.is_mark(layer) or is_reader_style(style):
            return _Kind(layer, place.name, Role.MARK), "construction-skipped"
        return _Kind(layer, place.name, Role.OUTLINE), ""

    def _add_line(self, entity: Any, place: Place) -> None:
        dxf = entity.dxf
        start, end = dxf.start, dxf.end
        kind = self._kind(entity, place)
        flat = place.flat
        if start.z or end.z:
            start, end = place.matrix.transform(start), place.matrix.transform(end)
            if abs(start.z - end.z) > _FLAT * start.distance(end):
                self.notes.add("tilted", (start.x, start.y))
            ends = (start.x, start.y, end.x, end.y)
        else:
            x0, y0, x1, y1 = start.x, start.y, end.x, end.y
            ends = (
                flat.a * x0 + flat.c * y0 + flat.e, flat.b * x0 + flat.d * y0 + flat.f,
                flat.a * x1 + flat.c * y1 + flat.e, flat.b * x1 + flat.d * y1 + flat.f,
            )  # fmt: skip
        lines = self._lines.get(kind)
        if lines is None:
            lines = self._lines[kind] = []
        lines.append(ends)

    def _add_shape(self, entity: Any, place: Place) -> None:
        shape = shape_of(entity)
        path = self._placed(shape, place)
        if path is None:
            return
        kind = self._kind(entity, place)
        if shape.is_wide:
            self.notes.add("line-width", (float(path.start[0]), float(path.start[1])))
        if shape.dropped:
            self.notes.add("zero-length", count=shape.dropped)
        if path.closed:
            self._figures.append(Figure((path,), kind.layer, kind.name, kind.role))
        else:
            self._open.setdefault(kind, []).append(path)

    def _placed(self, shape: Shape, place: Place) -> Path | None:
        """A shape as it lies in the drawing, None if that is nowhere near."""
        path = place.plane(shape).path(shape.path)
        x0, y0, x1, y1 = _reach(path)
        if not path.is_finite() or not max(abs(x0), abs(y0), abs(x1), abs(y1)) <= FARTHEST_MM:
            self.notes.add("coordinate-huge")
            return None
        if max(x1 - x0, y1 - y0) == 0:
            raise ValueError("a shape without size")
        if not place.lies_flat(shape):
            self.notes.add("tilted", (float(path.start[0]), float(path.start[1])))
        return path

    def _add_fill(self, entity: Any, kind_name: str, place: Place) -> None:
        shapes = [solid_shape(entity)] if kind_name in ("SOLID", "TRACE") else hatch_shapes(entity)
        paths = [path for path in (self._placed(shape, place) for shape in shapes) if path is not None]
        if not paths:
            return
        kind = self._kind(entity, place)
        figure = Figure(tuple(paths), kind.layer, kind.name, kind.role, FillRule.EVENODD)
        self._filled.append(figure)

    def _fills_without_lines(self, lines: list[Figure]) -> list[Figure]:
        """Filled areas whose edge is not drawn as lines too."""
        if not self._filled:
            return []
        drawn = DrawnLines([figure for figure in lines if figure.role is Role.OUTLINE])
        kept = []
        for figure in self._filled:
            if all(drawn.hold(path) for path in figure.contours):
                x, y = figure.contours[0].start.tolist()
                self.notes.add("fill-on-lines", (x, y))
            else:
                kept.append(figure)
        return kept

    def _skip(self, entity: Any, code: str, place: Place, *, name: str = "") -> None:
        self.notes.add(code, _place_of(entity, place), name=name)

    def _enter(self, entity: Any, place: Place) -> None:
        for attribute in entity.attribs:
            self._skip(attribute, "text-skipped", place)
        name = str(entity.dxf.get("name", ""))
        block = self.document.blocks.get(name) if name else None
        if block is None:
            self._skip(entity, "block-missing", place, name=name)
            return
        if name.lower() in place.blocks:
            self._skip(entity, "block-recursion", place, name=name)
            return
        if len(place.blocks) >= _DEEPEST:
            self._skip(entity, "block-too-deep", place, name=name)
            return
        if block.block is not None and block.block.dxf.get("flags", 0) & 4:
            self._skip(entity, "outside-file-skipped", place, name=name)
        layer = str(entity.dxf.get("layer", "0"))
        layer = place.layer if layer == "0" and place.layer is not None else layer
        inside = replace(
            place,
            layer=layer,
            name=name if not name.startswith("*") else place.name,
            linetype=self._layers.linetype(entity.dxf.get("linetype", "BYLAYER"), layer, place.linetype),
            blocks=(*place.blocks, name.lower()),
            hidden=place.hidden or self._layers.is_hidden(layer) or bool(entity.dxf.get("invisible", 0)),
        )
        for matrix in _copy_matrices(entity):
            whole = matrix * place.matrix
            flat = _flat_map(whole, Vec3(1, 0, 0), Vec3(0, 1, 0), Vec3(0, 0, 0))
            if not abs(flat.determinant) > 0:
                raise ValueError("a block squeezed to nothing")
            self._walk(block, replace(inside, matrix=whole, flat=flat))

    def _loose_figures(self) -> list[Figure]:
        """Open lines of a kind as one figure each."""
        kinds = dict.fromkeys([*self._lines, *self._open])
        figures = []
        for kind in kinds:
            paths = self._runs(np.array(self._lines.get(kind, []), dtype=float).reshape(-1, 4))
            paths += self._open.get(kind, [])
            if paths:
                figures.append(Figure(tuple(paths), kind.layer, kind.name, kind.role))
        return figures

    def _runs(self, ends: np.ndarray[Any, np.dtype[np.float64]]) -> list[Path]:
        """Lines (x0, y0, x1, y1) as paths; those that follow each other exactly become one."""
        near = (np.abs(ends) <= FARTHEST_MM).all(axis=1)
        if not near.all():
            self.notes.add("coordinate-huge", count=int((~near).sum()))
        ends = ends[near]
        long = (ends[:, :2] != ends[:, 2:]).any(axis=1)
        if not long.all():
            x, y = ends[~long][0, :2].tolist()
            self.notes.add("zero-length", (x, y), count=int((~long).sum()))
        ends = ends[long]
        if len(ends) == 0:
            return []
        breaks = np.flatnonzero((ends[1:, :2] != ends[:-1, 2:]).any(axis=1)) + 1
        bounds = [0, *breaks.tolist(), len(ends)]
        straight = np.zeros(len(ends))
        if len(bounds) == len(ends) + 1:  # no two follow each other
            return [Path(pair, straight[:1], closed=False) for pair in ends.reshape(-1, 2, 2)]
        paths = []
        for first, after in pairwise(bounds):
            points = np.concatenate([ends[first:after, :2], ends[after - 1 : after, 2:]])
            paths.append(Path(points, straight[first:after], closed=False))
        return paths


def _copies(entity: Any) -> int:
    """Rows times columns of a block reference."""
    dxf = entity.dxf
    rows = int(dxf.get("row_count", 1)) if dxf.get("row_spacing", 0) else 1
    columns = int(dxf.get("column_count", 1)) if dxf.get("column_spacing", 0) else 1
    return max(1, rows) * max(1, columns)


def _copy_matrices(entity: Any) -> Iterable[Matrix44]:
    """The matrix of each copy that a block reference makes, row by row."""
    base = entity.matrix44()
    if _copies(entity) == 1:
        yield base
        return
    dxf = entity.dxf
    turn = Matrix44.z_rotate(np.deg2rad(dxf.rotation))
    ocs = entity.ocs()
    rows = max(1, int(dxf.get("row_count", 1))) if dxf.get("row_spacing", 0) else 1
    columns = max(1, int(dxf.get("column_count", 1))) if dxf.get("column_spacing", 0) else 1
    for row in range(rows):
        for column in range(columns):
            step = Vec3(column * dxf.get("column_spacing", 0), row * dxf.get("row_spacing", 0), 0)
            yield base * Matrix44.translate(*ocs.to_wcs(turn.transform_direction(step)).xyz)


def _place_of(entity: Any, place: Place) -> tuple[float, float] | None:
    """Some point of an entity, in the drawing."""
    for name in ("insert", "location", "center", "start", "defpoint", "text_midpoint", "vtx0"):
        point = entity.dxf.get(name) if entity.dxf.is_supported(name) else None
        if point is not None:
            try:
                at = place.matrix.transform(Vec3(point))
            except (TypeError, ValueError, ArithmeticError):
                return None
            return float(at.x), float(at.y)
    return None


def _rounded(count: int) -> int | Worded:
    return count if count < 10**9 else Worded("about 10^{power}", power=len(str(count)) - 1)


def _reach(path: Path) -> tuple[float, float, float, float]:
    """A box that tells whether a shape has a size and lies near: of its vertices where that is enough.

    An arc of at most half a turn stays within its chord's length of its ends.
    """
    if path.curves or (np.abs(path.bulges) > 1).any():
        return path.bounds()
    (x0, y0), (x1, y1) = path.vertices.min(axis=0).tolist(), path.vertices.max(axis=0).tolist()
    return x0, y0, x1, y1
