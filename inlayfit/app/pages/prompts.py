"""Every question the window asks in a dialog of its own; tests put their answers in the place of these.

There are few: where a file is and where one shall go, what becomes of unsaved work, and what becomes of a
recovery copy. All else is said in the window.
"""

from __future__ import annotations

from enum import Enum
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication
from PySide6.QtWidgets import QFileDialog, QMessageBox, QWidget

from inlayfit.document.project_kind import SUFFIX

if TYPE_CHECKING:
    from inlayfit.app.pages.export_page import ExportWish
    from inlayfit.document.exports import ExportOptions


class Unsaved(Enum):
    """What becomes of unsaved work."""

    SAVE = "save"
    DROP = "drop"
    CANCEL = "cancel"


class Rescue(Enum):
    """What becomes of a recovery copy."""

    RECOVER = "recover"
    DISCARD = "discard"
    SHOW_BOTH = "show both"
    LATER = "later"


def _tr(text: str) -> str:
    return QCoreApplication.translate("prompts", text)


def open_files(parent: QWidget, folder: Path, title: str = "") -> list[Path]:
    """Drawings or a project to open; empty if the person changed their mind."""
    kinds = (
        _tr("Drawings and projects")
        + f" (*.dxf *.svg *.svgz *.csv *.txt *{SUFFIX});;"
        + _tr("All files")
        + " (*)"
    )
    names, _ = QFileDialog.getOpenFileNames(parent, title or _tr("Open outline"), str(folder), kinds)
    return [Path(name) for name in names]


def save_project_as(parent: QWidget, start: Path) -> Path | None:
    """Where the project shall go; the question about an existing file is the dialog's own."""
    kinds = _tr("Inlayfit project") + f" (*{SUFFIX})"
    name, _ = QFileDialog.getSaveFileName(parent, _tr("Save project"), str(start), kinds)
    if not name:
        return None
    path = Path(name)
    return path if path.suffix == SUFFIX else path.with_name(path.name + SUFFIX)


def export_folder(parent: QWidget, start: Path) -> Path | None:
    """The folder the outlines shall go to."""
    name = QFileDialog.getExistingDirectory(parent, _tr("Write outlines into this folder"), str(start))
    return Path(name) if name else None


def export_wish(parent: QWidget, start: ExportOptions, folder: Path, *, has_kerf: bool) -> ExportWish | None:
    """What shall be written, and where to; None if the person changed their mind."""
    from inlayfit.app.pages.export_page import ExportPage  # heavy; not before it is needed

    page = ExportPage(start, folder, has_kerf=has_kerf, browse=export_folder, parent=parent)
    page.exec()
    page.deleteLater()
    return page.wish


def unsaved_work(parent: QWidget, title: str) -> Unsaved:
    """Asked before work that no file holds would be lost."""
    box = QMessageBox(parent)
    box.setIcon(QMessageBox.Icon.NoIcon)
    box.setWindowTitle(_tr("Unsaved work"))
    box.setText(_tr("Save the work on “{0}”?").format(title))
    box.setInformativeText(_tr("No project file holds the last changes. Without saving, they are gone."))
    save = box.addButton(_tr("&Save"), QMessageBox.ButtonRole.AcceptRole)
    drop = box.addButton(_tr("&Leave without saving"), QMessageBox.ButtonRole.DestructiveRole)
    box.addButton(_tr("&Go back"), QMessageBox.ButtonRole.RejectRole)
    box.setDefaultButton(save)
    box.exec()
    answers = {save: Unsaved.SAVE, drop: Unsaved.DROP}
    return answers.get(box.clickedButton(), Unsaved.CANCEL)  # type: ignore[call-overload, no-any-return]  # buttons are keys


def replace_files(parent: QWidget, folder: Path, names: list[str]) -> bool:
    """Asked before an export takes the place of files in a folder."""
    box = QMessageBox(parent)
    box.setWindowTitle(_tr("Files are there already"))
    box.setText(_tr("Replace {0} files in “{1}”?").format(len(names), folder.name))
    box.setInformativeText(", ".join(names))
    replace = box.addButton(_tr("&Replace"), QMessageBox.ButtonRole.AcceptRole)
    box.addButton(_tr("&Go back"), QMessageBox.ButtonRole.RejectRole)
    box.exec()
    return box.clickedButton() is replace


def recovery(parent: QWidget | None, title: str, when: str, *, has_project: bool) -> Rescue:
    """Asked at the start if an earlier run ended without closing; both can be shown if a project is there."""
    box = QMessageBox(parent)
    box.setWindowTitle(_tr("Recover work"))
    box.setText(_tr("Unsaved work on “{0}” was found, last changed {1}.").format(title, when))
    box.setInformativeText(
        _tr("The program ended without closing. The project file itself was not touched.")
        if has_project
        else _tr("The program ended without closing. No project file holds this work.")
    )
    recover = box.addButton(_tr("&Recover"), QMessageBox.ButtonRole.AcceptRole)
    discard = box.addButton(_tr("&Discard"), QMessageBox.ButtonRole.DestructiveRole)
    both = box.addButton(_tr("Show &both"), QMessageBox.ButtonRole.ActionRole) if has_project else None
    box.addButton(_tr("&Later"), QMessageBox.ButtonRole.RejectRole)
    box.setDefaultButton(recover)
    box.exec()
    answers = {recover: Rescue.RECOVER, discard: Rescue.DISCARD}
    if both is not None:
        answers[both] = Rescue.SHOW_BOTH
    return answers.get(box.clickedButton(), Rescue.LATER)  # type: ignore[call-overload, no-any-return]  # buttons are keys
