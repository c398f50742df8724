"""The verdict: will it go in, where is it tight, and the one thing to do next.

The claim rests on the smallest gap, never on the mean, and on the heaviest open finding.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from enum import StrEnum

from inlayfit.document.coating import coating_finding, coating_fix
from inlayfit.document.in_unit import text_in_unit
from inlayfit.document.made_plug import STOPPED
from inlayfit.document.remedies import BOTH_CUT_CODE, STOPPED_CODE, Fix, fix_for
from inlayfit.document.sentence import overall_words
from inlayfit.document.stack_check import height_finding, height_fix
from inlayfit.document.state import Fitting, State
from inlayfit.finding import Finding, Severity, heaviest_first
from inlayfit.fit.result import FitResult
from inlayfit.units import Unit, format_length
from inlayfit.wording import Say, Worded, said


class Answer(StrEnum):
    """The kinds of verdict."""

    NOTHING = "nothing"
    WAITING = "waiting"
    BLOCKED = "blocked"
    LOOK = "look"
    PRESS = "press"
    GOES_IN = "goes-in"


@dataclass(frozen=True, slots=True)
class Check:
    """A finding, whose it is, and its fix. `outline_id` is "" for a finding of the whole drawing."""

    finding: Finding
    outline_id: str = ""
    fix: Fix | None = None


@dataclass(frozen=True, slots=True)
class Verdict:
    """What the window says first.

    Attributes:
        answer: the kind.
        headline: a few words.
        explanation: one sentence with the numbers.
        check: the check it rests on, if any, with its place and its fix.
    """

    answer: Answer
    headline: str
    explanation: str
    check: Check | None = None


def checks(
    state: State, results: Mapping[str, FitResult], problems: Mapping[str, str], say: Say = str
) -> tuple[Check, ...]:
    """Every check of what is chosen and of the drawing: block, warn, note; the lead's first.

    Their sentences are in the document's unit, and in the language of `say`.
    """
    found: list[Check] = []

    def shown(text: str) -> str:
        return said(text_in_unit(text, state.unit), say)

    def check(finding: Finding, fitting: Fitting | None) -> Check:
        words = replace(finding, message=shown(finding.message), remedy=shown(finding.remedy))
        return Check(words, fitting.outline_id, fix_for(finding, fitting)) if fitting else Check(words)

    for fitting in state.chosen_fittings:
        outline_id = fitting.outline_id
        if problems.get(outline_id):
            both_made = _both_made(state, outline_id)
            problem = problem_finding(shown(problems[outline_id]), both_made=both_made, say=say)
            if problems[outline_id] == STOPPED:
                problem = replace(problem, code=STOPPED_CODE)
            found.append(check(problem, fitting))
        result = results.get(outline_id)
        for finding in result.findings if result is not None else ():
            found.append(check(finding, fitting))
        height = height_finding(fitting)
        if height is not None:
            found.append(replace(check(height, fitting), fix=height_fix(fitting)))
        coating = coating_finding(fitting, result)
        if coating is not None:
            found.append(replace(check(coating, fitting), fix=coating_fix(fitting)))
    found += [check(finding, None) for finding in state.findings]
    order = {id(f): n for n, f in enumerate(heaviest_first([c.finding for c in found]))}
    return tuple(sorted(found, key=lambda check: order[id(check.finding)]))


def problem_finding(problem: str, *, both_made: bool, say: Say = str) -> Finding:
    """The finding for a fitting that could not be solved; a refusal ends with what to do."""
    what, _, remedy = problem.partition(";")
    code = BOTH_CUT_CODE if both_made else "not-solved"
    remedy = remedy.strip() or say("Change the fit sentence.")
    return Finding(code, Severity.BLOCK, _sentence(what), _sentence(remedy))


def _sentence(clause: str) -> str:
    return f"{clause[:1].upper()}{clause[1:].rstrip('.')}."


def verdict(
    state: State, results: Mapping[str, FitResult], found: Sequence[Check], say: Say = str
) -> Verdict:
    """The verdict over all chosen fittings; `say` puts its own words into another language."""
    if not state.chosen:
        what = (
            Worded("Click an outline to fit it.")
            if state.outlines
            else Worded("Open the outline of a pocket or a plug.")
        )
        return Verdict(Answer.NOTHING, say("Nothing is chosen."), say(what))
    worst = next((c for c in found if c.outline_id and not c.finding.fixed), None)
    made = _of_made_halves(state, results, worst, say)
    if made is not None:
        return made
    if worst is not None and worst.finding.severity is Severity.BLOCK:
        bites = worst.finding.code == "bites"
        headline = Worded("Will not go in yet.") if bites else Worded("Not ready to cut.")
        if worst.finding.code in {BOTH_CUT_CODE, STOPPED_CODE}:
            headline = Worded("No word on the fit yet.")
        return Verdict(Answer.BLOCKED, say(headline), worst.finding.message, worst)
    if any(outline_id not in results for outline_id in state.chosen):
        words = say("Working it out."), say("No word on the fit until every wall is measured.")
        return Verdict(Answer.WAITING, *words)
    tightest = _tightest_words(state, results, say)
    if worst is not None and worst.finding.severity is Severity.WARN:
        return Verdict(Answer.LOOK, say("Look before cutting."), worst.finding.message, worst)
    if any(fitting.spec.clearance_mm < 0 for fitting in state.chosen_fittings):
        return Verdict(Answer.PRESS, say("Has to be pressed in."), tightest, worst)
    return Verdict(Answer.GOES_IN, say("Goes in."), tightest)


def _of_made_halves(
    state: State, results: Mapping[str, FitResult], worst: Check | None, say: Say
) -> Verdict | None:
    """The verdict on two halves that are made: whether they go together, and by how much or not.

    None if a half may still move, if several fittings are chosen, or if something else weighs more.
    """
    lead = state.lead
    result = results.get(lead.outline_id) if lead is not None and len(state.chosen) == 1 else None
    if lead is None or result is None or not lead.both_made or result.gap.is_empty:
        return None
    from inlayfit.fit.bench_advice import Meeting, meeting  # heavy; not before something is solved

    how = meeting(result)
    if worst is not None and worst.finding.severity is Severity.BLOCK and how is not Meeting.BINDS:
        return None
    tightest = pair_words(result.gap.min_mm, state.unit, say)
    if how is Meeting.BINDS:
        words = say("It binds by {0}.").format(pair_words(-result.gap.min_mm, state.unit, say))
        return Verdict(Answer.BLOCKED, say("Will not go in as it is."), words, worst)
    explanation = say("Tightest {0}, loosest {1}.").format(
        tightest, pair_words(result.gap.max_mm, state.unit, say)
    )
    if how is Meeting.AS_WANTED:
        is_press = lead.spec.clearance_mm < 0
        headline = say("Has to be pressed in.") if is_press else say("Goes in.")
        return Verdict(Answer.PRESS if is_press else Answer.GOES_IN, headline, explanation)
    headline = (
        Worded("Goes in, tighter than wanted.")
        if how is Meeting.TIGHTER
        else Worded("Goes in, looser than wanted.")
    )
    return Verdict(Answer.LOOK, say(headline), explanation, worst)


def _tightest_words(state: State, results: Mapping[str, FitResult], say: Say) -> str:
    gaps = [r.gap for r in results.values() if not r.gap.is_empty]
    if not gaps:
        return ""
    gap = min(gaps, key=lambda g: g.min_mm)
    tightest = pair_words(gap.min_mm, state.unit, say)
    if len(gaps) > 1:
        return say("Tightest {0}, over {1} fittings.").format(tightest, len(gaps))
    return say("Tightest {0}, loosest {1}.").format(tightest, pair_words(gap.max_mm, state.unit, say))


def pair_words(gap_mm: float, unit: Unit, say: Say) -> str:
    """A gap as always shown: per side, and overall beside it."""
    side, overall = format_length(gap_mm, unit), overall_words(gap_mm, unit)
    return say("{0} per side ({1} overall)").format(side, overall)


def _both_made(state: State, outline_id: str) -> bool:
    spec = state.fitting(outline_id).spec
    return not spec.pocket.may_move and not spec.plug.may_move
