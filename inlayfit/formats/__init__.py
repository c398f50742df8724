"""DXF and SVG, in and out, one file a direction. Knows no fit.

Readers return a `contract.ReadResult`: the drawing as it was drawn, with true curves, plus findings.
"""
