"""The unit file: what stands on the bench, as data."""

from twoshaft.units.checks import check_unit
from twoshaft.units.findings import Finding
from twoshaft.units.loader import load_unit, shipped_units
from twoshaft.units.schema import unit_json_schema
from twoshaft.units.unit import Unit

__all__ = ["Finding", "Unit", "check_unit", "load_unit", "shipped_units", "unit_json_schema"]
