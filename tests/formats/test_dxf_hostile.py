"""Files that mean harm, or came to harm: one sentence each, before the work that they ask for."""

from __future__ import annotations

import contextlib
import os
import random
import re
from pathlib import Path

import pytest

from inlayfit.errors import HostileFileError, NotADrawingError, ReadError
from inlayfit.formats import dxf_open, dxf_walk
from inlayfit.formats.dxf_read import read_dxf
from inlayfit.formats.registry import read_drawing
from tests.formats.dxf_files import END, ENTITIES, HEADER, RECTANGLE, WHOLE, written


def block(name: str, *content: str) -> str:
    return f"0\nBLOCK\n8\n0\n2\n{name}\n70\n0\n10\n0\n20\n0\n" + "".join(content) + "0\nENDBLK\n"


def insert(name: str, more: str = "") -> str:
    return f"0\nINSERT\n8\n0\n2\n{name}\n10\n0\n20\n0\n{more}"


def with_blocks(*blocks: str, entities: str) -> str:
    return "0\nSECTION\n2\nBLOCKS\n" + "".join(blocks) + "0\nENDSEC\n" + ENTITIES + entities + END


BOMB = with_blocks(
    block("b0", RECTANGLE),
    *(block(f"b{i}", insert(f"b{i - 1}") * 10) for i in range(1, 19)),
    entities=insert("b18"),
)
MUTUAL = with_blocks(
    *(block(f"m{i}", RECTANGLE, *(insert(f"m{j}") for j in range(25))) for i in range(25)),
    entities=insert("m0"),
)
ARRAY = with_blocks(block("b", RECTANGLE), entities=insert("b", "70\n30000\n71\n30000\n44\n1\n45\n1\n"))


@pytest.mark.parametrize("text", [BOMB, MUTUAL, ARRAY], ids=["bomb", "mutual", "array"])
def test_blocks_that_multiply_are_refused_before_any_is_spread_out(
    tmp_path: Path, text: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(dxf_walk.Walker, "_walk", lambda *_: pytest.fail("it was spread out"))
    with pytest.raises(HostileFileError, match="elements once its blocks are spread out"):
        read_dxf(written(tmp_path, text))


def test_a_block_in_itself_is_read_once(tmp_path: Path) -> None:
    result = read_dxf(
        written(tmp_path, with_blocks(block("s", RECTANGLE, insert("s")), entities=insert("s")))
    )
    assert len(result.drawing.figures) == 1
    assert "block-recursion" in [f.code for f in result.findings]


def test_a_long_chain_of_blocks_ends_with_a_finding(tmp_path: Path) -> None:
    chain = [block(f"d{i}", insert(f"d{i + 1}")) for i in range(300)]
    text = with_blocks(*chain, entities=RECTANGLE + insert("d0"))
    assert "block-too-deep" in [f.code for f in read_dxf(written(tmp_path, text)).findings]


def test_a_million_vertices_are_refused_with_their_number_before_they_are_read(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(dxf_open, "_strict", lambda *_: pytest.fail("they were read"))
    text = (
        HEADER + ENTITIES + "0\nLWPOLYLINE\n8\n0\n90\n1000000\n70\n1\n" + "10\n1\n20\n2\n" * 1_000_000 + END
    )
    with pytest.raises(HostileFileError, match="2,000,0"):
        read_dxf(written(tmp_path, text))


@pytest.mark.parametrize("limit", ["MOST_LINES", "LARGEST_BYTES"])
def test_limits_are_stated_in_the_sentence(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, limit: str
) -> None:
    monkeypatch.setattr(dxf_open, limit, 10)
    with pytest.raises(HostileFileError, match="more than"):
        read_within_limits(written(tmp_path, WHOLE))


def read_within_limits(path: Path) -> None:
    data = dxf_open.read_file_bytes(path, largest=dxf_open.LARGEST_BYTES)
    dxf_open.open_document(data, path)


RANDOM = random.Random(3).randbytes(300_000)


@pytest.mark.parametrize(
    ("content", "word"),
    [
        (b"", "empty"),
        (b" \r\n\n", "empty"),
        (b"\0" * 500, "empty"),
        (RANDOM, "neither DXF nor SVG"),
        (dxf_open.BINARY_SENTINEL + RANDOM, "damaged beyond repair"),
        (b"%PDF-1.7 \n", "PDF"),
        (b"AC1027\0\0", "DWG"),
        (b'{\n  "format": "inlayfit project",\n', "project of this program; open it in the window"),
        (b"<!DOCTYPE html><html>", "web page"),
        (b"solid cube\n", "three-dimensional"),
    ],
)
def test_what_is_no_drawing_is_named_for_what_it_is(tmp_path: Path, content: bytes, word: str) -> None:
    with pytest.raises(NotADrawingError, match=word) as caught:
        read_drawing(written(tmp_path, content))
    assert str(caught.value).count(". ") == 0  # one sentence


def test_a_folder_a_pipe_and_a_missing_file_are_no_drawings(tmp_path: Path) -> None:
    with pytest.raises(NotADrawingError, match="folder"):
        read_drawing(tmp_path)
    with pytest.raises(NotADrawingError, match="does not exist"):
        read_drawing(tmp_path / "none.dxf")
    if hasattr(os, "mkfifo"):
        os.mkfifo(tmp_path / "pipe.dxf")
        with pytest.raises(NotADrawingError, match="no plain file"):
            read_drawing(tmp_path / "pipe.dxf")


def test_a_file_without_permission_says_so(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    path = written(tmp_path, WHOLE)

    def refuse(*_: object, **__: object) -> None:
        raise PermissionError

    monkeypatch.setattr(Path, "open", refuse)
    with pytest.raises(ReadError, match="permission"):
        read_drawing(path)


def test_a_file_that_changes_while_it_is_read_is_not_trusted(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    path = written(tmp_path, WHOLE)
    opened = Path.open

    def meddle(self: Path, *args: str, **more: str) -> object:
        stream = opened(self, *args, **more)  # type: ignore[call-overload] # handed on as it came
        with opened(self, "ab") as other:
            other.write(b"999\nmore\n")
        return stream

    monkeypatch.setattr(Path, "open", meddle)
    with pytest.raises(ReadError, match="changed while it was read"):
        read_drawing(path)


@pytest.mark.parametrize("cut", [40, 60, 90, 110])
def test_a_file_cut_off_keeps_its_whole_entities_and_says_so(tmp_path: Path, cut: int) -> None:
    text = HEADER + ENTITIES + RECTANGLE + RECTANGLE.replace("\n10\n10\n", "\n10\n9\n") + END
    result = read_dxf(written(tmp_path, text[:-cut]))
    (finding,) = [f for f in result.findings if f.code == "file-damaged"]
    assert not finding.fixed
    assert not re.search(r"\b0 flaws|\b1 flaws", finding.message)
    assert len(result.drawing.figures) == 1


@pytest.mark.parametrize("text", [WHOLE.replace("\n", "\r\n"), WHOLE.replace("\n", "\r"), "\ufeff" + WHOLE,
                                  "999\na remark\n" + WHOLE, WHOLE.replace("\n", " \n")])  # fmt: skip
def test_line_ends_marks_and_remarks_do_not_matter(tmp_path: Path, text: str) -> None:
    result = read_dxf(written(tmp_path, text))
    assert len(result.drawing.figures) == 1
    assert "file-damaged" not in [f.code for f in result.findings]


@pytest.mark.parametrize("seed", range(40))
def test_damage_at_random_places_never_crashes(tmp_path: Path, seed: int) -> None:
    chance = random.Random(seed)
    lines = (HEADER + with_blocks(block("b", RECTANGLE), entities=RECTANGLE + insert("b"))).split("\n")
    for _ in range(chance.randint(1, 6)):
        at = chance.randrange(len(lines))
        lines[at] = chance.choice(
            ["", "-1", "1e999", "nan", "0", "10", "99999", "\udcff", "LINE", "ENDSEC", "x" * 50]
        )
    data = "\n".join(lines).encode("utf-8", "surrogateescape")
    with contextlib.suppress(ReadError):  # one sentence is a good answer too; anything else fails
        result = read_drawing(written(tmp_path, data))
        assert all(path.is_finite() for figure in result.drawing for path in figure.contours)
