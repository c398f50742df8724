"""The subject: a pocket, a plug, and what lies between them. Pure: no file, no window.

May import geometry, bench, drawing and the layers below.
"""
