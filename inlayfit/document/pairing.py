"""Which plug of one drawing belongs to which pocket of another.

One to one where each drawing has one outline chosen; else in their reading order, the first with the first,
and that is said. What is left over on either side is named and not fitted.
"""

from __future__ import annotations

from collections.abc import Sequence

from inlayfit.document.outlines import Outline
from inlayfit.finding import Finding, Severity
from inlayfit.fit.result import Half
from inlayfit.wording import Worded


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
                Worded(
                    "{count} pockets and plugs are paired by their order on the sheets, from the top left.",
                    count=len(pairs),
                ),
                Worded("Check the pairs, or name both outlines of each."),
            )
        )
    findings += _left_over(Half.POCKET, pockets[len(pairs) :])
    findings += _left_over(Half.PLUG, plugs[len(pairs) :])
    return pairs, tuple(findings)


def _left_over(half: Half, rest: Sequence[Outline]) -> list[Finding]:
    if not rest:
        return []
    ids = ", ".join(outline.id for outline in rest[:8]) + (", …" if len(rest) > 8 else "")
    other = Half.PLUG if half is Half.POCKET else Half.POCKET
    return [
        Finding(
            "left-unpaired",
            Severity.WARN,
            _no_partner(half, len(rest), ids),
            Worded("Draw the {other} too, or choose the outlines that belong together.", other=other),
        )
    ]


def _no_partner(half: Half, count: int, ids: str) -> Worded:
    if count == 1 and half is Half.POCKET:
        return Worded("There is no plug for pocket {ids}, so nothing is said about it.", ids=ids)
    if count == 1:
        return Worded("There is no pocket for plug {ids}, so nothing is said about it.", ids=ids)
    if half is Half.POCKET:
        return Worded(
            "There is no plug for {count} pockets ({ids}), so nothing is said about them.",
            count=count,
            ids=ids,
        )
    return Worded(
        "There is no pocket for {count} plugs ({ids}), so nothing is said about them.", count=count, ids=ids
    )
