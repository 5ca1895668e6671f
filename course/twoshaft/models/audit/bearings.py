"""What a bearings section gets wrong, found by running the models."""

from __future__ import annotations

from twoshaft.units.findings import Finding
from twoshaft.units.unit import Unit

# A shim and the measured tolerances fit into this much.
_SPAN_PLAY_MM = 5.0


def audit_bearings(unit: Unit) -> tuple[Finding, ...]:
    """Find supports whose shims, measurements or spans cannot work.

    Parameters
    ----------
    unit : Unit

    Returns
    -------
    tuple of Finding
        Operations that the unit lacks; spans that do not close on the bearings; shim sets that
        cannot reach the target over the tolerances; measurements too rough for the target;
        targets that overload a bearing.

    Examples
    --------
    >>> audit_bearings(unit)
    ()
    """
    from twoshaft.errors import OutOfRangeError
    from twoshaft.models import shim
    from twoshaft.models.bearing import Pair
    from twoshaft.models.shim.stack import outer_closes

    if unit.bearings_if_any is None:
        return ()
    found = []
    for support in unit.bearings.supports:

        def say(key: str, what: str, mend: str, support=support) -> None:
            where = unit.where("bearings", "supports", support.id, key)
            found.append(Finding(where, f"{support.name}: {what}", mend))

        for key in ("trial_operation", "final_operation"):
            operation = getattr(support, key)
            if operation is not None and operation not in unit.operation_by_id:
                say(key, f"there is no operation {operation}", "name one of the operations")
        rows = [unit.bearings.type_by_id(side) for side in (support.left, support.right)]
        stands = sum(row.stand_mm for row in rows)
        room = -outer_closes(support.arrangement) * (support.case_span_mm - support.shaft_span_mm)
        if abs(room - stands) > _SPAN_PLAY_MM:
            say(
                "case_span_mm",
                f"the spans leave {room:.1f} mm for two bearings that stand {stands:.1f} mm",
                "check both spans and the arrangement",
            )
        reach = shim.reach_of(support, unit.bearings)
        if not reach.ok:
            say("shim_set", reach.sentence, "add thicknesses or allow two shims")
        doubt, half = shim.stack_budget(support).expanded(), shim.shim_range(support)[1]
        if doubt >= half:
            say(
                "stack",
                f"the measurement is worth {doubt:.3f} mm, the target only leaves {half:.3f} mm",
                "measure with a finer tool or widen the target",
            )
        try:
            Pair.from_support(support, unit.bearings).preload(shim.target_interference(support)[1])
        except OutOfRangeError as trouble:
            say("target", trouble.what, "lower the target")
    return tuple(found)
