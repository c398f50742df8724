"""SVG files that mean harm, or are merely damaged: one sentence or a finding, and little memory."""

import gzip
import os
import signal
import sys
import tracemalloc
from collections.abc import Iterator
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from inlayfit.errors import HostileFileError, NotADrawingError, ReadError
from inlayfit.formats import svg_document
from inlayfit.formats.svg_read import read_svg, read_svg_text

HEAD = '<svg xmlns="http://www.w3.org/2000/svg" width="100mm" height="100mm" viewBox="0 0 100 100">'
RECT = '<rect width="5" height="5"/>'


PATIENCE_S = 60.0


@pytest.fixture(autouse=True)
def ends() -> Iterator[None]:
    """Stop a reader whose work grows with the square of a file: it takes many minutes, ours about a second.

    Seconds of the processor, so nothing else that runs can end a test; how long each file takes is printed by
    `tests/benchmarks/test_hostile_files.py`.
    """
    if sys.platform == "win32":
        yield
        return
    before = signal.signal(signal.SIGVTALRM, lambda *_: pytest.fail("the reader did not end"))
    signal.setitimer(signal.ITIMER_VIRTUAL, PATIENCE_S)
    yield
    signal.setitimer(signal.ITIMER_VIRTUAL, 0)
    signal.signal(signal.SIGVTALRM, before)


def svg(body: str) -> str:
    return f"{HEAD}{body}</svg>"


def one_sentence(error: ReadError) -> bool:
    text = str(error)
    return text.endswith(".") and "\n" not in text and len(text) < 400


def refusal(text: str) -> ReadError | None:
    try:
        read_svg_text(text)
    except ReadError as error:
        return error
    return None


TENFOLD = "".join(f'<g id="g{i + 1}">' + f'<use href="#g{i}"/>' * 10 + "</g>" for i in range(20))

REFUSED = {
    "entities in entities": '<!DOCTYPE s [<!ENTITY a "ha"><!ENTITY b "&a;&a;&a;">]>'
    + svg("<text>&b;</text>"),
    "external entity": '<!DOCTYPE s [<!ENTITY a SYSTEM "file:///etc/hostname">]>' + svg("<text>&a;</text>"),
    "parameter entity": '<!DOCTYPE s [<!ENTITY % a SYSTEM "http://example.org/x"> %a;]>' + svg(RECT),
    "use grows tenfold": svg(f'<defs><g id="g0">{RECT}</g>{TENFOLD}</defs><use href="#g20"/>'),
    "use in use": svg(
        f'<defs><g id="u0">{RECT}</g>'
        + "".join(f'<use id="u{i + 1}" href="#u{i}"/>' for i in range(400))
        + '</defs><use href="#u400"/>'
    ),
    "deep nesting": svg("<g>" * 30_000 + "</g>" * 30_000),
    "too many elements": svg("<g/>" * 110_000),
    "too many rules": svg("<style>" + "*{fill:red}" * 9000 + "</style>" + RECT * 9000),
    "a path without end": svg('<path d="M0 0' + "h1" * 1_100_000 + '"/>'),
}


@pytest.mark.parametrize("name", REFUSED)
def test_hostile_file_is_refused_in_one_sentence(name: str) -> None:
    with pytest.raises(HostileFileError) as caught:
        read_svg_text(REFUSED[name])
    assert one_sentence(caught.value)


ODD = {
    "public DTD": '<!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN" "http://www.w3.org/svg11.dtd">' + svg(RECT),
    "use of itself": svg(f'<g id="a">{RECT}<use href="#a"/></g>'),
    "use in a ring": svg(f'{RECT}<g id="a"><use href="#b"/></g><g id="b"><use href="#a"/></g>'),
    "clip of itself": svg(
        f'<clipPath id="c" clip-path="url(#c)">{RECT}</clipPath><g clip-path="url(#c)">{RECT}</g>'
    ),
    "clip in its own clip": svg(
        '<clipPath id="c"><rect width="5" height="5" clip-path="url(#c)"/></clipPath>'
        f'<g clip-path="url(#c)">{RECT}</g>'
    ),
    "1e308": svg(
        f'{RECT}<path d="M0 0L1e308 1e308L-1e308 5z"/><circle r="1e308"/>'
        '<path d="M0 0A1e308 1e-308 9 1 1 5 5"/>'
    ),
    "infinite": svg(
        f'{RECT}<path d="M0 0L1e999 1"/><rect width="1e400" height="2"/><polygon points="1e999 0 1 1"/>'
    ),
    "not numbers": svg(f'{RECT}<path d="Mnan 0"/><rect width="nan" height="inf"/><circle r="NaN"/>'),
    "overflowing transforms": svg(
        f'{RECT}<g transform="scale(1e300)"><g transform="scale(1e300)">{RECT}</g></g>'
    ),
    "unclosed style": svg(f"<style>{'a{' * 100_000}</style>{RECT}"),
    "unclosed comment": svg(f"<style>{'/*' * 100_000}</style>{RECT}"),
    "brackets in style": svg(f'<rect width="5" height="5" style="{"(" * 200_000}"/>'),
    "long class": svg(f'<style>.a{{fill:red}}</style><rect class="{"a " * 200_000}" width="5" height="5"/>'),
    "long selector": svg(f"<style>{'* ' * 3000}rect{{fill:red}}</style>" + "<g>" * 80 + RECT + "</g>" * 80),
    "endless digits": svg(f'{RECT}<path d="M{"1" * 500_000}"/><rect width="{"9" * 500_000}" height="1"/>'),
    "endless spaces": svg(
        f'{RECT}<path d="M0 0L5 5{" " * 500_000}x"/><g transform="rotate(1{" " * 500_000}x"/>'
    ),
    "endless list": svg(f'{RECT}<path d="M0 0L{"1 " * 1_000_001}"/>'),
    "endless dashes": svg(f'<path d="M0 0L9 9" stroke="red" stroke-dasharray="{"1 " * 200_000}"/>'),
    "endless variable": svg(f'<rect width="5" height="5" fill="{"var(--a," * 100_000}"/>'),
}


@pytest.mark.parametrize("name", ODD)
def test_odd_file_is_read_with_what_is_sound_in_it(name: str) -> None:
    result = read_svg_text(ODD[name])
    assert len(result.drawing.figures) >= 1
    for figure in result.drawing:
        assert all(path.is_finite() for path in figure.contours)


@pytest.mark.parametrize(
    "page",
    [
        'viewBox="0 0 1e-320 1e-320"',
        'viewBox="0 0 1e308 1e308"',
        'width="1e308mm" height="1e-308mm" viewBox="0 0 1e-300 1e300"',
        'width="1e308" height="1e308"',
        'viewBox="1e308 -1e308 10 10"',
        'viewBox="0 0 10 10" transform="scale(1e-200)"',
        'viewBox="0 0 10 10" transform="matrix(0 0 0 0 0 0)"',
        'width="0" height="-5"',
        'width="99999999999%" height="9em"',
    ],
)
def test_page_beyond_measure_is_a_finding_or_a_sentence(page: str) -> None:
    shapes = f'{RECT}<circle r="3%" stroke="red" stroke-width="2%"/><path d="M0 0A1e300 2 9 0 1 5 5z"/>'
    error = refusal(f'<svg xmlns="http://www.w3.org/2000/svg" {page}>{shapes}</svg>')
    assert error is None or one_sentence(error)


def test_a_million_vertices_are_read_whole() -> None:
    text = svg('<path d="M5 5L' + " ".join(f"{i % 977} {i % 1013}" for i in range(999_999)) + 'z"/>')
    (figure,) = read_svg_text(text).drawing.figures
    assert len(figure.contours[0].vertices) == 1_000_000


def test_a_vertex_takes_less_than_a_kilobyte_while_it_is_read() -> None:
    text = svg('<path d="M5 5L' + " ".join(f"{i % 977} {i % 1013}" for i in range(20_000)) + 'z"/>')
    tracemalloc.start()
    read_svg_text(text)
    _, most = tracemalloc.get_traced_memory()
    tracemalloc.stop()
    assert most < 20_000 * 600  # so a million stay far below a gibibyte


def test_small_compressed_file_cannot_grow_large(tmp_path: Path) -> None:
    path = tmp_path / "bomb.svgz"
    path.write_bytes(gzip.compress(b"<svg>" + b" " * 2**26))
    with pytest.raises(HostileFileError, match="larger than 48 MB"):
        read_svg(path)


def test_large_file_is_refused(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(svg_document, "LARGEST_FILE_BYTES", 1000)
    path = tmp_path / "large.svg"
    path.write_text(svg(RECT) + " " * 1000)
    with pytest.raises(HostileFileError):
        read_svg(path)


NO_DRAWINGS = {
    "empty": b"",
    "blank": b" \n\t ",
    "zeros": b"\0" * 500,
    "words": b"just words",
    "another language": b"<html><body/></html>",
    "cut off": svg(RECT)[:-8].encode(),
    "two roots": svg(RECT).encode() * 2,
    "false encoding": b'<?xml version="1.0" encoding="UTF-8"?>' + svg('<g id="\xe9"/>').encode("latin-1"),
    "unknown encoding": b'<?xml version="1.0" encoding="x-none"?>' + svg(RECT).encode(),
    "utf-16 that says utf-8": ('<?xml version="1.0" encoding="UTF-8"?>' + svg(RECT)).encode("utf-16"),
    "cut off gzip": gzip.compress(svg(RECT * 50).encode())[:60],
    "false gzip": b"\x1f\x8b" + b"x" * 100,
    "other namespace": b'<svg xmlns="urn:other"><rect width="1" height="1"/></svg>',
    "undefined entity": svg("&nbsp;").encode(),
}


@pytest.mark.parametrize("name", NO_DRAWINGS)
def test_what_is_no_drawing_is_said_in_one_sentence(name: str, tmp_path: Path) -> None:
    path = tmp_path / "thing.svg"
    path.write_bytes(NO_DRAWINGS[name])
    with pytest.raises(NotADrawingError) as caught:
        read_svg(path)
    assert one_sentence(caught.value)
    assert "thing.svg" in str(caught.value)
    assert caught.value.path == path


def test_folder_missing_and_odd_names_are_said(tmp_path: Path) -> None:
    for path, words in (
        (tmp_path, "is not a file"),
        (tmp_path / "none.svg", "There is no file"),
        (Path("no\0name.svg"), "There is no file|cannot be read"),
        (tmp_path / ("x" * 300), "cannot be read"),
    ):
        with pytest.raises(NotADrawingError, match=words):
            read_svg(path)


@pytest.mark.skipif(not hasattr(os, "geteuid") or os.geteuid() == 0, reason="this user may read everything")
def test_file_without_permission_is_said(tmp_path: Path) -> None:
    path = tmp_path / "shut.svg"
    path.write_text(svg(RECT))
    path.chmod(0)
    with pytest.raises(NotADrawingError, match="permission"):
        read_svg(path)


def test_permission_refused_by_the_system_is_said(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    path = tmp_path / "shut.svg"
    path.write_text(svg(RECT))

    def refuse(*_: object, **__: object) -> None:
        raise PermissionError(13, "Permission denied")

    monkeypatch.setattr(Path, "open", refuse)
    with pytest.raises(NotADrawingError, match="Permission denied"):
        read_svg(path)


def test_no_file_beside_the_drawing_is_ever_opened(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    path = tmp_path / "main.svg"
    other = (tmp_path / "other.svg").as_uri()
    outside = f'<use href="{other}#a"/><image href="p.png"/><style>@import "x.css";</style>'
    path.write_text(svg(RECT + outside))
    opened: list[Path] = []
    really_open = Path.open

    def watched(self: Path, *args: object, **options: object) -> object:
        opened.append(self)
        return really_open(self, *args, **options)  # type: ignore[call-overload] # handed on as it came

    monkeypatch.setattr(Path, "open", watched)
    result = read_svg(path)
    assert opened == [path]
    assert {"reference-outside", "image-skipped", "style-skipped"} <= {f.code for f in result.findings}


_pieces = st.sampled_from(
    [
        *("<g ", "<use ", "<svg ", "<symbol ", "<clipPath ", "<path ", "<rect ", "<circle ", "<style>", "/>"),
        *("</style>", "</g>", "</svg>", "</symbol>", "</clipPath>", ">", "&amp;", "é", ".k{fill:red}"),
        *('id="a" ', 'id="b" ', 'href="#a" ', 'href="#b" ', 'clip-path="url(#a)" ', 'clip-path="url(#b)" '),
        *('d="M0 0h9v9a3 2 9 0 1 5 5z" ', 'width="9" ', 'height="50%" ', 'r="4" ', 'class="k" '),
        *('transform="rotate(9) scale(2,-1)" ', 'transform="scale(0)" ', 'viewBox="0 0 9 9" '),
        *('style="fill:none" ', 'stroke="red" ', 'stroke-width="2em" ', 'opacity="0" ', 'display="none" '),
        *('clipPathUnits="objectBoundingBox" ', 'fill="url(#b) none" ', 'mask="url(#a)" '),
    ]
)


@settings(max_examples=150, deadline=None)
@given(st.lists(_pieces, max_size=24).map("".join))
def test_any_row_of_pieces_is_read_or_refused_in_one_sentence(body: str) -> None:
    error = refusal(svg(RECT + body))
    assert error is None or one_sentence(error)


_leaves = st.sampled_from(
    ['<path d="M1 1h8v8z"/>', '<use href="#n1"/>', '<use href="#n2"/>', '<circle r="3"/>', "<text/>"]
)
_tags = st.sampled_from(["g", "symbol", "svg", "clipPath", "a", "switch", "defs"])
_attributes = st.sampled_from(
    ["", ' id="n1"', ' id="n2"', ' clip-path="url(#n1)"', ' viewBox="0 0 5 9"', ' style="opacity:0"']
)


def _element(parts: tuple[str, str, list[str]]) -> str:
    tag, attributes, inner = parts
    return f"<{tag}{attributes}>{''.join(inner)}</{tag}>"


def _elements(inner: st.SearchStrategy[str]) -> st.SearchStrategy[str]:
    return st.tuples(_tags, _attributes, st.lists(inner, max_size=4)).map(_element)


@settings(max_examples=100, deadline=None)
@given(st.recursive(_leaves, _elements, max_leaves=12))
def test_any_tree_of_references_ends(body: str) -> None:
    result = read_svg_text(svg(RECT + body))
    assert len(result.drawing.figures) >= 1
