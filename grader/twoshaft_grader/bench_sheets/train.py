"""Blocks about the gear train, the differential and the synchronisers."""

from __future__ import annotations

from twoshaft.units import Unit
from twoshaft.units.sections.order import Operation
from twoshaft.units.sections.order import OperationKind as Kind
from twoshaft_grader.bench_sheets.content import Block, Column, Table
from twoshaft_grader.bench_sheets.forms import (
    blank,
    checks,
    limits,
    operations_of,
    readings,
)


def turning(unit: Unit) -> tuple[Operation, ...]:
    """Steps of the build that measure, check or lock."""
    ids = [one.id for one in unit.operations if one.kind in (Kind.CHECK, Kind.MEASURE)]
    locked = [hold for hold in unit.holds if hold.safety]
    return operations_of(unit, [*ids, *(id for h in locked for id in (*h.given_by, *h.ended_by))])


def counts(unit: Unit) -> tuple[Block, ...]:
    """Turns in against turns out, gear by gear."""
    gears = unit.gear_train.gears if unit.gear_train_if_any else ()
    columns = (
        Column("Gear", 1.6),
        Column("Turns of the wheels", 1.1),
        Column("Turns of the input: first count", 1.2),
        Column("second count", 1.1),
        Column("Same way round, or against", 1.3),
        Column("Ratio counted", 1.2),
        Column("Ratio by the manual's teeth", 1.4),
        Column("Agree", 0.7, tick=True),
    )
    turns = Table.begun(
        "Turns counted",
        columns,
        ((gear.name,) for gear in gears),
        "Hold one output and say so, or count both and take the mean. Count whole turns and "
        "marks; a gear is named when count and direction both agree.",
        empty=6,
    )
    return (
        turns,
        blank(
            "Teeth, counted on the unit and by the manual",
            [
                ("Gear or drive", 2.0),
                ("Driving, counted", 1.1),
                ("Driven, counted", 1.1),
                ("By the manual", 1.2),
                ("Manual page", 1.0),
                ("Counted by", 1.0),
            ],
            len(turns.rows) + 2,
            "Mark the first tooth with chalk. An idler is counted once; the final drive has a line "
            "of its own.",
        ),
        Table.begun(
            "Both wheels free, and the speed drive",
            (
                Column("Count", 2.4),
                Column("Left wheel", 1.1),
                Column("Right wheel", 1.1),
                Column("Mean", 1.0),
                Column("Input, or speed pinion", 1.4),
                Column("Counted by", 1.0),
            ),
            [("A forward gear, input turned",), ("Speed drive, both wheels together",)],
        ),
        checks(
            "Turns freely, locks and lets go",
            [
                "In neutral both shafts turn freely, with no tight place in a whole turn",
                "With two gears of unlike ratio engaged, input and ring gear stand still",
                "With the lock off, everything turns again",
                "One output held: the other turns; both free: they may turn against each other",
                "Reverse runs the other way round",
                "The speed drive turns with the wheels",
                "Switches for the reversing lamp and for neutral, where the unit has them: each "
                "makes in its own place and nowhere else",
            ],
        ),
    )


def synchronisers(unit: Unit) -> tuple[Block, ...]:
    """Ring gaps and which way round rings, keys, hub and sleeve stand."""
    names = [
        f"{one.name}: ring of {gear}"
        for one in (unit.gear_train.synchronisers if unit.gear_train_if_any else ())
        for gear in one.gears
    ] or [""] * 4
    return (
        limits("Ring gap", names, ("New", "Least")),
        readings("Ring gap, read", [(name, "Feeler gauge") for name in names],
                 "Press the ring on square, and try the gap at three places round it."),
        checks(
            "Put together",
            [
                "Rings soaked in the oil of the unit, each on its own cone",
                "Keys in their slots, springs hooked as the manual shows",
                "Hub and sleeve the right way round",
                "Ring turns until its stop and comes back",
            ],
        ),
    )  # fmt: skip


def side_gears() -> tuple[Block, ...]:
    """Play of the side gears and the washers that set it."""
    return (
        limits("Side gears of the differential", ["Play"], ("Least", "Most")),
        readings(
            "Play of the side gears, read",
            [
                (f"{side} side gear, {way}", "Dial indicator")
                for side in ("Left", "Right")
                for way in ("pushed inwards", "pulled outwards")
            ],
        ),
        blank(
            "Thrust washers chosen",
            [
                ("Side", 1.2),
                ("Washer found", 1.4),
                ("Washer chosen", 1.4),
                ("Worked out", 2.4),
                ("Play found after", 1.4),
                ("Initials", 0.8),
            ],
            3,
        ),
    )
