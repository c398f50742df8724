"""Five hundred letters from outside: the tightest spot of each fit against a dense check.

The outlines are glyphs of open typefaces (SIL Open Font License) that packages of the Python Package Index
carry, fetched at run time into a temporary folder by the ordinary client; nothing of them is kept. Each gets
random cutters, a random clearance or interference, random states and reliefs (seeded, so a failure comes
back), and the gap map's minimum must be what half-micrometre sampling and an R-tree find, within 1 µm.

    pytest -m corpus tests/corpus/test_glyph_corpus.py

`INLAYFIT_GLYPHS` sets how many glyphs are tried; `INLAYFIT_FONT_FOLDER` may name a folder of `.ttf` and
`.otf` files to be used instead.
"""

from __future__ import annotations

import os
import random
import subprocess
import sys
import zipfile
from pathlib import Path
from typing import Any

import numpy as np
import pytest
import shapely
from fontTools.pens.basePen import BasePen
from fontTools.ttLib import TTFont

from inlayfit.finding import has_open_block
from inlayfit.fit.solve import solve
from inlayfit.fit.spec import FitSpec, HalfSpec, HalfState, Relief
from inlayfit.geometry.flatten import flatten_bezier
from inlayfit.geometry.path import Bezier
from inlayfit.geometry.region import Region
from inlayfit.geometry.transform import Transform
from tests.oracles import MICROMETRE, bulges_out, clipper_closed, clipper_opened, dense_minimum

PACKAGES = ("font-caladea", "font-source-serif-pro", "font-source-sans-pro", "font-amatic-sc")
GLYPHS = int(os.environ.get("INLAYFIT_GLYPHS", "500"))
STATES = (
    (HalfState.TO_CUT, HalfState.TO_CUT),
    (HalfState.ALREADY_CUT, HalfState.TO_CUT),
    (HalfState.TO_CUT, HalfState.FINISHED),
)


def fetched_fonts(folder: Path) -> list[Path]:
    """The font files of the packages, unpacked into a folder."""
    command = [sys.executable, "-m", "pip", "download", "--no-deps", "-q", "-d", str(folder), *PACKAGES]
    subprocess.run(command, check=True, capture_output=True)
    for wheel in folder.glob("*.whl"):
        with zipfile.ZipFile(wheel) as archive:
            for name in archive.namelist():
                if name.endswith((".ttf", ".otf")):
                    (folder / Path(name).name).write_bytes(archive.read(name))
    return sorted([*folder.glob("*.ttf"), *folder.glob("*.otf")])


class Contours(BasePen):  # type: ignore[misc]  # fontTools has no types
    """Closed contours of a glyph as points in font units, curves within a hundredth of one."""

    def __init__(self, glyphs: Any) -> None:
        super().__init__(glyphs)
        self.rings: list[np.ndarray] = []
        self._points: list[np.ndarray] = []

    def _moveTo(self, point: tuple[float, float]) -> None:  # noqa: N802 - fontTools' name
        self._points = [np.array([point], dtype=float)]

    def _lineTo(self, point: tuple[float, float]) -> None:  # noqa: N802
        self._points.append(np.array([point], dtype=float))

    def _curveToOne(self, *points: tuple[float, float]) -> None:  # noqa: N802
        curve = Bezier(np.vstack([self._points[-1][-1:], points]))
        self._points.append(flatten_bezier(curve, 0.01))

    def _closePath(self) -> None:  # noqa: N802
        ring = np.vstack(self._points)
        if len(ring) > 2:
            self.rings.append(ring)

    _endPath = _closePath  # noqa: N815


def glyph_region(font: TTFont, glyph: str, height: float) -> Region:
    """The painted area: contours that run like the largest one, less those that run against it."""
    glyphs = font.getGlyphSet()
    pen = Contours(glyphs)
    glyphs[glyph].draw(pen)
    rings = [shapely.Polygon(ring) for ring in pen.rings]
    if not rings:
        return Region.empty()
    outer = max(rings, key=lambda ring: ring.area).exterior.is_ccw
    painted = shapely.union_all([shapely.make_valid(r) for r in rings if r.exterior.is_ccw == outer])
    holes = shapely.union_all([shapely.make_valid(r) for r in rings if r.exterior.is_ccw != outer])
    size = height / font["head"].unitsPerEm
    return Region.of(painted.difference(holes)).moved(Transform.scale(size))


@pytest.fixture(scope="module")
def letters(tmp_path_factory: pytest.TempPathFactory) -> list[tuple[str, Region]]:
    given = os.environ.get("INLAYFIT_FONT_FOLDER")
    folder = Path(given) if given else tmp_path_factory.mktemp("fonts")
    files = sorted(folder.glob("*.[to]tf")) if given else fetched_fonts(folder)
    chance = random.Random(286)
    found: list[tuple[str, Region]] = []
    names = [(file, glyph) for file in files for glyph in TTFont(file).getGlyphOrder()]
    chance.shuffle(names)
    opened = {file: TTFont(file) for file in files}
    for file, glyph in names:
        region = glyph_region(opened[file], glyph, chance.choice([15.0, 30.0, 60.0, 120.0]))
        if not region.is_empty and shapely.is_valid(region.shape):
            found.append((f"{file.stem} {glyph}", region))
        if len(found) == GLYPHS:
            break
    assert len(found) == GLYPHS, "too few glyphs"
    return found


def random_spec(chance: random.Random) -> FitSpec:
    pocket, plug = chance.choice(STATES)
    clearance = round(chance.uniform(-0.2, 0.4), 4)

    def half(state: HalfState) -> HalfSpec:
        return HalfSpec(round(chance.uniform(0.2, 4.0), 3), state, chance.choice(list(Relief)))

    return FitSpec(clearance, half(pocket), half(plug))


@pytest.mark.corpus
def test_the_tightest_spot_is_that_of_a_dense_check(letters: list[tuple[str, Region]]) -> None:
    chance = random.Random(25)
    wrong: list[str] = []
    for name, drawn in letters:
        spec = random_spec(chance)
        result = solve(drawn, spec)
        if result.gap.is_empty:
            if not has_open_block(result.findings):
                wrong.append(f"{name}: nothing left, and nothing blocks; {spec}")
            continue
        near = [np.array(spot.place_mm) for spot in result.gap.tightest[:3]]
        dense = dense_minimum(result.pocket.finished, result.plug.finished, near=near)
        if abs(dense - result.gap.min_mm) > MICROMETRE:
            wrong.append(f"{name}: tightest {result.gap.min_mm:.5f}, dense check {dense:.5f}; {spec}")
        conflict = {"cutters-conflict", "bites"} & {finding.code for finding in result.findings}
        # With interference the promise is for the plug's wall: a sharp corner of the host lies deeper.
        walls = result.gap.plug_walls if spec.clearance_mm < 0 else ()
        least = min((float(wall.gaps.min()) for wall in walls), default=result.gap.min_mm)
        if least < spec.clearance_mm - MICROMETRE and not conflict:
            wrong.append(f"{name}: gap {least:.5f} of {spec.clearance_mm}; {spec}")
    assert not wrong, "\n".join([f"{len(wrong)} of {len(letters)}", *wrong[:20]])


@pytest.mark.corpus
def test_both_halves_can_be_cut(letters: list[tuple[str, Region]]) -> None:
    """Each is its own opening or closing by its cutter, through clipper2, within 1 µm, films aside."""
    chance = random.Random(40)
    wrong: list[str] = []
    for name, drawn in letters:
        spec = random_spec(chance)
        result = solve(drawn, spec)
        if "cutters-conflict" in {finding.code for finding in result.findings}:
            continue
        if spec.pocket.may_move:
            wall = result.pocket.outline
            off = bulges_out(wall, clipper_opened(wall, spec.pocket.radius_mm - MICROMETRE))
            if off > MICROMETRE:
                wrong.append(f"{name}: pocket {off:.5f} beyond its cutter; {spec}")
        if spec.plug.may_move and not result.plug.outline.is_empty:
            wall = result.plug.outline
            off = bulges_out(clipper_closed(wall, spec.plug.radius_mm - MICROMETRE), wall)
            if off > MICROMETRE:
                wrong.append(f"{name}: plug {off:.5f} beyond its cutter; {spec}")
    assert not wrong, "\n".join([f"{len(wrong)} of {len(letters)}", *wrong[:20]])
