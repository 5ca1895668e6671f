"""Twoshaft: learn to rebuild two-shaft manual transaxles."""

__version__ = "0.1.0"

DEFAULT_UNIT = "tarnbeck-b5"
"""Id of the shipped unit that stands on the bench where nobody names another."""
