"""Blocks about parts that are pressed, driven, pinned and sealed."""

from __future__ import annotations

from twoshaft.units import Unit
from twoshaft.units.sections.fits import DriveOn
from twoshaft.units.sections.order import Operation
from twoshaft_grader.bench_sheets.content import Column, Table
from twoshaft_grader.bench_sheets.forms import figures, limits, operations_of

_DRIVE_ON = {
    DriveOn.OUTER: "the outer ring only",
    DriveOn.INNER: "the inner ring only",
    DriveOn.BOTH: "both rings at once",
    DriveOn.PART: "its whole face",
}
_KINDS = ("presses", "spring_pins", "taper_pins", "seals")


def fitting(unit: Unit) -> tuple[Operation, ...]:
    """The steps that press, drive, pin or seal something."""
    entries = [one for kind in _KINDS for one in _entries(unit, kind)]
    return operations_of(unit, (id for entry in entries for id in entry.operations))


def _entries(unit: Unit, kind: str) -> tuple:
    return getattr(unit.fits, kind) if unit.fits_if_any else ()


def presses(unit: Unit) -> Table:
    """Pressed parts: where the driver presses, what is warmed, and whether it is home."""
    columns = (
        Column("Part", 2.4),
        Column("Driver presses on", 1.5),
        Column("Driver used", 1.5),
        Column("Square before the push", 0.8, tick=True),
        Column("Home all round", 0.7, tick=True),
        Column("How you know", 1.6),
        Column("Initials", 0.8),
    )
    rows = [(one.name, _DRIVE_ON[one.drive_on]) for one in _entries(unit, "presses")]
    return Table.begun("Pressed and driven", columns, rows, empty=6)


def measured(unit: Unit) -> tuple[Table, Table]:
    """Bore and shaft of each fit as measured, and the limits that the manual has for them."""
    names = [one.name for one in _entries(unit, "presses")]
    columns = (
        Column("Part", 2.4),
        Column("Hole, measured", 1.2),
        Column("Part inside it, measured", 1.3),
        Column("Length of the seat", 1.1),
        Column("Interference worked out", 1.3),
        Column("Within the limits", 0.8, tick=True),
        Column("Read by", 0.9),
    )
    ends = ("Hole, least to most", "Part inside, least to most", "Interference, least to most")
    return (
        Table.begun(
            "Fits, measured",
            columns,
            ((name,) for name in names),
            "Across two directions, at two depths, part and gauge at the warmth of the room. Play "
            "is written with a minus.",
            empty=4,
        ),
        limits("Limits of the fits", names or [""] * 4, ends),
    )


def heat(unit: Unit) -> Table:
    """What is warmed, and how far it may be: from the manual."""
    names = [one.name for one in _entries(unit, "presses") if one.warm != "none"] or [""] * 3
    return figures(
        "Warmed parts: how hot at most",
        names,
        "Sealed bearings stand less heat than open ones, and no bearing stands a flame: look each "
        "one up.",
    )


def warmed() -> Table:
    """The heat that was used."""
    columns = (
        Column("Part warmed", 2.2),
        Column("Oven, plate or induction", 1.5),
        Column("Room, read", 0.9),
        Column("Oven, read", 1.0),
        Column("Read with", 1.2),
        Column("Marked HOT", 0.7, tick=True),
        Column("Seats seen again when cold", 1.0, tick=True),
        Column("Initials", 0.8),
    )
    return Table.begun("Heat used", columns, (), empty=4)


def pins(unit: Unit) -> Table:
    """Spring pins and taper pins."""
    columns = (
        Column("Pin", 2.6),
        Column("Which way", 2.4),
        Column("New", 0.6, tick=True),
        Column("Depth, first end", 1.1),
        Column("Depth, other end", 1.1),
        Column("Bore not covered", 0.8, tick=True),
        Column("Initials", 0.8),
    )
    spring = [(one.name, one.slot) for one in _entries(unit, "spring_pins")]
    taper = [
        (one.name, "driven from the large end; stands proud when home")
        for one in _entries(unit, "taper_pins")
    ]
    return Table.begun("Pins", columns, spring + taper, empty=4)


def seals(unit: Unit) -> Table:
    """Seals: the lip, the grease, and the depth at four places."""
    columns = (
        Column("Seal", 2.2),
        Column("Lip faces", 1.0),
        Column("Lip and hollow greased", 0.9, tick=True),
        Column("Splines covered", 0.8, tick=True),
        Column("Depth: top", 0.9),
        Column("right", 0.8),
        Column("bottom", 0.8),
        Column("left", 0.8),
        Column("Initials", 0.8),
    )
    rows = [(one.name, f"the {one.lip_towards}") for one in _entries(unit, "seals")]
    say = (
        "Depth below the face of the housing, at four places: it is square when all four agree as "
        "the manual asks."
    )
    return Table.begun("Seals", columns, rows, say, empty=4)


def pressed_figures(unit: Unit) -> Table:
    """Depths and limits of seals and pins."""
    names = [f"{one.name}: depth and how far out of square" for one in _entries(unit, "seals")]
    names += [f"{one.name}: how far in or proud" for one in _entries(unit, "spring_pins")]
    names += [f"{one.name}: how far proud" for one in _entries(unit, "taper_pins")]
    return figures("Depths", names or [""] * 4)
