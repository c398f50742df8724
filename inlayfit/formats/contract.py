"""What every reader returns, and what every reader is asked.

A reader answers with the drawing *as drawn*: true curves, in millimetres, y up, every figure it could
make sense of, and a finding for every element it could not. It raises `ReadError` only when nothing can
be shown.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from pathlib import Path

from inlayfit.drawing import Drawing
from inlayfit.finding import Finding
from inlayfit.units import Unit


@dataclass(frozen=True, slots=True)
class ReadOptions:
    """What a reader is asked.

    Attributes:
        unit: one drawing unit is this long, whatever the file says; None believes the file.
    """

    unit: Unit | None = None


@dataclass(frozen=True, slots=True)
class ReadResult:
    """What a reader found.

    Attributes:
        drawing: figures in millimetres, y up.
        source: the file it came from.
        file_unit: the unit the file states, or None if it states none (then the person must choose;
            `drawing` was scaled as if one unit were `assumed_unit`).
        assumed_unit: the unit used to scale.
        findings: flaws and skipped elements.
        element_count: elements looked at, for the import notes.
    """

    drawing: Drawing
    source: Path
    file_unit: Unit | None
    assumed_unit: Unit
    findings: tuple[Finding, ...] = field(default=())
    element_count: int = 0
