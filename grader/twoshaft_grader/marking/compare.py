"""Judge one answer against its reference, by kind of field; say why in the trade's words."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

from twoshaft.jobsheet.fields import Choice, Choices, Field, Film, Number, Order
from twoshaft.jobsheet.hand_path import HandPath
from twoshaft.jobsheet.measures import MEASURES, named
from twoshaft.models import order, shift
from twoshaft.units.quantities import Q
from twoshaft_grader.marking.film_words import find_film
from twoshaft_grader.marking.reference import Reference, Slip

EXACT = 1e-9  # relative: what conversions between units may lose
SLIPS_OF_TEN = (1, 2, 3)  # places that a decimal point is looked for


@dataclass(frozen=True)
class Judgement:
    """What one answer is worth, and why.

    Attributes
    ----------
    share : float
        Part of the field's marks, 0 to 1.
    sentences : tuple of str
        At most two: what, why.
    cost : str
        What it would have cost at the bench, empty if nothing.
    safe : bool
        Whether a must-pass item is passed.
    slip : str
        Kind of slip that was recognised: "wrong unit", "slip of ten", "reversed sign",
        "listed", or empty.
    details : tuple of str
        Further rules that were broken.
    """

    share: float
    sentences: tuple[str, ...] = ()
    cost: str = ""
    safe: bool = True
    slip: str = ""
    details: tuple[str, ...] = ()


def judge(asked: Field, reference: Reference, value: Any) -> Judgement:
    """Judge an answer that could be read.

    Parameters
    ----------
    asked : Field
        The field.
    reference : Reference
        What is right.
    value : object
        The answer, as ``asked.read`` gives it.

    Returns
    -------
    Judgement
    """
    judged = _JUDGES[asked.kind](asked, reference, value)
    if judged.share >= 1:
        return judged
    slip = _listed_slip(asked, reference, value)
    if slip is not None:
        safe = judged.safe or slip.safe
        return Judgement(slip.share, (slip.sentence,), judged.cost, safe, "listed")
    return judged


def _listed_slip(asked: Field, reference: Reference, value: Any) -> Slip | None:
    return next((slip for slip in reference.slips if _is_slip(asked, reference, slip, value)), None)


def _is_slip(asked: Field, reference: Reference, slip: Slip, value: Any) -> bool:
    if callable(slip.value):
        try:
            return bool(slip.value(value))
        except Exception:  # it was written for answers of another size or unit
            return False
    if isinstance(asked, Number):
        return within(value, slip.value, reference.tolerance)
    if isinstance(asked, Choices):
        return not isinstance(slip.value, str) and set(value) == set(slip.value)
    if isinstance(asked, Order | HandPath):
        return tuple(value) == tuple(slip.value)
    return value == slip.value if isinstance(slip.value, str) else value in slip.value


# Numbers


def within(value: Q, right: Any, tolerance: Any) -> bool:
    """Whether a quantity agrees with the right one.

    Parameters
    ----------
    value : pint.Quantity
    right : pint.Quantity, int or float
    tolerance : quantity, float, dict or None
        As for :func:`twoshaft_grader.marking.reference.ref`.

    Examples
    --------
    >>> within(Q(17.6, "N*m"), Q(17.63, "N*m"), None)
    True
    >>> within(Q(3, ""), 4, None)
    False
    """
    if not isinstance(right, Q):
        right = Q(right, "dimensionless")
    try:
        there = right.to(value.units)
        own = value.to(right.units)
    except Exception:
        return False
    # Three figures in the unit that was typed are as good as three in the reference's.
    pairs = [(own, right), (value, there)] if tolerance is None else [(own, right)]
    return any(_near(float(a.magnitude), b, tolerance) for a, b in pairs)


def _near(own: float, right: Q, tolerance: Any) -> bool:
    wanted = float(right.magnitude)
    return abs(own - wanted) <= allowed(right, tolerance) + EXACT * max(abs(wanted), abs(own))


def allowed(right: Q, tolerance: Any) -> float:
    """How far an answer may lie from the right one, in the unit of ``right``."""
    size = abs(float(right.magnitude))
    if tolerance is None:
        whole = right.dimensionless and float(right.magnitude).is_integer()
        return 0.0 if whole or size == 0 else 0.5 * 10.0 ** (math.floor(math.log10(size)) - 2)
    if isinstance(tolerance, Q):
        tolerance = {"absolute": tolerance}
    elif not isinstance(tolerance, dict):
        tolerance = {"relative": tolerance}
    spans = {
        "absolute": lambda span: _span(span, right),
        "relative": lambda part: float(part) * size,
        "rounding": lambda step: 0.5 * _span(step, right),
    }
    return max(spans[key](value) for key, value in tolerance.items())


def _span(span: Any, right: Q) -> float:
    """A difference, in the unit of ``right``; degrees of temperature as differences."""
    if not isinstance(span, Q):
        return float(span)
    unit = f"{right.units}"
    if "degree_" in unit and "delta_" not in unit:
        return float(span.to(f"delta_{unit}").magnitude)
    return float(span.to(right.units).magnitude)


def _number(asked: Number, reference: Reference, value: Q) -> Judgement:
    right = reference.value
    if within(value, right, reference.tolerance):
        return Judgement(1.0)
    if not isinstance(right, Q):
        right = Q(right, "dimensionless")
    wanted = named(asked.unit, asked.of)
    typed = next(
        (m for m in MEASURES if m.kind == wanted.kind and Q(1, m.pint).units == value.units), wanted
    )
    figure = float(value.magnitude)
    near = max(allowed(right, reference.tolerance) / (abs(float(right.magnitude)) or 1.0), 0.005)
    for measure in sorted(MEASURES, key=lambda m: m.name != wanted.name):
        if measure.kind != wanted.kind or measure == typed:
            continue
        there = float(right.to(measure.pint).magnitude)
        tens = math.log10(abs(there / float(right.to(typed.pint).magnitude))) if there else 0
        if typed == wanted and abs(tens - round(tens)) < EXACT:
            continue  # the same unit asked for, a prefix off: a slip of ten
        if there and abs(figure - there) <= near * abs(there):
            return Judgement(
                0.0,
                (
                    f"You wrote {figure:g} {typed.name}; the figure fits, but in {measure.name}.",
                    "Convert it, or write the unit that it was worked out in.",
                ),
                safe=False,
                slip="wrong unit",
            )
    there = float(right.to(typed.pint).magnitude)
    if there and abs(figure + there) <= near * abs(there):
        return Judgement(
            0.0,
            ("The size is right, the sign is reversed.", "Check which way round you subtracted."),
            safe=False,
            slip="reversed sign",
        )
    for places in SLIPS_OF_TEN:
        for factor in (10.0**places, 10.0**-places):
            if there and abs(figure - factor * there) <= near * abs(factor * there):
                way = "too large" if factor > 1 else "too small"
                return Judgement(
                    0.0,
                    (
                        f"The figures are right, but {10**places} times {way}.",
                        "Check the decimal point, or the prefix of the unit.",
                    ),
                    safe=False,
                    slip="slip of ten",
                )
    return Judgement(0.0, ("This is not the figure that your readings give.",), safe=False)


# Choices


def right_keys(reference: Reference) -> frozenset[str]:
    """The keys that a choice accepts, or that several choices ask for."""
    value = reference.value
    return frozenset({value} if isinstance(value, str) else value)


def _choice(asked: Choice, reference: Reference, value: str) -> Judgement:
    right = value in right_keys(reference)
    return Judgement(float(right), () if right else ("Another answer fits better.",), safe=right)


def choices_share(hits: int, extras: int, right: int, wrong: int) -> float:
    """Right ticks less wrong ticks, each as a part of what there is, never below nothing.

    Examples
    --------
    >>> choices_share(3, 0, 3, 5), choices_share(3, 5, 3, 5), choices_share(2, 1, 4, 4)
    (1.0, 0.0, 0.25)
    """
    return max(0.0, hits / right - (extras / wrong if wrong else 0.0))


def _choices(asked: Choices, reference: Reference, value: tuple[str, ...]) -> Judgement:
    right = right_keys(reference)
    hits, extras = len(right & set(value)), len(set(value) - right)
    share = choices_share(hits, extras, len(right), len(asked.options) - len(right))
    if hits == len(right) and not extras:
        return Judgement(1.0)
    told = [f"You ticked {hits} of the {len(right)} that belong here"]
    if extras:
        told.append(f" and {extras} that {'does' if extras == 1 else 'do'} not")
    named_slips = [
        slip.sentence
        for slip in reference.slips
        if isinstance(slip.value, str) and slip.value in value
    ]
    # Everything that is needed is ticked, and each tick too many is only more careful than needed.
    careful = {slip.value for slip in reference.slips if slip.safe and isinstance(slip.value, str)}
    safe = right <= set(value) <= right | careful
    return Judgement(share, ("".join(told) + ".", *named_slips[:1]), safe=safe)


# Orders

MAX_RULES_TOLD = 6
"""Broken rules named at most, and never more than one for three steps: enough to learn from, too
few to read an order off."""


def _order(asked: Order, reference: Reference, value: tuple[str, ...]) -> Judgement:
    task = reference.value
    if task.start is None:
        task = task.starting_from(key for key, _ in asked.steps)
    slip = order.plan_slip(task, value)
    share = float(order.mark(task, value))
    safe = not (slip.broken_safety or slip.missing or slip.doubled or slip.foreign)
    cost = _bench_cost(task, value)
    if slip.size == 0:  # the order works; a clock may still run out in it
        late = tuple(f"The order works, but the time runs out. {r.text}" for r in slip.late[:1])
        return Judgement(1.0, late, cost=cost, safe=safe)
    told = sorted(slip.broken, key=lambda reason: not reason.safety)
    told = told[: max(1, min(MAX_RULES_TOLD, len(task.steps) // 3))]
    if tuple(value) == task.start:
        first = "This is the order that was shown at the start."
    else:
        first = _what_is_out(task, slip)
    return Judgement(
        share,
        (first, *([f"{_broken(task, told[0])}"] if told else [])),
        cost=cost,
        safe=safe,
        details=tuple(_broken(task, reason) for reason in told[1:]),
    )


def _what_is_out(task: order.OrderTask, slip: order.PlanSlip) -> str:
    """Say how many steps are out of place, and which one to look at first."""
    parts = []
    moved = len(slip.redo) + len(slip.blocks)
    if moved:
        first = task.label(slip.redo[0]) if slip.redo else _block(task, slip.blocks[0])
        steps = "step is" if moved == 1 else "steps are"
        parts.append(f"{moved} {steps} out of place; look first at “{first}”")
    if slip.missing:
        steps = "step is" if len(slip.missing) == 1 else "steps are"
        parts.append(f"{len(slip.missing)} {steps} left out, as “{task.label(slip.missing[0])}”")
    if slip.doubled:
        parts.append(f"“{task.label(slip.doubled[0])}” stands there more than once")
    if slip.foreign:
        parts.append(f"{len(slip.foreign)} of the entries belong to no step")
    text = "; ".join(parts) + "."
    return text[0].upper() + text[1:]


def _bench_cost(task: order.OrderTask, value: tuple[str, ...]) -> str:
    """Say what the order would cost at the bench: minutes, parts, where it shows first."""
    built = order.replay(task, value)
    if not built.events:
        return ""
    known = task.unit.part_by_id
    parts = [known[id].name for id in built.parts_lost if id in known]
    minutes = round(built.minutes_extra)
    said = []
    if minutes:
        unit = "minute" if minutes == 1 else "minutes"
        said.append(f"about {minutes} {unit} on top of {round(built.minutes_planned)}")
    if parts:
        more = f" and {len(parts) - 6} more" if len(parts) > 6 else ""
        said.append(f"lost: {', '.join(parts[:6])}{more}")
    if any(event.clock for event in built.events):
        said.append("a time limit runs out")
    if built.stopped_at:
        said.append(f"the build stops at “{task.label(built.stopped_at)}”")
    return f"At the bench: {'; '.join(said)}." if said else ""


def _block(task: order.OrderTask, id: str) -> str:
    return next(block.name for block in task.blocks if block.id == id)


def _broken(task: order.OrderTask, reason: order.Reason) -> str:
    """One broken rule as a sentence."""
    text = reason.text.rstrip(".")
    later = task.label(reason.later)
    if not reason.earlier:
        return f"“{later}”: {text}."
    earlier = " or ".join(f"“{task.label(step)}”" for step in reason.earlier)
    return f"“{later}” comes after {earlier}: {text}."


# Movements of the hand


def _path(asked: HandPath, reference: Reference, value: tuple[str, ...]) -> Judgement:
    """Judge moves by making them: on the sound mechanism and on those with a misbuild."""
    test = reference.value
    trial = shift.try_out(test, value)
    told = []
    if trial.done.get(shift.TRIED) is False:
        told.append(
            f"Your moves never push from {test.direct[0]} straight towards {test.direct[1]} "
            "within the gate."
        )
    elif trial.done.get(shift.LEFT) is False:
        told.append(
            f"You try the direct shift, but not whether {test.direct[1]} goes in once the lever "
            "has left the gate and come back."
        )
    if trial.done.get(shift.SHOWN) is False:
        told.append(
            "Your moves show it only where a loose part happens to lie right."
            if any(0 < shown < 1 for shown in trial.shows)
            else "With the misbuild in it, each of your moves would feel as it should."
        )
    return Judgement(trial.share, tuple(told[:2]), safe=trial.share >= 1)


# Films


def _film(asked: Film, reference: Reference, value: tuple) -> Judgement:
    """Judge passes by closing the face on them."""
    found = find_film(reference.value, value)
    return Judgement(
        found.share, found.sentences[:2], found.cost, found.good, details=found.sentences[2:]
    )


_JUDGES: dict[str, Callable[..., Judgement]] = {
    Number.kind: _number,
    Choice.kind: _choice,
    Choices.kind: _choices,
    Order.kind: _order,
    Film.kind: _film,
    HandPath.kind: _path,
}
