"""The fit sentence: the whole job in one sentence, made from one pattern with named places.

The pattern is a whole sentence so that a translation can put its places in another order. A place is a
name in braces; `parts` cuts a pattern into plain words and places, `words` says what stands in each, and
`sentence` puts them together: the document's summary, the heading of the cut sheet, and what a screen
reader says.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from string import Formatter

from inlayfit.document.edits import FACING_WORDS, STATE_WORDS, corner_words
from inlayfit.document.state import Fitting, HalfName, StackNumbers
from inlayfit.fit.feel import SEED_ZONES
from inlayfit.fit.spec import HalfSpec
from inlayfit.units import Unit, format_entry, format_length, format_per_side
from inlayfit.wording import Say

PATTERN = (
    "{plug}, {plug_state} with {plug_cutter}, into {pocket}, {pocket_state} with {pocket_cutter}, "
    "{feel} at {clearance} per side ({overall} overall), corners {corners}, {allowance}, "
    "{seat} on {glue}, {facing}."
)
"""The sentence in English."""
PLACES = (
    "plug", "plug_state", "plug_cutter", "pocket", "pocket_state", "pocket_cutter", "feel", "clearance",
    "overall", "corners", "allowance", "seat", "glue", "facing",
)  # fmt: skip


@dataclass(frozen=True, slots=True)
class Part:
    """A run of plain words, or a place if `is_place`."""

    text: str
    is_place: bool


def parts(pattern: str) -> tuple[Part, ...]:
    """A pattern cut at its places; ValueError if it lacks one or has one of its own."""
    found: list[Part] = []
    for literal, name, _, _ in Formatter().parse(pattern):
        if literal:
            found.append(Part(literal, False))
        if name is not None:
            found.append(Part(name, True))
    names = [part.text for part in found if part.is_place]
    if sorted(names) != sorted(PLACES):
        raise ValueError("a sentence pattern needs each place exactly once")
    return tuple(found)


def words(fitting: Fitting, unit: Unit, say: Say = str) -> Mapping[str, str]:
    """What stands in each place."""
    spec = fitting.spec
    clearance = format_length(spec.clearance_mm, unit)
    return {
        "plug": half_words(fitting.plug, "a plug", say),
        "plug_state": say(STATE_WORDS[spec.plug.state]),
        "plug_cutter": tool_words(spec.plug, unit, say),
        "pocket": half_words(fitting.pocket, "a pocket", say),
        "pocket_state": say(STATE_WORDS[spec.pocket.state]),
        "pocket_cutter": tool_words(spec.pocket, unit, say),
        "feel": say(SEED_ZONES.feel_at(spec.clearance_mm).value),
        "clearance": clearance,
        "overall": overall_words(spec.clearance_mm, unit),
        "corners": say(corner_words(pocket=spec.pocket.relief, plug=spec.plug.relief)),
        "allowance": allowance_words(spec.plug.finishing_allowance_mm, unit, say),
        "seat": seat_words(fitting.stack, unit, say),
        "glue": say(fitting.stack.glue),
        "facing": say(FACING_WORDS[fitting.facing]),
    }


def sentence(fitting: Fitting, unit: Unit, say: Say = str) -> str:
    """The whole sentence, its first letter a capital."""
    text = say(PATTERN).format(**words(fitting, unit, say))
    return text[:1].upper() + text[1:]


def half_words(name: HalfName, otherwise: str, say: Say = str) -> str:
    """How a half is spoken of: its material and its name, or `otherwise` if it has neither."""
    if name.material and name.name:
        return say("{0} {1}").format(say(name.material), say(name.name))
    return say(name.material or name.name or otherwise)


def tool_words(half: HalfSpec, unit: Unit, say: Say = str) -> str:
    """The tool that cuts a half."""
    if half.cutter_mm:
        return say("a {0} cutter").format(format_entry(half.cutter_mm, unit))
    if half.kerf_mm:
        return say("a {0} kerf").format(format_entry(half.kerf_mm, unit))
    return say("no cutter radius")


def overall_words(clearance_mm: float, unit: Unit) -> str:
    """Twice the clearance as it is shown, so that the pair always agrees."""
    _, _, overall = format_per_side(clearance_mm, unit).partition("(")
    return overall.removesuffix(" overall)")


def allowance_words(allowance_mm: float, unit: Unit, say: Say = str) -> str:
    """What roughing leaves."""
    if not allowance_mm:
        return say("no roughing pass")
    return say("{0} left to finish").format(format_entry(allowance_mm, unit))


def seat_words(stack: StackNumbers, unit: Unit, say: Say = str) -> str:
    """Where the plug is meant to end."""
    target = stack.target_proud_mm
    if target == 0:
        return say("flush")
    return say("{0} proud" if target > 0 else "{0} below").format(format_entry(abs(target), unit))
