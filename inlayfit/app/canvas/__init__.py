"""The drawing surface: the gap map, its loupe, and how they turn a fit into pictures."""
