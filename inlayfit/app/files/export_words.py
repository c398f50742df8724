"""What an export starts from, which files it makes, and what is said of it."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from inlayfit.document.state import Facing, State
from inlayfit.fit.spec import Half

if TYPE_CHECKING:
    from inlayfit.document.exports import ExportOptions, ExportReport


def export_options(state: State) -> ExportOptions:
    """How the chosen fittings are written: mirrored if they lie face down, shifted for a beam's kerf."""
    from inlayfit.document.exports import ExportOptions, Line  # heavy; not before it is needed

    fittings = state.chosen_fittings
    face_down = bool(fittings) and all(fitting.facing is Facing.DOWN for fitting in fittings)
    return ExportOptions(
        line=Line.KERF if has_kerf(state) else Line.EDGE,
        mirrored=frozenset({Half.PLUG}) if face_down else frozenset(),
        milling=state.workshop.milling,
    )


def has_kerf(state: State) -> bool:
    """Whether a chosen half is cut by a beam or blade of known width."""
    return any(f.half(half).kerf_mm > 0 for f in state.chosen_fittings for half in Half)


def files_of(options: ExportOptions, outline_ids: Sequence[str]) -> list[str]:
    """The names of the outline files that an export of these writes."""
    from inlayfit.document.exports import file_names  # heavy; not before it is needed

    return file_names(options, outline_ids)


def written_words(written: ExportReport) -> str:
    """What became of the points of each outline file, and how far off it is: a sentence a DXF."""
    told = []
    for file in written.files:
        if file.tally is not None and file.path.suffix == ".dxf":
            words = _tr("{0}: {1} points became {2} arcs and {3} lines, off by {4} µm at most")
            lines = file.tally.segments_out - file.tally.arcs_out
            numbers = (f"{n:,}" for n in (file.tally.points_in, file.tally.arcs_out, lines))
            told.append(words.format(file.path.name, *numbers, f"{file.tally.worst_mm * 1000:.1f}"))
    return "".join(f". {sentence}" for sentence in told)


def _tr(text: str) -> str:
    return QCoreApplication.translate("export", text)
