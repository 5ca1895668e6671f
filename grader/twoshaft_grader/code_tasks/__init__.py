"""Notebooks of an instructor's own that run code: taken in, run in a sandbox, and marked."""
