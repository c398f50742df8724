"""Inlayfit: from the drawing of a pocket to a plug that fits it.

Lengths are millimetres, angles radians, y points up, outer rings run counter-clockwise. Nothing is
re-exported here: import a name from the module that defines it. `DEVELOPERS.md` holds the map.
"""

__version__ = "0.1.0"
