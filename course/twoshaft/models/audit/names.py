"""Names that an entry of a unit file gives and the unit lacks."""

from __future__ import annotations

from twoshaft.units.unit import Unit


def say_unknown(unit: Unit, entry, say) -> None:
    """Say which operations and parts of an entry are not in the unit.

    Examples
    --------
    >>> group = unit.fasteners.groups[0].model_copy(update={"parts": ("no-such-part",)})
    >>> say_unknown(unit, group, lambda place, what, mend: print(f"{place}: {what}; {mend}"))
    parts: there is no part no-such-part; name one of the parts
    """
    for operation in entry.operations:
        if operation not in unit.operation_by_id:
            say("operations", f"there is no operation {operation}", "name one of the operations")
    for part in entry.parts:
        if part not in unit.part_by_id:
            say("parts", f"there is no part {part}", "name one of the parts")
