"""The one pint registry of the course."""

from typing import TYPE_CHECKING

from pint import UnitRegistry

from twoshaft.units.definitions import registry

ureg: UnitRegistry = registry()
# pint remembers what a name means only where the name itself is defined; it works out a prefix
# and a symbol again at every use, which costs ten times as much. So those in use are defined.
for _name, _short in (
    ("millimeter", "mm"),
    ("micrometer", "um"),
    ("centimeter", "cm"),
    ("kilometer", "km"),
    ("kilonewton", "kN"),
    ("megapascal", "MPa"),
    ("gigapascal", "GPa"),
):
    ureg.get_name(_name)  # a prefixed unit is there once it was asked for
    ureg.define(f"@alias {_name} = {_short}")
if TYPE_CHECKING:
    # The registry makes its class of quantities as it starts; a checker knows its base.
    from pint import Quantity as Q
else:
    Q = ureg.Quantity
