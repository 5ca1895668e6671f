"""The repair of a stripped thread, as an order of work."""

from __future__ import annotations

from functools import lru_cache
from pathlib import Path

from twoshaft.units.loader import load_unit
from twoshaft.units.unit import Unit

FILE = Path(__file__).with_name("repairs.yaml")


@lru_cache(maxsize=1)
def load_repairs() -> Unit:
    """The repair of a thread with a wire insert, in the form of a unit file.

    Returns
    -------
    Unit
        Its steps, and the rules that guard them.

    Examples
    --------
    >>> load_repairs().stages[0].name
    'Repair a stripped thread with a wire insert'
    """
    return load_unit(FILE)
