"""The two ways to mill; what they mean for a contour, `cutting` says."""

from __future__ import annotations

from enum import StrEnum


class Milling(StrEnum):
    """How the teeth meet the work."""

    CLIMB = "climb"
    CONVENTIONAL = "conventional"
