"""Options for what is written, and what is said about the files."""

from __future__ import annotations

import argparse

from inlayfit.bench.milling import Milling
from inlayfit.document.exports import ExportOptions, ExportReport, Line, Origin, Passes, Split
from inlayfit.fit.spec import Half
from inlayfit.formats.dxf_write import DxfVersion

_HALVES = {"pocket": (Half.POCKET,), "plug": (Half.PLUG,), "both": (Half.POCKET, Half.PLUG)}


def add_writing(asking: argparse.ArgumentParser) -> None:
    """The options for what is written."""
    add = asking.add_argument_group("the files").add_argument
    versions = [version.value for version in DxfVersion]
    add("--dxf", choices=versions, default="R2000", help="R12 cannot state its unit")
    add("--half", choices=list(_HALVES), default="both", help="which half is written")
    passes = [each.value for each in Passes]
    add("--passes", choices=passes, default="both", help="finished outlines, roughing outlines")
    lines = [each.value for each in Line]
    add("--line", choices=lines, help="on the finished edge, or half a kerf off it")
    add("--mirrored", choices=list(_HALVES), metavar="HALF", help="pocket, plug or both: cut face down")
    origins = [each.value for each in Origin]
    add("--origin", choices=origins, default="as-drawn", help="where the coordinates start")
    add("--one-file-per-piece", action="store_true", help="a file for each outline")


def export_options(asked: argparse.Namespace, *, has_kerf: bool, milling: Milling | None) -> ExportOptions:
    """What is asked; where a kerf is known the line is shifted for it, unless the edge is asked for."""
    line = Line(asked.line) if asked.line else Line.KERF if has_kerf else Line.EDGE
    return ExportOptions(
        halves=_HALVES[asked.half],
        passes=Passes(asked.passes),
        line=line,
        mirrored=frozenset(_HALVES[asked.mirrored]) if asked.mirrored else frozenset(),
        origin=Origin(asked.origin),
        split=Split.PER_PIECE if asked.one_file_per_piece else Split.ONE_FILE,
        dxf_version=DxfVersion(asked.dxf),
        milling=milling,
    )


def file_lines(report: ExportReport) -> list[str]:
    """A line a file: its name, the arcs that its points became, and how far off they are at most."""
    return [f"  {file.sentence}" for file in report.files]
