"""Help inside the window: the guide, the list of keys, and what this program is."""

from __future__ import annotations

import math
import re
from collections.abc import Iterable
from html import escape, unescape
from pathlib import Path

from PySide6.QtCore import QByteArray, QCoreApplication, QKeyCombination, Qt, QUrl
from PySide6.QtGui import QGuiApplication, QImage, QKeySequence, QPainter, QShowEvent
from PySide6.QtSvg import QSvgRenderer
from PySide6.QtWidgets import QDialog, QDialogButtonBox, QTextBrowser, QVBoxLayout, QWidget

from inlayfit import __version__
from inlayfit.app.actions import (
    CANVAS_KEYS,
    LIST_KEYS,
    RULER_KEYS,
    STACK_KEYS,
    TABLE,
    Command,
    key_sequences,
    translated,
)
from inlayfit.shipped import shipped_folder

GUIDE = (
    (
        "From a drawing to a plug that fits",
        (
            "Open the outline of a pocket, or drop it on the window. The sentence at the top says the whole "
            "job; change any box in it.",
            "The verdict below it says whether the plug goes in, and offers the one thing to do if not.",
            "Drag the handle of the fit ruler, or type a clearance. It is always the gap at one wall, “per "
            "side”; overall is twice that.",
            "Walk the tightest places with N on the map. The loupe shows each at true scale.",
            "Where both halves are made, choose the plug's outline beside the map. It is laid where it sits "
            "best; the checks say what to take off, and where.",
            "On the page “Workshop”, type what your machine gets wrong: it says how many parts come out as "
            "wanted, and when to stop adjusting.",
            "Choose “Save outlines to cut”. Both halves are written as DXF and SVG, read back and compared.",
        ),
    ),
    (
        "The words",
        (
            "Pocket and plug: the recess, and what fills it. The host is the part with the pocket.",
            "Clearance per side: the gap at one wall. Negative is interference: the plug is larger.",
            "To cut, already cut, finished: only a half that is to cut may change.",
            "As cut: what a round cutter really leaves, not what was drawn.",
            "Corner relief: what is done where a round cutter cannot go.",
            "Finishing allowance: stock that roughing leaves on the wall for the finishing pass.",
            "Proud, flush, below: where the plug ends against the host's face.",
        ),
    ),
    (
        "How it is worked out",
        (
            "A cutter of radius R reaches all that its disk can sweep inside the pocket: corners come out "
            "round.",
            "The plug is the pocket shrunk by the clearance. Its own cutter runs outside it and fills its "
            "notches; where that would bite, the notch is relieved, or both halves are rounded to match.",
            "The gap is measured along both walls, both ways. Whether the plug goes in rests on the smallest "
            "gap, never on the mean.",
        ),
    ),
    (
        "Cautions",
        (
            "Measure the cutter: an error in its diameter costs its full amount per side.",
            "Cut a trial before the good piece. The feel words are a place to start, not a promise.",
            "Press fits store force: load straight, wear eye protection, keep hands clear.",
            "The program does not know your machine, your material or your clamps. You do.",
        ),
    ),
)


_PICTURES: tuple[tuple[str, tuple[str, ...]], ...] = (
    ("A cutter of radius R", ("as-cut",)),
    ("The plug is the pocket shrunk", ("target", "rounded", "dog-bone")),
)
"""Which pictures of resources/maths stand below which line, by how the line begins."""
_PICTURE_PX = 420
_PAGE_PX = 720
"""The widest and highest page."""
PICTURE_WORDS = (
    "cutter",
    "As cut: drawn (dashed), reached (light), left over (dark)",
    "Target T, and Z: where a plug cut to T would bind",
    "Rounded: both walls match, the gap is c",
    "Dog-bone in both halves",
)
"""The words in these pictures, without their numbers; what is a letter of the reckoning stays."""


class _Page(QTextBrowser):
    """A text whose pictures are drawn from their SVG at the size they are shown."""

    def loadResource(self, kind: int, name: QUrl | str) -> object:
        url = QUrl(name)
        if url.scheme() == "picture":
            return self._drawn(url.path())
        return super().loadResource(kind, url)

    def _drawn(self, name: str) -> QImage:
        renderer = QSvgRenderer(QByteArray(picture_svg(name).encode()))
        box, ratio = renderer.viewBoxF(), self.devicePixelRatioF()
        height = _PICTURE_PX * box.height() / max(1e-9, box.width())
        image = QImage(round(_PICTURE_PX * ratio), round(height * ratio), QImage.Format.Format_ARGB32)
        image.fill(Qt.GlobalColor.transparent)
        painter = QPainter(image)
        renderer.render(painter)
        painter.end()
        image.setDevicePixelRatio(ratio)
        return image


class TextPage(QDialog):
    """A page to read."""

    def __init__(self, title: str, html: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(title)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.text = _Page()
        self.text.setAccessibleName(title)
        self.text.setHtml(html)
        buttons = QDialogButtonBox()
        buttons.addButton(self.tr("&Close"), QDialogButtonBox.ButtonRole.RejectRole)
        buttons.rejected.connect(self.reject)
        column = QVBoxLayout(self)
        column.addWidget(self.text, 1)
        column.addWidget(buttons)
        self.resize(_PAGE_PX, _PAGE_PX)

    def showEvent(self, event: QShowEvent) -> None:
        """Until now nobody knew how much room the text has."""
        if not event.spontaneous():
            self._fit_words()
        super().showEvent(event)

    def _fit_words(self) -> None:
        """As large as the words need, up to a page that is scrolled."""
        words, around = self.text.document(), self.size() - self.text.viewport().size()
        words.setTextWidth(_PAGE_PX - around.width())
        wide = math.ceil(words.idealWidth()) + 1
        words.setTextWidth(wide)
        high = math.ceil(words.size().height()) + 1 + around.height()
        self.resize(wide + around.width() if high < _PAGE_PX else _PAGE_PX, min(_PAGE_PX, high))


def _tr(text: str) -> str:
    return QCoreApplication.translate("help", text)


def guide_html() -> str:
    """The guide, with a picture beside each step of the reckoning."""
    sections = []
    for number, (title, lines) in enumerate(GUIDE):
        kind = "ol" if number == 0 else "ul"
        items = "".join(
            f"<li style='margin-bottom:6px'>{escape(_tr(line))}{_pictures_of(line)}</li>" for line in lines
        )
        sections.append(f"<h3>{escape(_tr(title))}</h3><{kind}>{items}</{kind}>")
    return "".join(sections)


def _pictures_of(line: str) -> str:
    """The shipped pictures that go with a line of the guide; none if they are not there."""
    names = next((names for start, names in _PICTURES if line.startswith(start)), ())
    there = [name for name in names if _picture_file(name).exists()]
    return "".join(f"<p><img src='picture:{name}'></p>" for name in there)


def picture_svg(name: str) -> str:
    """A picture of the guide with its words in the window's language and lettering."""

    def translated_text(found: re.Match[str]) -> str:
        number, words = found.groups()
        return f">{number}{escape(_tr(unescape(words)))}</text>"

    svg = _picture_file(name).read_text(encoding="utf-8")
    family = escape(QGuiApplication.font().family())
    svg = re.sub('font-family="[^"]*"', lambda _: f'font-family="{family}"', svg)
    return re.sub(r">(\d* *)([^<>]+)</text>", translated_text, svg)


def _picture_file(name: str) -> Path:
    return shipped_folder("resources") / "maths" / f"{name}.svg"


def shortcuts_html() -> str:
    """Every key that does something, from the tables that make it do so."""
    rows = [
        (_keys(command), translated(command.text).replace("&", "").rstrip("…"))
        for command in TABLE
        if command.keys and _keys(command)
    ]
    parts = [_table(_tr("Everywhere"), rows)]
    parts.append(_table(_tr("On the gap map"), [(_tr(k), _tr(what)) for k, what in CANVAS_KEYS]))
    for title, keys in (
        (_tr("On the fit ruler"), RULER_KEYS),
        (_tr("On the stack"), STACK_KEYS),
        (_tr("In the list of outlines"), LIST_KEYS),
    ):
        parts.append(_table(title, [(_tr(k), _tr(what)) for k, what in keys]))
    return "".join(parts)


def _keys(command: Command) -> str:
    return said_keys(key_sequences(command))


def said_keys(sequences: Iterable[QKeySequence]) -> str:
    """In words; without those that no usual keyboard has, which some desktops bind as well."""
    form = QKeySequence.SequenceFormat.NativeText
    return ", ".join(s.toString(form) for s in sequences if _is_on_keyboards(s))


def _is_on_keyboards(sequence: QKeySequence) -> bool:
    """Whether keyboards have this key; F13 and up, and keys named Open or Undo after them, are bound too."""
    combination: QKeyCombination = sequence[0]  # type: ignore[index]  # the stubs leave it out
    return int(combination.key()) < int(Qt.Key.Key_F13)


def _table(title: str, rows: list[tuple[str, str]]) -> str:
    cells = "".join(
        f"<tr><td width='230' style='padding:3px 24px 3px 0'><b>{escape(keys)}</b></td>"
        f"<td style='padding:3px 0'>{escape(what)}</td></tr>"
        for keys, what in rows
    )
    return f"<h3>{escape(title)}</h3><table>{cells}</table>"


def about_html() -> str:
    """Version and licence."""
    words = _tr("Plugs that fit their pockets. MIT licence; all calculation happens on this computer.")
    return f"<h2>Inlayfit {escape(__version__)}</h2><p>{escape(words)}</p>"
