"""The style sheet of the window's own parts, made from the theme's tokens."""

from __future__ import annotations

from dataclasses import fields

from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication

from inlayfit.app import theme

_SHEET = """
QMainWindow, #empty, #strip {{ background: {window}; }}
QMenuBar {{ background: {window}; padding: 0 12px; }}
#sentence, #verdict, #ruler, #side, #legend, #plain, #recentwork {{ background: {panel}; }}
#sentence {{ border-top: 1px solid {hairline}; }}
#verdict {{ border-top: 1px solid {hairline}; border-bottom: 1px solid {hairline}; }}
#ruler, #legend {{ border-top: 1px solid {hairline}; }}
#side, #recentwork {{ border-left: 1px solid {hairline}; }}
#strip {{ border-top: 1px solid {hairline}; }}
#rule {{ background: {hairline}; border: none; }}
QToolButton#over {{ background: {panel}; color: {text}; border: 1px solid {edge};
  border-radius: {radius}px; padding: 3px 1px 3px 11px; min-height: 18px; }}
QToolButton#over:hover {{ background: {hover}; }}
QToolButton#over:checked {{ background: {accent_soft}; border-color: {focus}; border-bottom-width: 3px;
  padding-bottom: 1px; }}
QToolButton#over:focus {{ border: 2px solid {focus}; padding: 2px 0 2px 10px; }}
QPushButton#recent {{ min-height: 72px; max-height: 72px; padding: 0; border: none; }}
#row {{ border-bottom: 1px solid {hairline}; }}
#card {{ background: {canvas}; border: 1px solid {hairline}; border-radius: 6px; }}
#dropfield {{ background: {canvas}; border: 2px dashed {edge}; border-radius: 8px; }}
#popup {{ background: {panel}; border: 1px solid {edge}; border-radius: 6px; }}
#notice {{ background: {panel}; border: 1px solid {blocks}; border-radius: 6px; }}
#notice[offer="true"] {{ border-color: {hairline}; }}
QLabel {{ background: transparent; }}
QLabel[muted="true"], QLabel#glue {{ color: {muted}; }}
QLabel:disabled {{ color: {muted}; }}
QScrollArea {{ background: transparent; border: none; }}
QScrollArea#checks {{ border: 2px solid transparent; border-radius: {radius}px; }}
QScrollArea#checks:focus {{ border-color: {focus}; }}
QScrollArea > QWidget > QWidget {{ background: transparent; }}
QListWidget {{ background: {field}; border: 1px solid {edge}; border-radius: {radius}px; padding: 4px;
  outline: none; }}
QListWidget:focus {{ border: 2px solid {focus}; padding: 3px; }}
QListWidget::item {{ padding: 5px 8px; border-radius: 4px; color: {text}; }}
QListWidget::item:hover {{ background: {hover}; }}
QListWidget::item:selected {{ background: {accent_soft}; color: {text}; }}
QToolButton#quiet {{ background: transparent; color: {text}; border: 1px solid transparent;
  border-radius: {radius}px; padding: 4px 6px; min-height: 16px; }}
QToolButton#quiet:hover {{ background: {hover}; }}
QToolButton#quiet:focus {{ border: 2px solid {focus}; padding: 3px 5px; }}
QToolButton#quiet::menu-indicator {{ image: none; width: 0; }}
QToolButton#tab {{ background: {field}; color: {text}; border: 1px solid {edge};
  padding: 4px 12px; min-height: 18px; margin: 0; }}
QToolButton#tab[first="true"] {{
  border-top-left-radius: {radius}px; border-bottom-left-radius: {radius}px; }}
QToolButton#tab[last="true"] {{
  border-top-right-radius: {radius}px; border-bottom-right-radius: {radius}px; }}
QToolButton#tab:hover {{ background: {hover}; }}
QToolButton#tab:checked {{ background: {accent}; color: {on_accent};
  border-color: {accent}; font-weight: 600; }}
QToolButton#tab:focus {{ border: 2px solid {focus}; padding: 3px 11px; }}
QToolButton#tab:checked:focus {{ border: 3px double {on_accent};
  padding: 2px 10px; }}
QToolButton#arrow {{ background: {field}; color: {text}; border: 1px solid {edge};
  border-radius: {radius}px; min-width: 26px; min-height: 26px; }}
QToolButton#arrow:hover {{ background: {hover}; }}
QToolButton#arrow:focus {{ border: 2px solid {focus}; }}
QToolButton#arrow:disabled {{ color: {muted}; border-color: {hairline}; }}
QScrollBar:vertical {{ background: transparent; width: 12px; margin: 0; }}
QScrollBar:horizontal {{ background: transparent; height: 12px; margin: 0; }}
QScrollBar::handle {{ background: {edge}; border-radius: 4px; margin: 2px;
  min-height: 28px; min-width: 28px; }}
QScrollBar::handle:hover {{ background: {muted}; }}
QScrollBar::add-line, QScrollBar::sub-line, QScrollBar::add-page, QScrollBar::sub-page {{
  background: transparent; border: none; width: 0; height: 0; }}
QComboBox {{ background: {field}; color: {text}; border: 1px solid {edge}; border-radius: {radius}px;
  padding: 5px 8px; min-height: 20px; }}
QComboBox#listed {{ combobox-popup: 0; }}
QComboBox:focus {{ border: 2px solid {focus}; padding: 4px 7px; }}
QComboBox QAbstractItemView {{ background: {field}; color: {text}; border: 1px solid {edge};
  selection-background-color: {accent_soft}; selection-color: {text}; outline: 0; }}
QComboBox QAbstractItemView::item {{ min-height: 26px; padding: 0 6px; }}
QComboBox QAbstractItemView::item:selected {{ background: {accent_soft}; color: {text}; }}
QAbstractSpinBox QLineEdit:disabled {{ color: {muted}; }}
QTextBrowser {{ background: {field}; border: 1px solid {edge}; border-radius: {radius}px; padding: 8px; }}
QProgressBar {{ background: {field}; border: 1px solid {edge}; border-radius: 4px; max-height: 10px; }}
QProgressBar::chunk {{ background: {accent}; border-radius: 3px; }}
QSplitter::handle {{ background: {hairline}; }}
"""


def window_sheet(of: theme.Theme) -> str:
    """The style sheet for a theme."""
    look = theme.tokens(of)
    return _SHEET.format(radius=theme.RADIUS_PX, **{f.name: getattr(look, f.name) for f in fields(look)})


def system_theme() -> theme.Theme:
    """What the system asks for: high contrast or not, dark or light."""
    hints = QGuiApplication.styleHints()
    scheme = hints.colorScheme()
    accessibility = getattr(hints, "accessibility", None)  # since Qt 6.10
    if accessibility is not None:
        preference = accessibility().contrastPreference()
        if preference == Qt.ContrastPreference.HighContrast:
            is_light = scheme == Qt.ColorScheme.Light
            return theme.Theme.HIGH_CONTRAST_WHITE if is_light else theme.Theme.HIGH_CONTRAST
    return theme.Theme.DARK if scheme == Qt.ColorScheme.Dark else theme.Theme.LIGHT
