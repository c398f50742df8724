"""Which plug of one drawing belongs to which pocket of another.

One to one where each drawing has one outline; in the person's order where the person named the plugs; else
by their geometry (`fit.assignment`). What was a matter of choice or of doubt is said, in one finding each,
and so is what has to be turned or flipped over to go in. What is left over is named and not fitted.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

from inlayfit.document.outlines import Outline
from inlayfit.errors import NoOutlineError
from inlayfit.finding import Finding, Severity
from inlayfit.fit.assignment import Assignment, OtherWay, Pair, assigned, other_way
from inlayfit.fit.orientation import Motion
from inlayfit.fit.spec import Half, Seating
from inlayfit.wording import Worded

_SHOWN = 8


def paired(
    pockets: Sequence[Outline],
    plugs: Sequence[Outline],
    *,
    clearance_mm: float,
    seating: Seating,
    chosen: bool,
) -> tuple[list[tuple[Outline, Outline]], tuple[Finding, ...]]:
    """Pairs of a pocket and its plug, and what to know about them.

    Args:
        pockets: in reading order, or in the person's.
        plugs: the same.
        clearance_mm: the gap that is wanted.
        seating: how the plugs may move to their seats.
        chosen: whether the person named the outlines, so that the order is theirs.

    Raises:
        NoOutlineError: no plug fits any pocket.
    """
    if chosen or len(pockets) == len(plugs) == 1:
        several = zip(range(len(pockets)), range(len(plugs)), strict=False)
        found = Assignment(
            tuple(
                Pair(i, j, other_way(pockets[i].region, plugs[j].region,
                                     clearance_mm=clearance_mm, seating=seating))
                for i, j in several
            )
        )  # fmt: skip
    else:
        found = assigned(
            [pocket.region for pocket in pockets],
            [plug.region for plug in plugs],
            clearance_mm=clearance_mm,
            seating=seating,
        )
    if not found.pairs:
        raise NoOutlineError(
            Worded(
                "None of the plugs fits any of the pockets as far as it may move; choose the pocket and the "
                "plug that belong together."
            )
        )
    pairs = [(pockets[pair.pocket], plugs[pair.plug]) for pair in found.pairs]
    findings = [*_exchangeable(pairs, found), *_doubtful(pairs, found), *_held_otherwise(pairs, found)]
    taken, used = {pair.pocket for pair in found.pairs}, {pair.plug for pair in found.pairs}
    findings += _left_over(Half.POCKET, [p for i, p in enumerate(pockets) if i not in taken])
    findings += _left_over(Half.PLUG, [p for j, p in enumerate(plugs) if j not in used])
    return pairs, tuple(findings)


_Pairs = Sequence[tuple[Outline, Outline]]


def _named(pairs: _Pairs, found: Assignment, numbers: Sequence[int]) -> str:
    """Pocket and plug of each, and by how much the plug is turned, such as o1 + o3 (90°)."""
    names = [f"{pairs[k][0].id} + {pairs[k][1].id}{_by(found.pairs[k].other_way)}" for k in numbers]
    return ", ".join(names[:_SHOWN]) + (", …" if len(names) > _SHOWN else "")


def _by(way: OtherWay | None) -> str:
    degrees = 0 if way is None else round(math.degrees(way.turn_rad))
    return f" ({degrees}°)".replace("-", "\u2212") if degrees else ""


def _exchangeable(pairs: _Pairs, found: Assignment) -> list[Finding]:
    if not found.exchangeable:
        return []
    names = _named(pairs, found, found.exchangeable)
    if found.by_place:
        code = "paired-by-place"
        said = Worded(
            "Those that are alike are paired by where they lie (pocket + plug): {names}.", names=names
        )
    else:
        code = "paired-by-order"
        said = Worded(
            "Those that are alike are paired by their order, from the top left (pocket + plug): {names}.",
            names=names,
        )
    remedy = Worded("They may be exchanged; name both outlines of each if you want other pairs.")
    return [Finding(code, Severity.NOTE, said, remedy)]


def _doubtful(pairs: _Pairs, found: Assignment) -> list[Finding]:
    if not found.doubtful:
        return []
    names = _named(pairs, found, found.doubtful)
    return [
        Finding(
            "pair-doubtful",
            Severity.WARN,
            Worded("Other pairs would fit as well as these (pocket + plug): {names}.", names=names),
            Worded("Check these pairs, or name both outlines of each."),
        )
    ]


def _held_otherwise(pairs: _Pairs, found: Assignment) -> list[Finding]:
    ways = [(k, pair.other_way.motion) for k, pair in enumerate(found.pairs) if pair.other_way is not None]
    turned = [k for k, motion in ways if motion is Motion.TURNED]
    flipped = [k for k, motion in ways if motion is Motion.FLIPPED]
    findings = []
    if turned:
        findings.append(
            Finding(
                "plug-turned",
                Severity.WARN,
                Worded(
                    "Only turned would go in (pocket + plug): {names}.", names=_named(pairs, found, turned)
                ),
                Worded("Seat the plugs with a turn too, or turn the drawing."),
            )
        )
    if flipped:
        names = _named(pairs, found, flipped)
        findings.append(
            Finding(
                "plug-mirrored",
                Severity.WARN,
                Worded("Only flipped over would go in (pocket + plug): {names}.", names=names),
                Worded("Mirror the drawing if it shows the plug from below; else it is for the other hand."),
            )
        )
    return findings


def _left_over(half: Half, rest: Sequence[Outline]) -> list[Finding]:
    if not rest:
        return []
    ids = ", ".join(outline.id for outline in rest[:_SHOWN]) + (", …" if len(rest) > _SHOWN else "")
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
