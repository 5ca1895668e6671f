"""Blocks about shims, end play and preload."""

from __future__ import annotations

from twoshaft.units import Unit
from twoshaft.units.sections.bearings import Support
from twoshaft.units.sections.order import Operation, OperationKind
from twoshaft_grader.bench_sheets.content import Block, Column, Point, Points, Table
from twoshaft_grader.bench_sheets.forms import blank, figures, operations_of, readings

_TRIAL = (OperationKind.TRIAL, OperationKind.REMOVE, OperationKind.MEASURE)
_DRAG_OF = {"seal": "seal", "mesh": "teeth in mesh", "other-shaft": "another shaft"}


def supports_of(unit: Unit) -> tuple[Support, ...]:
    """Shafts on their bearings that are set during the build; none without the section."""
    every = unit.bearings.supports if unit.bearings_if_any else ()
    return tuple(one for one in every if one.trial_operation or one.final_operation)


def setting(unit: Unit) -> tuple[Operation, ...]:
    """Steps of trial fits, readings and final fits."""
    ids = [one.id for one in unit.operations if one.kind in _TRIAL]
    fits = [(one.trial_operation, one.final_operation) for one in supports_of(unit)]
    ids += [id for pair in fits for id in pair if id]
    ids += [id for check in _cord_checks(unit) for id in check.operations]
    return operations_of(unit, ids)


def _cord_checks(unit: Unit) -> list:
    return [one for one in unit.faults.checks if one.kind == "cord"] if unit.faults_if_any else []


def one_support(support: Support) -> tuple[Block, ...]:
    """All that is read, worked out and chosen for one shaft."""
    name = support.name
    target = "preload" if support.target.kind == "preload" else "end play"
    return (
        readings(
            f"{name}: lengths of the stack",
            [(term.name, term.tool) for term in support.stack],
            "Clean every face, look at the tool's zero first, and measure at three places.",
        ),
        figures(
            f"{name}: figures of the manual",
            [
                f"{target[:1].upper()}{target[1:]}, least",
                f"{target[:1].upper()}{target[1:]}, most",
                "Turning torque or pull, least",
                "Turning torque or pull, most",
            ],
        ),
        Table(
            f"{name}: from the readings to the shim",
            (Column("Line", 3.4), Column("Worked out", 3.0), Column("Result, unit", 1.6)),
            tuple(
                (line, "", "")
                for line in (
                    "Gap without a shim, or end float read with the trial shim",
                    f"{target[:1].upper()}{target[1:]} aimed at",
                    "Shim that would be right",
                    "A thicker shim gives: more preload, or more end play",
                    "Uncertainty of the measurement",
                )
            ),
        ),
        Table.begun(
            f"{name}: shim chosen",
            (
                Column("Fit", 1.6),
                Column("Shim chosen, as marked", 1.6),
                Column("First reading", 1.1),
                Column("Second reading", 1.1),
                Column("Third reading", 1.1),
                Column("Rollers seated by turning", 0.9, tick=True),
                Column("Float or pull found", 1.4),
                Column("Meets the manual", 0.9, tick=True),
                Column("Initials", 0.8),
            ),
            ((fit,) for fit in ("Trial fit", "Changed to", "Changed to", "Final")),
            "After every change: seat, measure and pull again. If it moves the wrong way, stop.",
        ),
    )


def cord(unit: Unit) -> tuple[Block, ...]:
    """Turning torque on a cord, with what else turns."""
    rows = [(check.name, "Spring scale and cord") for check in _cord_checks(unit)]
    turning = {
        support.name: [f"{drag.name} ({_DRAG_OF[drag.kind]})" for drag in support.drags]
        for support in supports_of(unit)
    }
    return (
        readings(
            "Pull on the cord while it turns",
            rows or [("", ""), ("", "")],
            "Read the steady pull, not the one that breaks it loose. Write the scale's zero and "
            "the radius of the cord below.",
        ),
        blank(
            "From pull to turning torque",
            [
                ("Shaft", 2.0),
                ("Scale's zero", 1.1),
                ("Radius of the cord", 1.3),
                ("Torque worked out", 1.5),
                ("What else turned, and its share", 2.4),
                ("Bearings alone", 1.3),
            ],
            max(2, len(rows)),
        ),
        Points(
            "What may turn with it",
            tuple(
                Point(f"{name}: {'; '.join(drags)}.") for name, drags in turning.items() if drags
            ),
            "Name what turns before you judge the bearings.",
        ),
    )
