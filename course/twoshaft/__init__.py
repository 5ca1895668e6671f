"""Twoshaft: learn to rebuild two-shaft manual transaxles."""

__version__ = "0.1.0"
