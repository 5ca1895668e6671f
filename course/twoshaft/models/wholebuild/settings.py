"""The shim that was chosen: end play or preload, cold and warm, by the shim and bearing models."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from twoshaft.models.bearing.heat import support_change
from twoshaft.models.shim import choose, target_interference
from twoshaft.models.wholebuild.asks import Ask
from twoshaft.models.wholebuild.faults import Fault
from twoshaft.models.wholebuild.job import Job
from twoshaft.units.kept import kept
from twoshaft.units.quantities import Q

_SAME_MM = 1e-6


@dataclass(frozen=True)
class ShimResult:
    """A pair of bearings with its shim.

    Attributes
    ----------
    ask : Ask
    total : pint.Quantity
        Shims in all [mm].
    on_shelf : bool
        Whether the shelf has shims that make that total.
    cold, warm : pint.Quantity
        Interference at the bench and at running temperature [mm]; below zero is end play.
    verdict : str
        ``safe``, ``meets`` (inside the target, but by less than the measurement is worth) or
        ``misses``.
    reason : str

    Examples
    --------
    >>> from twoshaft.models.wholebuild import Job, asks_of
    >>> job = Job.of(unit, {"asked": ["shim-differential"]})
    >>> result = judge_shim(job, asks_of(job)[0], {"shim-differential": Q(1.2, "mm")})
    >>> result.on_shelf, result.verdict, say_setting(result.cold), say_setting(result.warm)
    (False, 'meets', '0.120 mm of preload', '0.047 mm of preload')
    """

    ask: Ask
    total: Q
    on_shelf: bool
    cold: Q
    warm: Q
    verdict: str
    reason: str

    @property
    def faults(self) -> tuple[Fault, ...]:
        """What is wrong; nothing where the choice is safe."""
        if not self.on_shelf:
            words = f"{self.ask.name}: no shims on the shelf make {self.total.m_as('mm'):.2f} mm."
            return (Fault("shim", self.ask.step, self.ask.id, words),)
        if self.verdict == "safe":
            return ()
        words = f"{self.ask.name}: {self.reason}. Cold it has {say_setting(self.cold)}, "
        words += f"warm {say_setting(self.warm)}."
        return (Fault("shim", self.ask.step, self.ask.id, words),)


def say_setting(interference: Q) -> str:
    """A setting in words.

    >>> say_setting(Q(0.08, "mm")), say_setting(Q(-0.02, "mm"))
    ('0.080 mm of preload', '0.020 mm of end play')
    """
    mm = interference.m_as("mm")
    return f"{abs(mm):.3f} mm of {'preload' if mm >= 0 else 'end play'}"


def judge_shim(job: Job, ask: Ask, values: Mapping[str, Any]) -> ShimResult | None:
    """Judge the shims of a support; None where none were chosen.

    Parameters
    ----------
    job : Job
    ask : Ask
        Of kind ``shim``.
    values : mapping
        Values by field name.

    Raises
    ------
    OutOfRangeError
        For a total below zero or over 50 mm.

    Examples
    --------
    >>> from twoshaft.models.wholebuild import Job, asks_of
    >>> job = Job.of(unit, {"asked": ["shim-differential"]})
    >>> judge_shim(job, asks_of(job)[0], {"shim-differential": Q(1.0, "mm")}).reason
    '1.000 mm is -0.165 mm from 1.165 mm, 0.130 mm outside the limits'
    """
    total = values.get(ask.id)
    return None if total is None else _judged(job, ask, total.m_as("mm"))


@kept(most=256)
def _judged(job: Job, ask: Ask, total_mm: float) -> ShimResult:
    total, support = Q(total_mm, "mm"), job.support(ask.about)
    stack = job.stack(support.id)
    cold = stack.interference(total)
    warm = cold + support_change(support, job.unit.bearings, shim=total).total.to("mm")
    thin, thick = stack.window(*target_interference(support))
    window = Q(thin, "mm"), Q(thick, "mm")
    shelf = job.unit.bearings.shim_set_by_id(support.shim_set)
    sizes: Q = Q(list(shelf.thicknesses_mm), "mm")
    nearest = choose(sizes, (total, total), at_most=shelf.at_most)
    none = total_mm < _SAME_MM
    if none:
        return ShimResult(ask, total, True, cold, warm, "misses", "there is no shim in it")
    guard = Q(job.budget(support.id).expanded(), "mm")
    found = choose(Q([total_mm], "mm"), window, guard)
    on_shelf = abs(nearest.error_mm) < _SAME_MM
    reason = found.reason.replace("; this set cannot meet the target here", "")
    return ShimResult(ask, total, on_shelf, cold, warm, found.verdict, reason)


def shim_change_mm(job: Job, result: ShimResult) -> float:
    """How much thicker the shim is than the one for the middle of the target [mm].

    Examples
    --------
    >>> from twoshaft.models.wholebuild import Job, asks_of
    >>> job = Job.of(unit, {"asked": ["shim-differential"]})
    >>> result = judge_shim(job, asks_of(job)[0], {"shim-differential": Q(1.0, "mm")})
    >>> round(shim_change_mm(job, result), 3)
    -0.165
    """
    support = job.support(result.ask.about)
    low, high = target_interference(support)
    wanted = job.stack(support.id).shim_for((low + high) / 2)
    return (result.total - wanted).m_as("mm")
