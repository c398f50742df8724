"""Read a written file back with our own reader and compare it with what was meant.

Two lines are the same if no point of either is farther from the other than a micrometre: a distance, not
an area, because a long thin error has almost no area. Layers, the number of contours on each, whether they
are closed, and the unit must agree exactly. Lines are compared vertex by vertex and apex by apex where
both have the same form; else both are flattened and each one's points are measured against the other's
chords.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from pathlib import Path as FilePath
from typing import Any, NoReturn, TypeAlias

import numpy as np
import shapely
from scipy.optimize import linear_sum_assignment
from scipy.spatial.distance import cdist

from inlayfit.drawing import Drawing
from inlayfit.errors import ReadBackError, ReadError
from inlayfit.formats.contract import ReadOptions, ReadResult
from inlayfit.geometry.flatten import flatten
from inlayfit.geometry.path import Path, Points
from inlayfit.geometry.transform import Transform
from inlayfit.measures import length
from inlayfit.units import Unit
from inlayfit.wording import Worded

Reader: TypeAlias = Callable[[FilePath, ReadOptions], ReadResult]

SAME_LINE_MM = 0.001
"""1 µm: the accuracy promised for every written outline."""
_FLATTENING = 0.05  # share of the tolerance that comparing may add to a distance


def check_written(
    path: FilePath,
    meant: Drawing,
    reader: Reader,
    *,
    states_unit: bool = True,
    tolerance_mm: float = SAME_LINE_MM,
) -> float:
    """Read `path` back and compare; answers the largest distance found, in mm.

    Args:
        path: the file just written; it is removed if it does not match.
        meant: what it should hold, in the coordinates its reader answers with.
        reader: our reader for this kind of file.
        states_unit: whether the file says that it is in millimetres (R12 cannot).
        tolerance_mm: largest distance between what was meant and what was read.

    Raises:
        ReadBackError: it does not read back as the same drawing.
    """
    try:
        result = reader(path, ReadOptions(unit=None if states_unit else Unit.MM))
    except ReadError as error:
        _give_up(path, Worded("it cannot be read back ({error})", error=str(error).rstrip(".")), error)
    if states_unit and result.file_unit is not Unit.MM:
        _give_up(path, Worded("it does not say that its unit is the millimetre"))
    problem, deviation = compare(meant, result.drawing, tolerance_mm=tolerance_mm)
    if problem:
        _give_up(path, problem)
    return deviation


def _give_up(path: FilePath, why: str, cause: Exception | None = None) -> NoReturn:
    path.unlink(missing_ok=True)
    raise ReadBackError(
        Worded(
            "{name} was written but {why}, so it was removed; export again, or in the other file format.",
            name=path.name,
            why=why,
        ),
        path=path,
    ) from cause


def compare(meant: Drawing, read: Drawing, *, tolerance_mm: float = SAME_LINE_MM) -> tuple[str, float]:
    """What differs, as half a sentence (empty if nothing does), and the largest distance in mm."""
    wanted, found = _by_layer(meant), _by_layer(read)
    if set(wanted) != set(found):
        odd = ", ".join(sorted(set(wanted) ^ set(found)))
        return Worded("its layers differ from what was meant ({odd})", odd=odd), 0.0
    worst = 0.0
    for layer, contours in wanted.items():
        others = found[layer]
        if len(contours) != len(others):
            problem = Worded(
                "layer {layer} holds {count} contours instead of {wanted}",
                layer=layer,
                count=len(others),
                wanted=len(contours),
            )
            return problem, worst
        for mine, other in zip(contours, _paired(contours, others), strict=True):
            if mine.closed != other.closed:
                problem = (
                    Worded("a contour of layer {layer} is open in it", layer=layer)
                    if mine.closed
                    else Worded("a contour of layer {layer} is closed in it", layer=layer)
                )
                return problem, worst
            worst = max(worst, path_distance(mine, other, tolerance_mm=tolerance_mm))
        if worst > tolerance_mm:
            off = length(worst, ".4f")
            return Worded("an outline of layer {layer} is off by {off} in it", layer=layer, off=off), worst
    return "", worst


def path_distance(a: Path, b: Path, *, tolerance_mm: float = SAME_LINE_MM) -> float:
    """Largest distance from any point of either line to the other, in mm."""
    direct = _direct_distance(a, b)
    if direct is not None and direct <= tolerance_mm:
        return direct
    fine = tolerance_mm * _FLATTENING
    first, second = _chords(a, fine), _chords(b, fine)
    return max(_one_way(first, second), _one_way(second, first))


def _by_layer(drawing: Drawing) -> dict[str, list[Path]]:
    layers: dict[str, list[Path]] = {}
    for figure in drawing:
        layers.setdefault(figure.layer, []).extend(figure.contours)
    return {name: contours for name, contours in layers.items() if contours}


def _paired(contours: Sequence[Path], others: Sequence[Path]) -> list[Path]:
    """`others` in the order of `contours`, each with the one whose box is nearest."""
    boxes, other_boxes = (np.array([path.bounds() for path in paths]) for paths in (contours, others))
    if np.abs(boxes - other_boxes).max() <= SAME_LINE_MM:
        return list(others)
    _, order = linear_sum_assignment(cdist(boxes, other_boxes))
    return [others[i] for i in order.tolist()]


def _direct_distance(a: Path, b: Path) -> float | None:
    """Distance by vertices and arc middles, if both lines have the same form and start; else None.

    An arc with the same ends is moved most at its middle, so both bound the distance of the lines.
    """
    if a.segment_count != b.segment_count or a.curves or b.curves or len(a.vertices) != len(b.vertices):
        return None
    return float(max(np.abs(a.vertices - b.vertices).max(), np.abs(_apexes(a) - _apexes(b)).max(initial=0.0)))


def _apexes(path: Path) -> Points:
    starts, ends = path.segment_ends()
    chords = ends - starts
    right = np.column_stack([chords[:, 1], -chords[:, 0]])
    apexes: Points = (starts + ends) / 2 + right * path.bulges[:, None] / 2
    return apexes


def _chords(path: Path, tolerance: float) -> Points:
    points = flatten(path, tolerance)
    return np.vstack([points, points[:1]]) if path.closed else points


def _one_way(line: Points, other: Points) -> float:
    if len(other) < 2:
        return float(np.hypot(*(line - other[0]).T).max())
    segments: Any = shapely.linestrings(np.stack([other[:-1], other[1:]], axis=1))
    tree = shapely.STRtree(segments)
    _, distances = tree.query_nearest(shapely.points(line), return_distance=True, all_matches=False)
    return float(distances.max())


def on_page(drawing: Drawing, page: tuple[float, float, float, float]) -> Drawing:
    """The drawing in the coordinates of its page: the page's lower left corner is the origin."""
    return drawing.moved(Transform.shift(-page[0], -page[1]))
