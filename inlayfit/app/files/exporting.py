"""Writing what was solved, with all that the workshop's view adds, as the command line writes it."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

from inlayfit.app.answers.examining import Looks, look_at
from inlayfit.app.answers.solution import Solution
from inlayfit.document.details import details_json
from inlayfit.document.exports import ExportOptions, ExportReport, write_fit
from inlayfit.document.stack_check import height_finding
from inlayfit.document.state import Fitting
from inlayfit.finding import heaviest_first
from inlayfit.fit.result import FitResult
from inlayfit.progress import Progress


def write(
    solution: Solution,
    known: Looks,
    folder: Path,
    options: ExportOptions,
    *,
    source: Path | None,
    progress: Progress,
) -> ExportReport:
    """Write every solved fitting into a folder.

    Args:
        solution: an exact one.
        known: answers that were looked at already.
        folder: where to.
        options: what, and how.
        source: the drawing; neither it nor the drawing of a made plug is overwritten.
        progress: asked whether to stop.

    Raises:
        SpecError: the workshop's numbers contradict each other.
        WriteError, ReadBackError, Cancelled: as `write_fit`.
    """
    state = solution.state
    looks = look_at(solution, known, progress)
    names = [name for name in state.chosen if name in looks]
    details = {}
    for name in names:
        solved = solution.solved[name]
        details[name] = details_json(
            looks[name].whole,
            seat=solved.seat,
            plug_outline="" if solved.plug is None else solved.plug.id_there,
            model=None if solved.readings is None else solved.readings.model,
        )
    return write_fit(
        [(name, _with_height(looks[name].whole.result, state.fitting(name))) for name in names],
        folder,
        options,
        source=source,
        other_sources=[Path(drawing) for drawing in sorted({o.drawing for o in state.outlines} - {""})],
        drawing_findings=[*state.findings, *(finding for name in names for finding in looks[name].held)],
        details=details,
        progress=progress,
    )


def _with_height(result: FitResult, fitting: Fitting) -> FitResult:
    """The result with what is wrong with the height, which its outlines do not know."""
    found = height_finding(fitting)
    return result if found is None else replace(result, findings=heaviest_first([*result.findings, found]))
