"""The one pint registry of the course."""

from functools import lru_cache
from typing import TYPE_CHECKING

from pint import UnitRegistry


class _Registry(UnitRegistry):
    """Remembers what a unit's name means; pint works most names out again at every use."""

    @lru_cache(maxsize=4096)  # noqa: B019 - one registry, which lives as long as the program
    def parse_units_as_container(self, input_string, as_delta=None, case_sensitive=None):
        """Parse a units expression, once."""
        return super().parse_units_as_container(input_string, as_delta, case_sensitive)


ureg = _Registry()
if TYPE_CHECKING:
    # The registry makes its class of quantities as it starts; a checker knows its base.
    from pint import Quantity as Q
else:
    Q = ureg.Quantity
