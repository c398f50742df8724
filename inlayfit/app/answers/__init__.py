"""Answers to what is asked of the chosen fittings: found, kept, looked at, and shown as a scene."""
