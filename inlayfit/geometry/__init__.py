"""Plane geometry in millimetres. It has never heard of an inlay, a file or a window.

A bare float length means millimetres here and only here; elsewhere the unit stands in the name. y points
up, angles are radians, outer rings run counter-clockwise. May import: numpy, scipy, shapely, and the
layers below (progress, units, finding, errors).
"""
