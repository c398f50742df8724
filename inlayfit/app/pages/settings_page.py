"""The settings page, made from the one table; a change takes effect at once and is kept."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QCoreApplication, Qt, QUrl
from PySide6.QtGui import QDesktopServices
from PySide6.QtWidgets import (
    QCheckBox,
    QDialog,
    QDialogButtonBox,
    QFormLayout,
    QLabel,
    QPushButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from inlayfit.app import theme
from inlayfit.app.pages.desktop_row import DesktopRow
from inlayfit.app.pages.forms import add_row
from inlayfit.app.widgets.length_box import LengthBox
from inlayfit.app.widgets.listed_box import ListedBox
from inlayfit.document.settings import TABLE, Kind, Setting, Settings, Value
from inlayfit.units import Unit


class SettingsPage(QDialog):
    """Every setting of the table under its heading."""

    def __init__(
        self,
        settings: Settings,
        changed: Callable[[Settings], None],
        *,
        unit: Unit,
        file: Path,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self.setWindowTitle(self.tr("Settings"))
        self._settings = settings
        self._changed = changed
        self._unit = unit
        self.controls: dict[str, QWidget] = {}
        body = QWidget()
        column = QVBoxLayout(body)
        group = ""
        form = QFormLayout()
        for setting in TABLE:
            if setting.group != group:
                group = setting.group
                heading = QLabel(_tr(group))
                heading.setFont(theme.font(theme.VERDICT))
                heading.setContentsMargins(0, 12, 0, 0)
                column.addWidget(heading)
                form = QFormLayout()
                form.setHorizontalSpacing(16)
                form.setVerticalSpacing(10)
                column.addLayout(form)
            control = self._control(setting)
            self.controls[setting.key] = control
            add_row(form, _tr(setting.label), control, _tr(setting.why))
            if setting.instead and isinstance(control, LengthBox):
                control.set_tip(_tr(setting.label))  # why stands below it; this adds what is used instead
        self.desktop = DesktopRow()
        form.addRow(self.desktop.label, self.desktop)
        self.finished.connect(self.desktop.close_work)
        column.addStretch(1)
        area = QScrollArea()
        area.setWidgetResizable(True)
        area.setWidget(body)
        area.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        buttons = QDialogButtonBox()
        buttons.addButton(self.tr("&Close"), QDialogButtonBox.ButtonRole.RejectRole)
        folder = QPushButton(self.tr("Open &folder"))
        folder.setToolTip(self.tr("<b>Open folder</b><br>Shows where the settings are kept."))
        folder.clicked.connect(lambda: _show_folder(file.parent))
        buttons.addButton(folder, QDialogButtonBox.ButtonRole.ActionRole)
        buttons.rejected.connect(self.reject)
        outer = QVBoxLayout(self)
        outer.addWidget(area, 1)
        outer.addWidget(buttons)
        self.resize(560, 620)

    def _control(self, setting: Setting) -> QWidget:
        value = self._settings[setting.key]
        if setting.kind is Kind.SWITCH:
            switch = QCheckBox()
            switch.setChecked(bool(value))
            switch.toggled.connect(lambda on: self._set(setting, on))
            return switch
        if setting.kind is Kind.CHOICE:
            return self._choice(setting, value)
        box = LengthBox()
        box.set_unit(self._unit)
        box.set_limits_mm(setting.low, setting.high)
        box.set_length(float(value))
        if setting.instead:
            box.set_zero_words(self.tr("not given"), _tr(setting.instead))
        box.length_edited.connect(lambda mm: self._set(setting, mm))
        return box

    def _choice(self, setting: Setting, value: Value) -> ListedBox:
        combo = ListedBox()
        for choice, words in setting.choices:
            combo.addItem(_tr(words), choice)
        combo.setCurrentIndex([choice for choice, _ in setting.choices].index(str(value)))
        combo.activated.connect(lambda row: self._set(setting, setting.choices[row][0]))
        return combo

    def _set(self, setting: Setting, value: Value) -> None:
        self._settings = self._settings.with_value(setting.key, value)
        self._changed(self._settings)


def _show_folder(folder: Path) -> None:
    folder.mkdir(parents=True, exist_ok=True)
    QDesktopServices.openUrl(QUrl.fromLocalFile(str(folder)))


def _tr(text: str) -> str:
    return QCoreApplication.translate("settings", text)
