"""The whole job on the sample tea trays, without a window: `inlayfit demo`.

An invented set of aluminium tea trays, four jobs that need four kinds of fit:

    feet  acetal glide feet that friction alone holds in the tray's underside: both halves to cut, snug
    leaf  a copper leaf let into a cherry disc whose pocket is cut already: only the leaf can give way
    disc  the cherry disc, which swells and shrinks, let into the tray: a slip fit
    mats  cork mats from a laser, laid into milled recesses: the line is shifted by half its kerf

Each job writes its outlines, a picture of its gaps and its `fit.json` into a folder of its own; a `fit.json`
above them holds all answers.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

from inlayfit.bench.milling import Milling
from inlayfit.document.details import details_json
from inlayfit.document.exports import ExportOptions, ExportReport, Line, write_fit
from inlayfit.document.imports import Imported, import_drawing
from inlayfit.document.report import json_text
from inlayfit.document.staging import Staging
from inlayfit.document.summary import counted
from inlayfit.finding import Finding, Severity, has_open_block
from inlayfit.fit.result import FitResult
from inlayfit.fit.solve import solve
from inlayfit.fit.spec import FitSpec, HalfSpec, HalfState, Relief
from inlayfit.fit.workshop import Workshop, examined
from inlayfit.progress import Progress, unwatched
from inlayfit.shipped import shipped_folder
from inlayfit.units import Unit, format_length, format_per_side

_ANSWER = "fit.json"


@dataclass(frozen=True, slots=True)
class Job:
    """One part of the scenario.

    Attributes:
        name: its folder.
        drawing: file name of its sample.
        about: what goes into what, for the summary.
        spec: what is asked.
        line: where the written line lies.
        workshop: depth and direction of the cut.
    """

    name: str
    drawing: str
    about: str
    spec: FitSpec
    line: Line = Line.EDGE
    workshop: Workshop = field(default_factory=Workshop)


JOBS: tuple[Job, ...] = (
    Job(
        "feet",
        "feet.dxf",
        "acetal feet into the aluminium tray, snug",
        FitSpec(
            0.02,
            HalfSpec(3.0, finishing_allowance_mm=0.2),
            HalfSpec(3.175, finishing_allowance_mm=0.2),
        ),
        workshop=Workshop(depth_mm=1.6, depth_per_pass_mm=0.4, milling=Milling.CLIMB),
    ),
    Job(
        "leaf",
        "leaf.svg",
        "copper leaf into the cherry disc, whose pocket is cut",
        FitSpec(
            0.04,
            HalfSpec(0.6, HalfState.ALREADY_CUT),
            HalfSpec(1.0, relief=Relief.DOG_BONE),
        ),
    ),
    Job(
        "disc",
        "disc.dxf",
        "cherry disc into the aluminium tray, slip",
        FitSpec(0.1, HalfSpec(6.0, finishing_allowance_mm=0.3), HalfSpec(6.0, finishing_allowance_mm=0.3)),
    ),
    Job(
        "mats",
        "mats.dxf",
        "cork mats from the laser into milled recesses",
        FitSpec(0.15, HalfSpec(3.0), HalfSpec(0.0, kerf_mm=0.18)),
        Line.KERF,
    ),
)
"""The scenario; every number in it is invented."""


@dataclass(frozen=True, eq=False, slots=True)
class JobDone:
    """One job solved and written."""

    job: Job
    imported: Imported
    results: tuple[tuple[str, FitResult], ...]
    report: ExportReport

    @property
    def findings(self) -> list[Finding]:
        """Those of the drawing, of each fitting and of the export."""
        solved = [finding for _, result in self.results for finding in result.findings]
        return [*solved, *self.report.findings]


@dataclass(frozen=True, eq=False, slots=True)
class Demo:
    """All jobs, and where they were written."""

    folder: Path
    jobs: tuple[JobDone, ...]

    @property
    def is_blocked(self) -> bool:
        """Whether any finding blocks."""
        return any(has_open_block(done.findings) for done in self.jobs)

    @property
    def names(self) -> list[str]:
        """The files written, seen from the folder."""
        return [f"{done.job.name}/{path.name}" for done in self.jobs for path in done.report.paths] + [
            _ANSWER
        ]

    def answer(self, files: Sequence[str]) -> dict[str, Any]:
        """The answers of all jobs as one, in the form of `fit --json`; each id carries its job."""
        answers = [(done.job.name, done.report.answer) for done in self.jobs]
        fittings = [
            {**fitting, "id": f"{name}/{fitting['id']}"}
            for name, answer in answers
            for fitting in answer["fittings"]
        ]
        findings = [finding for _, answer in answers for finding in answer["findings"]]
        return {"fittings": fittings, "files": list(files), "findings": findings}

    @property
    def json(self) -> dict[str, Any]:
        """The answer with the files as seen from where the command runs."""
        return self.answer([str(self.folder / name) for name in self.names])

    @property
    def text(self) -> str:
        """What the command prints: two lines a job, then where to look."""
        lines = ["Sample tea trays, an invented set:"]
        lines += [line for done in self.jobs for line in _job_lines(done)]
        lines.append(f"Written to {self.folder}; look at {self.folder / 'leaf' / 'gap.svg'} first.")
        return "\n".join(lines)


def run_demo(folder: Path, *, progress: Progress | None = None) -> Demo:
    """Read the samples, solve every job and write it all into `folder`.

    Raises:
        WriteError: the folder cannot be written to.
        Cancelled: the work was stopped.
    """
    watched = progress or unwatched()
    done: list[JobDone] = []
    for number, job in enumerate(JOBS):
        watched.report(number / len(JOBS), job.name)
        done.append(_do(job, folder / job.name))
    demo = Demo(folder, tuple(done))
    with Staging(folder) as staging:
        answer = json_text(demo.answer(demo.names))
        staging.path(_ANSWER).write_text(answer, encoding="utf-8", newline="\n")
        staging.commit()
    watched.report(1.0, "done")
    return demo


def _do(job: Job, folder: Path) -> JobDone:
    imported = import_drawing(shipped_folder("sample_shapes") / job.drawing)
    looked_at = [
        (outline.id, examined(solve(outline.region, job.spec), job.workshop)) for outline in imported.outlines
    ]
    results = tuple((name, each.result) for name, each in looked_at)
    report = write_fit(
        results,
        folder,
        ExportOptions(line=job.line, milling=job.workshop.milling),
        source=imported.source,
        drawing_findings=imported.findings,
        details={name: details_json(each) for name, each in looked_at},
    )
    return JobDone(job, imported, results, report)


def _job_lines(done: JobDone) -> Sequence[str]:
    gaps = [result.gap for _, result in done.results]
    tightest, widest = min(gap.min_mm for gap in gaps), max(gap.max_mm for gap in gaps)
    reliefs = sum(len(result.reliefs) for _, result in done.results)
    asked = format_per_side(done.job.spec.clearance_mm, Unit.MM)
    facts = [
        counted(len(done.results), "fitting"),
        f"gap {format_length(tightest, Unit.MM, with_unit=False)} to {format_length(widest, Unit.MM)}",
        *([counted(reliefs, "relief")] if reliefs else []),
        *_finding_counts(done.findings),
    ]
    return f"  {done.job.name}: {done.job.about}, {asked}", f"        {', '.join(facts)}"


def _finding_counts(findings: Sequence[Finding]) -> list[str]:
    names = {Severity.BLOCK: "block", Severity.WARN: "warning", Severity.NOTE: "note"}
    counts = Counter(finding.severity for finding in findings if not finding.fixed)
    return [counted(counts[severity], name) for severity, name in names.items() if counts[severity]]
