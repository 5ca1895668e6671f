"""Which blocks each module's bench sheet has."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from twoshaft.units import Unit
from twoshaft_grader.bench_sheets import (
    checks,
    closing,
    film,
    fitted,
    inspecting,
    joints,
    selector,
    settings,
    stripping,
    train,
    work_order,
    workshop,
)
from twoshaft_grader.bench_sheets.content import Block
from twoshaft_grader.bench_sheets.forms import blank, steps

Make = Callable[[Unit], tuple[Block, ...]]


@dataclass(frozen=True)
class Recipe:
    """What a module's sheet is made of.

    Attributes
    ----------
    cautions : tuple of str
        Of the jobs on the sheet, besides those that stand on every sheet.
    make : callable
        The module's own blocks for a unit.
    """

    cautions: tuple[str, ...]
    make: Make


def _course_and_safety(unit: Unit) -> tuple[Block, ...]:
    return (*workshop.walk_round(), workshop.eyes(), *workshop.lift())


def _measuring_and_tools(unit: Unit) -> tuple[Block, ...]:
    return (
        workshop.tool_register(unit),
        *workshop.practice_readings(unit),
        *workshop.dial_and_cord(),
        joints.wrenches(),
    )


def _order_of_work(unit: Unit) -> tuple[Block, ...]:
    return (
        *work_order.plan(unit),
        *work_order.holds(unit),
        *work_order.clocks(unit),
        *work_order.renewed(unit),
        blank(
            "Changes to the plan while building",
            [("Step", 2.4), ("Moved to", 1.6), ("Why", 3.4), ("Agreed by", 1.0)],
            6,
        ),
    )


def _threaded_joints(unit: Unit) -> tuple[Block, ...]:
    work = joints.tightening(unit)
    return (
        steps("At the real unit", work, "Number the steps first, then tick them as they are done."),
        joints.threads(unit),
        joints.bolt_and_hole(),
        joints.torques(unit),
        joints.wrenches(),
        joints.pattern(),
        joints.rounds(unit),
        joints.shaft_nuts(unit),
        joints.stakes(unit),
        *work_order.renewed(unit, work),
    )


def _pressed_and_driven(unit: Unit) -> tuple[Block, ...]:
    work = fitted.fitting(unit)
    return (
        steps("At the real unit", work, "Number the steps first, then tick them as they are done."),
        *fitted.measured(unit),
        fitted.presses(unit),
        fitted.heat(unit),
        fitted.warmed(),
        fitted.pins(unit),
        fitted.seals(unit),
        fitted.pressed_figures(unit),
        joints.stakes(unit),
        *work_order.marks(unit, work),
        *work_order.renewed(unit, work),
    )


def _shims_and_preload(unit: Unit) -> tuple[Block, ...]:
    each = [block for one in settings.supports_of(unit) for block in settings.one_support(one)]
    return (
        steps("At the real unit", settings.setting(unit), "Number the steps before you begin."),
        *each,
        *settings.cord(unit),
    )


def _sealant_film(unit: Unit) -> tuple[Block, ...]:
    each = [block for face in film.faces_of(unit) for block in film.one_face(face)]
    work = film.sealing(unit)
    return (
        steps("At the real unit", work, "Number the steps before the tube is opened."),
        film.product(),
        *work_order.clocks(unit, (one.id for one in work)),
        *each,
    )


def _shift_and_lockout(unit: Unit) -> tuple[Block, ...]:
    work = selector.proving(unit)
    stages = {one.stage for one in work}
    parts = [one for one in unit.operations if one.stage in stages]
    return (
        steps(
            "At the real unit", parts, "Number the steps first, then tick them as they are done."
        ),
        *work_order.marks(unit, parts),
        *selector.small_parts(unit),
        selector.proof(unit),
        *work_order.renewed(unit, parts),
    )


def _gear_train_and_checks(unit: Unit) -> tuple[Block, ...]:
    return (
        steps("At the real unit", train.turning(unit), "Number the steps before you begin."),
        *train.counts(unit),
        *train.side_gears(),
        *train.synchronisers(unit),
        checks.final_checks(unit),
    )


def _reading_faults(unit: Unit) -> tuple[Block, ...]:
    return (*checks.complaint(), *checks.search(unit), selector.proof(unit))


def _whole_build(unit: Unit) -> tuple[Block, ...]:
    stack = [block for one in settings.supports_of(unit) for block in settings.one_support(one)]
    return (
        *work_order.consumables(unit),
        *work_order.build_record(unit),
        *work_order.holds(unit),
        *work_order.clocks(unit),
        *work_order.marks(unit),
        *work_order.renewed(unit),
        *stack,
        joints.torques(unit),
        joints.shaft_nuts(unit),
        selector.proof(unit),
        train.counts(unit)[0],
        checks.final_checks(unit),
        blank(
            "Taken apart again, and why",
            [
                ("Step", 2.2),
                ("What was found", 2.4),
                ("What came off, what was renewed", 2.6),
                ("Time lost", 0.9),
                ("Initials", 0.8),
            ],
            4,
        ),
    )


def _strip_mark_clean(unit: Unit) -> tuple[Block, ...]:
    return (
        stripping.order(unit),
        *stripping.before_lost(unit),
        *stripping.found(),
        *work_order.renewed(unit),
    )


def _inspect_and_decide(unit: Unit) -> tuple[Block, ...]:
    return (inspecting.sizes(unit), *inspecting.decided(), inspecting.thread())


def _close_out(unit: Unit) -> tuple[Block, ...]:
    return (*closing.oil(), *closing.leak_test(unit), *closing.handed_over(), closing.road())


_EYES = ("eyes-struck", "eyes-springs")
_CHEMICALS = ("cleaner-cold", "by-data-sheet", "spills-up")
_HEAT = ("hot-parts", "no-fuel-near-heat")
_LIFTING = ("lifting-aid", "clear-below")
_AIR = ("no-air-at-skin", "no-air-spin")
_METAL = ("alloy-by-hand", "soft-hammer", "press-guarded")
EVERY = (*_EYES, *_CHEMICALS, *_HEAT, *_LIFTING, *_AIR, *_METAL)

RECIPES = {
    "course-and-safety": Recipe(EVERY, _course_and_safety),
    "measuring-and-tools": Recipe(("lifting-aid",), _measuring_and_tools),
    "order-of-work": Recipe(_LIFTING, _order_of_work),
    "threaded-joints": Recipe(("alloy-by-hand", *_CHEMICALS, "no-air-at-skin"), _threaded_joints),
    "pressed-and-driven": Recipe(
        (*_EYES, *_HEAT, *_AIR, "soft-hammer", "press-guarded"),
        _pressed_and_driven,
    ),
    "shims-and-preload": Recipe(
        (*_HEAT, *_LIFTING, "no-air-spin", "press-guarded"),
        _shims_and_preload,
    ),
    "sealant-film": Recipe((*_CHEMICALS, *_LIFTING, "no-air-at-skin"), _sealant_film),
    "shift-and-lockout": Recipe((*_EYES, "soft-hammer"), _shift_and_lockout),
    "gear-train-and-checks": Recipe(
        (*_LIFTING, "no-air-spin", "spills-up"),
        _gear_train_and_checks,
    ),
    "reading-faults": Recipe((*_LIFTING, *_CHEMICALS), _reading_faults),
    "whole-build": Recipe(EVERY, _whole_build),
    "strip-mark-clean": Recipe(
        (*_EYES, *_CHEMICALS, *_LIFTING, *_AIR, "hot-parts", "soft-hammer", "press-guarded"),
        _strip_mark_clean,
    ),
    "inspect-and-decide": Recipe((*_EYES, *_CHEMICALS, *_AIR, "soft-hammer"), _inspect_and_decide),
    "close-out": Recipe((*_CHEMICALS, *_LIFTING, "hot-parts", "no-air-at-skin"), _close_out),
}
"""Recipes by module id, in the course's order."""


def recipe_of(module: str) -> Recipe:
    """The recipe of a module; one of steps and checks for a module that has none of its own."""
    plain = Recipe(
        EVERY,
        lambda unit: (steps("At the real unit", unit.operations), checks.final_checks(unit)),
    )
    return RECIPES.get(module, plain)
