"""Which notes on a drawing are mended by reading it in another way, and what their button says."""

from __future__ import annotations

import math
from enum import StrEnum

from PySide6.QtCore import QCoreApplication

from inlayfit.finding import Finding
from inlayfit.measures import Measure
from inlayfit.wording import values_of


class Part(StrEnum):
    """The part of the reading page that a note leads to."""

    UNIT = "unit"
    GAP = "gap"
    STROKES = "strokes"
    LAYERS = "layers"


_PARTS = {
    "unit-missing": Part.UNIT,
    "unit-remembered": Part.UNIT,
    "size-absurd": Part.UNIT,
    "size-tiny": Part.UNIT,
    "readings-short": Part.UNIT,
    "outline-open": Part.GAP,
    "line-width": Part.STROKES,
    "marks-used": Part.LAYERS,
    "layer-missing": Part.LAYERS,
    "construction-skipped": Part.LAYERS,
    "hidden-skipped": Part.LAYERS,
}

_WIDEST_GAP_MM = 1.0


def part_for(finding: Finding) -> Part | None:
    """The part of the reading page that mends a note; None if reading cannot."""
    return None if finding.fixed else _PARTS.get(finding.code)


def label_for(finding: Finding) -> str:
    """What the button of a note says; "" if it has none."""
    part = part_for(finding)
    if part is Part.UNIT:
        return _tr("Choose the unit…")
    if part is Part.GAP:
        return _tr("Close gaps…")
    if part is Part.STROKES:
        return _tr("Read lines as areas…")
    return _tr("Choose layers…") if part is Part.LAYERS else ""


def gap_that_closes(finding: Finding) -> float | None:
    """A tolerance that closes the gap of a note, in whole hundredths; None if it is too wide for one."""
    away = values_of(finding.message).get("away")
    if not isinstance(away, Measure):
        return None
    gap_mm = (math.floor(away.numbers[0] * 100 + 0.05) + 1) / 100
    return gap_mm if gap_mm <= _WIDEST_GAP_MM else None


def _tr(text: str) -> str:
    return QCoreApplication.translate("reading", text)
