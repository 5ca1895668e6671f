"""The one pint registry of the course."""

from pint import UnitRegistry

ureg = UnitRegistry()
Q = ureg.Quantity
