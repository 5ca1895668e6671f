"""The commands that begin a unit file, and say what still stands in it from the start."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from twoshaft_grader.desk.app import say, say_findings, unit_app

if TYPE_CHECKING:
    from twoshaft.units import Unit
    from twoshaft_grader.records.unit_files import Tried


@unit_app.command("new")
def unit_new(
    file: Annotated[Path, typer.Argument(help="The file to write.")],
    name: Annotated[str | None, typer.Option(help="What the unit is called.")] = None,
    college: Annotated[str | None, typer.Option(help="Where it stands.")] = None,
    gears: Annotated[int | None, typer.Option(help="Forward gears, 3 to 8.")] = None,
    rails: Annotated[int | None, typer.Option(help="Shift rails.")] = None,
    bearings: Annotated[
        str | None, typer.Option(help="Of the output shaft: taper or ball.")
    ] = None,
    faces: Annotated[int | None, typer.Option(help="Faces sealed by a film, 0 to 12.")] = None,
    differential: Annotated[bool | None, typer.Option(help="Whether it has one.")] = None,
) -> None:
    """Begin a unit file from a few answers; what no option says is asked."""
    from twoshaft.units.new_unit import Wishes, least_rails
    from twoshaft_grader.records.unit_files import begin_unit, not_there

    not_there(file)
    asked = sys.stdin.isatty()

    def answer(given, question: str, usual):
        if given is not None:
            return given
        return typer.prompt(question, default=usual, type=type(usual)) if asked else usual

    named = answer(name, "What is the unit called", file.stem.replace("-", " "))
    forward = answer(gears, "How many forward gears has it", 5)
    wishes = Wishes(
        name=named,
        college=answer(college, "Where does it stand", "Your college"),
        gears=forward,
        rails=answer(
            rails, "How many shift rails, reverse counted in", least_rails(min(max(forward, 1), 8))
        ),
        bearings=answer(
            bearings,
            "Bearings of the output shaft: taper (with preload) or ball (with end play)",
            "taper",
        ),
        faces=answer(faces, "How many faces are sealed by a film, case joint counted in", 2),
        differential=differential
        if differential is not None
        else not asked or typer.confirm("Is there a differential in it", default=True),
    )
    begin_unit(file, wishes)
    say(f"Wrote {file}. It loads; each figure assumed is marked 'typical, change me'.")
    say(f"Correct it in any editor, then: twoshaft unit check {file}")


@unit_app.command("show")
def unit_show(
    file: Annotated[str, typer.Argument(help="A unit file, or the id of a shipped unit.")],
    page: Annotated[
        Path | None, typer.Option(help="The page to write; beside the file if not said.")
    ] = None,
    content: Annotated[str, typer.Option(help="Folder with the solutions.")] = "",
) -> None:
    """Draw a unit as a page to leaf through: section, order, and the course it would carry."""
    from twoshaft.models.audit import sound_unit
    from twoshaft.stored.writing import write_file
    from twoshaft_grader.cohort.content import find_content
    from twoshaft_grader.desk.bar import Bar
    from twoshaft_grader.records.unit_page import unit_page

    with Bar("checking the unit"):
        unit = sound_unit(file)
    own = Path(file)
    place = page or (own.with_suffix(".html") if own.is_file() else Path(f"{file}.html"))
    with Bar("drawing it, and the modules that it carries"):
        text = unit_page(unit, find_content(content))
    write_file(place, text)
    say(f"Wrote {place}. Open it in a browser and leaf through it with the arrow keys.")


@unit_app.command("parts")
def unit_parts(
    words: Annotated[
        list[str] | None, typer.Argument(help="Part of a name, or a table: bearings, bolts …")
    ] = None,
) -> None:
    """List standard parts by their published sizes, for 'standard:' in a unit file."""
    from twoshaft.units.standard_parts import TABLES
    from twoshaft_grader.records.unit_files import standard_parts

    shown = standard_parts(words or ())
    for one in shown:
        say(f"{one.kind} {one.name}: {one.sizes}")
    if not shown:
        say(f"No standard part is called so; the tables are {', '.join(TABLES)} and pins.")


@unit_app.command("sheet")
def unit_sheet(
    place: Annotated[Path, typer.Argument(help="A .xlsx file, or a folder for CSV files.")],
    unit: Annotated[
        str, typer.Option(help="The unit to write out; left out, the headings alone.")
    ] = "",
) -> None:
    """Write parts, operations and reasons as a spreadsheet, for colleagues to correct."""
    from twoshaft.units import load_unit
    from twoshaft_grader.records.unit_files import not_there
    from twoshaft_grader.records.unit_spreadsheet import write_sheets

    not_there(place)
    write_sheets(place, load_unit(unit) if unit else None)
    say(f"Wrote {place}. Several ids in a cell have semicolons between them.")


@unit_app.command("take")
def unit_take(
    place: Annotated[Path, typer.Argument(help="The .xlsx file, or the folder of CSV files.")],
    into: Annotated[Path, typer.Option(help="The unit file that takes its entries in.")],
) -> int:
    """Take parts, operations and reasons from a spreadsheet into a unit file."""
    from twoshaft.errors import UnitFileError
    from twoshaft_grader.records.unit_files import take_sheets

    try:
        kept, told = take_sheets(place, into)
    except UnitFileError as error:
        say_findings(error)
        return 2
    say(f"Took {place} into {into}: {told}. As it was before, it is kept as {kept}.")
    return 0


def say_typical(unit: Unit) -> None:
    """Say which entries of a unit still hold typical figures."""
    typical = unit.typical()
    if not typical:
        return
    say(f"Still typical, not of your unit, in {len(typical)} entries; pages say so until then:")
    for entry in typical:
        say(f"  {entry.sentence}")
    say("Put in your figure, or see that it is right, and take 'typical, change me' off the line.")


def say_tried(one: Tried) -> None:
    """Say what a module came to on a unit."""
    mend = "and report this" if one.unexpected else "or correct the file"
    say(f"{one.module}: {one.tasks} tasks." if one.given else f"Leave out {one.module}, {mend}:")
    for line in one.why:
        say(f"  {line}")
