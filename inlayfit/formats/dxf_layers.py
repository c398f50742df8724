"""Which layers and line styles hold outlines, and which are for the drawing's reader only.

A layer that is off or frozen is not shown, so it is not cut. Dimension and construction layers carry no
law; they are recognised by common names (several languages) and by line styles that technical drawing
reserves for centre lines and hidden edges (ISO 128-2: long-dashed dotted, dashed). Such lines are kept in
the drawing as marks, so that they can still be chosen by layer.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, field

from ezdxf.document import Drawing as DxfDocument
from ezdxf.lldxf.const import DXFError

_WHOLE_NAMES = frozenset(
    {"center", "centre", "centers", "centres", "axis", "axes", "cl", "hidden", "guide", "guides"}
)
_WORDS = frozenset((
    "defpoints", "dim", "dims", "dimension", "dimensions", "dimensioning", "construction",
    "constructions", "constr", "centerline", "centerlines", "centreline", "centrelines", "annotation",
    "annotations", "titleblock", "hilfslinie", "hilfslinien", "konstruktion", "konstruktionslinien",
    "bemassung", "bemaßung", "mittellinie", "mittellinien", "cotation", "cotations", "cotas", "quote",
    "quotes", "helplines", "guideline", "guidelines",
))  # fmt: skip
_PAIRS = re.compile(r"(?:center|centre|construction|dimension|help|guide|dim)[\s_.-]*lines?\b", re.IGNORECASE)
_READER_STYLES = re.compile(
    r"^(?:acad_iso(?:02|03|04|05|06|08|09|10|11|12|13|14|15)w|center|centre|hidden|dashed|dashdot|phantom|"
    r"divide|dot)", re.IGNORECASE,
)  # fmt: skip


def is_for_the_reader(layer: str) -> bool:
    """Whether a layer's name says dimensions, construction or centre lines."""
    if layer.strip().lower() in _WHOLE_NAMES or _PAIRS.search(layer):
        return True
    return any(word in _WORDS for word in re.split(r"[^a-zß]+", layer.lower()))


def is_reader_style(linetype: str) -> bool:
    """Whether a line style is one of centre lines or hidden edges."""
    return bool(_READER_STYLES.match(linetype))


@dataclass(slots=True)
class LayerBook:
    """What is known about each layer; looked up once a layer."""

    document: DxfDocument
    _known: dict[str, tuple[bool, bool, str]] = field(default_factory=dict)

    def is_hidden(self, layer: str) -> bool:
        """Whether the layer is off or frozen."""
        return self._facts(layer)[0]

    def is_mark(self, layer: str) -> bool:
        """Whether the layer's name says it is not for cutting."""
        return self._facts(layer)[1]

    def linetype(self, own: str, layer: str, inherited: str) -> str:
        """The style that a line style stands for; `inherited` is that of the block reference around it."""
        if own.upper() == "BYBLOCK":
            return inherited
        return self._facts(layer)[2] if own.upper() == "BYLAYER" else own

    def _facts(self, layer: str) -> tuple[bool, bool, str]:
        if layer not in self._known:
            hidden, style = False, "CONTINUOUS"
            try:
                entry = self.document.layers.get(layer)
                hidden = entry.is_off() or entry.is_frozen()
                style = str(entry.dxf.get("linetype", style))
            except (DXFError, AttributeError, TypeError):
                pass  # a layer without an entry is shown and continuous
            self._known[layer] = hidden, is_for_the_reader(layer), style
        return self._known[layer]
