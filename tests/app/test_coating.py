"""A coating in the window: typed, masked, drawn in the stack, checked, undone, and kept in the project."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QCheckBox

from inlayfit.app.panels.coating_box import CoatingBox
from inlayfit.app.session import Session
from inlayfit.app.window import MainWindow
from inlayfit.bench.stack import BARE, BuildUp
from inlayfit.document import edits
from inlayfit.document.coating import COATING_CODE, Face, set_coating
from inlayfit.document.project_file import load_project
from inlayfit.fit.spec import Half
from inlayfit.units import Unit

pytestmark = pytest.mark.qt_log_ignore("This plugin does not support")
Settled = Callable[[Session], None]


@pytest.fixture
def box(open_discs: MainWindow) -> CoatingBox:
    """The box with its form open."""
    box = open_discs.work.spot.stack.coating_box
    QTest.mouseClick(box, Qt.MouseButton.LeftButton)
    return box


def _type(box: CoatingBox, half: Half, text: str) -> None:
    length = box.lengths[half]
    length.setFocus()
    length.selectAll()
    QTest.keyClicks(length.lineEdit(), text)
    QTest.keyClick(length.lineEdit(), Qt.Key.Key_Tab)


def _press(check: QCheckBox) -> None:
    check.setFocus()
    QTest.keyClick(check, Qt.Key.Key_Space)


def _coating(window: MainWindow) -> BuildUp:
    lead = window.session.state.lead
    assert lead is not None
    return lead.stack.coating


def test_the_form_opens_at_the_host_s_thickness_with_nothing_coated(box: CoatingBox) -> None:
    assert box.popup.isVisible()
    assert box.lengths[Half.POCKET].hasFocus()
    assert box.text() == "nothing coated"
    assert box.lengths[Half.POCKET].text() == "not coated"
    assert not any(check.isEnabled() for check in box.faces.values())


def test_a_typed_thickness_coats_a_half_and_a_mask_takes_a_face_out(
    open_discs: MainWindow, box: CoatingBox
) -> None:
    stack = open_discs.work.spot.stack
    _type(box, Half.POCKET, "0.025")
    assert _coating(open_discs) == BuildUp.host(0.025)
    assert box.text() == "host coated 0.025"
    assert all(box.faces[face].isChecked() for face in (Face.RIM, Face.FLOOR, Face.POCKET_WALL))
    assert stack.view.section.stack.build_up == BuildUp.host(0.025)
    assert box.text() in stack.view.accessibleDescription()
    before = stack.view.section.stack.proud.middle_mm
    _press(box.faces[Face.FLOOR])
    assert _coating(open_discs) == BuildUp.host(0.025, floor_masked=True)
    assert stack.view.section.stack.proud.middle_mm == pytest.approx(before - 0.025)
    _type(box, Half.PLUG, "0.01")
    assert box.text() == "coated: host 0.025, plug 0.010"
    _type(box, Half.POCKET, "0")
    assert _coating(open_discs) == BuildUp.plug(0.01)


def test_the_keyboard_goes_from_a_thickness_to_its_faces(open_discs: MainWindow, box: CoatingBox) -> None:
    _type(box, Half.POCKET, "0.025")
    assert box.faces[Face.RIM].hasFocus()
    QTest.keyClick(box.faces[Face.RIM], Qt.Key.Key_Space)
    assert _coating(open_discs) == BuildUp(floor_mm=0.025, pocket_wall_mm=0.025)


def test_the_form_has_room_for_its_note(open_discs: MainWindow, box: CoatingBox) -> None:
    before = box.popup.height()
    _type(box, Half.POCKET, "0.025")
    assert "left at the walls" in box.note.text()
    assert box.popup.height() == before
    assert box.note.height() >= box.note.heightForWidth(box.note.width())


def test_what_is_left_of_the_clearance_is_said_and_follows_it(
    open_discs: MainWindow, settled: Settled
) -> None:
    session, note = open_discs.session, open_discs.work.spot.stack.left_note
    assert not note.isVisible()
    session.do(lambda s: set_coating(s, BuildUp(rim_mm=0.02)))
    assert not note.isVisible(), "a face takes no clearance"
    session.do(lambda s: set_coating(s, BuildUp.host(0.02)))
    assert note.text() == "Coated: 0.010 per side (0.020 overall) left at the walls."
    session.preview(edits.set_clearance(session.state, 0.05))
    assert "0.030 per side (0.060 overall)" in note.text()
    session.cancel_gesture()
    session.do(lambda s: edits.set_clearance(s, 0.015))
    assert note.text() == "Coated: bites by 0.005 per side (0.010 overall)."
    session.do(lambda s: edits.set_unit(s, Unit.THOU))
    assert "0.2 per side (0.4 overall)" in note.text()


def test_walls_that_bite_once_coated_are_a_check_with_its_fix(
    open_discs: MainWindow, settled: Settled
) -> None:
    session = open_discs.session
    session.do(lambda s: set_coating(s, BuildUp.host(0.04)))
    settled(session)
    check = next(c for c in open_discs.work.checks if c.finding.code == COATING_CODE)
    assert open_discs.work.verdict_bar.headline == "Look before cutting."
    assert check.fix is not None
    assert check.fix.label == "Add it to the clearance"
    open_discs.work.fix_check(check)
    settled(session)
    assert session.state.fittings[0].spec.clearance_mm == 0.07
    assert COATING_CODE not in [c.finding.code for c in open_discs.work.checks]


def test_undo_takes_it_off_and_the_project_keeps_it(
    open_discs: MainWindow, box: CoatingBox, tmp_path: Path
) -> None:
    before = open_discs.session.state
    _type(box, Half.PLUG, "0.012")
    box.popup.close()
    open_discs.actions_by_name["undo"].trigger()
    assert open_discs.session.state is before
    assert box.text() == "nothing coated"
    open_discs.actions_by_name["redo"].trigger()
    path = tmp_path / "coated.inlayfit"
    open_discs.session.mark_saved(path)
    assert open_discs.documents.save()
    assert load_project(path).fittings[0].stack.coating == BuildUp.plug(0.012)


def test_a_thickness_that_cannot_be_is_refused_and_said_when_the_form_closes(
    open_discs: MainWindow, box: CoatingBox
) -> None:
    _type(box, Half.PLUG, "-0.01")
    assert _coating(open_discs) == BARE
    refusal = box.lengths[Half.PLUG].refusal
    assert refusal
    box.popup.close()
    assert open_discs.notice.text == refusal


def test_without_work_there_is_nothing_to_coat(window: MainWindow) -> None:
    assert not window.work.spot.stack.coating_box.isEnabled()
