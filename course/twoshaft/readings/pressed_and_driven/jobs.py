"""Fitting jobs of any workshop, as orders of work."""

from __future__ import annotations

from functools import lru_cache
from pathlib import Path

from twoshaft.units.loader import load_unit
from twoshaft.units.unit import Unit

FILE = Path(__file__).with_name("jobs.yaml")


@lru_cache(maxsize=1)
def load_fitting_jobs() -> Unit:
    """The jobs, each a stage of one file in the form of a unit file.

    Returns
    -------
    Unit
        Steps by stage, and the rules that bind them.
    """
    return load_unit(FILE)
