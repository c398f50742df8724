"""Reading SVG: units, page, styles, layers, findings. All drawings here are made up.

Unit factors are those of CSS Values and Units Level 4, section 6.2 (1 in = 96 px = 2.54 cm, 1 cm = 40 Q,
1 in = 72 pt = 6 pc); view box rules those of SVG 2, section 8.
"""

import gzip
import math
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from inlayfit.drawing import Cap, Figure, FillRule, Join
from inlayfit.errors import NoOutlineError
from inlayfit.finding import Severity
from inlayfit.formats.contract import ReadOptions, ReadResult
from inlayfit.formats.svg_read import read_svg, read_svg_text
from inlayfit.formats.svg_units import parse_size
from inlayfit.units import Unit


def svg(body: str, attributes: str = 'width="100mm" height="50mm" viewBox="0 0 100 50"') -> str:
    return f'<svg xmlns="http://www.w3.org/2000/svg" {attributes}>{body}</svg>'


def only(text: str, **options: Unit) -> Figure:
    (figure,) = read_svg_text(text, options=ReadOptions(**options)).drawing.figures
    return figure


def codes(result: ReadResult) -> list[str]:
    return [finding.code for finding in result.findings]


RECT = '<rect x="10" y="20" width="30" height="5"/>'


# Units and page


@pytest.mark.parametrize(
    ("text", "mm"),
    [
        ("1in", 25.4),
        ("2.54cm", 25.4),
        ("25.4mm", 25.4),
        ("101.6Q", 25.4),
        ("72pt", 25.4),
        ("6pc", 25.4),
        ("96px", 25.4),
        ("96", 25.4),
        ("1IN", 25.4),
        ("1e1mm", 10.0),
        ("+.5cm", 5.0),
    ],
)
def test_every_css_unit_is_exact(text: str, mm: float) -> None:
    size = parse_size(text)
    assert size is not None
    assert size.px(0, 16) * 25.4 / 96 == pytest.approx(mm, rel=1e-15)


@given(st.floats(0.01, 1000), st.sampled_from([("mm", 1.0), ("in", 25.4), ("cm", 10.0), ("pt", 25.4 / 72)]))
def test_page_size_scales_user_units(length: float, unit: tuple[str, float]) -> None:
    name, mm = unit
    page = f'width="{length!r}{name}" height="{length!r}{name}" viewBox="0 0 10 10"'
    bounds = only(svg('<rect width="10" height="10"/>', page)).contours[0].bounds()
    assert bounds == pytest.approx((0, 0, length * mm, length * mm), rel=1e-12, abs=1e-9)


@pytest.mark.parametrize(
    ("page", "unit"),
    [
        ('width="100mm" height="50mm" viewBox="0 0 200 100"', Unit.MM),
        ('width="10cm" height="5cm" viewBox="0 0 200 100"', Unit.MM),
        ('width="4in" height="2in" viewBox="0 0 200 100"', Unit.INCH),
        ('width="72pt" height="36pt"', Unit.INCH),
        ('width="200" height="100"', None),
        ('width="200px" height="100px"', None),
        ('width="100%" height="100%" viewBox="0 0 200 100"', None),
        ('viewBox="0 0 200 100"', None),
        ("", None),
    ],
)
def test_stated_unit_is_told_from_a_missing_one(page: str, unit: Unit | None) -> None:
    result = read_svg_text(svg(RECT, page))
    assert result.file_unit is unit
    assert result.assumed_unit is (unit or Unit.PIXEL)
    assert ("unit-missing" in codes(result)) == (unit is None)


def test_missing_unit_is_asked_with_the_size_under_each_reading() -> None:
    (finding,) = read_svg_text(svg('<rect width="96" height="48"/>', 'viewBox="0 0 96 48"')).findings
    assert (finding.severity, finding.fixed) == (Severity.WARN, False)
    for size in ("25.4 × 12.7 mm (1 × 0.5 in)", "96 × 48 mm (3.78 × 1.89 in)", "2438 × 1219 mm (96 × 48 in)"):
        assert size in finding.message


@pytest.mark.parametrize(
    "page", ["", 'viewBox="0 0 100 50"', 'width="3in" height="9in" viewBox="0 0 100 50"']
)
def test_unit_chosen_by_hand_is_the_length_of_a_user_unit(page: str) -> None:
    for unit in (Unit.MM, Unit.INCH, Unit.CM):
        x0, y0, x1, y1 = only(svg(RECT, page), unit=unit).contours[0].bounds()
        mm = float(unit.mm)
        assert (x1 - x0, y1 - y0) == pytest.approx((30 * mm, 5 * mm))
        assert x0 == pytest.approx(10 * mm)
        assert y0 == pytest.approx(25 * mm if page else 0.0)


def test_lower_left_corner_of_the_page_is_the_origin() -> None:
    assert only(svg(RECT)).contours[0].bounds() == pytest.approx((10, 25, 40, 30))
    shifted = svg(RECT, 'width="100mm" height="50mm" viewBox="5 10 100 50"')
    assert only(shifted).contours[0].bounds() == pytest.approx((5, 35, 35, 40))


def test_one_side_follows_from_the_view_box() -> None:
    assert only(svg(RECT, 'width="50mm" viewBox="0 0 100 50"')).contours[0].bounds() == pytest.approx(
        (5, 12.5, 20, 15)
    )


@pytest.mark.parametrize(
    ("aspect", "bounds"),
    [
        ("xMidYMid meet", (25, 0, 75, 50)),  # SVG 2, 8.6: 0.25 mm per unit, offset 25 mm
        ("xMinYMid", (0, 0, 50, 50)),
        ("xMaxYMin meet", (50, 0, 100, 50)),
        ("none", (0, 0, 100, 50)),
        ("xMidYMid slice", (0, -25, 100, 75)),
        ("xMidYMin slice", (0, -50, 100, 50)),
        ("nonsense", (25, 0, 75, 50)),
    ],
)
def test_aspect_ratio_places_the_view_box(aspect: str, bounds: tuple[float, ...]) -> None:
    page = f'width="100mm" height="50mm" viewBox="0 0 200 200" preserveAspectRatio="{aspect}"'
    assert only(svg('<rect width="200" height="200"/>', page)).contours[0].bounds() == pytest.approx(bounds)


def test_font_relative_page_is_read_with_a_finding() -> None:
    result = read_svg_text(svg(RECT, 'width="10em" height="5em" viewBox="0 0 100 50"'))
    assert "unit-font-relative" in codes(result)
    assert result.file_unit is None


# Shapes keep their true curves


def test_circle_is_two_half_circles_after_an_even_map() -> None:
    path = only(svg('<circle cx="30" cy="20" r="8" transform="rotate(30)"/>')).contours[0]
    assert path.closed
    assert abs(path.bulges) == pytest.approx([1, 1])


def test_rounded_rectangle_has_four_quarter_arcs() -> None:
    path = only(svg('<rect x="10" y="10" width="40" height="20" rx="5"/>')).contours[0]
    quarter = math.tan(math.pi / 8)
    assert sorted(abs(path.bulges)) == pytest.approx([0] * 4 + [quarter] * 4)
    pill = only(svg('<rect x="0.1" y="0.1" width="0.7" height="0.2" rx="0.1"/>')).contours[0]
    assert sorted(abs(pill.bulges)) == pytest.approx([0] * 2 + [quarter] * 4)


def test_curves_stay_curves() -> None:
    path = only(svg('<path d="M10 10C20 0 30 20 40 10Q50 0 60 10L60 30Z"/>')).contours[0]
    assert {number: curve.degree for number, curve in path.curves.items()} == {0: 3, 1: 2}
    assert path.closed
    assert len(path.vertices) == 4


def test_closing_line_without_length_is_no_segment() -> None:
    path = only(svg('<path d="M10 10h20v10h-20v-10z"/>')).contours[0]
    assert len(path.vertices) == 4
    relative = only(svg('<path d="m.1.1.2 0 0 .7-.2 0 0-.7z" transform="scale(10)"/>')).contours[0]
    assert len(relative.vertices) == 4


# Fill, line, names


def test_painted_and_line_shapes_are_told_apart() -> None:
    body = (
        '<path id="a" d="M0 0h9v9z"/>'
        '<path id="b" d="M0 0h9v9z" fill="none" stroke="red" stroke-width="2" stroke-linecap="round"/>'
        '<path id="c" d="M0 0h9v9z" fill="red" stroke="red" stroke-linejoin="bevel" fill-rule="evenodd"/>'
        '<line id="d" x2="9" stroke="red" stroke-dasharray="3 1" stroke-dashoffset="2"/>'
        '<path id="e" d="M0 0h9" stroke="red"/>'
    )
    page = 'width="50mm" height="50mm" viewBox="0 0 100 100"'
    a, b, c, d, e = read_svg_text(svg(body, page)).drawing.figures
    assert (a.fill, a.stroke_width_mm) == (FillRule.NONZERO, None)
    assert (b.fill, b.line.cap) == (None, Cap.ROUND)
    assert (c.fill, c.line.join) == (FillRule.EVENODD, Join.BEVEL)
    assert [b.stroke_width_mm, c.stroke_width_mm] == pytest.approx([1.0, 0.5])
    assert (d.fill, d.line.dashes_mm, d.line.dash_offset_mm) == (None, (1.5, 0.5), 1.0)
    assert e.fill is None


def test_layer_is_the_nearest_group_and_name_the_id() -> None:
    body = (
        '<rect id="free" width="9" height="9"/>'
        '<g id="outer"><rect width="9" height="9"/>'
        '<g><rect id="in" width="9" height="9"/></g>'
        '<g id="g3" i:label="Feet" xmlns:i="http://www.inkscape.org/namespaces/inkscape">'
        '<rect id="deep" width="9" height="9"/></g></g>'
        '<symbol id="s"><rect width="9" height="9"/></symbol><use id="placed" href="#s"/>'
    )
    figures = read_svg_text(svg(body)).drawing.figures
    assert [(f.layer, f.name) for f in figures] == [
        ("0", "free"),
        ("outer", ""),
        ("outer", "in"),
        ("Feet", "deep"),
        ("0", "placed"),
    ]


def test_clip_as_large_as_the_page_is_left_away_and_a_real_one_kept() -> None:
    body = (
        '<clipPath id="p"><rect width="100" height="50"/></clipPath>'
        '<clipPath id="q"><circle cx="20" cy="20" r="5"/></clipPath>'
        f'<g clip-path="url(#p)">{RECT}</g><g clip-path="url(#q)">{RECT}</g>'
    )
    whole, cut = read_svg_text(svg(body)).drawing.figures
    assert whole.clip == ()
    assert len(cut.clip) == 1


def test_scaling_the_page_scales_line_widths() -> None:
    line = '<path d="M0 0h9" stroke="red" stroke-width="2" transform="scale(3)"/>'
    assert only(svg(line)).stroke_width_mm == pytest.approx(6)
    fixed = line.replace("/>", ' vector-effect="non-scaling-stroke"/>')
    assert only(svg(fixed)).stroke_width_mm == pytest.approx(2 * 25.4 / 96)


# Findings


@pytest.mark.parametrize(
    ("body", "code", "place"),
    [
        ('<text x="10" y="20">A</text>', "text-skipped", (10, 30)),
        ('<image x="1" y="2" width="3" height="3"/>', "image-skipped", (1, 48)),
        ('<foreignObject width="9" height="9"/>', "foreign-skipped", (0, 50)),
        ('<circle cx="9" cy="9" r="3" mask="url(#m)"/>', "mask-ignored", (9, 41)),
        ('<circle cx="9" cy="9" r="3" filter="url(#m)"/>', "filter-ignored", (9, 41)),
        ('<pattern id="p"/><circle cx="9" cy="9" r="3" fill="url(#p)"/>', "pattern-as-fill", (9, 41)),
        (
            '<linearGradient id="p"><stop/></linearGradient><circle cx="9" cy="9" r="3" fill="url(#p)"/>',
            "gradient-as-fill",
            (9, 41),
        ),
        ('<path d="M5 5h9" stroke="red" marker-end="url(#m)"/>', "marker-ignored", (0, 50)),
        ("<script>x</script>", "script-ignored", None),
        ('<rect width="9" height="9"><animate/></rect>', "animation-ignored", None),
        ('<path d="M5 6L9 9 x"/>', "path-broken", (5, 44)),
        ('<rect x="5" y="6" width="0" height="9"/>', "shape-empty", (5, 44)),
        ('<rect x="5" y="6" width="much" height="9"/>', "path-broken", (5, 44)),
        ('<circle cx="5" cy="6"/>', "shape-empty", (5, 44)),
        ('<path d=""/>', "shape-empty", (0, 50)),
        ('<polygon points="1 2 3"/>', "path-broken", (1, 48)),
        ('<rect width="1e300" height="9"/>', "coordinate-huge", None),
        ('<rect width="9" height="9" transform="spin(3)"/>', "transform-broken", (0, 50)),
        ('<g transform="scale(0)"><rect width="9" height="9"/></g>', "shape-empty", (0, 50)),
        ('<use href="#no" x="3"/>', "reference-missing", (3, 50)),
        ('<use href="other.svg#x"/>', "reference-outside", (0, 50)),
        ('<use href="https://example.org/a.svg#x"/>', "reference-outside", (0, 50)),
        ('<g id="a"><use href="#a"/></g>', "reference-loops", (0, 50)),
        ("<style>rect:hover{fill:none} @import 'x.css';</style>", "style-skipped", None),
        ("<blob/>", "element-unknown", (0, 50)),
        ('<rect width="9" height="9" display="none"/>', "hidden-skipped", None),
        ('<rect width="9" height="9" clip-path="circle(4)"/>', "clip-ignored", (0, 50)),
        ('<rect x="200" width="9" height="9"/>', "outside-page", (200, 41)),
        ('<g requiredExtensions="x"/>', "alternative-skipped", None),
    ],
)
def test_what_is_not_an_outline_is_named_with_its_place(
    body: str, code: str, place: tuple[float, float] | None
) -> None:
    result = read_svg_text(svg(RECT + body))
    found = [finding for finding in result.findings if finding.code == code]
    assert found, codes(result)
    assert found[0].message
    assert found[0].remedy
    assert found[0].place_mm == (None if place is None else pytest.approx(place))


def test_many_findings_of_a_kind_are_counted() -> None:
    result = read_svg_text(svg(RECT + "<text/>" * 500))
    assert codes(result).count("text-skipped") == 21
    assert "480 more" in result.findings[-1].message


def test_clean_drawing_has_no_findings() -> None:
    result = read_svg_text(svg(f'<title>t</title><metadata/><g id="a">{RECT}</g>'))
    assert result.findings == ()
    assert result.element_count == 3


def test_nothing_to_show_says_why() -> None:
    with pytest.raises(NoOutlineError, match=r"(?i)convert the text to paths"):
        read_svg_text(svg('<text x="1">A</text>'))
    with pytest.raises(NoOutlineError, match="only defines symbols"):
        read_svg_text(svg(f'<symbol id="a">{RECT}</symbol>'))
    with pytest.raises(NoOutlineError, match="draws nothing"):
        read_svg_text(svg(""))


# Files and encodings


@pytest.mark.parametrize("encoding", ["utf-8", "utf-8-sig", "utf-16", "utf-16-be", "latin-1"])
def test_declared_encodings_are_read(tmp_path: Path, encoding: str) -> None:
    named = {"utf-8-sig": "utf-8", "utf-16-be": "utf-16"}.get(encoding, encoding)
    text = f'<?xml version="1.0" encoding="{named}"?>' + svg('<rect id="Füße" width="9" height="9"/>')
    data = text.encode(encoding)
    if encoding == "utf-16-be":
        data = b"\xfe\xff" + data
    path = tmp_path / "foot.svg"
    path.write_bytes(data)
    assert read_svg(path).drawing.figures[0].name == "Füße"


def test_compressed_file_reads_like_a_plain_one(tmp_path: Path) -> None:
    path = tmp_path / "foot.svgz"
    path.write_bytes(gzip.compress(svg(RECT).encode()))
    assert read_svg(path).drawing == read_svg_text(svg(RECT)).drawing


def test_text_ignores_the_encoding_it_once_had() -> None:
    text = '<?xml version="1.0" encoding="UTF-16"?>\n' + svg(RECT)
    assert read_svg_text(text).drawing == read_svg_text(svg(RECT)).drawing
    assert read_svg_text("\ufeff" + text).drawing == read_svg_text(svg(RECT).encode()).drawing


def test_namespace_prefix_makes_no_difference() -> None:
    plain = read_svg_text(svg(RECT))
    prefixed = (
        svg(RECT)
        .replace("<svg xmlns=", "<s:svg xmlns:s=")
        .replace("</svg", "</s:svg")
        .replace("<rect", "<s:rect")
    )
    assert read_svg_text(prefixed).drawing == plain.drawing


@settings(max_examples=60, deadline=None)
@given(st.floats(-300, 300), st.floats(-300, 300), st.floats(0.1, 5), st.floats(-180, 180))
def test_group_transform_equals_the_transform_of_each_shape(
    x: float, y: float, s: float, turn: float
) -> None:
    transform = f"translate({x!r} {y!r}) rotate({turn!r}) scale({s!r})"
    grouped = only(svg(f'<g transform="{transform}">{RECT}</g>'))
    alone = only(svg(RECT.replace("/>", f' transform="{transform}"/>')))
    assert grouped.contours == alone.contours
