"""The page that says what is written: halves, passes, the line, mirrored or not, origin, files, folder."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from pathlib import Path

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QDialog,
    QFormLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from inlayfit.app import theme
from inlayfit.app.pages.forms import add_row, decision, fit_height
from inlayfit.app.widgets.listed_box import ListedBox
from inlayfit.document.exports import ExportOptions, Line, Origin, Passes, Split
from inlayfit.fit.spec import Half
from inlayfit.formats.dxf_write import DxfVersion

_WIDTH_PX = 620
_HALVES = {"both": (Half.POCKET, Half.PLUG), "pocket": (Half.POCKET,), "plug": (Half.PLUG,)}


@dataclass(frozen=True, slots=True)
class ExportWish:
    """What a person wants written.

    Attributes:
        folder: where to.
        options: what, and how; None for what the fit suggests.
    """

    folder: Path
    options: ExportOptions | None = None


class ExportPage(QDialog):
    """Asks what is written; `wish` holds the answer once it is accepted."""

    def __init__(
        self,
        start: ExportOptions,
        folder: Path,
        *,
        has_kerf: bool,
        browse: Callable[[QWidget, Path], Path | None],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self.setWindowTitle(self.tr("Save outlines to cut"))
        self._start = start
        self._browse = browse
        self.wish: ExportWish | None = None
        self._form = QFormLayout()
        self._form.setHorizontalSpacing(16)
        self._form.setVerticalSpacing(10)
        halves = (("both", self.tr("both")), ("pocket", self.tr("the pocket")), ("plug", self.tr("the plug")))
        which = next(name for name, kept in _HALVES.items() if set(kept) == set(start.halves))
        self.halves = self._choice(
            self.tr("&Halves"), halves, which, self.tr("Each goes into files of its own.")
        )
        self._add_path_choices(start, has_kerf=has_kerf)
        mirrored = (("none", self.tr("none")), *halves)
        turned = next((n for n, kept in _HALVES.items() if frozenset(kept) == start.mirrored), "none")
        why = self.tr("A half that is cut face down is written as its mirror image.")
        self.mirrored = self._choice(self.tr("&Mirrored"), mirrored, turned, why)
        self._add_file_choices(start)
        self.folder = QLineEdit(str(folder))
        self.folder.setMinimumHeight(self.mirrored.sizeHint().height())
        add_row(self._form, self.tr("&Folder"), self.folder, self.tr("It is made if it is not there."))
        self.warning = QLabel()
        self.warning.setWordWrap(True)
        self.warning.setFont(theme.font(theme.BASE))
        column = QVBoxLayout(self)
        column.setSpacing(12)
        column.addLayout(self._form)
        column.addWidget(self.warning)
        column.addLayout(self._button_row())
        self.version.currentIndexChanged.connect(self._warn)
        self._warn()

    def _add_path_choices(self, start: ExportOptions, *, has_kerf: bool) -> None:
        passes = (
            (Passes.BOTH.value, self.tr("finished and roughing outlines")),
            (Passes.FINISH.value, self.tr("finished outlines")),
            (Passes.ROUGH.value, self.tr("roughing outlines")),
        )
        why = self.tr("Roughing outlines are there where a finishing allowance is.")
        self.passes = self._choice(self.tr("&Passes"), passes, start.passes.value, why)
        lines = (
            (Line.EDGE.value, self.tr("on the finished edge")),
            (Line.KERF.value, self.tr("half a kerf off it")),
        )
        why = self.tr("For a beam or blade on the line. The machine offsets for a round cutter itself.")
        if not has_kerf:
            why = self.tr("No kerf is given, so the line lies on the edge either way.")
        self.line = self._choice(self.tr("&Line"), lines, start.line.value, why)

    def _add_file_choices(self, start: ExportOptions) -> None:
        origins = (
            (Origin.AS_DRAWN.value, self.tr("as drawn")),
            (Origin.LOWER_LEFT.value, self.tr("lower left corner")),
            (Origin.CENTRE.value, self.tr("centre")),
        )
        why = self.tr("Where 0, 0 lies, of all that is in one file.")
        self.origin = self._choice(self.tr("&Origin"), origins, start.origin.value, why)
        split = (
            (Split.ONE_FILE.value, self.tr("one for all pieces")),
            (Split.PER_PIECE.value, self.tr("one for each piece")),
        )
        why = self.tr("Each outline keeps its id either way.")
        self.split = self._choice(self.tr("Fil&es"), split, start.split.value, why)
        versions = tuple((version.value, version.value) for version in DxfVersion)
        why = self.tr("R2000 states its unit. SVG is always written beside it.")
        self.version = self._choice(self.tr("&DXF"), versions, start.dxf_version.value, why)

    def _choice(self, label: str, choices: Sequence[tuple[str, str]], chosen: str, why: str) -> ListedBox:
        combo = ListedBox()
        for value, words in choices:
            combo.addItem(words, value)
        combo.setCurrentIndex([value for value, _ in choices].index(chosen))
        add_row(self._form, label, combo, why)
        return combo

    def _button_row(self) -> QHBoxLayout:
        browse = QPushButton(self.tr("&Choose folder…"))
        browse.setAutoDefault(False)
        browse.clicked.connect(self._on_browse_clicked)
        buttons, self.write_button = decision(self, self.tr("&Write"), self.tr("&Go back"))
        row = QHBoxLayout()
        row.addWidget(browse)
        row.addStretch(1)
        row.addWidget(buttons)
        return row

    def _on_browse_clicked(self) -> None:
        folder = self._browse(self, Path(self.folder.text()))
        if folder is not None:
            self.folder.setText(str(folder))

    def _warn(self) -> None:
        is_old = self.version.currentData() == DxfVersion.R12.value
        words = self.tr("DXF R12 cannot say what its unit is: choose millimetres where the file is opened.")
        self.warning.setText(words if is_old else "")
        self.warning.setVisible(is_old)
        self.version.setAccessibleDescription(words if is_old else self.version.toolTip())
        fit_height(self, _WIDTH_PX)

    def accept(self) -> None:
        """Take the wish, unless there is no folder to write into."""
        text = self.folder.text().strip()
        folder = Path(text).expanduser() if text else None
        if folder is None or folder.is_file():
            self.warning.setText(self.tr("That is no folder; name one, such as “cut” beside the drawing."))
            self.warning.setVisible(True)
            fit_height(self, _WIDTH_PX)
            self.folder.setFocus(Qt.FocusReason.OtherFocusReason)
            return
        mirrored = _HALVES.get(self.mirrored.currentData(), ())
        options = replace(
            self._start,
            halves=_HALVES[self.halves.currentData()],
            passes=Passes(self.passes.currentData()),
            line=Line(self.line.currentData()),
            mirrored=frozenset(mirrored),
            origin=Origin(self.origin.currentData()),
            split=Split(self.split.currentData()),
            dxf_version=DxfVersion(self.version.currentData()),
        )
        self.wish = ExportWish(folder, options)
        super().accept()
