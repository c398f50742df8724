"""Pictures of our own widgets, for people to look at: both themes and high contrast, at ratio 1 and 2.

Not a test. `python tests/pictures.py FOLDER` writes them; each ratio runs in a process of its own, since the
ratio is fixed when Qt starts.
"""

from __future__ import annotations

import os
import subprocess
import sys
from dataclasses import replace
from pathlib import Path
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from PySide6.QtWidgets import QWidget

    from inlayfit.app.canvas.scene import GapScene

ROOT = Path(__file__).resolve().parent.parent


def main(folder: Path) -> None:
    """Write all pictures."""
    folder.mkdir(parents=True, exist_ok=True)
    for ratio in ("1", "2"):
        environment = {
            **os.environ,
            "QT_QPA_PLATFORM": "offscreen",
            "QT_SCALE_FACTOR": ratio,
            "PYTHONPATH": str(ROOT),
        }
        command = [sys.executable, __file__, str(folder), ratio]
        subprocess.run(command, check=True, env=environment)


def draw_all(folder: Path, ratio: str) -> None:
    """Write the pictures of one ratio."""
    from PySide6.QtWidgets import QApplication

    from inlayfit.app import theme

    app = QApplication([])
    scenes = _scenes()
    for which in theme.Theme:
        theme.apply(app, which)
        for name, widget in _widgets(scenes).items():
            widget.show()
            app.processEvents()
            widget.grab().save(str(folder / f"{name}-{which}-{ratio}.png"))
            widget.close()


def _scenes() -> dict[str, GapScene]:
    """The leaf of the samples, exact and in a pocket that was measured a little off."""
    from shapely import affinity

    from inlayfit.app.canvas.scene import FittingScene, GapScene
    from inlayfit.document.imports import import_drawing
    from inlayfit.fit.gaps import gap_map
    from inlayfit.fit.solve import solve
    from inlayfit.fit.spec import FitSpec, HalfSpec, HalfState, Relief
    from inlayfit.geometry.region import Region

    outline = import_drawing(ROOT / "sample_shapes" / "leaf.svg").outlines[0]
    size = max(outline.region.bounds[2] - outline.region.bounds[0], 1.0)
    spec = FitSpec(0.03, HalfSpec(0.6, HalfState.ALREADY_CUT), HalfSpec(1.0, relief=Relief.DOG_BONE))
    solved = solve(outline.region, spec)
    x, y = outline.region.shape.centroid.coords[0]
    stretched = affinity.scale(solved.pocket.outline.shape, 1 + 0.09 / size, 1 - 0.12 / size, origin=(x, y))
    larger = Region.of(stretched)
    measured = replace(
        solved,
        pocket=replace(solved.pocket, outline=larger),
        gap=gap_map(larger, solved.plug.outline),
    )
    pocket, plug = ("cherry pocket", "already cut, stays"), ("copper plug", "may move")
    return {
        name: GapScene.of(
            (FittingScene.of_result("leaf", "Leaf", result, pocket_words=pocket, plug_words=plug),)
        )
        for name, result in (("exact", solved), ("measured", measured))
    }


def _widgets(scenes: dict[str, GapScene]) -> dict[str, QWidget]:
    """Every widget in the states worth looking at."""
    from fractions import Fraction

    from PySide6.QtCore import QPointF
    from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

    from inlayfit.app.canvas.drop_halves import DropOffer, DropUse
    from inlayfit.app.canvas.gap_map import GapMapView
    from inlayfit.app.canvas.loupe import Loupe
    from inlayfit.app.widgets.fit_ruler import FitRuler
    from inlayfit.app.widgets.length_box import LengthBox
    from inlayfit.app.widgets.paint_stack import StackSection
    from inlayfit.app.widgets.ruler_marks import Bracket, TrialFlag, TrialMark
    from inlayfit.app.widgets.stack_view import StackView
    from inlayfit.bench.stack import Spread, Stack
    from inlayfit.units import Unit

    pictures: dict[str, QWidget] = {}
    for name, scene in scenes.items():
        view = GapMapView()
        view.resize(1030, 560)
        view.set_scene(scene)
        view.set_chosen_spot(0)
        pictures[f"map-{name}"] = view
    scene = scenes["measured"]
    near = GapMapView()
    near.resize(700, 420)
    near.set_scene(scene)
    place = scene.fittings[0].spots[1].place_mm
    near.set_view(near.view.zoomed(9, 0, 0).centred_on(place[0], place[1], 700, 420))
    near.set_chosen_spot(1)
    near.set_stale(True)
    pictures["map-near-preview"] = near
    measuring = GapMapView()
    measuring.resize(700, 420)
    measuring.set_scene(scene)
    measuring.set_measuring(True)
    for at in (QPointF(*measuring.view.to_px(*scene.fittings[0].spots[0].place_mm)), QPointF(450, 180)):
        measuring._move_crosshair(at)
        measuring._place_point()
    pictures["map-measuring"] = measuring
    dropping = GapMapView()
    dropping.resize(700, 420)
    dropping.set_scene(scene)
    dropping._drop_offer = DropOffer("Drawing with 3 outlines, in mm")
    dropping._drop_use = DropUse.PLUG
    pictures["map-drop"] = dropping

    loupes = QWidget()
    row = QHBoxLayout(loupes)
    fitting = scene.fittings[0]
    for spot in (fitting.spots[0], fitting.spots[-1], fitting.loosest):
        loupe = Loupe()
        loupe.set_spot(fitting, spot)
        row.addWidget(loupe)
    loupes.resize(1160, 270)
    pictures["loupe"] = loupes

    controls = QWidget()
    column = QVBoxLayout(controls)
    ruler = FitRuler()
    ruler.set_clearance_mm(0.03)
    ruler.set_trials(
        (
            TrialFlag("T2", 0.014, TrialMark.TOO_TIGHT, "tap-in"),
            TrialFlag("T1", 0.062, TrialMark.TOO_LOOSE, "slip"),
            TrialFlag("12 Nov", 0.101, TrialMark.AS_WANTED, "slip", this_job=False),
        ),
        bracket=Bracket(0.014, 0.062),
    )
    ruler.set_suggestion_mm(0.038)
    column.addWidget(ruler)
    narrow = FitRuler()
    narrow.set_unit(Unit.THOU)
    narrow.set_clearance_mm(-0.03)
    narrow.setMaximumWidth(420)
    column.addWidget(narrow)
    boxes = QHBoxLayout()
    for value, unit in (
        (Fraction(3, 100), Unit.MM),
        (Fraction(3175, 1000), Unit.INCH),
        (Fraction(508, 10_000), Unit.THOU),
    ):
        box = LengthBox()
        box.set_unit(unit)
        box.set_length(value)
        boxes.addWidget(box)
    refusing = LengthBox()
    boxes.addWidget(refusing)
    boxes.addStretch(1)
    column.addLayout(boxes)
    column.addStretch(1)
    controls.resize(1040, 360)
    controls.show()
    refusing.lineEdit().setText("5 mil")
    refusing._on_editing_finished()
    ruler.setFocus()
    pictures["controls"] = controls

    stacks = QWidget()
    row = QHBoxLayout(stacks)
    for section in (
        StackSection(
            Stack(Spread.plus_minus(2.98, 0.02), Spread.plus_minus(2.995, 0.015), Spread.exact(0.02)),
            "copper",
            "thin CA",
            "cherry",
        ),
        StackSection(Stack(Spread.plus_minus(3.2, 0.02), Spread.plus_minus(2.995, 0.015)), "acetal foot"),
        StackSection(Stack(Spread.exact(1.5), Spread.exact(3.0), Spread.exact(0.2)), "cork", "tape", "tray"),
    ):
        stack = StackView()
        stack.set_section(section)
        row.addWidget(stack)
    stacks.resize(1160, 240)
    pictures["stack"] = stacks
    return pictures


if __name__ == "__main__":
    if len(sys.argv) > 2:
        draw_all(Path(sys.argv[1]), sys.argv[2])
    else:
        main(Path(sys.argv[1]))
