"""The scene of the gap map, from what the session shows and its latest answer."""

from __future__ import annotations

from dataclasses import replace

from inlayfit.app.answers.solution import Solution
from inlayfit.app.answers.solving import half_lines
from inlayfit.app.canvas.scene import FittingScene, GapScene, HalfLabel, OutlineScene, Shape
from inlayfit.document.outlines import Outline
from inlayfit.document.state import Fitting, Source, State
from inlayfit.fit.spec import Half
from inlayfit.geometry.path import Points


class SceneSource:
    """Makes scenes, and keeps the shapes of outlines that did not change."""

    def __init__(self) -> None:
        self._shapes: dict[int, tuple[Outline, Shape]] = {}
        self._marks: tuple[Source, tuple[Points, ...]] = (Source(), ())

    def take_marks(self, source: Source, marks: tuple[Points, ...]) -> None:
        """Lines of a drawing that are no outlines, shown faintly as long as that drawing is open."""
        self._marks = source, marks

    def scene(self, state: State, solution: Solution) -> GapScene:
        """Chosen outlines as fittings, the lead first; all others as outlines to choose.

        A fitting of which the cutters leave nothing is shown as it was drawn: one must see what is wrong.
        """
        fittings: list[FittingScene] = []
        for fitting in state.chosen_fittings:
            answer = solution.solved.get(fitting.outline_id)
            if answer is None or answer.outline.region is not state.outline(fitting.outline_id).region:
                continue  # none yet, or that of a drawing which was open before
            if answer.scene is not None and not _is_nothing(answer.scene):
                fittings.append(_lettered(answer.scene, fitting))
        shown = {scene.key for scene in fittings}
        shown |= _seated_plugs(state, shown)
        outlines = tuple(
            OutlineScene(o.id, o.name or o.id, self._shape(o)) for o in state.outlines if o.id not in shown
        )
        self._forget(state)
        marks = self._marks[1] if self._marks[0] == state.source else ()
        return GapScene.of(tuple(fittings), outlines=outlines, marks=marks)

    def _shape(self, outline: Outline) -> Shape:
        kept = self._shapes.get(id(outline))
        if kept is None or kept[0] is not outline:
            kept = (outline, Shape.of(outline.region))
            self._shapes[id(outline)] = kept
        return kept[1]

    def _forget(self, state: State) -> None:
        there = {id(outline) for outline in state.outlines}
        self._shapes = {key: kept for key, kept in self._shapes.items() if key in there}


def _is_nothing(scene: FittingScene) -> bool:
    return scene.pocket.is_empty and scene.plug.is_empty


def _seated_plugs(state: State, shown: set[str]) -> set[str]:
    """Outlines of made plugs that are shown where they sit, and so not where they are drawn."""
    plugs = [state.made_plug(fitting) for fitting in state.chosen_fittings if fitting.outline_id in shown]
    return {plug.id for plug in plugs if plug is not None}


def _lettered(scene: FittingScene, fitting: Fitting) -> FittingScene:
    """The scene with today's words; places for lettering stay where they were found."""
    pocket = _with_lines(scene.pocket_label, half_lines(fitting, Half.POCKET))
    plug = _with_lines(scene.plug_label, half_lines(fitting, Half.PLUG))
    if pocket == scene.pocket_label and plug == scene.plug_label:
        return scene
    return replace(scene, pocket_label=pocket, plug_label=plug)


def _with_lines(label: HalfLabel | None, lines: tuple[str, ...]) -> HalfLabel | None:
    return None if label is None else replace(label, lines=lines)
