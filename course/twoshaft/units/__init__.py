"""The unit file: what stands on the bench, as data.

A unit file is YAML. Its sections are lists of entries with ids; keys are written with spaces,
and a list of one may be a single word::

    identity: {id: my-unit, name: My unit, version: "1.0", invented: true, ...}
    parts:
      - {id: oil-seal, name: Oil seal, single use: true}
    stages:
      - {id: housing, name: The housing}
    operations:
      - id: fit-seal
        name: Drive the seal into the housing
        stage: housing
        parts: oil-seal
        minutes to do: 3
        minutes to undo: 3
    rules:
      - {id: seal-first, kind: harms, earlier: ..., later: fit-seal, loses: oil-seal, reason: ...}

A rule has one of ``earlier: step``, ``any of: [steps]`` or ``not during: hold``. Files with
``variant of: other-unit`` tell only what differs (see ``variants``). ``unit_json_schema()``
describes every key.

>>> unit.identity.gears
5
>>> unit.where("operations", "fit-magnet").partition(", ")[2].startswith("line ")
True
"""

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from twoshaft.units.checks import check_unit
    from twoshaft.units.findings import Finding
    from twoshaft.units.loader import load_unit, shipped_units
    from twoshaft.units.schema import unit_json_schema
    from twoshaft.units.unit import Unit

__all__ = ["Finding", "Unit", "check_unit", "load_unit", "shipped_units", "unit_json_schema"]


def __getattr__(name: str) -> object:
    """The schema of a unit has a hundred models: loaded when a unit is asked for."""
    if name in __all__:
        from twoshaft.units import checks, findings, loader, schema, unit

        home = next(one for one in (unit, loader, findings, checks, schema) if hasattr(one, name))
        return getattr(home, name)
    raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
