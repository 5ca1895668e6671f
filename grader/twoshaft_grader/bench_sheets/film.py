"""Blocks about sealed faces."""

from __future__ import annotations

from twoshaft.units import Unit
from twoshaft.units.sections.faces import Face
from twoshaft.units.sections.order import Operation
from twoshaft_grader.bench_sheets.content import Block, Column, Space, Table
from twoshaft_grader.bench_sheets.forms import checks, figures


def faces_of(unit: Unit) -> tuple[Face, ...]:
    """Faces that are sealed during the build; none without the section."""
    every = unit.faces.faces if unit.faces_if_any else ()
    return tuple(one for one in every if one.lay_operation or one.close_operation)


def sealing(unit: Unit) -> tuple[Operation, ...]:
    """Steps of the stages in which a film is laid and closed."""
    ids = {id for face in faces_of(unit) for id in (face.lay_operation, face.close_operation)}
    stages = {one.stage for one in unit.operations if one.id in ids}
    return tuple(one for one in unit.operations if one.stage in stages)


def product() -> Table:
    """The sealant, by its own papers."""
    return figures(
        "The sealant, by its data sheet",
        [
            "Product, batch and use-by date",
            "Made for this oil, this gap and this metal",
            "Open time in this workshop's warmth",
            "Film or bead, and how thick",
            "Largest lump that the oil galleries bear",
            "Time until oil may be filled",
        ],
        "Page of the data sheet or the manual; one enters, one checks.",
    )


def one_face(face: Face) -> tuple[Block, ...]:
    """Making ready, laying, closing and curing of one face."""
    guides = [f"No lump near: {guide.name[:1].lower()}{guide.name[1:]}" for guide in face.guides]
    return (
        checks(
            f"{face.name}: before the film",
            [
                "Both faces scraped without a scratch, old sealant gone",
                "Both faces wiped until the cloth stays white, and dry",
                "Both faces looked along: no burr, no score across the face",
                "Dowels in, bolts and tools laid out, second person ready",
                "Blind holes dry",
                *guides,
            ],
        ),
        Table.begun(
            f"{face.name}: measured",
            (
                Column("What", 3.4),
                Column("Tool and its number", 2.0),
                Column("Reading", 1.3),
                Column("Read by", 1.3),
            ),
            (
                (what,)
                for what in (
                    "Out of flat, largest feeler under a straightedge",
                    "Largest gap, faces laid together without sealant",
                    "Width of the face at its narrowest",
                    "Bead or film as laid, on a strip of paper",
                )
            ),
        ),
        Space(
            f"{face.name}: your film",
            "Draw the face of your unit with its bolt holes, and the way of the film round them.",
            75,
        ),
        Table.begun(
            f"{face.name}: times",
            (
                Column("What", 3.2),
                Column("Time, on the clock", 1.4),
                Column("By", 1.0),
                Column("Remark", 2.4),
            ),
            (
                (what,)
                for what in (
                    "Film begun: the first sealant",
                    "Film whole, looked at all round",
                    "Face closed: placed once, straight down",
                    "All bolts run down by hand",
                    "Last bolt tight",
                    "Open time ends",
                    "Oil may be filled, date and time",
                    "Oil filled, date and time",
                )
            ),
        ),
        checks(
            f"{face.name}: after closing",
            [
                "Not slid, lifted or opened again; if it was, all of it renewed",
                "A fine, even line squeezed out all round, wiped off outside",
                "Cloths and gloves thrown away by the data sheet",
            ],
        ),
    )
