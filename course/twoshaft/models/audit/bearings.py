"""What a bearings section gets wrong, found by running the models."""

from __future__ import annotations

from twoshaft.units.findings import Finding
from twoshaft.units.unit import Unit

# Spans are nominal: what is measured lies this much about them, the setting included.
_SPAN_PLAY_MM = 0.5


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
    from twoshaft.models.bearing.heat import closing_shim_mm

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
        # Else an even warming of the whole unit would change its setting.
        closing, shelf = (
            closing_shim_mm(support, unit.bearings),
            unit.bearings.shim_set_by_id(support.shim_set),
        )
        thin, thick = min(shelf.thicknesses_mm), shelf.at_most * max(shelf.thicknesses_mm)
        if not thin - _SPAN_PLAY_MM <= closing <= thick + _SPAN_PLAY_MM:
            say(
                "case_span_mm",
                f"spans and bearings close with a shim of {closing:.2f} mm, and the set goes from "
                f"{thin:.2f} to {thick:.2f} mm",
                "check both spans, without the shim, and the arrangement",
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
