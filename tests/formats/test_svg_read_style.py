"""Style sheets: which rule wins (CSS 2.2, sections 5 and 6.4; SVG 2, section 6.7)."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from inlayfit.formats.svg_css import parse_declarations, parse_selector
from inlayfit.formats.svg_read import read_svg_text
from inlayfit.formats.svg_style import dash_sizes, is_clear, reference


def widths(body: str) -> dict[str, float | None]:
    """Line width by id of a drawing whose user unit is a millimetre."""
    head = '<svg xmlns="http://www.w3.org/2000/svg" width="90mm" height="90mm" viewBox="0 0 90 90">'
    figures = read_svg_text(f"{head}{body}</svg>").drawing.figures
    return {f.name: None if f.stroke_width_mm is None else round(f.stroke_width_mm, 9) for f in figures}


def line(name: str, more: str = "") -> str:
    return f'<line id="{name}" x2="9" stroke="red" {more}/>'


@pytest.mark.parametrize(
    ("rules", "width"),
    [
        ("line{stroke-width:2}", 2),
        ("*{stroke-width:2}", 2),
        (".k{stroke-width:3} line{stroke-width:2}", 3),
        ("#a{stroke-width:4} .k{stroke-width:3}", 4),
        (".k.m{stroke-width:5} .k{stroke-width:3}", 5),
        ("line.k#a{stroke-width:6} #a{stroke-width:3}", 6),
        ("line{stroke-width:2} line{stroke-width:3}", 3),
        ("line{stroke-width:2!important} #a{stroke-width:3}", 2),
        ("g line{stroke-width:7} line{stroke-width:2}", 7),
        ("svg > g > line{stroke-width:8}", 8),
        ("svg > line{stroke-width:8}", 1),
        ("g > svg line{stroke-width:8}", 1),
        ("[stroke]{stroke-width:9}", 9),
        ('[stroke="red"]{stroke-width:9} [stroke=blue]{stroke-width:2}', 9),
        ("line:first-child{stroke-width:4}", 4),
        ("rect, line , circle{stroke-width:4}", 4),
        ("/* line{stroke-width:9} */ line{stroke-width:4;;}", 4),
        ("@font-face{src:url(x)} @media print{line{stroke-width:9}} line{stroke-width:4}", 4),
        ("@media screen{line{stroke-width:9}} .k{stroke-width:4}", 4),
        ("@charset 'x'; line{stroke-width:4}", 4),
        ("<!-- line{stroke-width:4} -->", 4),
        ("line{stroke-width:-4}", 1),
        ("line{stroke-width:thick}", 1),
        ("line{stroke-width:2mm}", 2 * 96 / 25.4),
        ("line{fill:url(data:a;b);stroke-width:3}", 3),
        ("LINE{stroke-width:3}", 1),
        ("line:hover{stroke-width:3}", 1),
        ("line{--w:3;stroke-width:var(--w, 5)}", 5),
    ],
)
def test_strongest_rule_wins(rules: str, width: float) -> None:
    escaped = rules.replace("<", "&lt;").replace(">", "&gt;")
    body = f"<style>{escaped}</style><g>" + line("a", 'class="k m"') + "</g>"
    assert widths(body)["a"] == pytest.approx(width)


def test_a_farther_ancestor_may_be_the_one_that_fits() -> None:
    body = '<style>#x > g line{stroke-width:5}</style><g id="x"><g><g>' + line("a") + "</g></g></g>"
    assert widths(body) == {"a": 5}


def test_style_attribute_beats_rules_and_rules_beat_attributes() -> None:
    style = "<style>line{stroke-width:2} .i{stroke-width:2 !important}</style>"
    body = style + line("a", 'style="stroke-width:3"') + line("b", 'stroke-width="4"')
    body += line("c", 'class="i" style="stroke-width:3"') + line(
        "d", 'class="i" style="stroke-width:9!important"'
    )
    assert widths(body) == {"a": 3, "b": 2, "c": 2, "d": 9}


def test_children_inherit_what_css_says_is_inherited() -> None:
    body = (
        '<g stroke-width="3" opacity=".5"><g>' + line("a") + line("b", 'stroke-width="inherit"') + "</g></g>"
    )
    body += (
        '<g stroke-width="3">'
        + line("c", 'stroke-width="initial"')
        + line("d", 'stroke-width="bad"')
        + "</g>"
    )
    assert widths(body) == {"a": 3, "b": 3, "c": 1, "d": 3}


def test_used_element_inherits_where_it_is_used_and_matches_where_it_stands() -> None:
    body = "<style>defs line{stroke-width:7}</style><defs>" + line("p") + "</defs>"
    body += "<defs><g id='g'>" + '<line id="q" x2="9" stroke="red"/>' + "</g></defs>"
    body += '<use href="#p" stroke-width="2"/>'
    assert widths(body) == {"p": 7}
    loose = '<symbol id="s"><line id="q" x2="9" stroke="red"/></symbol><use href="#s" stroke-width="2"/>'
    assert widths(loose) == {"q": 2}


def test_em_and_percent_follow_font_and_viewport() -> None:
    body = (
        '<g font-size="10">'
        + line("a", 'stroke-width="2em"')
        + line("b", 'font-size="50%" stroke-width="1ex"')
    )
    body += line("c", 'stroke-width="10%"') + "</g>"
    assert widths(body) == {"a": 20, "b": 2.5, "c": 9}


@pytest.mark.parametrize(
    ("colour", "clear"),
    [
        ("none", True),
        ("transparent", True),
        ("Transparent", True),
        ("#abc", False),
        ("#abc0", True),
        ("#aabbcc00", True),
        ("#aabbcc01", False),
        ("rgba(1,2,3,0)", True),
        ("rgba(1, 2, 3, 0.0)", True),
        ("rgb(1 2 3 / 0%)", True),
        ("rgb(1 2 3 / 5%)", False),
        ("rgb(0,0,0)", False),
        ("hsla(0,0%,0%,0)", True),
        ("currentColor", False),
        ("white", False),
    ],
)
def test_only_colours_without_any_opacity_paint_nothing(colour: str, clear: bool) -> None:
    assert is_clear(colour, "black") is clear
    assert is_clear("currentColor", colour) is clear


def test_references_come_apart() -> None:
    assert reference("url(#a)") == ("#a", "")
    assert reference("url( '#a' ) none") == ("#a", "none")
    assert reference("red") is None


def test_odd_dash_list_counts_twice_and_a_bad_one_not_at_all() -> None:
    assert [size.number for size in dash_sizes("1, 2 3")] == [1, 2, 3, 1, 2, 3]
    assert [size.number for size in dash_sizes("1 2")] == [1, 2]
    for bad in ("none", "0 0", "1 -2", "1 x", ""):
        assert dash_sizes(bad) == ()


@given(st.text(max_size=60))
def test_any_text_is_split_into_declarations_without_a_crash(text: str) -> None:
    plain, important = parse_declarations(text)
    assert all(name and value for name, value in (plain | important).items())
    parse_selector(text)
