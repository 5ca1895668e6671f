"""What examples in docstrings may name without importing it: the unit on the bench where nobody
names another, and `Q`."""

import pytest

from twoshaft import DEFAULT_UNIT
from twoshaft.units import load_unit
from twoshaft.units.quantities import Q


@pytest.fixture(autouse=True, scope="session")
def names_of_examples(doctest_namespace):
    """Offer them to every example that is run as a test."""
    doctest_namespace["unit"] = load_unit(DEFAULT_UNIT)
    doctest_namespace["Q"] = Q
