"""The commands behind `inlayfit.cli`, one file each. Heavy imports belong inside the functions."""
