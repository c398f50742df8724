"""A drawing as DXF: R2000 with millimetres stated, or R12 for machines that know nothing newer.

Every contour becomes one polyline with true arcs as bulges (LWPOLYLINE; in R12, POLYLINE with vertices).
Béziers become arcs within a tolerance. A figure's name travels as extended data of its polylines, which
other programs skip. R12 has no header variable for the unit, so whoever opens the file is asked or
guesses; the caller says so to the person. (DXF reference: group 70 bit 1 closed, 42 bulge = tan(sweep/4),
positive to the left; $INSUNITS 4 = millimetres.)

The same drawing gives the same bytes: no dates, no random numbers.
"""

from __future__ import annotations

import io
from enum import StrEnum
from pathlib import Path as FilePath
from threading import Lock

import numpy as np
from ezdxf import options as dxf_options  # type: ignore[attr-defined]  # public by its manual
from ezdxf.document import Drawing as DxfDocument
from ezdxf.entities.dxfentity import DXFEntity
from ezdxf.entities.lwpolyline import LWPolylinePoints
from ezdxf.enums import InsertUnits
from ezdxf.layouts.layout import Modelspace

from inlayfit.drawing import Drawing, Figure, draw
from inlayfit.geometry.arcs import RECOVERY_TOLERANCE, curves_as_arcs
from inlayfit.geometry.path import Bezier, Path

NAME_TAG = "INLAYFIT"
"""Application name under which a figure's name is kept as extended data."""
_FORBIDDEN_IN_LAYER = str.maketrans(dict.fromkeys('<>/\\":;?*|=`,', "_"))  # DXF reference, symbol names
_LONGEST_R12_NAME = 31
_COLOURS = {
    "POCKET": 174,
    "POCKET_ROUGH": 151,
    "PLUG": 34,
    "PLUG_ROUGH": 41,
    "MARKS": 8,
    "TABS": 96,
    "STOCK": 9,
}
_PLAIN_COLOUR = 7
# ezdxf keeps the switch for fixed dates as one option for all documents; only one writer may hold it.
_FIXED_DATES = Lock()


class DxfVersion(StrEnum):
    """Which DXF is written."""

    R2000 = "R2000"
    R12 = "R12"


class _PolylineSink:
    """Draws figures as polylines with bulges."""

    def __init__(self, space: Modelspace, *, version: DxfVersion, tolerance: float) -> None:
        self._space = space
        self._version = version
        self._tolerance = tolerance
        self._figure = Figure(())
        self._points: list[tuple[float, float, float]] = []

    def begin_figure(self, figure: Figure) -> None:
        self._figure = figure

    def move_to(self, x: float, y: float) -> None:
        self._points = [(x, y, 0.0)]

    def line_to(self, x: float, y: float) -> None:
        self.arc_to(x, y, 0.0)

    def arc_to(self, x: float, y: float, bulge: float) -> None:
        """A vertex carries the bulge of the segment that leaves it."""
        last_x, last_y, _ = self._points[-1]
        self._points[-1] = (last_x, last_y, bulge)
        self._points.append((x, y, 0.0))

    def curve_to(self, curve: Bezier) -> None:
        path = Path(curve.control[[0, -1]], np.zeros(1), False, {0: curve})
        arcs = curves_as_arcs(path, tolerance=self._tolerance)
        for (x, y), bulge in zip(arcs.vertices[1:].tolist(), arcs.bulges.tolist(), strict=True):
            self.arc_to(x, y, bulge)

    def end_contour(self, *, closed: bool) -> None:
        points = self._points[:-1] if closed and len(self._points) > 1 else self._points
        entity: DXFEntity
        attributes = {"layer": layer_name(self._figure.layer, version=self._version)}
        if self._version is DxfVersion.R12:
            entity = self._space.add_polyline2d(points, format="xyb", close=closed, dxfattribs=attributes)
        else:
            line = self._space.add_lwpolyline([], close=closed, dxfattribs=attributes)
            # All at once: added one by one, each vertex would copy all before it.
            line.lwpoints = LWPolylinePoints([(x, y, 0.0, 0.0, bulge) for x, y, bulge in points])
            entity = line
        if self._figure.name:
            entity.set_xdata(NAME_TAG, [(1000, self._figure.name[:255])])

    def end_figure(self) -> None:
        self._figure = Figure(())


def layer_name(layer: str, *, version: DxfVersion = DxfVersion.R2000) -> str:
    """The layer name as DXF may hold it."""
    name = layer.translate(_FORBIDDEN_IN_LAYER).strip() or "0"
    return name if version is DxfVersion.R2000 else name.replace(" ", "_").upper()[:_LONGEST_R12_NAME]


def dxf_text(
    drawing: Drawing,
    *,
    version: DxfVersion = DxfVersion.R2000,
    tolerance: float = RECOVERY_TOLERANCE,
) -> str:
    """The drawing as the text of a DXF file.

    Args:
        drawing: millimetres, y up.
        version: see the module docstring.
        tolerance: largest distance, in mm, between a Bézier and the arcs written for it.
    """
    with _FIXED_DATES:
        before = dxf_options.write_fixed_meta_data_for_testing
        dxf_options.write_fixed_meta_data_for_testing = True
        try:
            document = DxfDocument.new(version.value)
            _set_up(document, drawing, version)
            sink = _PolylineSink(document.modelspace(), version=version, tolerance=tolerance)
            draw(drawing, sink)
            stream = io.StringIO()
            document.write(stream)
        finally:
            dxf_options.write_fixed_meta_data_for_testing = before
    return stream.getvalue()


def write_dxf(
    drawing: Drawing,
    path: FilePath,
    *,
    version: DxfVersion | str = DxfVersion.R2000,
    tolerance: float = RECOVERY_TOLERANCE,
) -> None:
    """Write the drawing to `path`, replacing what is there; `document.exports` stages and checks.

    Raises:
        OSError: the file cannot be written.
    """
    text = dxf_text(drawing, version=DxfVersion(version), tolerance=tolerance)
    # Up to R2004 text is in a code page; ezdxf's handler writes what it lacks as \U+xxxx.
    path.write_bytes(text.encode("cp1252", errors="dxfreplace"))


def _set_up(document: DxfDocument, drawing: Drawing, version: DxfVersion) -> None:
    """Unit, extents and layers."""
    if version is not DxfVersion.R12:
        document.units = InsertUnits.Millimeters
        document.header["$MEASUREMENT"] = 1
    document.appids.add(NAME_TAG)
    boxes = np.array([path.bounds() for figure in drawing for path in figure.contours])
    if len(boxes):
        space = document.modelspace()
        space.dxf.extmin = (*boxes[:, :2].min(axis=0).tolist(), 0.0)
        space.dxf.extmax = (*boxes[:, 2:].max(axis=0).tolist(), 0.0)
    for layer in drawing.layers:
        name = layer_name(layer, version=version)
        if name not in document.layers:
            document.layers.add(name, color=_COLOURS.get(layer, _PLAIN_COLOUR))
