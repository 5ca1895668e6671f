"""The shapes section of a unit as text for its file: a draft to correct."""

from __future__ import annotations

from twoshaft.models.shape.schematic import shapes_of
from twoshaft.units.unit import Unit

_HEAD = """\
# A draft of the section `shapes`, to correct and put at the end of the unit file.
# z counts from the joint face of the clutch housing, above zero towards the rear end;
# [z, radius] along an axis, [z, across] else.
"""
_TYPICAL = """\
# Sizes are usual proportions (a gear ten times its module wide), not those of your unit.
# A part that is drawn as a box (kind: box) waits for a solid of its own.
"""


def draft(unit: Unit) -> str:
    """The shapes of a unit, as they stand or as a schematic has them, as YAML.

    Parameters
    ----------
    unit : Unit

    Returns
    -------
    str
        An entry a line; reading it gives the same shapes.

    Examples
    --------
    >>> draft(unit.with_sections(shapes=None)).splitlines()[5]
    'shapes:'
    """
    import yaml

    shapes = shapes_of(unit)
    given = shapes.model_dump(mode="json", by_alias=True, exclude_defaults=True)
    kinds = {solid.id: solid.kind for solid in shapes.solids}
    lines = [_HEAD if unit.has("shapes") else _HEAD + _TYPICAL, "shapes:\n"]
    for name, entries in given.items():
        lines.append(f"  {name}:\n")
        for entry in entries:
            if name == "solids":
                entry = {"id": entry["id"], "kind": kinds[entry["id"]], **entry}
            text = yaml.safe_dump(
                entry, default_flow_style=True, sort_keys=False, width=100_000, allow_unicode=True
            )
            lines.append(f"    - {text}")
    return "".join(lines)
