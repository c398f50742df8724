"""A finding: something wrong or risky, with a code, a place, and what to do.

Readers, the fit and the export all report findings; the window lists them, the command line prints
them. A finding is *fixed* when the program already mended it (a gap it closed), else *open*.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from enum import StrEnum
from typing import Any


class Severity(StrEnum):
    """How much a finding weighs, heaviest first."""

    BLOCK = "block"
    """Cutting this would ruin a part."""
    WARN = "warn"
    """Look before cutting."""
    NOTE = "note"
    """Good to know."""

    @property
    def rank(self) -> int:
        """0 for the heaviest."""
        return list(Severity).index(self)


@dataclass(frozen=True, slots=True)
class Finding:
    """One finding.

    Attributes:
        code: a stable kebab-case word, unique to the kind of finding ("outline-open").
        severity: how much it weighs.
        message: one sentence: what, and where.
        remedy: what to do about it, one sentence.
        place_mm: (x, y) in drawing millimetres, or None where it has no single place.
        fixed: True if the program already mended it.
    """

    code: str
    severity: Severity
    message: str
    remedy: str
    place_mm: tuple[float, float] | None = None
    fixed: bool = False

    def as_fixed(self) -> Finding:
        """The same finding, marked as mended."""
        return replace(self, fixed=True)

    def to_json(self) -> dict[str, Any]:
        """The form promised by the command line's `--json`."""
        return {
            "code": self.code,
            "severity": self.severity.value,
            "place_mm": None if self.place_mm is None else [round(v, 6) for v in self.place_mm],
            "message": self.message,
            "remedy": self.remedy,
            "fixed": self.fixed,
        }


def heaviest_first(findings: Iterable[Finding]) -> tuple[Finding, ...]:
    """Findings ordered block, warn, note; open before fixed; otherwise in the order they came."""
    return tuple(sorted(findings, key=lambda f: (f.fixed, f.severity.rank)))


def has_open_block(findings: Iterable[Finding]) -> bool:
    """Whether any finding blocks and is still open: the command line's exit code 1."""
    return any(f.severity is Severity.BLOCK and not f.fixed for f in findings)
