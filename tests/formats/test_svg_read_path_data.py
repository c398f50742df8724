"""Path data: the grammar of SVG 2, section 9.3, against an independent parser (`svgelements`)."""

import math

import numpy as np
import pytest
import svgelements
from hypothesis import given, settings
from hypothesis import strategies as st

from inlayfit.errors import HostileFileError
from inlayfit.formats import svg_path_data
from inlayfit.formats.svg_path_data import parse_path_data
from inlayfit.geometry.flatten import flatten
from inlayfit.geometry.path import Points
from inlayfit.geometry.transform import Transform

numbers = st.integers(-4000, 4000).map(lambda n: f"{n / 100:g}")
radii = st.integers(1, 3000).map(lambda n: f"{n / 100:g}")
flags = st.sampled_from("01")
_ARITY = {"L": 2, "H": 1, "V": 1, "C": 6, "S": 4, "Q": 4, "T": 2, "M": 2}


@st.composite
def commands(draw: st.DrawFn) -> str:
    letter = draw(st.sampled_from("LHVCSQTAMZ"))
    shown = draw(st.sampled_from((letter, letter.lower())))
    if letter == "Z":
        return shown
    if letter == "A":
        parts = [
            draw(radii),
            draw(radii),
            draw(numbers),
            draw(flags),
            draw(flags),
            draw(numbers),
            draw(numbers),
        ]
        return shown + " ".join(parts)
    times = draw(st.integers(1, 3))
    return shown + ",".join(draw(numbers) for _ in range(times * _ARITY[letter]))


def joined(parts: list[str]) -> str:
    """The parts in a row, without a smooth command after a curve of the other degree.

    SVG 2, 9.3.6 and 9.3.7, start such a curve at the pen itself; the other parser mirrors a control point.
    """
    kept = ["M1 2"]
    for part in parts:
        pair = kept[-1][0].upper() + part[0].upper()
        if pair not in ("QS", "TS", "CT", "ST"):
            kept.append(part)
    return "".join(kept)


path_texts = st.lists(commands(), min_size=1, max_size=8).map(joined)


def our_points(text: str) -> Points:
    outlines = parse_path_data(text).outlines
    return np.vstack([flatten(outline.placed(Transform()), 1e-3) for outline in outlines])


def their_points(text: str) -> Points:
    """Points of an independent reader: ends of lines, and its curves and arcs at 400 parameters."""
    points: list[tuple[float, float]] = []
    segments = list(svgelements.Path(text))
    for segment, following in zip(segments, [*segments[1:], None], strict=True):
        if isinstance(segment, svgelements.Close):
            continue
        if isinstance(segment, svgelements.Move):
            if isinstance(following, svgelements.Close):  # a subpath of one point
                points.append((segment.end.x, segment.end.y))
            continue
        if isinstance(segment, svgelements.Line):
            points += [(segment.start.x, segment.start.y), (segment.end.x, segment.end.y)]
        else:
            points += [(p.x, p.y) for p in (segment.point(t) for t in np.linspace(0, 1, 101))]
    return np.array(points)


@settings(max_examples=50, deadline=None)
@given(path_texts)
def test_curves_run_where_an_independent_parser_has_them(text: str) -> None:
    data = parse_path_data(text)
    assert data.error_at is None
    theirs = their_points(text)
    if len(theirs) == 0:
        return
    ours = our_points(text)
    # Extents depend on every control point; both are true to the curve within the sampling.
    size = float(np.ptp(theirs, axis=0).max()) + 1
    assert ours.min(axis=0) == pytest.approx(theirs.min(axis=0), abs=4e-3 * size)
    assert ours.max(axis=0) == pytest.approx(theirs.max(axis=0), abs=4e-3 * size)


@settings(max_examples=80, deadline=None)
@given(radii, radii, numbers, flags, flags, numbers, numbers)
def test_arc_lies_on_its_ellipse(rx: str, ry: str, turn: str, large: str, left: str, x: str, y: str) -> None:
    if (float(x), float(y)) == (0.0, 0.0):
        return
    arc = svgelements.Path(f"M0 0A{rx} {ry} {turn} {large} {left} {x} {y}")[1]
    ours = our_points(f"M0 0A{rx} {ry} {turn} {large} {left} {x} {y}")
    centre = np.array([arc.center.x, arc.center.y])
    angle = float(arc.get_rotation())
    back = np.array([[math.cos(angle), -math.sin(angle)], [math.sin(angle), math.cos(angle)]])
    local = (ours - centre) @ back / np.array([arc.rx, arc.ry])
    assert np.hypot(*local.T) == pytest.approx(np.ones(len(ours)), abs=1e-6)
    assert tuple(ours[-1]) == (float(x), float(y))


def test_circular_arc_stays_an_arc_and_splits_at_half_a_turn() -> None:
    outline = parse_path_data("M0 0A5 5 0 1 1 5 5").outlines[0]
    path = outline.placed(Transform.turn(0.3))
    assert not path.curves
    assert path.bulges == pytest.approx([math.tan(3 * math.pi / 16)] * 2)
    stretched = outline.placed(Transform.scale(2, 1))
    assert len(stretched.curves) == 4
    assert all(curve.weights is not None for curve in stretched.curves.values())


@pytest.mark.parametrize(
    ("short", "long"),
    [
        ("M1-2L.5.5-3e1-.2", "M 1 -2 L 0.5 0.5 L -30 -0.2"),
        ("M1 2 3 4 5 6", "M1 2L3 4L5 6"),
        ("m1 2 3 4z5 6", "M1 2L4 6Z"),
        ("M0 0a1 1 0 01.5.5", "M0 0A1 1 0 0 1 0.5 0.5"),
        ("M0,0,L1,,1", "M0 0"),
        ("M5 5zl3 0", "M5 5ZM5 5L8 5"),
        ("M0 0h1 2v3 4", "M0 0L1 0L3 0L3 3L3 7"),
        ("M0 0T4 4", "M0 0L4 4"),
    ],
)
def test_short_and_long_forms_draw_the_same(short: str, long: str) -> None:
    def drawn(text: str) -> list[list[tuple[float, float]]]:
        return [outline.points for outline in parse_path_data(text).outlines]

    assert drawn(short) == drawn(long)


@pytest.mark.parametrize(
    ("text", "at", "vertices"),
    [
        ("M0 0L1 1L2", 10, 2),
        ("M0 0L1 1x5", 8, 2),
        ("L1 1", 0, 0),
        ("", None, 0),
        ("M0 0 1e999 5", 5, 0),
        ("M0 0C1 1 2 2 3 3 4", 18, 2),
        ("M0 0A1 1 0 2 1 5 5", 5, 0),
        ("M", 0, 0),
        ("M0 0L5 5 #", 9, 2),
    ],
)
def test_error_ends_the_path_and_is_named_by_its_place(text: str, at: int | None, vertices: int) -> None:
    data = parse_path_data(text)
    assert data.error_at == at
    assert sum(len(outline.points) for outline in data.outlines) == vertices


@settings(max_examples=150, deadline=None)
@given(st.text(alphabet="MmLlHhVvCcSsQqTtAaZz0123456789.,-+eE \n#xé", max_size=60))
def test_any_text_is_read_without_a_crash(text: str) -> None:
    for outline in parse_path_data("M0 0" + text).outlines:
        outline.placed(Transform.scale(2, 3))


def test_smooth_curve_after_another_degree_starts_at_the_pen() -> None:
    (outline,) = parse_path_data("M0 0Q5 5 10 0S20 5 30 0T40 0").outlines
    assert [outline.curves[number][1] for number in (1, 2)] == [(10.0, 0.0), (30.0, 0.0)]


def test_too_many_segments_are_refused_before_they_take_memory(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(svg_path_data, "MOST_SEGMENTS", 10)
    with pytest.raises(HostileFileError, match="more than 10 pieces"):
        parse_path_data("M0 0" + "l1 1" * 11)
