"""Numbers of the bench: limits of size, the stack, cutting, cautions. Pure; knows no fit and no file.

May import geometry, units, errors and the layers below.
"""
