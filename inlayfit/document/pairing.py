"""Which plug of one drawing belongs to which pocket of another.

One to one where each drawing has one outline chosen; else in their reading order, the first with the first,
and that is said. What is left over on either side is named and not fitted.
"""

from __future__ import annotations

from collections.abc import Sequence

from inlayfit.document.outlines import Outline
from inlayfit.finding import Finding, Severity


def paired(
    pockets: Sequence[Outline], plugs: Sequence[Outline], *, chosen: bool
) -> tuple[list[tuple[Outline, Outline]], tuple[Finding, ...]]:
    """Pairs of a pocket and its plug, and what to know about them.

    Args:
        pockets: in the order to go by.
        plugs: the same.
        chosen: whether the person named the outlines, so that the order is theirs.
    """
    pairs = list(zip(pockets, plugs, strict=False))
    findings = []
    if len(pairs) > 1 and not chosen:
        findings.append(
            Finding(
                "paired-by-order",
                Severity.WARN,
                f"{len(pairs)} pockets and plugs are paired by their order on the sheets, from the top left.",
                "Check the pairs, or name both outlines of each.",
            )
        )
    findings += _left_over("pocket", "plug", pockets[len(pairs) :])
    findings += _left_over("plug", "pocket", plugs[len(pairs) :])
    return pairs, tuple(findings)


def _left_over(what: str, other: str, rest: Sequence[Outline]) -> list[Finding]:
    if not rest:
        return []
    ids = ", ".join(outline.id for outline in rest[:8]) + (", …" if len(rest) > 8 else "")
    one = len(rest) == 1
    whose, them = (f"{what} {ids}", "it") if one else (f"{len(rest)} {what}s ({ids})", "them")
    return [
        Finding(
            "left-unpaired",
            Severity.WARN,
            f"There is no {other} for {whose}, so nothing is said about {them}.",
            f"Draw the {other} too, or choose the outlines that belong together.",
        )
    ]
