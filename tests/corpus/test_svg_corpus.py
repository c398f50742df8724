"""Painted area of icons from outside, against an independent renderer.

The icons come from npm packages, packed at run time into a temporary folder; nothing of them is kept. Every
icon without text, image, mask or filter is read, its painted area (fills and lines, clipped, united) worked
out, and compared with what resvg (by `resvg_py`, a renderer written independently in Rust) paints, counted
as the sum of alpha over a large bitmap. Part transparency is not the question here, so it is made opaque in
the text both readers get; an opacity of zero stays.

    pytest -m corpus tests/corpus/test_svg_corpus.py

`INLAYFIT_SVG_CORPUS` may name a folder of `.svg` files to be judged instead.
"""

import math
import os
import re
import shutil
import subprocess
import sys
import tarfile
from pathlib import Path

import numpy as np
import pytest
import resvg_py
import shapely
from PySide6.QtGui import QImage

from inlayfit.document.painted import figure_region
from inlayfit.errors import NoOutlineError
from inlayfit.formats.svg_document import parse_document
from inlayfit.formats.svg_notes import Notes
from inlayfit.formats.svg_page import read_page
from inlayfit.formats.svg_read import PASTED, read_svg_text
from inlayfit.geometry.tolerance import Tolerance

PACKAGES = (
    "bootstrap-icons",
    "feather-icons",
    "@mapbox/maki",
    "eva-icons",
    "@primer/octicons",
    "heroicons",
    "@tabler/icons",
    "flag-icons",
    "open-iconic",
    "remixicon",
)
ICONS_PER_PACKAGE = 200
SIDE_PX = 1400
LARGEST_DIFFERENCE = 0.002
_NOT_JUDGED = re.compile(
    r"<(?:\w+:)?(text|image|mask|filter|foreignObject|pattern)\b|marker-(?:start|mid|end)"
)
_HAS_PAGE = re.compile(r"<svg\b[^>]*\s(?:viewBox|height)\s*=")
_PART_OPACITY = re.compile(r"""(opacity\s*[=:]\s*["']?\s*)(?:0?\.0*[1-9]\d*)""")


def packed_icons(package: str, folder: Path) -> list[tuple[str, str]]:
    """Name and text of evenly chosen icons of one package."""
    command = ["npm", "pack", "--silent", package]
    packed = subprocess.run(command, cwd=folder, capture_output=True, text=True, timeout=300, check=False)
    if packed.returncode != 0:
        pytest.skip(f"npm could not pack {package}: {packed.stderr.strip()[-200:]}")
    archive = folder / packed.stdout.strip().splitlines()[-1]
    with tarfile.open(archive) as tar:
        names = sorted(m.name for m in tar.getmembers() if m.isfile() and m.name.endswith(".svg"))
        step = max(1, math.ceil(len(names) / ICONS_PER_PACKAGE))
        wanted = set(names[::step])
        chosen = []
        for member in tar.getmembers():  # in the order of the archive: it cannot be read backwards quickly
            stream = tar.extractfile(member) if member.name in wanted else None
            if stream is not None:
                chosen.append((f"{package}/{member.name}", stream.read().decode("utf-8")))
    archive.unlink()
    return chosen


def folder_icons(folder: Path) -> list[tuple[str, str]]:
    """Name and text of all icons of a folder."""
    paths = sorted(folder.rglob("*.svg"))
    return [(str(path.relative_to(folder)), path.read_text("utf-8")) for path in paths]


def is_judged(text: str) -> bool:
    """Whether the drawing has a page and nothing in it that has no outline."""
    return _NOT_JUDGED.search(text) is None and _HAS_PAGE.search(text) is not None


def opaque(text: str) -> str:
    return _PART_OPACITY.sub(r"\g<1>1", text)


def painted_share(text: str) -> float:
    """Painted part of the page, by our reader; nothing to show is nothing painted."""
    root = parse_document(text.encode("utf-8"), PASTED)
    page = read_page(root.attributes, None, Notes())
    assert page.width_mm is not None
    assert page.height_mm is not None
    try:
        drawing = read_svg_text(text).drawing
    except NoOutlineError:
        return 0.0
    fine = Tolerance(arc_mm=1e-5 * max(page.width_mm, page.height_mm))
    areas = [figure_region(figure, fine, strokes_as_areas=True).shape for figure in drawing]
    shown = shapely.union_all(areas).intersection(shapely.box(0, 0, page.width_mm, page.height_mm))
    return float(shown.area / (page.width_mm * page.height_mm))


def rendered_share(text: str) -> float:
    """Painted part of the bitmap, by resvg: the sum of alpha."""
    bitmap = resvg_py.svg_to_bytes(svg_string=text, width=SIDE_PX, dpi=96, languages=["en"])
    image = QImage.fromData(bytes(bitmap)).convertToFormat(QImage.Format.Format_Alpha8)
    rows = np.frombuffer(image.constBits(), dtype=np.uint8).reshape(image.height(), image.bytesPerLine())
    return float(rows[:, : image.width()].sum(dtype=np.int64)) / 255 / (image.width() * image.height())


def misses(icons: list[tuple[str, str]]) -> tuple[int, list[str]]:
    """How many were judged, and a line for each that does not agree."""
    judged, lines = 0, []
    for name, text in icons:
        if not is_judged(text):
            continue
        judged += 1
        ours, theirs = painted_share(opaque(text)), rendered_share(opaque(text))
        if abs(ours - theirs) > LARGEST_DIFFERENCE * theirs:
            lines.append(f"{name}: ours {ours:.6f}, resvg {theirs:.6f} of the page")
    return judged, lines


@pytest.mark.corpus
def test_icons_from_outside_paint_the_area_that_resvg_paints(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    named = os.environ.get("INLAYFIT_SVG_CORPUS")
    if named is None and shutil.which("npm") is None:
        pytest.skip("npm is not installed, so no icons can be packed; name a folder in INLAYFIT_SVG_CORPUS")
    groups = [named] if named else PACKAGES
    total, wrong = 0, []
    for group in groups:
        icons = folder_icons(Path(group)) if named else packed_icons(group, tmp_path)
        judged, lines = misses(icons)
        with capsys.disabled():
            sys.stdout.write("\n".join(["", f"{group}: {len(icons)} icons, {judged} judged", *lines]))
        total += judged
        wrong += lines
    with capsys.disabled():
        sys.stdout.write(f"\nall: {total} judged, {len(wrong)} missed\n")
    assert named or total >= 1000, "too few icons to judge by"
    assert not wrong
