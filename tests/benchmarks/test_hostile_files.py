"""How long a reader takes over files that mean harm, or are merely large.

    pytest tests/benchmarks/test_hostile_files.py --benchmark-enable -s

prints a row a file: its size and the seconds of the processor until it was read or refused. Five
are the most that is aimed at. Times are never asserted, they depend on the machine; that each file is read
or refused, and how, is tested in `tests/formats`. Without `--benchmark-enable` nothing is read.
"""

from __future__ import annotations

import contextlib
import time
from pathlib import Path

import pytest

from inlayfit.errors import ReadError
from inlayfit.formats.dxf_read import read_dxf
from inlayfit.formats.svg_read import read_svg_text
from tests.formats.dxf_files import END, ENTITIES, HEADER, written
from tests.formats.test_dxf_hostile import ARRAY, BOMB, MUTUAL
from tests.formats.test_svg_read_hostile import ODD, REFUSED, svg

MILLION = svg('<path d="M5 5L' + " ".join(f"{i % 977} {i % 1013}" for i in range(999_999)) + 'z"/>')
SVG = {**REFUSED, **ODD, "a million vertices": MILLION}
POLYLINE = "0\nLWPOLYLINE\n8\n0\n90\n1000000\n70\n1\n" + "10\n1\n20\n2\n" * 1_000_000
DXF = {
    "blocks in blocks": BOMB,
    "blocks in each other": MUTUAL,
    "array of blocks": ARRAY,
    "a million vertices": HEADER + ENTITIES + POLYLINE + END,
}


@pytest.mark.parametrize("form", ["SVG", "DXF"])
def test_hostile_and_large_files(
    form: str, tmp_path: Path, request: pytest.FixtureRequest, capsys: pytest.CaptureFixture[str]
) -> None:
    if not request.config.getoption("benchmark_enable"):
        pytest.skip("only measured")
    rows = []
    for name, text in (SVG if form == "SVG" else DXF).items():
        path = written(tmp_path, text) if form == "DXF" else None
        start = time.process_time()
        with contextlib.suppress(ReadError):
            read_svg_text(text) if path is None else read_dxf(path)
        took_s = time.process_time() - start
        rows.append(f"{form}  {name:28}{len(text) / 1e6:8.1f} MB{took_s:8.2f} s")
    with capsys.disabled():
        print("", *rows, sep="\n")  # noqa: T201 - this is the report
